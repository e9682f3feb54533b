using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>How far a cord goes that lies round the corners of walls.</content>
internal sealed partial class WallPlan
{
    /// <summary>Whether a cord of some length goes from a place on a face to a patch through no wall.</summary>
    /// <remarks>
    /// It goes straight to the patch's nearest point where that is in sight, or bends at an outside corner: from where only some of the patch is in sight, the line
    /// to the nearest of that passes such a corner. Its legs are added up in whole ticks, rounded down for what may do and up for what surely does.
    /// </remarks>
    /// <param name="face">The face.</param>
    /// <param name="along">The place on it.</param>
    /// <param name="sure">Where the patch surely is.</param>
    /// <param name="possible">Where it may be.</param>
    /// <param name="reach">How long the cord is.</param>
    /// <param name="least">How long it would have to be at the least; null where that can't be worked out.</param>
    /// <returns>Null where a tick, or how far the patch reaches, decides; and where the walls don't close exactly, with square corners.</returns>
    public bool? ReachesByCord(int face, Distance along, in PlanPatch sure, in PlanPatch possible, Distance reach, out Distance? least)
    {
        least = null;
        if (!GoesRound || exact < faces.Count || faces[faces.Count - 1].InPlan(walls[faces.Count - 1].Length.Ticks, 0m) != faces[0].InPlan(0m, 0m))
        {
            return null;
        }

        List<(decimal X, decimal Y)> bends = [faces[face].InPlan(along.Ticks, 0m)];
        for (int corner = 0; corner < faces.Count; corner++)
        {
            if (turns[After(corner, -1)] <= 0m)
            {
                bends.Add(faces[corner].InPlan(0m, 0m));
            }
        }

        PlanOutline floor = new(faces.ConvertAll(one => one.InPlan(0m, 0m)));
        decimal? shortest = Shortest(floor, bends, possible, Grid.SquareRoot);
        decimal? longest = Shortest(floor, bends, sure, RoundedUp);
        least = shortest is { } ticks ? Distance.FromTicks((long)ticks) : null;
        return longest <= reach.Ticks ? true : shortest > reach.Ticks ? false : null;
    }

    /// <summary>Whether a patch lies wholly on the room's side of a face's line.</summary>
    public bool IsBefore(int face, in PlanPatch patch) => Seen(patch, face).Near >= (IsExact(face, patch.Frame) ? 0m : -1m);

    /// <summary>The shortest way from the first of some points to a patch, bending at the others; null where there is none.</summary>
    private decimal? Shortest(PlanOutline floor, List<(decimal X, decimal Y)> bends, in PlanPatch patch, Func<decimal, decimal> root)
    {
        decimal?[] far = Shortest(bends, (from, to) => IsInSight(floor, from, to) ? root(Square(from, to)) : null);
        decimal? shortest = null;
        for (int bend = 0; bend < bends.Count; bend++)
        {
            (decimal along, decimal away) = Turn(-1, patch.Frame, bends[bend].X, bends[bend].Y);
            (decimal X, decimal Y) nearest = Turn(patch.Frame, -1, Math.Min(Math.Max(along, patch.Left), patch.Right), Math.Min(Math.Max(away, patch.Near), patch.Far));
            shortest = Lesser(shortest, IsInSight(floor, bends[bend], nearest) ? far[bend] + root(Square(bends[bend], nearest)) : null);
        }

        return shortest;
    }

    /// <summary>The shortest way from the first point to each by legs that are known; null where there is none.</summary>
    private static decimal?[] Shortest(List<(decimal X, decimal Y)> points, Func<(decimal X, decimal Y), (decimal X, decimal Y), decimal?> leg)
    {
        decimal?[] far = new decimal?[points.Count];
        far[0] = 0m;
        bool shorter = true;
        while (shorter)
        {
            shorter = false;
            for (int from = 0; from < far.Length; from++)
            {
                for (int to = 1; to < far.Length && far[from] is not null; to++)
                {
                    decimal? way = from == to ? null : far[from] + leg(points[from], points[to]);
                    shorter |= way is not null && (far[to] is null || way < far[to]);
                    far[to] = Lesser(far[to], way);
                }
            }
        }

        return far;
    }

    private static decimal? Lesser(decimal? one, decimal? other) => one is null || other < one ? other ?? one : one;

    private static decimal Square((decimal X, decimal Y) one, (decimal X, decimal Y) other) =>
        ((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y));

    private static decimal RoundedUp(decimal square) => Grid.SquareRoot(square) is var root && root * root == square ? root : root + 1m;

    /// <summary>Whether the line between two points lies in the room: no wall parts them, it passes no corner, and its middle is in the room.</summary>
    private bool IsInSight(PlanOutline floor, (decimal X, decimal Y) from, (decimal X, decimal Y) to)
    {
        for (int face = 0; face < faces.Count; face++)
        {
            (decimal X, decimal Y) corner = faces[face].InPlan(0m, 0m);
            if (corner != from && corner != to && Side(from, to, corner) == 0
                && Math.Min(from.X, to.X) <= corner.X && corner.X <= Math.Max(from.X, to.X) && Math.Min(from.Y, to.Y) <= corner.Y && corner.Y <= Math.Max(from.Y, to.Y))
            {
                return false;
            }
        }

        for (int face = 0; face < faces.Count; face++)
        {
            if (!walls[face].Open && IsBetween(face, from, to))
            {
                return false;
            }
        }

        return floor.Holds((from.X + to.X) / 2m, (from.Y + to.Y) / 2m);
    }

    /// <summary>Whether a face parts two points: neither of them is on its line, and the line between them passes between its ends.</summary>
    private bool IsBetween(int face, (decimal X, decimal Y) from, (decimal X, decimal Y) to)
    {
        (decimal X, decimal Y) start = faces[face].InPlan(0m, 0m);
        (decimal X, decimal Y) end = faces[face].InPlan(faces[face].Length.Ticks, 0m);
        return Side(from, to, start) * Side(from, to, end) < 0 && Side(start, end, from) * Side(start, end, to) < 0;
    }
}
