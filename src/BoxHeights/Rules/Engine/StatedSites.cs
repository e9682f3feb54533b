using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Remembers what has been stated: boxes on one surface that are alike share a site.</summary>
internal sealed class StatedSites(int surfaces, CompiledRules rules, PartsCatalog catalog)
{
    private readonly List<StatedSite>?[] known = new List<StatedSite>?[surfaces];
    private readonly PlacementStatement statement = new();

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

        BoxTraits traits = new(box.Source, surface.Kind, edge, datum, catalog);
        StatedSite site = new(new PlacementSite(surface, traits, levels), anchor, nosing, rules, statement);
        here.Add(site);
        return site;
    }
}
