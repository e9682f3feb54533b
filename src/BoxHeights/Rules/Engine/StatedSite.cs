using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What all rules state at a site: worked out once, and true for every box that is alike, wherever it is along the surface.</summary>
internal sealed class StatedSite
{
    private Stretches? stretches;

    public StatedSite(PlacementSite site, Level? anchor, DistanceRange? nosing, StatedPlacement[] placements, StatedLimit[] limits, (Rule Rule, string Why)[] notJudged)
    {
        Site = site;
        Anchor = anchor;
        Nosing = nosing;
        Placements = placements;
        Limits = limits;
        NotJudged = notJudged;
        HasCenter = site.Levels.TryGet(site.Box.Datum, out DistanceRange datum);
        CenterAboveReading = datum + CenterAboveEdge(site.Box);
        CenterNeeds = HasCenter ? CenterAboveReading.IsExact ? Facts.None : Facts.FloorFinish : Facts.Datum;
    }

    public PlacementSite Site { get; }

    /// <summary>What a countertop or splash that the height is taken from is itself taken from, where the box is; null where it is taken from something else.</summary>
    public Level? Anchor { get; }

    /// <summary>How high the nosings are where the box is, on the wall of a stair; null elsewhere.</summary>
    public DistanceRange? Nosing { get; }

    public StatedPlacement[] Placements { get; }

    public StatedLimit[] Limits { get; }

    public (Rule Rule, string Why)[] NotJudged { get; }

    /// <summary>Whether the center's height above the storey's subfloor can be told from the stick's reading.</summary>
    public bool HasCenter { get; }

    /// <summary>From the stick's reading up to the center's height above the storey's subfloor.</summary>
    public DistanceRange CenterAboveReading { get; }

    public Facts CenterNeeds { get; }

    /// <summary>What a rule states here; nothing where it is silent.</summary>
    public Slab[] SlabsOf(PlacementRule rule)
    {
        foreach (StatedPlacement placement in Placements)
        {
            if (ReferenceEquals(placement.Rule, rule))
            {
                return placement.Slabs;
            }
        }

        return [];
    }

    /// <summary>What a limit rule says of a place; nothing where it is silent.</summary>
    public LimitJudgement LimitAt(LimitRule rule, in Place place)
    {
        foreach (StatedLimit limit in Limits)
        {
            if (ReferenceEquals(limit.Rule, rule))
            {
                return limit.At(place);
            }
        }

        return default;
    }

    /// <summary>The stretch around a place along the wall, and the heights that every rule surely allows over it.</summary>
    /// <returns>False right at the end of a stretch, where both neighbors count.</returns>
    public bool TryStretch(long along, out long left, out long right, out DistanceSet allowed)
    {
        Stretches all = stretches ??= new(this);
        long[] edges = all.Edges;
        int low = 0;
        int high = edges.Length - 2;
        while (low < high)
        {
            int middle = (low + high) >> 1;
            if (edges[middle + 1] < along)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        left = edges[low];
        right = edges[low + 1];
        allowed = all.Sure[low];
        return left < along && along < right;
    }

    /// <summary>The heights that every rule surely allows at a place along the wall.</summary>
    public DistanceSet SureAt(long along) =>
        TryStretch(along, out _, out _, out DistanceSet allowed) ? allowed : SureWithin(along, along, firmOnly: false);

    /// <summary>The same for those rules only that don't yield.</summary>
    public DistanceSet SureOfFirmRulesAt(long along) => SureWithin(along, along, firmOnly: true);

    /// <summary>The ends of the stretches over which the statements don't change.</summary>
    public long[] Edges => (stretches ??= new(this)).Edges;

    /// <summary>From the edge that a box is set by up to its center, by its nominal size: boxes of a kind are of one size, whichever that is.</summary>
    private static Distance CenterAboveEdge(BoxTraits box) => box.Edge switch
    {
        Edge.Bottom => box.Size.HalfHeight,
        Edge.Top => -box.Size.HalfHeight,
        _ => Distance.Zero,
    };

    private DistanceSet SureWithin(long left, long right, bool firmOnly)
    {
        DistanceSet all = DistanceSet.All;
        foreach (StatedPlacement placement in Placements)
        {
            for (int i = 0; i < placement.Slabs.Length && !(firmOnly && placement.Rule.YieldsWhenForced); i++)
            {
                ref readonly Slab slab = ref placement.Slabs[i];
                if (slab.LeftTicks <= left && right <= slab.RightTicks)
                {
                    all &= slab.Allowed.Sure;
                }
            }
        }

        return all;
    }

    /// <summary>The wall cut where a statement begins or ends, and what every rule surely allows in between. Only moves and remedies ask for it.</summary>
    private sealed class Stretches
    {
        public Stretches(StatedSite site)
        {
            List<long> found = [long.MinValue, long.MaxValue];
            foreach (StatedPlacement placement in site.Placements)
            {
                foreach (Slab slab in placement.Slabs)
                {
                    Note(found, slab.LeftTicks);
                    Note(found, slab.RightTicks);
                }
            }

            Edges = found.ToArray();
            Sure = new DistanceSet[Edges.Length - 1];
            for (int i = 0; i < Sure.Length; i++)
            {
                Sure[i] = site.SureWithin(Edges[i], Edges[i + 1], firmOnly: false);
            }
        }

        public long[] Edges { get; }

        public DistanceSet[] Sure { get; }

        private static void Note(List<long> found, long edge)
        {
            int place = found.BinarySearch(edge);
            if (place < 0)
            {
                found.Insert(~place, edge);
            }
        }
    }
}

/// <summary>What one placement rule states at a site, under each of its readings.</summary>
internal sealed class StatedPlacement(PlacementRule rule, Slab[] slabs, PlacementSite site)
{
    public PlacementRule Rule { get; } = rule;

    public Slab[] Slabs { get; } = slabs;

    /// <summary>What the other readings of the rule state; worked out as it is asked for.</summary>
    public IEnumerable<(string Id, Slab[] Slabs)> Readings
    {
        get
        {
            foreach (Reading reading in Rule.Readings)
            {
                if (reading.Rule is PlacementRule other)
                {
                    PlacementStatement statement = new();
                    other.State(site, statement);
                    yield return (reading.Id, statement.Take());
                }
            }
        }
    }
}
