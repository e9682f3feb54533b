using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Every sign that pictures use, on one sheet: for papers of many pictures, which then need no legend each.</summary>
internal static class LegendPicture
{
    public static string ToSvg(PictureOptions options)
    {
        SvgPage page = new(options, "signs");
        List<(Look, string)> entries = [];
        for (Look look = Look.Outline; look <= Look.Cutout; look++)
        {
            if (LookText.Of(look) is { Length: > 0 } text)
            {
                entries.Add((look, text));
            }
        }

        page.Swatches(entries);
        page.Gap();
        page.Item("!1 ?1 #1", "a violation, something not known, another finding, with its number in the report", "sign");
        page.Item("n1", "a note under the drawing", "sign");
        return page.ToSvg("What the signs mean", entries.Count + " signs.");
    }
}
