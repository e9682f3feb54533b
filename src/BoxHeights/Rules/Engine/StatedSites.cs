using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Remembers what has been stated: boxes on one surface that are alike share a site.</summary>
internal sealed class StatedSites(int surfaces, CompiledRules rules, PartsCatalog catalog)
{
    private readonly List<StatedSite>?[] known = new List<StatedSite>?[surfaces];

    // Used again for every site.
    private readonly PlacementStatement placed = new();
    private readonly LimitStatement limited = new();
    private readonly List<StatedPlacement> placements = [];
    private readonly List<StatedLimit> limits = [];
    private readonly List<(Rule Rule, string Why)> notJudged = [];

    /// <summary>What the rules state for a box whose height is measured to an edge from a datum.</summary>
    public StatedSite Of(ResolvedBox box, Edge edge, Datum datum, Distance? along)
    {
        ResolvedSurface surface = box.Surface;
        Level? anchor = ResolvedSurface.IsOfAThing(datum) && along is { } place
            && surface.TryAnchor(new(Distance.Zero, datum), place, place, out Level anchored) ? anchored : null;
        DistanceRange? nosing = surface.Stair is { } stair && along is { } at && stair.TryNosing(at, out DistanceRange line) ? line : null;
        List<StatedSite> here = known[surface.Index] ??= [];
        foreach (StatedSite one in here)
        {
            if (one.Site.Box.Edge == edge && one.Site.Box.Datum == datum && one.Anchor == anchor && one.Nosing == nosing
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

        BoxTraits traits = new(box.Source, surface.Kind, edge, datum, catalog, box.IsUntouched);
        StatedSite site = State(new(surface, traits, levels), anchor, nosing);
        here.Add(site);
        return site;
    }

    /// <summary>Asks every rule that speaks of the box.</summary>
    private StatedSite State(PlacementSite site, Level? anchor, DistanceRange? nosing)
    {
        placements.Clear();
        limits.Clear();
        notJudged.Clear();
        if (site.Box.IsUntouched)
        {
            return new(site, anchor, nosing, [], [], []);
        }

        foreach (PlacementRule rule in rules.Placement)
        {
            if (!rule.Scope.Covers(site.Box, site.Room))
            {
                continue;
            }

            placed.Clear();
            if (site.Surface.HasBrokenParts && rule.ReadsWallParts)
            {
                placed.Everywhere(AllowedHeights.DependsOn(Facts.BrokenPart));
            }
            else
            {
                rule.State(site, placed);
            }

            if (placed.NotJudgedBecause is { } why)
            {
                notJudged.Add((rule, why));
            }
            else if (placed.Take() is { Length: > 0 } slabs)
            {
                placements.Add(new(rule, slabs, site));
            }
        }

        foreach (LimitRule rule in rules.Limit)
        {
            if (!rule.Scope.Covers(site.Box, site.Room))
            {
                continue;
            }

            limited.Clear();
            rule.State(site, limited);
            if (limited.NotJudgedBecause is { } why)
            {
                notJudged.Add((rule, why));
            }
            else if (limited.Take() is { Length: > 0 } cases)
            {
                limits.Add(new(rule, site, cases));
            }
        }

        return new(site, anchor, nosing, placements.ToArray(), limits.ToArray(), notJudged.ToArray());
    }
}
