using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where along the wall and how high boxes of a site may be, worked out from all that is stated there for whoever asks of more than one place.</summary>
internal sealed class SitePlaces(StatedSite site)
{
    // Each asks every statement: a wall of a house has some dozens, one whose top has 300 corners took seconds.
    private const int MostEdges = 200;

    private readonly Stretches stretches = new(site.Placements);
    private Items<BandView>? bands;
    private volatile ClearPlaces? clearAt;
    private volatile ClearPlaces? possible;

    /// <summary>The ends of the stretches over which the statements don't change.</summary>
    public long[] Edges => stretches.Edges;

    /// <summary>Where along the wall and how high the center of such a box may be; kept, since whoever draws it asks at each move.</summary>
    public Items<BandView> Bands => bands ??= BandViews.Of(site);

    /// <summary>The stretch around a place along the wall, and the heights that every rule surely allows over it.</summary>
    /// <returns>False right at the end of a stretch, where both neighbors count.</returns>
    public bool TryStretch(long along, out long left, out long right, out DistanceSet allowed) => stretches.TryFind(along, out left, out right, out allowed);

    /// <summary>The heights that every rule surely allows at a place along the wall.</summary>
    public DistanceSet SureAt(long along) => stretches.At(along, firmOnly: false);

    /// <summary>The same for those rules only that don't yield.</summary>
    public DistanceSet SureOfFirmRulesAt(long along) => stretches.At(along, firmOnly: true);

    /// <summary>The places at which every placement rule surely allows a reading of the stick; habits yield. Openings, coverings, finishes and framing are in what the rules state, and nowhere else.</summary>
    /// <remarks>Those of the last reading are kept: whatever a wall lacks is looked for at one height.</remarks>
    public DistanceSet ClearAt(Distance reading)
    {
        if (clearAt is { } kept && kept.Reading == reading)
        {
            return kept.Places;
        }

        DistanceSet places = Where(along => SureOfFirmRulesAt(along).Contains(reading));
        clearAt = new(reading, places);
        return places;
    }

    /// <summary>The places at which firm rules may allow such a box, at some height; everywhere on a wall of more parts than are looked through one by one.</summary>
    public DistanceSet Possible => Edges.Length > MostEdges ? DistanceSet.All : (possible ??= new(default, Where(along => !site.PossibleCentersAt(along).IsEmpty))).Places;

    /// <summary>The same of those rules alone that don't give way to a violation.</summary>
    public DistanceSet PossibleInNeed => Edges.Length > MostEdges ? DistanceSet.All : Where(along => !site.PossibleCentersAt(along, inNeed: true).IsEmpty);

    /// <summary>The places of which something holds that the statements decide: between two of their edges it holds everywhere or nowhere.</summary>
    private DistanceSet Where(Func<long, bool> holds)
    {
        long[] edges = Edges;
        List<DistanceRange> places = [];
        for (int i = 0; i < edges.Length; i++)
        {
            if (holds(edges[i]))
            {
                places.Add(new(Distance.FromTicks(edges[i]), Distance.FromTicks(edges[i])));
            }

            if (i + 1 < edges.Length && edges[i + 1] - 1 > edges[i] && holds(edges[i] + 1))
            {
                places.Add(new(Distance.FromTicks(edges[i] + 1), Distance.FromTicks(edges[i + 1] - 1)));
            }
        }

        Distance half = site.Site.Box.Size.HalfWidth;
        return DistanceSet.UnionOf(places) & DistanceSet.Between(half, site.Site.Surface.Length - half);
    }

    /// <summary>Places along the wall, kept: those that are clear at a reading, or that some height may do at.</summary>
    private sealed class ClearPlaces(Distance reading, DistanceSet places)
    {
        public Distance Reading { get; } = reading;

        public DistanceSet Places { get; } = places;
    }
}
