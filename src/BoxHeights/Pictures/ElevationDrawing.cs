using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Draws a wall: where it is on the page, and its lines.</summary>
internal sealed partial class ElevationDrawing
{
    private readonly WallView wall;
    private readonly Items<BandView> bands;
    private readonly string house;
    private readonly PictureOptions options;
    private readonly LengthUnits units;
    private readonly SvgPage page;
    private readonly bool isTopKnown;
    private readonly Distance low;
    private readonly Distance high;

    /// <summary>How much of the wall's length is drawn: all of it, but of one longer than any house only as far as there is something on it.</summary>
    private readonly Distance length;
    private readonly ElevationFrame frame;
    private readonly PageNotes notes;

    /// <summary>How much of the page the labels at each side have.</summary>
    private readonly long leftSide;
    private readonly long rightSide;

    public ElevationDrawing(WallView wall, Items<BandView> bands, string house, PictureOptions options)
    {
        this.wall = wall;
        this.bands = bands;
        this.house = house;
        this.options = options;
        units = options.Units ?? wall.Units;
        page = new(options, "wall");
        isTopKnown = wall.Top.Count > 0;
        (low, high) = Extent();
        length = InAHouse.Holds(wall.Length) ? wall.Length : FarEnd();
        page.Paragraph(Title, "title", bold: true);
        page.Paragraph("left as you face the wall; heights above the subfloor, distances from the left end", "subtitle");
        page.Gap();
        leftSide = Side(HeightTexts());
        rightSide = Side(LineTexts());
        frame = ElevationFrame.Within(
            length, low, high, page.Margin + leftSide, page.Cursor, page.TextWidth - leftSide - rightSide, (options.DrawingHeight ?? Math.Max(60, options.Width * 6 / 10)) * 1000L);

        // Labels stand in the drawing, at both sides of it, and in the rows under it.
        notes = new(page, new(new(page.Margin, frame.Area.Top, page.TextWidth, frame.Area.Height + (Rows * page.Line))));
    }

    private int Rows => options.Shows(PictureLayers.Dimensions) ? 6 : 1;

    private string Title => SvgText.Title(house, wall.Address) + (InAHouse.Holds(wall.Length) ? ", " + Text(wall.Length) + " long" : "") + (wall.IsOutside ? ", from outside" : "");

    public string Draw()
    {
        page.Open("elevation", wall.Address, wall.Address);
        if (wall.IsOpen)
        {
            page.Rectangle(frame.Area, Look.Assumed, "open-side");
        }

        Show(PictureLayers.Framing, Framing);
        Show(PictureLayers.Allowed, Bands);
        Show(PictureLayers.Things, Finishes);
        Show(PictureLayers.Openings, Openings);
        Show(PictureLayers.Boards, Seams);
        Show(PictureLayers.Things, Things);
        Outline();
        Show(PictureLayers.Lines, Lines);
        Show(PictureLayers.Boxes, Boxes);
        Show(PictureLayers.Findings, MarkFindings);
        Show(PictureLayers.Boxes, NameBoxes);
        Show(PictureLayers.Dimensions, Heights);
        Show(PictureLayers.Dimensions, Alongs);
        Show(PictureLayers.Lines, NameLines);
        Show(PictureLayers.Names, NameThings);
        page.Close();
        notes.PlaceMarks();
        page.Cursor = Math.Max(notes.Lowest, frame.Area.Bottom) + (page.Line / 2);
        PageFoot.ScaleBar(page, units, frame.Scale);
        notes.Write();
        if (wall.LeftOut.Count > 0)
        {
            page.Paragraph("Not drawn, since a measure is larger than anything in a house: " + SvgText.Mixed(string.Join(", ", wall.LeftOut)) + ".", "left-out");
            page.Gap();
        }

        WriteBands();
        Show(PictureLayers.Findings, () => PageFoot.Findings(page, wall.Findings));
        Show(PictureLayers.Legend, () => PageFoot.Legend(page));
        PageFoot.Caution(page);
        return page.ToSvg(
            Title,
            Title + ". " + wall.Boxes.Count + (wall.Boxes.Count == 1 ? " box, " : " boxes, ") + EvaluationText.Counted(wall.Findings.Count) + ". " + Scope.Caution,
            ("data-address", wall.Address),
            ("data-scale", frame.Scale.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            ("data-left", SvgPage.Number(frame.X(Distance.Zero))),
            ("data-subfloor", SvgPage.Number(frame.Zero)));
    }

    private void Show(PictureLayers layer, Action draw)
    {
        if (options.Shows(layer))
        {
            draw();
        }
    }

    /// <summary>As wide as the widest of the labels at a side that has room in a quarter of the page.</summary>
    private long Side(IEnumerable<string> texts)
    {
        long widest = 0;
        foreach (string text in texts)
        {
            long wide = page.SizeOf(text).Width + page.Size;
            widest = wide <= page.TextWidth / 4 ? Math.Max(widest, wide) : widest;
        }

        return widest;
    }

    private IEnumerable<string> HeightTexts()
    {
        foreach (BoxView box in wall.Boxes)
        {
            if (options.Shows(PictureLayers.Dimensions) && LineOf(box) is not null)
            {
                yield return HeightOf(box);
            }
        }
    }

    private IEnumerable<string> LineTexts()
    {
        foreach ((string shorter, string text, _) in NamedLines())
        {
            yield return shorter;
            yield return text;
        }
    }

    private string Text(Distance distance) => Printed.About(distance, units).ToString();

    private string Text(DistanceRange range) => range.IsExact ? Text(range.From) : Text(range.From) + " to " + Printed.Of(range.To, units);

    /// <summary>A height as it is read from the room's subfloor.</summary>
    private string Above(DistanceRange up) => Text(up - wall.Subfloor);

    /// <summary>From the lowest to the highest that is drawn.</summary>
    private (Distance Low, Distance High) Extent()
    {
        List<DistanceRange> heights = [wall.Subfloor];
        void Take(DistanceRange? one)
        {
            if (one is { } known)
            {
                heights.Add(known);
            }
        }

        foreach (ProfilePoint point in wall.Top)
        {
            Take(point.Up);
        }

        Take(wall.FinishedFloor);
        Take(wall.IsOutside ? wall.Grade : null);
        Take(isTopKnown && !wall.IsOutside && wall.Wall.Top.Count == 0 ? wall.CeilingFraming : null);
        foreach (WallPart part in wall.Parts)
        {
            Take(part.Area.Top);
            Take(part.Area.Bottom);
        }

        foreach (OpeningView opening in wall.Openings)
        {
            Take(opening.Casing.Top);
        }

        foreach (BoxView box in wall.Boxes)
        {
            WallArea? seen = box.Plate ?? box.Body;
            Take(seen?.Bottom ?? box.Center);
            Take(seen?.Top ?? box.Center);
        }

        foreach (StairTread tread in wall.Stair?.Treads ?? default)
        {
            Take(tread.Up);
        }

        (Distance least, Distance most) = (heights[0].From, heights[0].To);
        foreach (DistanceRange one in heights)
        {
            least = Distance.Min(least, one.From);
            most = Distance.Max(most, one.To);
        }

        // Where nothing tells how high a wall is, what is on it has to have room over it.
        Distance air = Distance.FromInches(12);
        return (least, isTopKnown && most > least ? most : Distance.Max(most + air, least + (air * 4)));
    }

    /// <summary>A little beyond the last thing on the wall.</summary>
    private Distance FarEnd()
    {
        Distance end = Distance.Zero;
        foreach (WallPart part in wall.Parts)
        {
            end = Distance.Max(end, part.Area.Right.To);
        }

        foreach (BoxView box in wall.Boxes)
        {
            end = Distance.Max(end, box.Along ?? Distance.Zero);
        }

        return end + Distance.FromInches(24);
    }

    /// <summary>The corners of the wall from its lower left one over its top to its lower right one.</summary>
    private List<(long X, long Y)> Corners()
    {
        List<(long X, long Y)> points = [(frame.X(Distance.Zero), frame.Y(wall.Subfloor))];
        foreach (ProfilePoint point in wall.Top)
        {
            points.Add((frame.X(point.Along), frame.Y(point.Up.From)));
        }

        points.Add((frame.X(length), frame.Y(wall.Subfloor)));
        return points;
    }

    private void Outline()
    {
        List<(long X, long Y)> points = Corners();
        if (isTopKnown)
        {
            page.Path(points, Look.Outline, closed: true, "outline");
            if (wall.Top[0].Up is { IsExact: false } top)
            {
                page.Rectangle(frame.Rect(Distance.Zero, length, top.From, top.To), Look.Range, "top-range");
            }

            return;
        }

        // A wall whose height isn't known has no upper edge.
        page.Path([(frame.X(Distance.Zero), frame.Area.Top), points[0], points[1], (frame.X(length), frame.Area.Top)], Look.Outline, part: "outline");
        page.Segment(frame.X(Distance.Zero), frame.Area.Top, frame.X(length), frame.Area.Top, Look.Assumed, "top-not-known");
    }
}
