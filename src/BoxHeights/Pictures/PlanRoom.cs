using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Draws one room in plan onto a page: wherever the room lies on it, and however it is turned.</summary>
/// <param name="room">The room.</param>
/// <param name="page">The page.</param>
/// <param name="notes">Labels and what keeps them off.</param>
/// <param name="at">Where a point of the room's plan is on the page.</param>
/// <param name="scale">Ticks to a thousandth of a user unit.</param>
internal sealed class PlanRoom(RoomView room, SvgPage page, PageNotes notes, Func<PlanPoint, (long X, long Y)> at, long scale)
{
    public RoomView Room => room;

    public (long X, long Y) At(PlanPoint point) => at(point);

    public (long X, long Y)[] AtAll(Items<PlanPoint> points)
    {
        (long, long)[] found = new (long, long)[points.Count];
        for (int i = 0; i < found.Length; i++)
        {
            found[i] = at(points[i]);
        }

        return found;
    }

    /// <summary>Every point of a room that has to be on the page.</summary>
    public static List<PlanPoint> Points(RoomView room)
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

    public void Shapes()
    {
        foreach (PlanShape shape in room.Shapes)
        {
            page.Open("thing", shape.Id, shape.Address);
            Look look = shape.Source is Counter ? Look.Counter : shape.Source is Covering ? Look.Covering : shape.Source is Fixture ? Look.Fixture : Look.Freestanding;
            page.Path(AtAll(shape.Corners), shape.IsClosed || shape.Source is Freestanding ? look : Look.Assumed, shape.IsClosed, "shape");
            page.Close();
        }
    }

    public void Walls()
    {
        foreach (PlanWall wall in room.Walls)
        {
            page.Open("wall", wall.Wall.Id, wall.Address);
            page.Path([at(wall.Start), at(wall.End)], wall.Wall.Open ? Look.Assumed : Look.WallLine, part: "face");
            page.Close();
            (long x1, long y1) = at(wall.Start);
            (long x2, long y2) = at(wall.End);
            if (x1 == x2 || y1 == y2)
            {
                notes.Placer.Block(new(Math.Min(x1, x2) - 1500, Math.Min(y1, y2) - 1500, Math.Abs(x2 - x1) + 3000, Math.Abs(y2 - y1) + 3000));
            }
        }
    }

    public void Openings()
    {
        foreach (PlanOpening opening in room.Openings)
        {
            page.Open("opening", opening.Opening.Id, opening.Address);
            page.Path([at(opening.Start), at(opening.End)], Look.Gap, part: "gap");
            page.Path([at(opening.Start), at(opening.End)], opening.Opening.Kind == OpeningKind.Window ? Look.Window : Look.Doorway, part: opening.Opening.Kind.Name);
            foreach (PlanSwing swing in opening.Swings)
            {
                (long x, long y) = at(swing.Hinge);
                (long openX, long openY) = at(swing.Open);
                (long closedX, long closedY) = at(swing.Closed);
                long radius = Math.Max(Math.Abs(openX - x), Math.Abs(openY - y));
                radius = openX == x || openY == y ? radius : (long)Math.Sqrt(((double)(openX - x) * (openX - x)) + ((double)(openY - y) * (openY - y)));
                page.Path([(x, y), (openX, openY)], Look.Swing, part: "leaf");
                bool clockwise = ((decimal)(closedX - x) * (openY - y)) - ((decimal)(closedY - y) * (openX - x)) > 0;
                page.Arc((closedX, closedY), (openX, openY), radius, clockwise, Look.Swing);
            }

            page.Close();
        }
    }

    /// <summary>Bars before the walls: what receptacles serve of each run, and what isn't served; one row of bars for each rule.</summary>
    public void Coverage()
    {
        for (int row = 0; row < room.Coverage.Count; row++)
        {
            CoverageView coverage = room.Coverage[row];
            Distance before = Distance.FromTicks(scale * page.Size * (row + 1) * 2 / 5);
            page.Open("coverage", coverage.RuleId);
            Bars(coverage.Served, Look.Served, "served");
            Bars(coverage.Open, Look.Uncovered, "open");
            page.Close();

            void Bars(Items<WallStretch> stretches, Look look, string part)
            {
                foreach (WallStretch stretch in stretches)
                {
                    if (WallOf(stretch.Address) is { } wall)
                    {
                        page.Path([at(wall.Before(stretch.Left, before)), at(wall.Before(stretch.Right, before))], look, part: part);
                    }
                }
            }
        }
    }

    /// <summary>Stretches of walls that findings say aren't served.</summary>
    public void Unserved()
    {
        foreach (FindingPlace place in room.Findings)
        {
            foreach (WallStretch stretch in place.Finding.Stretches)
            {
                if (WallOf(stretch.Address) is { } wall)
                {
                    page.Path([at(wall.At(stretch.Left)), at(wall.At(stretch.Right))], Look.Uncovered, part: "not-served");
                }
            }
        }
    }

    /// <summary>A wall of the room; null where it has none of that address.</summary>
    public PlanWall? WallOf(string address) => room.Walls.Find(wall => wall.Address == address);

    public void Boxes()
    {
        foreach ((BoxView box, Look look) in AllBoxes())
        {
            page.Open("box", box.Id, box.Address);
            if (Seen(box) is { } seen)
            {
                page.Rectangle(seen, look, "body");
                notes.Placer.Block(seen);
            }

            page.Close();
        }
    }

    /// <summary>A line from each switch to what it controls, as far as both are on the page.</summary>
    /// <param name="placeOf">Where on the page a box is, by its id; null where it isn't on it.</param>
    public void SwitchLegs(Func<string, (long X, long Y)?> placeOf)
    {
        foreach ((BoxView box, _) in AllBoxes())
        {
            foreach (string controlled in box.Source.Controls)
            {
                if (PlaceOf(box.Id) is { } from && placeOf(controlled) is { } to)
                {
                    page.Segment(from.X, from.Y, to.X, to.Y, Look.SwitchLeg, "switch-leg");
                }
            }
        }
    }

    /// <summary>Where on the page a box of the room is; null where it has none of that id, or it isn't known where it is.</summary>
    public (long X, long Y)? PlaceOf(string box)
    {
        foreach ((BoxView one, _) in AllBoxes())
        {
            if (one.Id == box && one.Plan is { } plan)
            {
                return at(plan);
            }
        }

        return null;
    }

    public IEnumerable<(BoxView Box, Look Look)> AllBoxes()
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
    public PageRect? Seen(BoxView box)
    {
        if (box.Plan is not { } plan)
        {
            return null;
        }

        (long x, long y) = at(plan);
        bool isFlat = box.Along is null;
        long wide = Math.Max(box.Size.Width.Ticks / scale, page.Size / 2);
        long deep = Math.Max(isFlat ? box.Size.Height.Ticks / scale : 0, page.Size / 2);
        bool runsDown = !isFlat && WallOf(box.Address) is { } wall && at(wall.Start).X == at(wall.End).X;
        return runsDown ? new(x - (deep / 2), y - (wide / 2), deep, wide) : new PageRect(x - (wide / 2), y - (deep / 2), wide, deep);
    }

    /// <summary>The two tapes to each box in the ceiling or floor, as lines from its walls with their lengths.</summary>
    public void Tapes(Func<Distance, string> text)
    {
        foreach (Items<BoxView> some in new[] { room.Overhead, room.InFloor })
        {
            foreach (BoxView box in some)
            {
                foreach (WallTape tape in box.Tapes)
                {
                    if (box.Plan is { } plan && WallOf(tape.Address) is { } wall && tape.Away > Distance.Zero)
                    {
                        (long x1, long y1) = at(wall.At(tape.Along));
                        (long x2, long y2) = at(plan);
                        page.Open("tape");
                        page.Segment(x1, y1, x2, y2, Look.Dimension, "tape");
                        page.Close();
                        PageRect middle = new((x1 + x2) / 2, (y1 + y2) / 2, 1, 1);
                        notes.Around(text(tape.Away), SvgText.Isolated(box.Id) + ": " + text(tape.Away) + " from " + SvgText.Isolated(wall.Wall.Id), middle, "tape-length", 2);
                    }
                }
            }
        }
    }
}
