using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>How far a cord goes that lies round the corners of walls.</content>
internal sealed partial class WallPlan
{
    /// <summary>
    /// Whether a cord of some length goes from a place on a face to a patch through no wall. The shortest bends only at outside corners; its legs are added up in
    /// whole ticks, rounded down for what may do and up for what surely does.
    /// </summary>
    /// <returns>Null where a tick, or where in the patch it ends, decides; and where the walls don't close with square corners.</returns>
    public bool? ReachesByCord(int face, Distance along, in PlanPatch sure, in PlanPatch possible, Distance reach)
    {
        if (!Closes || exact < faces.Count)
        {
            return null;
        }

        List<(decimal X, decimal Y)> bends = [faces[face].InPlan(along.Ticks, 0m)];
        for (int corner = 0; corner < faces.Count; corner++)
        {
            if (walls[After(corner, -1)].TurnDegrees < 0m)
            {
                bends.Add(faces[corner].InPlan(0m, 0m));
            }
        }

        PlanOutline floor = new(faces.ConvertAll(one => one.InPlan(0m, 0m)));
        decimal?[] least = Shortest(bends, (from, to) => IsBlocked(from, to) ? null : Grid.SquareRoot(Square(from, to)));
        decimal?[] most = Shortest(bends, (from, to) => IsInSight(floor, from, to) ? RoundedUp(Square(from, to)) : null);
        decimal? may = null;
        decimal? does = null;
        for (int bend = 0; bend < bends.Count; bend++)
        {
            (decimal X, decimal Y) from = bends[bend];
            (decimal a, decimal b) = Turn(-1, possible.Frame, from.X, from.Y);
            may = Lesser(may, Hides(from, possible) ? null : least[bend] + Grid.SquareRoot(possible.SquareFrom(a, b)));
            (a, b) = Turn(-1, sure.Frame, from.X, from.Y);
            (decimal X, decimal Y) nearest = Turn(sure.Frame, -1, Math.Min(Math.Max(a, sure.Left), sure.Right), Math.Min(Math.Max(b, sure.Near), sure.Far));
            does = Lesser(does, IsInSight(floor, from, nearest) ? most[bend] + RoundedUp(Square(from, nearest)) : null);
        }

        return does <= reach.Ticks ? true : may > reach.Ticks ? false : null;
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

    private bool IsBlocked((decimal X, decimal Y) from, (decimal X, decimal Y) to)
    {
        for (int face = 0; face < faces.Count; face++)
        {
            if (!walls[face].Open && IsBetween(face, from, to))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a face parts two points: neither of them is on it, and the line between them doesn't pass its end.</summary>
    private bool IsBetween(int face, (decimal X, decimal Y) from, (decimal X, decimal Y) to)
    {
        (decimal X, decimal Y) start = faces[face].InPlan(0m, 0m);
        (decimal X, decimal Y) end = faces[face].InPlan(faces[face].Length.Ticks, 0m);
        return Side(from, to, start) * Side(from, to, end) < 0 && Side(start, end, from) * Side(start, end, to) < 0;
    }

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

        return !IsBlocked(from, to) && floor.Holds((from.X + to.X) / 2m, (from.Y + to.Y) / 2m);
    }

    /// <summary>Whether one face hides all of a patch from a point.</summary>
    private bool Hides((decimal X, decimal Y) from, in PlanPatch patch)
    {
        PlanPatch inside = patch.Inside.IsEmpty ? patch : patch.Inside;
        (decimal, decimal)[] corners =
        [
            Turn(inside.Frame, -1, inside.Left, inside.Near), Turn(inside.Frame, -1, inside.Left, inside.Far),
            Turn(inside.Frame, -1, inside.Right, inside.Near), Turn(inside.Frame, -1, inside.Right, inside.Far),
        ];
        for (int face = 0; face < faces.Count; face++)
        {
            int one = face;
            if (!walls[face].Open && Array.TrueForAll(corners, corner => IsBetween(one, from, corner)))
            {
                return true;
            }
        }

        return false;
    }
}
