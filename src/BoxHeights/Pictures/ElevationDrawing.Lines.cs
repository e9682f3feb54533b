using System.Collections.Generic;

namespace BoxHeights;

/// <content>Lines of the room, and of the stair along the wall.</content>
internal sealed partial class ElevationDrawing
{
    private IEnumerable<(string Name, DistanceRange Up, Look Look)> RoomLines()
    {
        yield return ("subfloor", wall.Subfloor, Look.RoomLine);
        if (wall is { IsOutside: false, FinishedFloor: { } floor })
        {
            yield return ("finished floor", floor, Look.RoomLine);
        }

        if (wall.LevelLine is { } level)
        {
            yield return ("level line", level, Look.RoomLine);
        }

        if (wall.Wall.Top.Count == 0 && wall.FinishedCeiling is { } ceiling)
        {
            yield return ("ceiling", ceiling, Look.RoomLine);
        }

        if (wall is { IsOutside: true, Grade: { } grade })
        {
            yield return ("grade", grade, Look.Grade);
        }
    }

    private void Lines()
    {
        page.Open("lines");
        foreach ((string name, DistanceRange up, Look look) in RoomLines())
        {
            if (up.From >= low && up.To <= high)
            {
                Level(up, look, name.Replace(' ', '-'));
            }
        }

        page.Close();
        if (wall.Stair is { } stair)
        {
            page.Open("stair", stair.Flight.Id, stair.Flight.Id);
            Stair(stair);
            page.Close();
        }
    }

    /// <summary>Treads and risers as they are finished; a range of floors shows as a range at each tread.</summary>
    private void Stair(StairView stair)
    {
        List<(long X, long Y)> points = [];
        for (int i = 0; i < stair.Treads.Count; i++)
        {
            StairTread tread = stair.Treads[i];
            long x = frame.X(tread.Along.RoundNearest());
            points.Add((x, i == 0 ? frame.Y(wall.Subfloor) : points[points.Count - 1].Y));
            points.Add((x, frame.Y(tread.Up.From)));
            if (!tread.Up.IsExact)
            {
                page.Rectangle(new(x - (page.Size / 4), frame.Y(tread.Up.To), page.Size / 2, frame.Y(tread.Up.From) - frame.Y(tread.Up.To)), Look.Range, "tread-range");
            }
        }

        page.Path(points, Look.Nosing, part: "treads");
    }

    /// <summary>The lines that have names, in short, in full, and how high they are.</summary>
    private IEnumerable<(string Shorter, string Text, DistanceRange Up)> NamedLines()
    {
        if (!options.Shows(PictureLayers.Lines))
        {
            yield break;
        }

        foreach ((string name, DistanceRange up, _) in RoomLines())
        {
            yield return (name, name == "subfloor" ? name : name + " " + Above(up), up);
        }

        foreach (DistanceRange seam in wall.Boards?.Seams ?? (wall.CommonBoards.Count == 1 ? wall.CommonBoards[0].Seams : default))
        {
            if (options.Shows(PictureLayers.Boards))
            {
                yield return ("seam", (wall.Boards is null ? "seam assumed " : "seam ") + Above(seam), seam);
            }
        }
    }

    private void NameLines()
    {
        foreach (StairTread tread in wall.Stair?.Treads ?? default)
        {
            // Numbers of treads that have no room are counted from the next that has.
            string number = tread.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
            PageRect size = page.SizeOf(number);
            long x = frame.X(tread.Along.RoundNearest());
            long y = frame.Y(tread.Up.From);
            bool toRight = wall.Stair!.Flight.Climbs != WallEnd.Left;
            notes.TryLabel(number, new[] { new PageRect(toRight ? x + (page.Size / 4) : x - (page.Size / 4) - size.Width, y + (page.Size / 8), size.Width, size.Height) }, "tread", out _);
        }

        foreach ((string shorter, string text, DistanceRange up) in NamedLines())
        {
            At(shorter, text, up);
        }
    }

    /// <summary>Names a line at the wall's right side, or says it in a note.</summary>
    private void At(string shorter, string text, DistanceRange up)
    {
        if (up.From < low || up.To > high)
        {
            return;
        }

        long y = frame.Y(up.From);
        if (!Beside(text, y, toLeft: false) && !(shorter != text && Beside(shorter, y, toLeft: false)))
        {
            notes.Note(text, new(frame.Area.Right, y, 1, 1));
        }
    }

    /// <summary>A label at a side of the wall, at a height or a little off it with a line that leads there.</summary>
    private bool Beside(string text, long y, bool toLeft)
    {
        PageRect size = page.SizeOf(text);
        long gap = page.Size * 8 / 10;
        if (size.Width + gap > (toLeft ? leftSide : rightSide) || !notes.TryLabel(text, Places(), toLeft ? "height" : "line-name", out PageRect placed))
        {
            return false;
        }

        long edge = toLeft ? frame.Area.Left : frame.Area.Right;
        page.Leader(toLeft ? placed.Right : placed.Left, placed.Top + (placed.Height / 2), edge, y);
        return true;

        IEnumerable<PageRect> Places()
        {
            long x = toLeft ? frame.Area.Left - gap - size.Width : frame.Area.Right + gap;
            for (long off = 0; off <= size.Height * 4; off += size.Height / 4)
            {
                yield return new(x, y - (size.Height / 2) - off, size.Width, size.Height);
                yield return new(x, y - (size.Height / 2) + off, size.Width, size.Height);
            }
        }
    }
}
