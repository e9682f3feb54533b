using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which rules leave a box no place together.</summary>
internal static class ConflictingRules
{
    /// <summary>The fewest rules, the broken one among them, that leave no height together where a box is.</summary>
    public static Items<string> At(LayoutState state, int box, string ruleId)
    {
        if (state.AtOf(box) is not { } at)
        {
            return new[] { ruleId };
        }

        Items<string> conflict = At(state.SitesOf(box)[0], at, ruleId);
        return conflict.Count == 0 ? new[] { ruleId } : conflict;
    }

    /// <summary>The fewest rules that leave no height together at a place; none where there is one. Habits yield, unless one of them is the rule that has to be among them.</summary>
    /// <param name="site">What is stated for the box.</param>
    /// <param name="at">The place along the wall.</param>
    /// <param name="ruleId">A rule that has to be among them; null where none has.</param>
    /// <param name="among">The heights that would do; every one unless stated.</param>
    public static Items<string> At(StatedSite site, Distance at, string? ruleId, DistanceSet? among = null)
    {
        // From the end each rule is left out that can be: habits first, which are blamed only where firm rules alone would leave a place.
        List<StatedPlacement> needed = [.. Array.FindAll(site.Placements, one => !one.Rule.YieldsWhenForced), .. Array.FindAll(site.Placements, one => one.Rule.YieldsWhenForced && ruleId is not null)];
        for (int i = needed.Count - 1; i >= 0; i--)
        {
            StatedPlacement one = needed[i];
            needed.RemoveAt(i);
            if (one.Rule.Id == ruleId || Left(needed).Count > 0)
            {
                needed.Insert(i, one);
            }
        }

        return Left(needed).Count > 0 ? default : new Items<string>(needed.ConvertAll(placement => placement.Rule.Id));

        DistanceSet Left(List<StatedPlacement> placements)
        {
            DistanceSet all = among ?? DistanceSet.All;
            foreach (StatedPlacement placement in placements)
            {
                foreach (Slab slab in placement.Slabs)
                {
                    if (slab.Left <= at && at <= slab.Right)
                    {
                        all &= slab.Allowed.Sure;
                    }
                }
            }

            return all;
        }
    }
}
