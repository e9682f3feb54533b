using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where a box may be along its wall, read from what the rules state at its site.</summary>
internal static class BandViews
{
    /// <summary>The stretches of a site's wall over which the statements don't change.</summary>
    /// <param name="site">The site.</param>
    /// <param name="besides">What else each of its placements allows one box of the site, for the sake of others; null where that is nothing.</param>
    public static Items<BandView> Of(StatedSite site, AllowedHeights[]? besides = null)
    {
        ResolvedSurface surface = site.Site.Surface;
        List<BandView> bands = [];
        List<long> edges = [0, surface.Length.Ticks];
        foreach (long edge in site.Places.Edges)
        {
            if (edge > 0 && edge < surface.Length.Ticks)
            {
                edges.Add(edge);
            }
        }

        edges.Sort();
        for (int i = 1; i < edges.Count; i++)
        {
            if (edges[i - 1] < edges[i])
            {
                bands.Add(Between(site, besides, edges[i - 1], edges[i]));
            }
        }

        return new(bands);
    }

    /// <summary>Whether firm rules leave some heights at a place, and none that a habit would have. Where they leave none at all it makes no difference, and the habit is told as elsewhere.</summary>
    private static bool Yields(StatedPlacement habit, StatedSite site, long along) =>
        !LayoutState.LeavesRoomFor(habit, site, along) && !site.Places.SureOfFirmRulesAt(along).IsEmpty;

    private static BandView Between(StatedSite site, AllowedHeights[]? besides, long left, long right)
    {
        long middle = left + ((right - left) / 2);
        DistanceSet sure = DistanceSet.All;
        DistanceSet possible = DistanceSet.All;
        List<string> limitedBy = [];
        for (int i = 0; i < site.Placements.Length; i++)
        {
            StatedPlacement placement = site.Placements[i];
            AllowedHeights here = SlabJudge.At(placement.Slabs, middle) | (besides?[i] ?? AllowedHeights.Nothing);
            if (here.Sure.IsAll || (placement.Rule.YieldsWhenForced && Yields(placement, site, middle)))
            {
                continue;
            }

            sure &= here.Sure;
            possible &= here.Possible;
            limitedBy.Add(placement.Rule.Id);
        }

        return new(
            Distance.FromTicks(left), Distance.FromTicks(right), sure.ErodeShift(site.CenterAboveHeight), possible.DilateShift(site.CenterAboveHeight), new(limitedBy));
    }
}
