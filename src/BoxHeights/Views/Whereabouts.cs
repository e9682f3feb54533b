using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where a box may be that is asked about: one that is described, wherever it is now, or one that isn't there yet. Nothing is put anywhere.</summary>
internal sealed partial class Whereabouts
{
    private readonly LayoutState state;
    private readonly ResolvedBox box;
    private readonly int index;
    private readonly Edge[] edges;
    private readonly Datum datum;
    private readonly BoxSize size;
    private readonly bool isMisfit;

    private Whereabouts(LayoutState state, DeviceBox source, ResolvedSurface surface, int index, BoxHeight terms)
    {
        this.state = state;
        this.index = index;
        box = new(source, surface, false);
        edges = terms.Edge is { } edge ? [edge] : [Edge.Bottom, Edge.Center, Edge.Top];
        datum = terms.Datum;
        size = ResolvedBox.SizeOf(source, state.Options.Catalog);
        isMisfit = GangsNeeded.Misfit(source, state.Options.Catalog) is not null;
    }

    /// <summary>A box that is described, asked about in the terms of a height, or of its own.</summary>
    public static Whereabouts Of(LayoutState state, int index, BoxHeight? terms = null)
    {
        ResolvedBox box = state.Boxes[index];
        return new(state, box.Source, box.Surface, index, terms ?? state.HeightOf(index) ?? Usual(box.Source));
    }

    /// <summary>A box that isn't there; null where there is no such surface.</summary>
    public static Whereabouts? Of(LayoutState state, PlacedBox placed, BoxHeight? terms = null) =>
        state.SurfaceAt(placed.Address) is { } surface ? new(state, placed.Box, surface, -1, terms ?? Usual(placed.Box)) : null;

    private static BoxHeight Usual(DeviceBox box) => box.Measured?.Height ?? box.Height ?? BoxHeight.ToCenter(Distance.Zero, Datum.Subfloor);

    private bool IsOnWall => box.Surface.Kind == BoxSurface.Wall;

    /// <summary>The heights that rules allow at a place.</summary>
    public AllowedView At(Distance along)
    {
        if (!Fits(along))
        {
            return new(false, DistanceSet.Empty, default, state.Options.Units);
        }

        SitesOfBox sites = SitesAt(along);
        List<RuleAllows> rules = [];
        foreach (StatedPlacement placement in sites[0].Placements)
        {
            if (!placement.Speaks)
            {
                continue;
            }

            AllowedHeights allowed = SlabJudge.At(placement.Slabs, along.Ticks);
            for (int edge = 1; edge < sites.Length; edge++)
            {
                allowed = AnyOf(allowed, SlabJudge.At(sites[edge].SlabsOf(placement.Rule), along.Ticks));
            }

            if (placement.Rule.OrLevelWithOld is { } off && sites.Length == 1)
            {
                allowed |= state.LevelWithOld(sites[0].Site, index, off);
            }

            rules.Add(new(placement.Rule, allowed, placement.Rule.YieldsWhenForced
                ? !allowed.Possible.IsAll && !LayoutState.LeavesRoomFor(placement, sites[0], along.Ticks)
                : !allowed.Sure.IsAll && state.IsLetOff(box, index, along, placement.Rule), state.Options.Units));
        }

        foreach (StatedLimit limit in sites[0].Limits)
        {
            AllowedHeights allowed = limit.AllowedAt(along.Ticks);
            for (int edge = 1; edge < sites.Length; edge++)
            {
                allowed = AnyOf(allowed, Array.Find(sites[edge].Limits, one => one.Rule == limit.Rule)?.AllowedAt(along.Ticks) ?? AllowedHeights.Anything);
            }

            rules.Add(new(limit.Rule, allowed, false, state.Options.Units));
        }

        AskedBox? asked = null;
        foreach ((ProvisionRule rule, ProvisionGroup group) in Neighbors(sites))
        {
            if (rule.Around(group, index, asked ??= Asked(sites[0], along)) is { } left)
            {
                rules.Add(new(rule, left, false, state.Options.Units));
            }
        }

        foreach ((Rule rule, Wording why) in sites[0].NotJudged)
        {
            rules.Add(new(rule, AllowedHeights.Anything, true, state.Options.Units, state.Options.Words.Format(why)));
        }

        return new(true, Held(), new(rules), state.Options.Units);
    }

    /// <summary>Where along its wall and how high its center may be, by what is stated where it is. None off walls, and where its edge isn't stated or its height can't be told there.</summary>
    public Items<BandView> BandsAt(Distance? along) =>
        edges.Length == 1 && IsOnWall && state.SiteOf(box, edges[0], datum, along) is { HasCenter: true } site ? Besides(site) is { } besides ? BandViews.Of(site, besides) : site.Places.Bands : default;

    /// <summary>What rules allow the box for the sake of others, beside what they state; null where that is nothing, as it mostly is.</summary>
    private AllowedHeights[]? Besides(StatedSite site)
    {
        AllowedHeights[]? besides = null;
        for (int i = 0; i < site.Placements.Length; i++)
        {
            PlacementRule rule = site.Placements[i].Rule;
            AllowedHeights more = !rule.YieldsWhenForced && state.IsLetOff(box, index, null, rule) ? AllowedHeights.Anything
                : rule.OrLevelWithOld is { } off ? state.LevelWithOld(site.Site, index, off) : AllowedHeights.Nothing;
            if (!more.Possible.IsEmpty)
            {
                besides ??= new AllowedHeights[site.Placements.Length];
                besides[i] = more;
            }
        }

        return besides;
    }

    /// <summary>Whether a box of its size can be at a place at all.</summary>
    private bool Fits(Distance along) => !isMisfit
        && (!IsOnWall || (box.Surface.Wall is { Open: false } && box.Surface.Holds(along, size)))
        && (!ResolvedSurface.IsOfAThing(datum) || box.Surface.TryAnchor(new(Distance.Zero, datum), along, along, out _));

    private DistanceSet Held() => IsOnWall ? box.Surface.HeldHeights(edges.Length == 1 ? edges[0] : null, datum, size) : DistanceSet.All;

    private SitesOfBox SitesAt(Distance along) => new(Array.ConvertAll(edges, edge => state.SiteOf(box, edge, datum, along)));

    private static AskedBox Asked(StatedSite site, Distance along) =>
        new(site.Site, along, (in DistanceSet centers, bool habitsToo, out MissingFacts needs) => site.CanBeWithin(along.Ticks, centers, habitsToo, out needs));

    /// <summary>Where the edge isn't stated that a height is to, it may be any.</summary>
    private static AllowedHeights AnyOf(in AllowedHeights one, in AllowedHeights other) => AllowedHeights.OneOf(one, other, MissingFacts.EdgeMeant);

    /// <summary>The boxes that it may be in the way of, by the rules that say so.</summary>
    private IEnumerable<(ProvisionRule Rule, ProvisionGroup Group)> Neighbors(SitesOfBox sites) =>
        sites.Length == 1 ? state.Groups.With(sites[0], state.Rules.Provision) : [];
}
