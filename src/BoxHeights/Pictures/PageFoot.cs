using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What stands under every drawing: its scale, notes, findings, legend and the caution.</summary>
internal static class PageFoot
{
    private static readonly string[] InInches = ["1/2 in", "1 in", "2 in", "6 in", "12 in", "24 in", "48 in", "96 in", "20 ft", "40 ft", "100 ft"];
    private static readonly string[] InMillimeters = ["10 mm", "20 mm", "50 mm", "100 mm", "200 mm", "500 mm", "1000 mm", "2000 mm", "5000 mm", "10000 mm", "20000 mm"];

    /// <summary>A bar as long as a round length is in the drawing: the longest that isn't over a quarter of the page.</summary>
    public static void ScaleBar(SvgPage page, LengthUnits units, long ticksPerThousandth)
    {
        string[] lengths = units == LengthUnits.Millimeters ? InMillimeters : InInches;
        string text = lengths[0];
        foreach (string one in lengths)
        {
            text = Distance.Parse(one).Ticks / ticksPerThousandth <= page.Width / 4 ? one : text;
        }

        long wide = Distance.Parse(text).Ticks / ticksPerThousandth;
        long y = page.Cursor + (page.Line / 2);
        long tick = page.Size / 3;
        page.Open("scale-bar");
        page.Path([(page.Margin, y - tick), (page.Margin, y), (page.Margin + wide, y), (page.Margin + wide, y - tick)], Look.RoomLine, false, "scale");
        page.Close();
        PageRect size = page.SizeOf(text);
        page.Label(new(System.Math.Min(page.Margin + wide + (page.Size / 2), page.Width - page.Margin - size.Width), page.Cursor, size.Width, size.Height), text, "scale-text", onPaper: false);
        page.Cursor += page.Line * 3 / 2;
    }

    /// <summary>What the findings say, numbered as in the report; what is said of several is said once.</summary>
    public static void Findings(SvgPage page, Items<FindingPlace> findings)
    {
        List<(int Number, string Weight, string Body, string Subjects, string Said)> items = [];
        foreach (FindingPlace place in findings)
        {
            Finding finding = place.Finding;
            string weight = EvaluationText.WeightOf(finding);
            string body = finding.BodyIn(page.Options.Units);
            int same = items.FindIndex(item => item.Number == place.Number && item.Weight == weight && item.Body == body);
            string subject = finding.Seen == finding.Subject ? SvgText.Isolated(finding.Subject) : SvgText.Mixed(finding.Seen);
            if (same < 0)
            {
                items.Add((place.Number, weight, body, subject, finding.OwnBodyIn(page.Options.Units)));
            }
            else
            {
                items[same] = (place.Number, weight, body, items[same].Subjects + ", " + subject, body);
            }
        }

        // The heaviest of a cause first.
        List<(int Number, string Weight, string Body, string Subjects, string Said)> sorted = [];
        items.ForEach(item => sorted.Insert(sorted.FindLastIndex(one => one.Number < item.Number || (one.Number == item.Number && Rank(one.Weight) <= Rank(item.Weight))) + 1, item));
        foreach ((int number, string weight, _, string subjects, string said) in sorted)
        {
            page.Item(MarkOf(findings, number), weight + "  " + subjects + ": " + SvgText.Mixed(said), "finding");
        }

        if (findings.Count > 0)
        {
            page.Gap();
        }
    }

    private static int Rank(string weight) => weight switch { "VIOLATION" => 0, "ADVICE" => 2, "NOTE" => 3, _ => 1 };

    /// <summary>A cause's number as it stands in the drawing, with a sign that tells without color what the heaviest of its findings here weighs.</summary>
    public static string MarkOf(Items<FindingPlace> findings, int number)
    {
        char sign = '#';
        foreach (FindingPlace place in findings)
        {
            Finding finding = place.Finding;
            sign = place.Number != number || sign == '!' ? sign : finding.IsViolation ? '!' : finding.Verdict == Verdict.Unknown ? '?' : sign;
        }

        return sign + number.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    public static void Legend(SvgPage page)
    {
        List<(Look, string)> entries = [];
        foreach (Look look in page.Used)
        {
            if (LookText.Of(look) is { Length: > 0 } text)
            {
                entries.Add((look, text));
            }
        }

        if (entries.Count > 0)
        {
            page.Open("legend");
            page.Swatches(entries);
            page.Close();
        }
    }

    public static void Caution(SvgPage page) => page.Paragraph(Scope.Caution, "caution");
}
