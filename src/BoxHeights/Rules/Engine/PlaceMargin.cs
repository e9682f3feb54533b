using System;

namespace BoxHeights.Rules;

/// <summary>How far a box is from where a placement rule would say otherwise, in height and along its wall, over every edge that its height may be measured to.</summary>
internal static class PlaceMargin
{
    /// <summary>The margin of what a rule says of a place.</summary>
    /// <param name="sites">What is stated for each edge that may be meant; one where it is known.</param>
    /// <param name="placement">Which rule.</param>
    /// <param name="verdict">What it says, over all of them.</param>
    /// <param name="place">Where the box is.</param>
    public static (long Margin, LeastChange? Change) Of(SitesOfBox sites, int placement, Verdict verdict, in Place place)
    {
        bool passes = verdict == Verdict.Passes;
        (long amount, LeastChange? change) = InHeight(sites, placement, passes, place);
        if (place.Left == place.Right && (passes ? RoomBeside(sites, placement, place) : NearestBeside(sites, placement, place)) is { } along && along.Amount.Ticks < amount)
        {
            (amount, change) = (along.Amount.Ticks, along);
        }

        return amount == long.MaxValue ? (passes ? long.MaxValue : verdict == Verdict.Unknown ? 0 : long.MinValue, null) : (passes ? amount : -amount, change);
    }

    /// <summary>The same in height alone, which boxes that were set with one stick share.</summary>
    public static long OfHeight(SitesOfBox sites, int placement, Verdict verdict, in Place place)
    {
        bool passes = verdict == Verdict.Passes;
        long amount = InHeight(sites, placement, passes, place).Amount;
        return passes ? amount : amount == long.MaxValue ? verdict == Verdict.Unknown ? 0 : long.MinValue : -amount;
    }

    private static (long Amount, LeastChange? Change) InHeight(SitesOfBox sites, int placement, bool passes, in Place place)
    {
        DistanceSet sure = DistanceSet.All;
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.Placements[placement].Slabs)
            {
                if (slab.LeftTicks <= place.Right && place.Left <= slab.RightTicks)
                {
                    sure &= slab.Allowed.Sure;
                }
            }
        }

        long least = long.MaxValue;
        ChangeDirection direction = default;
        long low = place.Heights.From.Ticks;
        long high = place.Heights.To.Ticks;
        for (int i = 0; i < sure.Count; i++)
        {
            (long from, long to) = (sure[i].From.Ticks, sure[i].To.Ticks);
            if (passes)
            {
                if (from <= low && high <= to)
                {
                    Take(from == long.MinValue ? long.MaxValue : Less(low, from), ChangeDirection.Down);
                    Take(to == long.MaxValue ? long.MaxValue : Less(to, high), ChangeDirection.Up);
                }
            }
            else if (Less(to, from) >= Less(high, low))
            {
                Take(low < from ? Less(from, low) : Less(high, to), low < from ? ChangeDirection.Up : ChangeDirection.Down);
            }
        }

        return (least, least == long.MaxValue ? null : new(Distance.FromTicks(least), direction));

        void Take(long amount, ChangeDirection toward)
        {
            if (amount < least)
            {
                (least, direction) = (amount, toward);
            }
        }
    }

    /// <summary>How far a box that is allowed may go along the wall before it isn't.</summary>
    private static LeastChange? RoomBeside(SitesOfBox sites, int placement, in Place place)
    {
        LeastChange? least = null;
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.Placements[placement].Slabs)
            {
                if (!slab.Allowed.Sure.ContainsRange(place.Heights) && (slab.LeftTicks > place.Right || slab.RightTicks < place.Left))
                {
                    bool isRight = slab.LeftTicks > place.Right;
                    long room = (isRight ? Less(slab.LeftTicks, place.Right) : Less(place.Left, slab.RightTicks)) - 1;
                    bool onTheWall = isRight ? slab.LeftTicks <= site.Site.Surface.Length.Ticks : slab.RightTicks >= 0;
                    least = onTheWall && (least is not { } found || room < found.Amount.Ticks) ? new(Distance.FromTicks(room), isRight ? ChangeDirection.Right : ChangeDirection.Left) : least;
                }
            }
        }

        return least;
    }

    /// <summary>The nearest place along the wall at which the rule is met at the box's height, and no other that weighs as much says worse than here.</summary>
    public static LeastChange? NearestBeside(SitesOfBox sites, int placement, in Place place)
    {
        long least = long.MaxValue;
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.Placements[placement].Slabs)
            {
                foreach (long edge in new[] { slab.LeftTicks, slab.RightTicks })
                {
                    // Right at the end of what isn't allowed, or one tick beyond it.
                    for (int beyond = -1; beyond <= 1; beyond++)
                    {
                        long to = unchecked(edge + beyond);
                        if (IsOnTheWall(site.Site, to) && Math.Abs(to - place.Left) < Math.Abs(least) && IsMet(sites, placement, place, new(to, to, place.Heights)))
                        {
                            least = to - place.Left;
                        }
                    }
                }
            }
        }

        return least == long.MaxValue ? null : new(Distance.FromTicks(Math.Abs(least)), least < 0 ? ChangeDirection.Left : ChangeDirection.Right);
    }

    private static bool IsOnTheWall(PlacementSite site, long along) =>
        along >= 0 && along <= site.Surface.Length.Ticks && (!site.Box.Size.IsStated || site.Surface.Holds(Distance.FromTicks(along), site.Box.Size));

    private static bool IsMet(SitesOfBox sites, int placement, in Place place, in Place to)
    {
        foreach (StatedSite site in sites)
        {
            if (site.Placements[placement].Rule.ClearOf is { } alsoClearOf)
            {
                PlacementStatement clear = new();
                alsoClearOf.State(site.Site, clear);
                if (SlabJudge.Verdict(clear.Take(), to) != Verdict.Passes)
                {
                    return false;
                }
            }

            for (int i = 0; i < site.Placements.Length; i++)
            {
                Verdict there = SlabJudge.Verdict(site.Placements[i].Slabs, to);
                if (there != Verdict.Passes && (i == placement
                    || (site.Placements[i].Rule.Severity >= site.Placements[placement].Rule.Severity && there > SlabJudge.Verdict(site.Placements[i].Slabs, place))))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>A difference of which the largest stands for any that is larger.</summary>
    private static long Less(long from, long what) => what < 0 && from > long.MaxValue + what ? long.MaxValue : what > 0 && from < long.MinValue + what ? long.MinValue : from - what;
}
