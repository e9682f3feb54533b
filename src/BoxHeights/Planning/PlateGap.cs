using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>How much wall is left between the plates of boxes that a plan adds: two boxes side by side or over one another are told apart, and each has room for its own framing.</summary>
/// <remarks>Off a box that is there already its plate only has to keep clear. A box without a plate that is known counts as wide and tall as it is.</remarks>
internal static class PlateGap
{
    /// <summary>Whether a box at its place keeps clear of all others on its surface.</summary>
    public static bool IsKept(RoughInDraft draft, string address, DeviceBox box) =>
        box is not { At: { } at, Height: { } height } || draft.State.SiteFor(address, box) is not { } site || IsKept(draft, site, at, height.Value);

    /// <summary>Whether a box like one that a site is stated for would keep clear of all others there.</summary>
    /// <param name="draft">The plan so far.</param>
    /// <param name="site">What is stated for the box.</param>
    /// <param name="at">Its center along the surface.</param>
    /// <param name="reading">Its height, as the reading of the stick.</param>
    public static bool IsKept(RoughInDraft draft, StatedSite site, Distance at, Distance reading)
    {
        LayoutState state = draft.State;
        (Distance wide, Distance tall) = Outline(site);
        DistanceRange mine = site.CenterAboveHeight + reading;
        foreach (int other in state.BoxesOn(site.Site.Surface))
        {
            if (state.SitesOf(other) is not { Length: > 0 } sites || state.AtOf(other) is not { } beside)
            {
                continue;
            }

            Distance gap = draft.IsPlanned(other) ? draft.Options.PlateGap ?? state.Rules.RoomForBoxes.BetweenPlates : Distance.Zero;
            (Distance itsWidth, Distance itsHeight) = Outline(sites[0]);
            bool clearAlong = ((at - beside).Abs() - gap) * 2 >= wide + itsWidth;
            bool clearInHeight = state.TryCenter(other, out DistanceRange center)
                && (Distance.Max(center.From - mine.To, mine.From - center.To) - gap) * 2 >= tall + itsHeight;
            if (!clearAlong && !clearInHeight)
            {
                return false;
            }
        }

        return true;
    }

    private static (Distance Wide, Distance Tall) Outline(StatedSite site) =>
        site.Site.Box.Plate is { } plate ? (plate.Width, plate.Height) : (site.Site.Box.Size.Width, site.Site.Box.Size.Height);
}
