using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What all rules state at a site: true for every box that is alike, wherever it is along the surface.</summary>
/// <remarks>
/// What placement rules allow is stated in full only when somebody asks: most boxes pass, and for those it is enough to know that at their place.
/// Measured: the example house took 5.4 to 8.9 ms and 20 kB a box when all was stated for each site, 2.4 to 3.5 ms and 10.9 kB so.
/// </remarks>
internal sealed class StatedSite
{
    /// <summary>So often a place is asked about alone: then all is stated, and looked up.</summary>
    private const int MostAskedAlone = 4;

    // Each asks every statement: a wall of a house has some dozens, one whose top has 300 corners took seconds.
    private const int MostEdges = 200;

    private readonly StatedSites owner;
    private readonly (Rule Rule, Wording Why)[] limitsNotJudged;
    private volatile Statements? statements;
    private volatile StatedLimit[]? limits;
    private volatile Stretches? stretches;
    private (Rule Rule, Wording Why)[]? notJudged;
    private (Rule Rule, Wording Why)[]? unjudged;
    private GroupPlace? group;
    private Items<BandView>? bands;
    private volatile ClearPlaces? clearAt;
    private volatile ClearPlaces? possible;
    private int askedAlone;

    public StatedSite(StatedSites owner, PlacementSite site, Level? anchor, DistanceRange? nosing, int likeness, bool mayMissLimits, (Rule Rule, Wording Why)[] limitsNotJudged)
    {
        this.owner = owner;
        this.limitsNotJudged = limitsNotJudged;
        Site = site;
        Anchor = anchor;
        Nosing = nosing;
        Likeness = likeness;
        MayMissLimits = mayMissLimits;
        HasCenter = site.TryCenterAboveHeight(out DistanceRange center);
        CenterAboveHeight = center;
        CenterNeeds = HasCenter ? CenterAboveHeight.IsExact ? MissingFacts.None : MissingFacts.FloorFinish : MissingFacts.Datum;
    }

    public PlacementSite Site { get; }

    /// <summary>What rules may group its boxes by.</summary>
    public GroupPlace Group => group ??= new(Site.Surface);

    /// <summary>A number that only boxes share which may be alike.</summary>
    public int Likeness { get; }

    /// <summary>What a countertop or splash that the height is taken from is itself taken from, where the box is; null where it is taken from something else.</summary>
    public Level? Anchor { get; }

    /// <summary>How high the nosings are where the box is, on the wall of a stair; null elsewhere.</summary>
    public DistanceRange? Nosing { get; }

    /// <summary>What placement rules allow, wherever the box is.</summary>
    public StatedPlacement[] Placements => Statements.Placements;

    /// <summary>What limit rules state; stated when it is asked for, since most boxes pass them all.</summary>
    public StatedLimit[] Limits => limits ??= owner.LimitsOf(Site);

    /// <summary>Whether there is a place at which such a box doesn't pass a limit rule.</summary>
    public bool MayMissLimits { get; }

    /// <summary>The rules that couldn't be judged, and why.</summary>
    public (Rule Rule, Wording Why)[] NotJudged => notJudged ??= Joined(Statements.NotJudged);

    /// <summary>Whether the center's height above the storey's subfloor can be told from the stick's reading.</summary>
    public bool HasCenter { get; }

    /// <summary>From the stick's reading up to the center's height above the storey's subfloor.</summary>
    public DistanceRange CenterAboveHeight { get; }

    public MissingFacts CenterNeeds { get; }

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

    /// <summary>Whether every placement rule surely allows a place. For the one who judges alone.</summary>
    public bool AllPass(in Place place)
    {
        if (statements is null && askedAlone < MostAskedAlone)
        {
            askedAlone++;
            bool all = owner.AllPass(Site, place, out (Rule Rule, Wording Why)[] silent);
            unjudged = silent;
            notJudged ??= Joined(silent);
            return all;
        }

        if (place.Left == place.Right)
        {
            return SureAt(place.Left).ContainsRange(place.Heights);
        }

        foreach (StatedPlacement placement in Placements)
        {
            if (SlabJudge.Verdict(placement.Slabs, place) != Verdict.Passes)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The stretch around a place along the wall, and the heights that every rule surely allows over it; not yet while places are asked about alone.</summary>
    /// <returns>False right at the end of a stretch, where both neighbors count.</returns>
    public bool TryStretch(long along, out long left, out long right, out DistanceSet allowed)
    {
        left = 0;
        right = 0;
        allowed = default;
        return (statements is not null || askedAlone >= MostAskedAlone) && Stretches.TryFind(along, out left, out right, out allowed);
    }

    /// <summary>The heights that every rule surely allows at a place along the wall.</summary>
    public DistanceSet SureAt(long along) => Stretches.At(along, firmOnly: false);

    /// <summary>The same for those rules only that don't yield.</summary>
    public DistanceSet SureOfFirmRulesAt(long along) => Stretches.At(along, firmOnly: true);

    /// <summary>The ends of the stretches over which the statements don't change.</summary>
    public long[] Edges => Stretches.Edges;

    /// <summary>Where along the wall and how high the center of such a box may be; kept, since whoever draws it asks at each move.</summary>
    public Items<BandView> Bands => bands ??= BandViews.Of(this);

    /// <summary>The places at which every placement rule surely allows a reading of the stick; habits yield. Openings, coverings, finishes and framing are in what the rules state, and nowhere else.</summary>
    /// <remarks>Those of the last reading are kept: whatever a wall lacks is looked for at one height.</remarks>
    public DistanceSet PlacesAt(Distance reading)
    {
        if (clearAt is { } kept && kept.Reading == reading)
        {
            return kept.Places;
        }

        DistanceSet places = Clear(reading);
        clearAt = new(reading, places);
        return places;
    }

    /// <summary>The places at which firm rules may allow such a box, at some height; everywhere on a wall of more parts than are looked through one by one.</summary>
    public DistanceSet PossiblePlaces => Edges.Length > MostEdges ? DistanceSet.All : (possible ??= new(default, Where(along => !PossibleCentersAt(along).IsEmpty))).Places;

    private DistanceSet Clear(Distance reading) => Where(along => SureOfFirmRulesAt(along).Contains(reading));

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

        return DistanceSet.UnionOf(places) & DistanceSet.Between(Site.Box.Size.HalfWidth, Site.Surface.Length - Site.Box.Size.HalfWidth);
    }

    /// <summary>Whether the placement rules let such a box have its center at some heights above the storey's subfloor, at a place along the wall.</summary>
    public Verdict CanBeWithin(long along, in DistanceSet above, bool habitsToo, out MissingFacts needs)
    {
        needs = MissingFacts.None;

        // Most boxes can be anywhere there: one look at the lowest height tells, without sets.
        if (Allows(new(along, along, -CenterAboveHeight + above[0].From), habitsToo))
        {
            return Verdict.Passes;
        }

        DistanceSet sure = above.ErodeShift(-CenterAboveHeight);
        DistanceSet possible = above.DilateShift(-CenterAboveHeight);
        foreach (StatedPlacement placement in Placements)
        {
            if (habitsToo || !placement.Rule.YieldsWhenForced)
            {
                DistanceSet surely = SlabJudge.SureAt(placement.Slabs, along);
                DistanceSet possibly = SlabJudge.PossibleAt(placement.Slabs, along);

                // What a rule lacks matters only where it leaves one of these heights open.
                needs |= (surely & possible).Equals(possibly & possible) ? MissingFacts.None : SlabJudge.NeedsAt(placement.Slabs, along);
                sure &= surely;
                possible &= possibly;
            }
        }

        return !sure.IsEmpty ? Verdict.Passes : possible.IsEmpty ? Verdict.Fails : Verdict.Unknown;
    }

    private bool Allows(in Place place, bool habitsToo)
    {
        foreach (StatedPlacement placement in Placements)
        {
            if ((habitsToo || !placement.Rule.YieldsWhenForced) && !placement.Passes(place))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The heights above the storey's subfloor at which firm rules may let such a box have its center, at a place along the wall.</summary>
    public DistanceSet PossibleCentersAt(long along)
    {
        DistanceSet possible = DistanceSet.All;
        foreach (StatedPlacement placement in Placements)
        {
            possible = placement.Rule.YieldsWhenForced ? possible : possible & SlabJudge.PossibleAt(placement.Slabs, along);
        }

        return possible.DilateShift(CenterAboveHeight);
    }

    private Statements Statements => statements ??= owner.StateAll(Site, unjudged);

    private Stretches Stretches => stretches ??= new(Placements);

    /// <summary>Places along the wall, kept: those that are clear at a reading, or that some height may do at.</summary>
    private sealed class ClearPlaces(Distance reading, DistanceSet places)
    {
        public Distance Reading { get; } = reading;

        public DistanceSet Places { get; } = places;
    }

    private (Rule Rule, Wording Why)[] Joined((Rule Rule, Wording Why)[] placements) =>
        placements.Length == 0 ? limitsNotJudged : limitsNotJudged.Length == 0 ? placements : [.. placements, .. limitsNotJudged];
}

/// <summary>What one placement rule states at a site, under each of its readings.</summary>
/// <remarks>Stated when it is asked for: of a box that misses one rule it is mostly that one alone.</remarks>
internal sealed class StatedPlacement(PlacementRule rule, PlacementSite site, StatedSites owner)
{
    /// <summary>So often it is asked of a place alone: then it is stated, and looked up.</summary>
    private const int MostAskedAlone = 4;

    private volatile Slab[]? slabs;
    private int askedAlone;

    public PlacementRule Rule { get; } = rule;

    public Slab[] Slabs => slabs ??= owner.SlabsOf(Rule, site);

    /// <summary>Whether it says anything here.</summary>
    public bool Speaks => Slabs.Length > 0;

    /// <summary>Whether it surely allows a place.</summary>
    public bool Passes(in Place place)
    {
        if (slabs is null && askedAlone < MostAskedAlone)
        {
            askedAlone++;
            return owner.Passes(Rule, site, place);
        }

        return SlabJudge.Verdict(Slabs, place) == Verdict.Passes;
    }

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
