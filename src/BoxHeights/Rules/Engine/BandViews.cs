using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where a box may be along its wall, read from what the rules state at its site.</summary>
internal static class BandViews
{
    /// <summary>The stretches of a site's wall over which the statements don't change.</summary>
    public static Items<BandView> Of(StatedSite site)
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
                bands.Add(Between(site, edges[i - 1], edges[i]));
            }
        }

        return new(bands);
    }

    private static BandView Between(StatedSite site, long left, long right)
    {
        long middle = left + ((right - left) / 2);
        DistanceSet sure = DistanceSet.All;
        DistanceSet possible = DistanceSet.All;
        List<string> limitedBy = [];
        foreach (StatedPlacement placement in site.Placements)
        {
            DistanceSet here = SlabJudge.SureAt(placement.Slabs, middle);
            sure &= here;
            possible &= SlabJudge.PossibleAt(placement.Slabs, middle);
            if (!here.Equals(DistanceSet.All))
            {
                limitedBy.Add(placement.Rule.Id);
            }
        }

        return new(
            Distance.FromTicks(left), Distance.FromTicks(right), sure.ErodeShift(site.CenterAboveHeight), possible.DilateShift(site.CenterAboveHeight), new(limitedBy));
    }
}
