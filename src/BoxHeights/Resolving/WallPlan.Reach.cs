using System;

namespace BoxHeights;

/// <content>How far things in plan are apart, and which part of a face is near one.</content>
internal sealed partial class WallPlan
{
    /// <summary>How far a point of a face is from a patch, straight in plan.</summary>
    public PlanGap Gap(int face, Distance along, in PlanPatch patch)
    {
        (decimal a, decimal b) = Turn(face, patch.Frame, along.Ticks, 0m);
        return new(patch.SquareFrom(a, b), IsExact(face, patch.Frame));
    }

    /// <summary>How far a point in plan is from a patch, straight.</summary>
    public PlanGap Gap(PlanPoint point, in PlanPatch patch)
    {
        (decimal a, decimal b) = Turn(-1, patch.Frame, point.Right.Ticks, point.Into.Ticks);
        return new(patch.SquareFrom(a, b), IsExact(-1, patch.Frame));
    }

    /// <summary>
    /// The stretch of a face whose points are nearer to a patch than a reach, ends included; without reach, those inside its ends on a face that it touches.
    /// What lies behind the face doesn't count.
    /// </summary>
    /// <param name="face">The face.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="reach">The reach; a point exactly at it is outside.</param>
    /// <param name="outward">Whether to round outward where places aren't exact: what is possible instead of what is sure.</param>
    /// <param name="from">The left end found, in ticks along the face; it may lie beyond the face's own.</param>
    /// <param name="to">The right end found.</param>
    /// <returns>False when there are none.</returns>
    public bool TryNear(int face, in PlanPatch patch, Distance reach, bool outward, out long from, out long to)
    {
        from = to = 0;
        if (!IsExact(face, patch.Frame))
        {
            return TryNearAcross(face, patch, reach, outward, out from, out to);
        }

        PlanPatch here = Seen(patch, face);
        bool onTheFace = here.Near == 0m && here.Far == 0m;
        if (here.Far <= 0m && !onTheFace)
        {
            return false;
        }

        decimal off = Math.Max(here.Near, 0m);
        decimal left = (reach.Ticks * (decimal)reach.Ticks) - (off * off);
        if (reach == Distance.Zero ? off > 0m : left <= 0m)
        {
            return false;
        }

        // The furthest whole tick aside whose square is still less than what is left of the reach's.
        decimal aside = reach == Distance.Zero ? -1m : Grid.SquareRoot(left - 1m);
        from = (long)(here.Left - aside);
        to = (long)(here.Right + aside);
        return from <= to && to >= 0 && from <= faces[face].Length.Ticks;
    }

    /// <summary>How near a face comes to a patch.</summary>
    public decimal SquareBetween(int face, in PlanPatch patch)
    {
        PlanPatch here = Seen(patch, face);
        decimal length = faces[face].Length.Ticks;
        return here.SquareFrom(here.Left > length ? length : Math.Max(here.Left, 0m), 0m);
    }

    /// <summary>Across a corner that isn't square: how near a straight face comes to a convex patch falls, then rises, so that both ends can be halved in upon.</summary>
    private bool TryNearAcross(int face, PlanPatch patch, Distance reach, bool outward, out long from, out long to)
    {
        from = to = 0;
        PlanPatch seen = Seen(patch, face);
        decimal slack = outward ? 1m : -1m;
        decimal most = reach.Ticks + slack;
        if (seen.Far < -1m || most <= 0m || (!outward && seen.Near < 0m))
        {
            return false;
        }

        decimal SquareAt(long along)
        {
            (decimal a, decimal b) = Turn(face, patch.Frame, along, 0m);
            return patch.SquareFrom(a, b);
        }

        bool IsNear(long along) => SquareAt(along) < most * most;

        long low = 0;
        long high = faces[face].Length.Ticks;
        while (low < high)
        {
            long middle = low + ((high - low) / 2);
            (low, high) = SquareAt(middle) <= SquareAt(middle + 1) ? (low, middle) : (middle + 1, high);
        }

        if (!IsNear(low))
        {
            return false;
        }

        from = Furthest(low, 0, IsNear);
        to = Furthest(low, faces[face].Length.Ticks, IsNear);
        return true;
    }

    /// <summary>The furthest tick towards an end at which something still holds that holds at the first.</summary>
    private static long Furthest(long holds, long end, Func<long, bool> still)
    {
        if (still(end))
        {
            return end;
        }

        long fails = end;
        while (Math.Abs(fails - holds) > 1)
        {
            long middle = holds + ((fails - holds) / 2);
            (holds, fails) = still(middle) ? (middle, fails) : (holds, middle);
        }

        return holds;
    }
}
