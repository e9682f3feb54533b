using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>The paper that a pole is printed on.</summary>
public enum PaperSize
{
    /// <summary>210 mm by 297 mm.</summary>
    A4 = 0,

    /// <summary>8-1/2 in by 11 in.</summary>
    Letter = 1,
}

/// <summary>A story pole as a picture: to scale with what each mark is for, or as large as it is over pages that are taped together.</summary>
/// <remarks>Drawn from <see cref="StoryPole"/>; it works nothing out of its own, and is no approval.</remarks>
public sealed partial class PolePicture
{
    /// <summary>A tenth of a millimeter is the user unit of a page as large as life, so that a thousandth of it is eight ticks.</summary>
    private const long LifeSize = 8;

    private readonly StoryPole pole;

    private PolePicture(StoryPole pole) => this.pole = pole;

    /// <summary>A picture of a pole.</summary>
    /// <param name="pole">The pole.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pole"/> is null.</exception>
    public static PolePicture For(StoryPole pole) => new(pole ?? throw new ArgumentNullException(nameof(pole)));

    /// <summary>The same as <see cref="ToSvg()"/>.</summary>
    public override string ToString() => ToSvg();

    /// <summary>The pole to scale, with the usual options.</summary>
    public string ToSvg() => ToSvg(PictureOptions.Default);

    /// <summary>The pole to scale: one for each storey, and for each room whose subfloor lies off it.</summary>
    /// <param name="options">How it is drawn; of layers only dimensions count.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    public string ToSvg(PictureOptions options)
    {
        SvgPage page = Begin(options ?? throw new ArgumentNullException(nameof(options)));
        foreach ((string heading, List<PoleMark> marks) in Stands())
        {
            Draw(page, heading, marks);
        }

        LengthUnits units = options.Units ?? pole.Units;
        foreach (PoleRange range in pole.NotYet)
        {
            page.Paragraph("Not yet: " + Printed.Of(range.Height, units) + ", " + Printed.About(range.Range.From, units) + " to " + Printed.About(range.Range.To, units) + " above the subfloor: " + range.Why, "not-yet");
        }

        List<(string Why, List<string> Boxes)> leftOut = [];
        foreach (LeftOutBox box in pole.LeftOut)
        {
            int known = leftOut.FindIndex(one => one.Why == box.Why);
            if (known < 0)
            {
                leftOut.Add((box.Why, [SvgText.Isolated(box.BoxId)]));
            }
            else
            {
                leftOut[known].Boxes.Add(SvgText.Isolated(box.BoxId));
            }
        }

        leftOut.ForEach(one => page.Paragraph("Not on the pole: " + string.Join(", ", one.Boxes) + ": " + one.Why, "left-out"));
        return End(page, pole.Rows.Count);
    }

    /// <summary>A picture for each stand, for papers whose pages don't hold them all.</summary>
    internal IEnumerable<string> Apart(PictureOptions options)
    {
        foreach ((string heading, List<PoleMark> marks) in Stands())
        {
            SvgPage page = Begin(options.WithIdPrefix(options.IdPrefix + SvgText.AsId(heading)));
            Draw(page, heading, marks);
            yield return End(page, marks.Count);
        }
    }

    private SvgPage Begin(PictureOptions options)
    {
        SvgPage page = new(options, "pole");
        page.Paragraph(SvgText.Isolated(pole.House) + ": story pole", "title", bold: true);
        page.Paragraph("marks are above the subfloor", "subtitle");
        page.Gap();
        return page;
    }

    private void Draw(SvgPage page, string heading, List<PoleMark> marks)
    {
        PictureOptions options = page.Options;
        LengthUnits units = options.Units ?? pole.Units;
        page.Paragraph(heading, "stand", bold: true);
        Distance top = marks[marks.Count - 1].Mark.Value + Distance.FromInches(6);
        Distance low = Distance.Min(Distance.Zero, marks[0].Mark.Value);
        long wide = page.Size * 2;
        ElevationFrame frame = ElevationFrame.Within(
            Distance.FromInches(2), low, top, page.Margin, page.Cursor + page.Line, page.TextWidth, (options.DrawingHeight ?? Math.Max(60, options.Width * 6 / 10)) * 1000L);
        page.Open("stand", heading);
        page.Rectangle(new(page.Margin, frame.Area.Top, wide, frame.Area.Height), Look.Board, "stick");
        PageNotes notes = new(page, new(new(page.Margin + wide, page.Cursor, page.TextWidth - wide, frame.Area.Height + (2 * page.Line))));
        foreach (PoleMark mark in marks)
        {
            long y = frame.Y(mark.Mark.Value);
            page.Segment(page.Margin, y, page.Margin + wide, y, Look.RoomLine, "mark");
            string text = TextOf(mark, units);
            PageRect size = page.SizeOf(text);
            if (notes.TryLabel(text, Beside(page.Margin + wide + (2 * page.Size), y, size), "mark-name", out PageRect placed))
            {
                page.Leader(page.Margin + wide, y, placed.Left, placed.Top + (placed.Height / 2));
            }
            else
            {
                notes.Note(text, new(page.Margin + wide, y, 1, 1));
            }
        }

        page.Close();
        notes.PlaceMarks();
        page.Cursor = Math.Max(frame.Area.Bottom, notes.Lowest) + (page.Line / 2);
        PageFoot.ScaleBar(page, units, frame.Scale);
        notes.Write();
    }

    private string End(SvgPage page, int marks)
    {
        page.Gap();
        PageFoot.Caution(page);
        return page.ToSvg(SvgText.Isolated(pole.House) + ": story pole", marks + " marks. " + Scope.Caution);
    }

    /// <summary>The pole as large as life, from the subfloor up, over pages. Their crosses are laid on each other; the bar on each is measured before it is trusted.</summary>
    /// <param name="paper">The paper.</param>
    /// <returns>The pages of every stand in order, each an SVG of the paper's size in millimeters; none where nothing is marked, or a mark is higher than 12 m.</returns>
    public Items<string> ToPages(PaperSize paper)
    {
        List<string> pages = [];
        foreach ((string heading, List<PoleMark> marks) in Stands())
        {
            Distance top = marks[marks.Count - 1].Mark.Value + Distance.FromMillimeters(30m);
            long overlap = Thousandths(Distance.FromMillimeters(20m));
            long head = Thousandths(Distance.FromMillimeters(35m));
            long foot = Thousandths(Distance.FromMillimeters(20m));
            long high = Thousandths(paper == PaperSize.Letter ? Distance.FromMillimeters(279.4m) : Distance.FromMillimeters(297m));
            long step = high - head - foot - overlap;
            int count = (int)Math.Min(1000, ((Thousandths(top) - 1) / step) + 1);
            for (int sheet = 0; sheet < count && top < Distance.FromMillimeters(12_000m); sheet++)
            {
                pages.Add(Sheet(heading, marks, paper, sheet, count, sheet * step, high - foot, head, overlap));
            }
        }

        return new(pages);
    }

    private string Sheet(string heading, List<PoleMark> marks, PaperSize paper, int sheet, int count, long from, long bottom, long top, long overlap)
    {
        (int width, int height) = paper == PaperSize.Letter ? (2159, 2794) : (2100, 2970);
        SvgPage page = new(PictureOptions.Default.WithWidth(width).WithFontSize(36), "pole-page") { IsTenthsOfMillimeters = true };
        page.Cursor = page.Margin * 2;
        page.Paragraph(SvgText.Isolated(pole.House) + ", " + heading + ": page " + (sheet + 1) + " of " + count, "title", bold: true);
        page.Paragraph("As large as life. This bar is 100 mm long:", "subtitle");
        long y = page.Cursor + (page.Line / 2);
        page.Segment(page.Margin, y, page.Margin + Thousandths(Distance.FromMillimeters(100m)), y, Look.WallLine, "check-bar");
        long wide = Thousandths(Distance.FromMillimeters(40m));
        page.Open("stand", heading);
        page.Segment(page.Margin, top, page.Margin, bottom, Look.RoomLine, "edge");
        page.Segment(page.Margin + wide, top, page.Margin + wide, bottom, Look.RoomLine, "edge");
        PageNotes notes = new(page, new(new(page.Margin + wide, top - page.Line, page.TextWidth - wide, bottom - top + (2 * page.Line))));
        foreach (PoleMark mark in marks)
        {
            long at = bottom - (Thousandths(mark.Mark.Value) - from);
            if (at >= top && at <= bottom)
            {
                page.Segment(page.Margin, at, page.Margin + wide, at, Look.WallLine, "mark");
                string text = TextOf(mark, pole.Units);
                foreach (string line in TextMeasure.Wrap(text, page.TextWidth - wide - (3 * page.Size), page.Size))
                {
                    if (notes.TryLabel(line, Beside(page.Margin + wide + page.Size, at, page.SizeOf(line)), "mark-name", out PageRect placed))
                    {
                        page.Leader(page.Margin + wide, at, placed.Left, placed.Top + (placed.Height / 2));
                    }
                }
            }
        }

        // The same heights on both pages.
        Cross(sheet > 0 ? bottom - (overlap / 2) : null);
        Cross(sheet + 1 < count ? top + (overlap / 2) : null);
        page.Close();
        page.Cursor = bottom + (page.Line / 2);
        PageFoot.Caution(page);
        page.Cursor = (height * 1000L) - page.Margin;
        return page.ToSvg("Story pole, page " + (sheet + 1) + " of " + count, heading + ". " + Scope.Caution, ("data-scale", LifeSize.ToString(CultureInfo.InvariantCulture)), ("data-subfloor", SvgPage.Number(bottom + from)));

        void Cross(long? at)
        {
            if (at is { } height)
            {
                long arm = page.Size;
                foreach (long x in new[] { page.Margin + (wide / 2), page.Width - (page.Margin * 3) })
                {
                    page.Segment(x - arm, height, x + arm, height, Look.RoomLine, "register");
                    page.Segment(x, height - arm, x, height + arm, Look.RoomLine, "register");
                }
            }
        }
    }

    private static long Thousandths(Distance distance) => distance.Ticks / LifeSize;

    private static string TextOf(PoleMark mark, LengthUnits units) =>
        Printed.About(mark.Mark.Value, units) + " " + EdgeText.Print(mark.Mark.Edge) + ": " + mark.Purposes
        + " (" + mark.BoxIds.Count + (mark.BoxIds.Count == 1 ? " box)" : " boxes)");

    private static IEnumerable<PageRect> Beside(long x, long y, PageRect size)
    {
        for (long off = 0; off <= size.Height * 6; off += size.Height / 4)
        {
            yield return new(x, y - (size.Height / 2) - off, size.Width, size.Height);
            yield return new(x, y - (size.Height / 2) + off, size.Width, size.Height);
        }
    }

    /// <summary>The marks of each stand from the lowest up.</summary>
    private List<(string Heading, List<PoleMark> Marks)> Stands()
    {
        List<(string Heading, List<PoleMark> Marks)> stands = [];
        foreach (PoleMark mark in pole.Rows)
        {
            string heading = SvgText.Isolated(pole.HeadingOf(mark.Storey, mark.Subfloor, mark.Rooms));
            int known = stands.FindIndex(stand => stand.Heading == heading);
            if (known < 0)
            {
                stands.Add((heading, [mark]));
            }
            else
            {
                stands[known].Marks.Add(mark);
            }
        }

        stands.ForEach(stand => stand.Marks.Sort((a, b) => a.Mark.Value.CompareTo(b.Mark.Value)));
        return stands;
    }
}
