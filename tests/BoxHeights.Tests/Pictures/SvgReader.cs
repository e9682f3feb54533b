using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;

namespace BoxHeights.Tests.Pictures;

/// <summary>Reads a picture back as anybody would: from its XML alone.</summary>
internal sealed class SvgReader
{
    private readonly XElement root;

    public SvgReader(string svg)
    {
        root = XDocument.Parse(svg).Root!;
        Width = Thousandths(root.Attribute("width")!.Value);
        Height = Thousandths(root.Attribute("height")!.Value);
    }

    public long Width { get; }

    public long Height { get; }

    public IEnumerable<XElement> All => root.DescendantsAndSelf();

    /// <summary>The shapes of a class within the group of a name.</summary>
    public XElement[] Of(string group, string name, string shape) => All
        .Where(one => (string?)one.Attribute("class") == "bh-" + group && (string?)one.Attribute("data-id") == name)
        .SelectMany(one => one.Elements()).Where(one => (string?)one.Attribute("class") == "bh-" + shape).ToArray();

    /// <summary>A number of the whole picture.</summary>
    public long Data(string name) => Thousandths(root.Attribute("data-" + name)!.Value);

    /// <summary>The lines of text, and the rectangles that no usual font makes larger.</summary>
    public (string Text, string Part, PageRect At)[] Texts() => root.Descendants().Where(one => one.Name.LocalName == "text").Select(text =>
    {
        long size = Thousandths(text.Parent!.Attribute("font-size")!.Value);
        long top = Thousandths(text.Attribute("y")!.Value) - (size * 98 / 100);
        return (text.Value, text.Attribute("class")!.Value, new PageRect(Thousandths(text.Attribute("x")!.Value), top, TextMeasure.Width(text.Value, size), size * 13 / 10));
    }).ToArray();

    /// <summary>What is wrong with the labels: each that leaves the page, and each two that overlap.</summary>
    public IEnumerable<string> Clashes()
    {
        (string Text, string Part, PageRect At)[] texts = Texts();
        PageRect page = new(0, 0, Width, Height);
        for (int i = 0; i < texts.Length; i++)
        {
            if (!page.Holds(texts[i].At))
            {
                yield return "\"" + texts[i].Text + "\" leaves the page";
            }

            for (int j = i + 1; j < texts.Length; j++)
            {
                if (texts[i].At.Overlaps(texts[j].At))
                {
                    yield return "\"" + texts[i].Text + "\" overlaps \"" + texts[j].Text + "\"";
                }
            }
        }
    }

    public static long Thousandths(string number) => (long)(decimal.Parse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) * 1000m);
}
