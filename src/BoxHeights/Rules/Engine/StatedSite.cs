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

    private readonly StatedSites owner;
    private readonly (Rule Rule, Wording Why)[] limitsNotJudged;
    private volatile StatedPlacement[]? placements;
    private volatile StatedLimit[]? limits;
    private volatile SitePlaces? places;
    private (Rule Rule, Wording Why)[]? unjudged;
    private (Rule Rule, Wording Why)[]? notJudged;
    private int askedAlone;

    public StatedSite(StatedSites owner, PlacementSite site, HeightLine? line, int likeness, bool mayMissLimits, (Rule Rule, Wording Why)[] limitsNotJudged)
    {
        this.owner = owner;
        this.limitsNotJudged = limitsNotJudged;
        Site = site;
        Line = line;
        Likeness = likeness;
        MayMissLimits = mayMissLimits;
        HasCenter = site.TryCenterAboveHeight(out DistanceRange center);
        CenterAboveHeight = center;
        CenterNeeds = HasCenter ? CenterAboveHeight.IsExact ? MissingFacts.None : MissingFacts.FloorFinish : MissingFacts.Datum;
    }

    public PlacementSite Site { get; }

    /// <summary>What rules may group its boxes by.</summary>
    public GroupPlace Group => owner.GroupPlaceOn(Site.Surface);

    /// <summary>A number that only boxes share which may be alike.</summary>
    public int Likeness { get; }

    /// <summary>What a height is taken from that lies elsewhere at another place along the wall; null where nothing does.</summary>
    public HeightLine? Line { get; }

    /// <summary>What placement rules allow, wherever the box is.</summary>
    public StatedPlacement[] Placements => placements ??= owner.StateAll(Site, Unjudged);

    /// <summary>What limit rules state; stated when it is asked for, since most boxes pass them all.</summary>
    public StatedLimit[] Limits => limits ??= owner.LimitsOf(Site);

    /// <summary>Whether there is a place at which such a box doesn't pass a limit rule.</summary>
    public bool MayMissLimits { get; }

    /// <summary>The rules that couldn't be judged, and why.</summary>
    public (Rule Rule, Wording Why)[] NotJudged => notJudged ??= Joined(Unjudged);

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
        if (placements is null && askedAlone < MostAskedAlone)
        {
            askedAlone++;
            bool all = owner.AllPass(Site, place, out (Rule Rule, Wording Why)[] silent);
            unjudged = silent;
            return all;
        }

        if (place.Left == place.Right)
        {
            return Places.SureAt(place.Left).ContainsRange(place.Heights);
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

    /// <summary>Where along the wall and how high such boxes may be, worked out when somebody asks.</summary>
    public SitePlaces Places => places ??= new(this);

    /// <summary>Whether that is known already, or asked for so often that it is worth working out.</summary>
    public bool HasPlaces => placements is not null || askedAlone >= MostAskedAlone;

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

    /// <summary>The heights above the storey's subfloor at which firm rules may let such a box have its center, at a place along the wall; in need those that give way to a violation aren't asked.</summary>
    public DistanceSet PossibleCentersAt(long along, bool inNeed = false)
    {
        DistanceSet possible = DistanceSet.All;
        foreach (StatedPlacement placement in Placements)
        {
            possible = placement.Rule.YieldsWhenForced || (inNeed && placement.Rule.GivesWay) ? possible : possible & SlabJudge.PossibleAt(placement.Slabs, along);
        }

        return possible.DilateShift(CenterAboveHeight);
    }

    private (Rule Rule, Wording Why)[] Unjudged => unjudged ??= owner.UnjudgedOf(Site);

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
