using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Remembers what has been stated: boxes on one surface that are alike share a site.</summary>
internal sealed class StatedSites(int surfaces, CompiledRules rules, PartsCatalog catalog)
{
    private readonly List<StatedSite>?[] known = new List<StatedSite>?[surfaces];
    private readonly KnownOperatedParts operated = new(catalog);
    private readonly GroupPlace?[] groupPlaces = new GroupPlace?[surfaces];

    // Used again for every site: only the one who judges makes sites and asks of places.
    private readonly PlacementStatement asked = new();
    private readonly LimitStatement limited = new();
    private readonly List<(Rule Rule, Wording Why)> notJudged = [];

    // What is stated of a whole surface is asked for by whoever reads findings, on any thread.
    private readonly object stating = new();
    private readonly LimitStatement limit = new();
    private readonly List<StatedLimit> limits = [];
    private readonly PlacementStatement placed = new();
    private readonly List<StatedPlacement> placements = [];
    private readonly List<(Rule Rule, Wording Why)> silent = [];

    /// <summary>What the rules state for a box whose height is measured to an edge from a datum.</summary>
    public StatedSite Of(ResolvedBox box, Edge edge, Datum datum, Distance? along)
    {
        ResolvedSurface surface = box.Surface;
        Level? anchor = ResolvedSurface.IsOfAThing(datum) && along is { } place
            && surface.TryAnchor(new(Distance.Zero, datum), place, place, out Level anchored) ? anchored : null;
        DistanceRange? nosing = surface.Stair is { } stair && along is { } at && stair.TryNosing(at, out DistanceRange line) ? line : null;
        List<StatedSite> here = known[surface.Index] ??= [];
        int likeness = LikenessOf(box.Source, edge, datum, anchor, nosing);
        foreach (StatedSite one in here)
        {
            if (one.Likeness == likeness && one.Site.Box.Edge == edge && one.Site.Box.Datum == datum && HeightLine.Is(one.Line, anchor, nosing)
                && BoxTraits.Same(one.Site.Box.Source, box.Source))
            {
                return one;
            }
        }

        Levels levels = surface.Space.Levels;
        if (anchor is { } on)
        {
            levels = levels.With(datum, on.Offset, on.Datum);
        }

        if (nosing is { } sloped)
        {
            levels = levels.With(Datum.Nosing, sloped, Datum.Subfloor);
        }

        BoxTraits traits = new(box.Source, surface.Kind, edge, datum, catalog, operated.Of(box.Source), box.IsUntouched);
        StatedSite site = Make(new(surface, traits, levels), HeightLine.Of(anchor, nosing), likeness);
        here.Add(site);
        return site;
    }

    /// <summary>What rules may group the boxes of a surface by.</summary>
    public GroupPlace GroupPlaceOn(ResolvedSurface surface) => groupPlaces[surface.Index] ??= new(surface);

    /// <summary>A number that boxes share that are alike: on a wall of thousands of unlike ones most are told apart by it alone, and not field by field.</summary>
    private static int LikenessOf(DeviceBox box, Edge edge, Datum datum, in Level? anchor, in DistanceRange? nosing)
    {
        unchecked
        {
            long sum = ((long)edge * 31) + (long)datum;
            sum = (sum * 31) + (box.Gangs ?? 0);
            sum = (sum * 31) + box.Devices.Count;
            sum = (sum * 31) + box.Cables.Count;
            sum = (sum * 31) + (box.Volume?.GetHashCode() ?? 0);
            sum = (sum * 31) + (box.Size is { } size ? size.WidthRange.From.Ticks + (31 * size.HeightRange.From.Ticks) : 0);
            sum = (sum * 31) + (box.Specified?.Value.Ticks ?? 0);
            sum = (sum * 31) + (anchor?.Offset.Ticks ?? 0);
            sum = (sum * 31) + (nosing?.From.Ticks ?? 0);
            return (int)(sum ^ (sum >> 32));
        }
    }

    /// <summary>Whether every placement rule surely allows a place: each states what it always does, and nothing of it is kept.</summary>
    /// <param name="site">The site.</param>
    /// <param name="place">The place.</param>
    /// <param name="unjudged">The rules that couldn't be judged: the same of any place.</param>
    public bool AllPass(PlacementSite site, in Place place, out (Rule Rule, Wording Why)[] unjudged)
    {
        notJudged.Clear();
        bool all = true;
        foreach (PlacementRule rule in PlacementsFor(site))
        {
            if (!rule.Scope.Covers(site.Box, site.Room))
            {
                continue;
            }

            asked.AskAt(place);
            State(rule, site, asked);
            all &= asked.Passes || asked.NotJudgedBecause is not null;
            if (asked.NotJudgedBecause is { } why)
            {
                notJudged.Add((rule, why));
            }
        }

        unjudged = notJudged.Count == 0 ? [] : notJudged.ToArray();
        return all;
    }

    /// <summary>Whether a rule that can be judged surely allows a place.</summary>
    public bool Passes(PlacementRule rule, PlacementSite site, in Place place)
    {
        lock (stating)
        {
            placed.AskAt(place);
            return CanState(rule, site) && placed.Passes;
        }
    }

    /// <summary>The placement rules that speak of the box and can't be judged: the same of any place.</summary>
    public (Rule Rule, Wording Why)[] UnjudgedOf(PlacementSite site)
    {
        lock (stating)
        {
            silent.Clear();
            foreach (PlacementRule rule in PlacementsFor(site))
            {
                if (!rule.Scope.Covers(site.Box, site.Room))
                {
                    continue;
                }

                placed.AskAt(default);
                _ = CanState(rule, site);
                if (placed.NotJudgedBecause is { } why)
                {
                    silent.Add((rule, why));
                }
            }

            return silent.Count == 0 ? [] : silent.ToArray();
        }
    }

    /// <summary>The placement rules that speak of the box, and can be judged.</summary>
    public StatedPlacement[] StateAll(PlacementSite site, (Rule Rule, Wording Why)[] unjudged)
    {
        lock (stating)
        {
            placements.Clear();
            foreach (PlacementRule rule in PlacementsFor(site))
            {
                if (rule.Scope.Covers(site.Box, site.Room) && !IsAmong(unjudged, rule))
                {
                    placements.Add(new(rule, site, this));
                }
            }

            return placements.ToArray();
        }
    }

    /// <summary>What a rule allows, wherever the box is.</summary>
    public Slab[] SlabsOf(PlacementRule rule, PlacementSite site)
    {
        lock (stating)
        {
            placed.Clear();
            if (!CanState(rule, site))
            {
                // Of the box's own place it could be added up, or the box would be at fault; elsewhere it can't.
                placed.Clear();
                placed.Everywhere(AllowedHeights.DependsOn(MissingFacts.BrokenPart));
            }

            return placed.Take();
        }
    }

    /// <summary>Lets a rule state what it allows; false where its measures can't be added up.</summary>
    private bool CanState(PlacementRule rule, PlacementSite site)
    {
        try
        {
            State(rule, site, placed);
            return true;
        }
        catch (OverflowException)
        {
            return false;
        }
    }

    private static bool IsAmong((Rule Rule, Wording Why)[] unjudged, PlacementRule rule)
    {
        foreach ((Rule one, _) in unjudged)
        {
            if (ReferenceEquals(one, rule))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A box that is no part of the work is judged by none.</summary>
    private PlacementRule[] PlacementsFor(PlacementSite site) => site.Box.IsUntouched ? [] : rules.Placement;

    private static void State(PlacementRule rule, PlacementSite site, PlacementStatement statement)
    {
        if (site.Surface.HasBrokenParts && rule.ReadsWallParts)
        {
            statement.Everywhere(AllowedHeights.DependsOn(MissingFacts.BrokenPart));
        }
        else
        {
            rule.State(site, statement);
        }
    }

    private LimitRule[] LimitsFor(PlacementSite site) => site.Box.IsUntouched ? [] : rules.Limit;

    /// <summary>Asks every limit rule that speaks of the box whether it passes.</summary>
    private StatedSite Make(PlacementSite site, HeightLine? line, int likeness)
    {
        notJudged.Clear();
        bool mayFail = false;
        foreach (LimitRule rule in LimitsFor(site))
        {
            if (!rule.Scope.Covers(site.Box, site.Room))
            {
                continue;
            }

            limited.Ask();
            rule.State(site, limited);
            if (limited.NotJudgedBecause is { } why)
            {
                notJudged.Add((rule, why));
            }
            else
            {
                mayFail |= !limited.Passes;
            }
        }

        return new(this, site, line, likeness, mayFail, notJudged.Count == 0 ? [] : notJudged.ToArray());
    }

    /// <summary>What every limit rule that speaks of the box states.</summary>
    public StatedLimit[] LimitsOf(PlacementSite site)
    {
        lock (stating)
        {
            limits.Clear();
            foreach (LimitRule rule in LimitsFor(site))
            {
                if (!rule.Scope.Covers(site.Box, site.Room))
                {
                    continue;
                }

                limit.Clear();
                rule.State(site, limit);
                if (limit.NotJudgedBecause is null && limit.Take() is { Length: > 0 } cases)
                {
                    limits.Add(new(rule, site, cases));
                }
            }

            return limits.ToArray();
        }
    }
}
