namespace BoxHeights.Rules;

/// <summary>What the counter of a wall leaves a box that is over it. No document says so, but nobody who asks for a box over a counter is served by one under it, and on its edge there is no wall to set it in.</summary>
internal static class OverCounter
{
    /// <summary>The readings at which a box, with its plate where it has one, is surely over the counter that stands at a place; null where none does.</summary>
    public static DistanceSet? At(PlacementSite site, Distance along) =>
        site.Surface.CounterOn(along, along) is not { } counter ? null
        : site.AtLeast(TargetLine.PlateBottom, site.Surface.UsualTopOf(counter), along, along).Sure is { IsEmpty: false } plate ? plate
        : site.AtLeast(TargetLine.BoxBottom, site.Surface.UsualTopOf(counter), along, along).Sure;

    /// <summary>Whether it is the counter alone that keeps a box which is over it from a height that its rules allow where it is.</summary>
    public static bool Decides(LayoutState state, int box) =>
        Is(state, box) && state.SitesOf(box)[0] is var site && state.AtOf(box) is { } along && At(site.Site, along) is { } over
        && site.Places.SureAt(along.Ticks) is { IsEmpty: false } allowed && (allowed & over).IsEmpty;

    /// <summary>Whether a box is over a counter where it is, by its center.</summary>
    public static bool Is(LayoutState state, int box) =>
        state.AtOf(box) is { } along && state.HeightOf(box) is { Edge: { } edge } now && state.SiteOf(box, edge, now.Datum, along).Site is var site
        && site.Surface.CounterOn(along, along) is { } counter && site.AtLeast(TargetLine.Center, site.Surface.UsualTopOf(counter), along, along).Sure.Contains(now.Value);
}
