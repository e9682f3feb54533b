using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>Draws a room in plan.</summary>
internal sealed class PlanDrawing
{
    private readonly RoomView room;
    private readonly string house;
    private readonly PictureOptions options;
    private readonly LengthUnits units;
    private readonly SvgPage page;
    private readonly PageNotes notes;
    private readonly ElevationFrame frame;
    private readonly Distance left;
    private readonly Distance far;

    public PlanDrawing(RoomView room, string house, PictureOptions options)
    {
        this.room = room;
        this.house = house;
        this.options = options;
        units = options.Units ?? room.Units;
        page = new(options, "room");
        page.Paragraph(Title, "title", bold: true);
        page.Paragraph("from above; the first wall at the top", "subtitle");
        page.Gap();
        List<PlanPoint> points = Points();
        (left, Distance right, Distance near, far) = (points[0].Right, points[0].Right, points[0].Into, points[0].Into);
        foreach (PlanPoint point in points)
        {
            (left, right) = (Distance.Min(left, point.Right), Distance.Max(right, point.Right));
            (near, far) = (Distance.Min(near, point.Into), Distance.Max(far, point.Into));
        }

        // Room for the names and lengths of walls around the outline.
        long around = Math.Min(page.Line * 4, page.TextWidth / 8);
        Distance one = Distance.FromInches(1);
        frame = ElevationFrame.Within(
            Distance.Max(one, right - left), -Distance.Max(far, near + one), -near, page.Margin + around, page.Cursor + around, page.TextWidth - (2 * around),
            (options.DrawingHeight ?? Math.Max(60, options.Width * 7 / 10)) * 1000L);
        notes = new(page, new(new(page.Margin, page.Cursor, page.TextWidth, frame.Area.Height + (2 * around))));
        Bottom = frame.Area.Bottom + around;
    }

    private long Bottom { get; }

    private string Title => SvgText.Isolated(house) + ": " + SvgText.Isolated(room.Id) + ", " + SvgText.Isolated(room.Room.Kind.Name);

    public string Draw()
    {
        bool Shows(PictureLayers layer) => options.Shows(layer);
        page.Open("plan", room.Id, room.Id);
        if (Shows(PictureLayers.Things))
        {
            Shapes();
        }

        Walls();
        if (Shows(PictureLayers.Openings))
        {
            Openings();
        }

        if (Shows(PictureLayers.Findings))
        {
            Unserved();
        }

        if (Shows(PictureLayers.Boxes))
        {
            Boxes();
        }

        if (Shows(PictureLayers.Findings))
        {
            MarkFindings();
        }

        Names();
        page.Close();
        notes.PlaceMarks();
        page.Cursor = Math.Max(Bottom, notes.Lowest) + (page.Line / 2);
        PageFoot.ScaleBar(page, units, frame.Scale);
        notes.Write();
        if (Shows(PictureLayers.Findings))
        {
            PageFoot.Findings(page, room.Findings);
        }

        if (Shows(PictureLayers.Legend))
        {
            PageFoot.Legend(page);
        }

        PageFoot.Caution(page);
        return page.ToSvg(
            Title,
            Title + ". " + room.Walls.Count + " walls, " + (room.WallBoxes.Count + room.Overhead.Count + room.InFloor.Count) + " boxes, " + EvaluationText.Counted(room.Findings.Count) + ". " + Scope.Caution,
            ("data-address", room.Id),
            ("data-scale", frame.Scale.ToString(CultureInfo.InvariantCulture)),
            ("data-left", SvgPage.Number(At(default).X)),
            ("data-top", SvgPage.Number(At(default).Y)));
    }

    private string Text(Distance distance) => Printed.About(distance, units);

    private (long X, long Y) At(PlanPoint point) => (frame.X(point.Right - left), frame.Y(-point.Into));

    private (long X, long Y)[] AtAll(Items<PlanPoint> points)
    {
        (long, long)[] found = new (long, long)[points.Count];
        for (int i = 0; i < found.Length; i++)
        {
            found[i] = At(points[i]);
        }

        return found;
    }

    private List<PlanPoint> Points()
    {
        List<PlanPoint> points = [];
        foreach (PlanWall wall in room.Walls)
        {
            points.Add(wall.Start);
            points.Add(wall.End);
        }

        foreach (PlanShape shape in room.Shapes)
        {
            points.AddRange(shape.Corners);
        }

        foreach (Items<BoxView> some in new[] { room.WallBoxes, room.Overhead, room.InFloor })
        {
            foreach (BoxView box in some)
            {
                points.AddRange(box.Plan is { } plan ? [plan] : Array.Empty<PlanPoint>());
            }
        }

        points.AddRange(points.Count == 0 ? [new PlanPoint(Distance.Zero, Distance.Zero)] : Array.Empty<PlanPoint>());
        return points;
    }

    private void Shapes()
    {
        foreach (PlanShape shape in room.Shapes)
        {
            page.Open("thing", shape.Id, shape.Address);
            Look look = shape.Source is Counter ? Look.Counter : shape.Source is Covering ? Look.Covering : shape.Source is Fixture ? Look.Fixture : Look.Freestanding;
            page.Path(AtAll(shape.Corners), shape.IsClosed || shape.Source is Freestanding ? look : Look.Assumed, shape.IsClosed, "shape");
            page.Close();
        }
    }

    private void Walls()
    {
        foreach (PlanWall wall in room.Walls)
        {
            page.Open("wall", wall.Wall.Id, wall.Address);
            page.Path([At(wall.Start), At(wall.End)], wall.Wall.Open ? Look.Assumed : Look.WallLine, part: "face");
            page.Close();
            (long x1, long y1) = At(wall.Start);
            (long x2, long y2) = At(wall.End);
            if (x1 == x2 || y1 == y2)
            {
                notes.Placer.Block(new(Math.Min(x1, x2) - 1500, Math.Min(y1, y2) - 1500, Math.Abs(x2 - x1) + 3000, Math.Abs(y2 - y1) + 3000));
            }
        }
    }

    private void Openings()
    {
        foreach (PlanOpening opening in room.Openings)
        {
            page.Open("opening", opening.Opening.Id, opening.Address);
            page.Path([At(opening.Start), At(opening.End)], Look.Gap, part: "gap");
            page.Path([At(opening.Start), At(opening.End)], opening.Opening.Kind == OpeningKind.Window ? Look.Casing : Look.NotSure, part: opening.Opening.Kind.Name);
            foreach (PlanSwing swing in opening.Swings)
            {
                (long x, long y) = At(swing.Hinge);
                (long openX, long openY) = At(swing.Open);
                (long closedX, long closedY) = At(swing.Closed);
                long radius = Math.Max(Math.Abs(openX - x), Math.Abs(openY - y));
                radius = openX == x || openY == y ? radius : (long)Math.Sqrt(((double)(openX - x) * (openX - x)) + ((double)(openY - y) * (openY - y)));
                page.Path([(x, y), (openX, openY)], Look.Swing, part: "leaf");
                bool clockwise = ((decimal)(closedX - x) * (openY - y)) - ((decimal)(closedY - y) * (openX - x)) > 0;
                page.Arc((closedX, closedY), (openX, openY), radius, clockwise, Look.Swing);
            }

            page.Close();
        }
    }

    /// <summary>Stretches of walls that findings say aren't served.</summary>
    private void Unserved()
    {
        foreach (FindingPlace place in room.Findings)
        {
            foreach (WallStretch stretch in place.Finding.Stretches)
            {
                if (On(stretch.Address, stretch.Left) is { } from && On(stretch.Address, stretch.Right) is { } to)
                {
                    page.Path([At(from), At(to)], Look.Uncovered, part: "not-served");
                }
            }
        }
    }

    /// <summary>A place on a wall of the room.</summary>
    private PlanPoint? On(string address, Distance along)
    {
        foreach (PlanWall wall in room.Walls)
        {
            if (wall.Address == address)
            {
                return wall.At(along);
            }
        }

        return null;
    }

    private void Boxes()
    {
        foreach ((BoxView box, Look look) in AllBoxes())
        {
            page.Open("box", box.Id, box.Address);
            if (Seen(box) is { } at)
            {
                page.Rectangle(at, look, "body");
                notes.Placer.Block(at);
            }

            page.Close();
        }
    }

    private IEnumerable<(BoxView Box, Look Look)> AllBoxes()
    {
        foreach (BoxView box in room.WallBoxes)
        {
            yield return (box, box.IsAlongAssumed ? Look.Assumed : Look.Box);
        }

        foreach (BoxView box in room.Overhead)
        {
            yield return (box, Look.Overhead);
        }

        foreach (BoxView box in room.InFloor)
        {
            yield return (box, Look.InFloor);
        }
    }

    /// <summary>A box from above, around its place: of its own width, or as a small mark where its size would hardly be seen or isn't known.</summary>
    private PageRect? Seen(BoxView box)
    {
        if (box.Plan is not { } plan)
        {
            return null;
        }

        (long x, long y) = At(plan);
        bool isFlat = box.Along is null;
        long wide = Math.Max(box.Size.Width.Ticks / frame.Scale, page.Size / 2);
        long deep = Math.Max(isFlat ? box.Size.Height.Ticks / frame.Scale : 0, page.Size / 2);
        bool runsDown = !isFlat && Array.Exists(Walling(box), wall => wall.Start.Right == wall.End.Right);
        return runsDown ? new(x - (deep / 2), y - (wide / 2), deep, wide) : new PageRect(x - (wide / 2), y - (deep / 2), wide, deep);
    }

    private PlanWall[] Walling(BoxView box)
    {
        foreach (PlanWall wall in room.Walls)
        {
            if (wall.Address == box.Address)
            {
                return [wall];
            }
        }

        return [];
    }

    private void MarkFindings()
    {
        Dictionary<string, List<string>> marks = new(StringComparer.Ordinal);
        foreach (FindingPlace place in room.Findings)
        {
            List<string> texts = marks.ListOf(place.Finding.Subject);
            string mark = PageFoot.MarkOf(room.Findings, place.Number);
            if (!texts.Contains(mark))
            {
                texts.Add(mark);
            }
        }

        foreach ((BoxView box, _) in AllBoxes())
        {
            if (marks.TryGetValue(box.Id, out List<string>? texts) && Seen(box) is { } at)
            {
                Mark(texts, at);
            }
        }

        foreach (FindingPlace place in room.Findings)
        {
            foreach (WallStretch stretch in place.Finding.Stretches)
            {
                if (On(stretch.Address, stretch.Left + Distance.FromTicks((stretch.Right - stretch.Left).Ticks / 2)) is { } middle)
                {
                    (long x, long y) = At(middle);
                    Mark([PageFoot.MarkOf(room.Findings, place.Number)], new(x, y, 1, 1));
                }
            }
        }
    }

    private void Mark(List<string> texts, PageRect at)
    {
        string text = string.Join(" ", texts);
        PageRect size = page.SizeOf(text);
        if (notes.TryLabel(text, LabelPlacer.Around(at, size.Width, size.Height, page.Size / 5, 6), "finding-mark", out PageRect placed))
        {
            notes.Lead(placed, at);
        }
    }

    private void Names()
    {
        if (options.Shows(PictureLayers.Boxes))
        {
            foreach ((BoxView box, _) in AllBoxes())
            {
                string name = SvgText.Isolated(box.Id);
                string where = box.Along is { } along ? SvgText.Isolated(box.Address) + ", " + Text(along) + " from its left"
                    : box.Plan is { } plan ? Text(plan.Right) + " right and " + Text(plan.Into) + " in" : SvgText.Isolated(box.Address) + ", where isn't known";
                if (Seen(box) is { } at)
                {
                    // A box in a ceiling or floor is measured from the first wall's left end.
                    string label = options.Shows(PictureLayers.Dimensions) && box.Along is null ? name + " (" + where + ")" : name;
                    notes.Around(label, name + ": " + where, at, "box-name", 3);
                }
                else
                {
                    notes.Note(name + ": " + where, new(frame.Area.Left, frame.Area.Bottom, 1, 1));
                }
            }
        }

        if (!options.Shows(PictureLayers.Names))
        {
            return;
        }

        foreach (PlanWall wall in room.Walls)
        {
            string name = SvgText.Isolated(wall.Wall.Id) + " " + Text(wall.Wall.Length);
            (long x1, long y1) = At(wall.Start);
            (long x2, long y2) = At(wall.End);
            PageRect line = new(Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(1, Math.Abs(x2 - x1)), Math.Max(1, Math.Abs(y2 - y1)));
            if (line.Width >= line.Height)
            {
                notes.Along(name, name, line, "wall-name");
            }
            else
            {
                notes.Around(name, name, new(line.Left, line.Top + (line.Height / 2), 1, 1), "wall-name");
            }
        }

        foreach (PlanShape shape in room.Shapes)
        {
            string name = shape.Id == shape.Kind ? shape.Kind : shape.Kind + " " + SvgText.Isolated(shape.Id);
            (long X, long Y)[] corners = AtAll(shape.Corners);
            if (corners.Length > 0)
            {
                (long l, long t, long r, long b) = (corners[0].X, corners[0].Y, corners[0].X, corners[0].Y);
                foreach ((long x, long y) in corners)
                {
                    (l, t, r, b) = (Math.Min(l, x), Math.Min(t, y), Math.Max(r, x), Math.Max(b, y));
                }

                PageRect around = new(l, t, Math.Max(1, r - l), Math.Max(1, b - t));
                string note = name + " (" + SvgText.Isolated(shape.Address) + ")";
                if (shape.IsClosed || around.Height > around.Width)
                {
                    notes.Inside(name, note, around, "name");
                }
                else
                {
                    notes.Along(name, note, around, "name");
                }
            }
        }
    }
}
