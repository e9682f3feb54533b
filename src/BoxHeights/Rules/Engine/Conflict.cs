using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which rules leave a box no place together.</summary>
internal static class Conflict
{
    /// <summary>The fewest rules, the broken one among them, that leave no height together where a box is.</summary>
    public static Items<string> At(LayoutState state, int box, string ruleId)
    {
        StatedSite site = state.SitesOf(box)[0];
        if (state.AtOf(box) is not { } at)
        {
            return new[] { ruleId };
        }

        // From the end each rule is left out that can be: habits first, which are blamed only where firm rules alone would leave a place.
        List<StatedPlacement> needed = [.. Array.FindAll(site.Placements, one => !one.Rule.YieldsWhenForced), .. Array.FindAll(site.Placements, one => one.Rule.YieldsWhenForced)];
        for (int i = needed.Count - 1; i >= 0; i--)
        {
            StatedPlacement one = needed[i];
            needed.RemoveAt(i);
            if (one.Rule.Id == ruleId || Left(needed).Count > 0)
            {
                needed.Insert(i, one);
            }
        }

        return Left(needed).Count > 0 ? new[] { ruleId } : new Items<string>(needed.ConvertAll(placement => placement.Rule.Id));

        DistanceSet Left(List<StatedPlacement> placements)
        {
            DistanceSet all = DistanceSet.All;
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
