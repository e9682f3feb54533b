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
        Counter? counter = datum is Datum.Countertop && along is { } place ? surface.CounterOn(place, place) : null;
        List<StatedSite> here = known[surface.Index] ??= [];
        foreach (StatedSite one in here)
        {
            if (one.Site.Box.Edge == edge && one.Site.Box.Datum == datum && ReferenceEquals(one.Counter, counter)
                && BoxTraits.Same(one.Site.Box.Source, box.Source))
            {
                return one;
            }
        }

        Levels levels = surface.Space.Levels;
        if (counter is not null && ResolvedSurface.TopOf(counter) is { } top && top.Datum != Datum.Countertop)
        {
            levels = levels.With(Datum.Countertop, top.Offset, top.Datum);
        }

        BoxTraits traits = new(box.Source, surface.Kind, edge, datum, catalog);
        StatedSite site = new(new PlacementSite(surface, traits, levels), counter, rules, statement);
        here.Add(site);
        return site;
    }
}
