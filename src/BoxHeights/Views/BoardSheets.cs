using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>The boards on a wall, from how they are hung.</summary>
internal static class BoardSheets
{
    public static Items<WallArea> Of(WallView wall)
    {
        if (wall.Boards is not { } boards || TopOf(wall) is not { IsExact: true } ceiling)
        {
            return default;
        }

        Distance floor = wall.Subfloor + (boards.Layout.FloorGap ?? Distance.Zero);
        if (wall.Build.Boards is null)
        {
            return ceiling.From > floor ? new[] { new WallArea(Distance.Zero, wall.Length, floor, ceiling.From) } : default(Items<WallArea>);
        }

        Items<WallArea> whole = boards.Layout.Hung == BoardDirection.Horizontal ? Across(wall, boards, floor, ceiling.From) : Upright(wall, boards.Layout, floor, ceiling.From);
        return wall.Wall.Top.Count == 0 ? whole : UnderSlope(whole, wall.Top);
    }

    /// <summary>The upper edge of a sheet that a top which isn't level cuts, from left to right; none for one that stays whole.</summary>
    public static Items<ProfilePoint> SlopeOn(WallView wall, WallArea sheet)
    {
        if (wall.Wall.Top.Count == 0)
        {
            return default;
        }

        List<ProfilePoint> edge = [];
        foreach (ProfilePoint point in WallProfile.Under(wall.Top, sheet.Left.From, sheet.Right.From, sheet.Top!.Value.From))
        {
            edge.Add(new(point.Along, Distance.Max(point.Up.From, sheet.Bottom!.Value.From)));
        }

        return edge.Exists(point => point.Up.From < sheet.Top!.Value.From) ? new(edge) : default;
    }

    /// <summary>Each sheet as far as there is wall under it: those that are wholly over the top are none.</summary>
    private static Items<WallArea> UnderSlope(Items<WallArea> whole, Items<ProfilePoint> top)
    {
        List<WallArea> found = [];
        foreach (WallArea sheet in whole)
        {
            Distance bottom = sheet.Bottom!.Value.From;
            List<ProfilePoint> edge = WallProfile.Under(top, sheet.Left.From, sheet.Right.From, sheet.Top!.Value.From);
            (int first, int last) = (edge.FindIndex(point => point.Up.From > bottom), edge.FindLastIndex(point => point.Up.From > bottom));
            if (first >= 0)
            {
                Distance highest = bottom;
                edge.ForEach(point => highest = Distance.Max(highest, point.Up.From));
                Distance left = first == 0 ? sheet.Left.From : Where(edge[first - 1], edge[first]);
                Distance right = last == edge.Count - 1 ? sheet.Right.From : Where(edge[last], edge[last + 1]);
                found.Add(new(left, right, bottom, highest));
            }

            Distance Where(ProfilePoint from, ProfilePoint to) => WallProfile.Where(from.Along, from.Up.From, to.Along, to.Up.From, bottom);
        }

        return new(found);
    }

    /// <summary>As high as board goes: to the ceiling, or to the highest point of a top that isn't level.</summary>
    private static DistanceRange? TopOf(WallView wall)
    {
        if (wall.Wall.Top.Count == 0)
        {
            return wall.FinishedCeiling;
        }

        DistanceRange? highest = null;
        foreach (ProfilePoint point in wall.Top)
        {
            highest = highest is { } most && most.From > point.Up.From ? most : point.Up;
        }

        return highest;
    }

    private static Items<WallArea> Across(WallView wall, BoardView boards, Distance floor, Distance ceiling)
    {
        List<Distance> edges = [floor, ceiling];
        foreach (DistanceRange seam in boards.Seams)
        {
            if (!seam.IsExact)
            {
                return default;
            }

            if (seam.From > floor && seam.From < ceiling)
            {
                edges.Add(seam.From);
            }
        }

        edges.Sort();
        List<WallArea> found = [];
        for (int i = 1; i < edges.Count; i++)
        {
            if (edges[i - 1] < edges[i])
            {
                int course = boards.Layout.From == BoardOrigin.Bottom ? i : edges.Count - i;
                Distance left = Distance.Zero;
                foreach (Distance joint in Joints(boards, course, wall.Length))
                {
                    found.Add(new(left, joint, edges[i - 1], edges[i]));
                    left = joint;
                }
            }
        }

        return new(found);
    }

    /// <summary>Where the sheets of a course end, from the left: at its joints on this wall, and at the wall's right end.</summary>
    private static SortedSet<Distance> Joints(BoardView boards, int course, Distance length)
    {
        SortedSet<Distance> ends = [length];
        foreach (ButtJoint joint in boards.IsInherited ? default : boards.Layout.ButtJoints)
        {
            if (joint.Course == course && joint.Along > Distance.Zero && joint.Along < length)
            {
                ends.Add(joint.Along);
            }
        }

        return ends;
    }

    /// <summary>Upright sheets from the end where hanging starts; the last width is that of all that follow.</summary>
    private static Items<WallArea> Upright(WallView wall, BoardLayout layout, Distance floor, Distance ceiling)
    {
        if (layout.Widths.Count == 0 || ceiling <= floor)
        {
            return default;
        }

        List<WallArea> found = [];
        Distance at = Distance.Zero;
        for (int sheet = 0; at < wall.Length && sheet < WallFraming.MostWorkedThrough; sheet++)
        {
            Distance end = Distance.Min(wall.Length, at + layout.Widths[Math.Min(sheet, layout.Widths.Count - 1)]);
            found.Add(layout.From == BoardOrigin.Right ? new(wall.Length - end, wall.Length - at, floor, ceiling) : new(at, end, floor, ceiling));
            at = end;
        }

        found.Sort((a, b) => a.Left.From.CompareTo(b.Left.From));
        return new(found);
    }
}
