using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A point of the top of a wall's framing; between two points it runs straight.</summary>
[Told]
public sealed partial class ProfilePoint
{
    /// <summary>The point.</summary>
    public override string ToString() => "along " + Along + ", up " + Up;

    /// <summary>From the wall's left end.</summary>
    public Distance Along { get; }

    /// <summary>Above the storey's subfloor.</summary>
    public DistanceRange Up { get; }
}

/// <summary>The top of a wall's framing: as its points are stated, level beyond the first and the last; else the underside of the ceiling framing.</summary>
internal static class WallProfile
{
    /// <summary>The points from the wall's left end to its right; none where neither is known.</summary>
    public static Items<ProfilePoint> Of(ResolvedSurface surface, Distance subfloor)
    {
        Wall wall = surface.Wall!;
        if (wall.Top.Count == 0)
        {
            return surface.Space.Framing is { } framing
                ? new[] { new ProfilePoint(Distance.Zero, framing + subfloor), new ProfilePoint(wall.Length, framing + subfloor) }
                : default;
        }

        List<ProfilePoint> points = [];
        if (wall.Top[0].Along > Distance.Zero)
        {
            points.Add(new(Distance.Zero, wall.Top[0].Up + subfloor));
        }

        foreach (WallTopPoint point in wall.Top)
        {
            points.Add(new(point.Along, point.Up + subfloor));
        }

        WallTopPoint last = wall.Top[wall.Top.Count - 1];
        if (last.Along < wall.Length)
        {
            points.Add(new(wall.Length, last.Up + subfloor));
        }

        return new(points);
    }

    /// <summary>The lowest that it is over a stretch, rounded down to the grid; null where that isn't known.</summary>
    public static DistanceRange? LowestOver(Items<ProfilePoint> points, Distance left, Distance right)
    {
        DistanceRange? lowest = null;
        for (int i = 1; i < points.Count; i++)
        {
            ProfilePoint from = points[i - 1];
            ProfilePoint to = points[i];
            if (from.Along <= right && left <= to.Along)
            {
                Take(At(from, to, Distance.Max(left, from.Along)));
                Take(At(from, to, Distance.Min(right, to.Along)));
            }
        }

        return lowest;

        void Take(DistanceRange one) =>
            lowest = lowest is { } so ? new(Distance.Min(so.From, one.From), Distance.Min(so.To, one.To)) : one;
    }

    /// <summary>The upper edge of what reaches from left to right and up to a height, where the top of the wall may end it lower: from left to right, rounded down to the grid.</summary>
    public static List<ProfilePoint> Under(Items<ProfilePoint> points, Distance left, Distance right, Distance height)
    {
        List<ProfilePoint> edge = [];
        for (int i = 1; i < points.Count; i++)
        {
            ProfilePoint from = points[i - 1];
            ProfilePoint to = points[i];
            if (from.Along < right && left < to.Along)
            {
                (Distance start, Distance end) = (Distance.Max(left, from.Along), Distance.Min(right, to.Along));
                (Distance first, Distance last) = (At(from, to, start).From, At(from, to, end).From);
                Add(start, first);
                if ((first < height) != (last < height))
                {
                    Add(Where(start, first, end, last, height), height);
                }

                Add(end, last);
            }
        }

        return edge;

        void Add(Distance along, Distance up)
        {
            ProfilePoint point = new(along, Distance.Min(up, height));
            bool Is(int back, Distance at) => edge.Count >= back && edge[edge.Count - back].Up.From == at;
            if (Is(1, height) && Is(2, height) && point.Up.From == height)
            {
                edge.RemoveAt(edge.Count - 1);
            }

            if (!Is(1, point.Up.From) || edge[edge.Count - 1].Along != along)
            {
                edge.Add(point);
            }
        }
    }

    /// <summary>Where a straight line from one point to another is at a height between them, rounded down to the grid.</summary>
    public static Distance Where(Distance start, Distance first, Distance end, Distance last, Distance height) =>
        start + Distance.FromTicks((long)Math.Floor((height - first).Ticks * (decimal)(end - start).Ticks / (last - first).Ticks));

    private static DistanceRange At(ProfilePoint from, ProfilePoint to, Distance along)
    {
        long run = (to.Along - from.Along).Ticks;
        return run <= 0 || along == from.Along ? from.Up : along == to.Along ? to.Up
            : new(Between(from.Up.From, to.Up.From), Between(from.Up.To, to.Up.To));

        Distance Between(Distance low, Distance high) =>
            low + Distance.FromTicks((long)Math.Floor((high - low).Ticks * (decimal)(along - from.Along).Ticks / run));
    }
}
