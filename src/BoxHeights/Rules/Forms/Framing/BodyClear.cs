namespace BoxHeights.Rules;

/// <summary>A box's body beside a piece of the wall, over it or under it: never in it. Touching is fine.</summary>
/// <remarks>
/// Of a box of which only a range of widths is known it is asked whether the narrowest is clear: one that is set right against something is against it
/// however wide it turns out, its center moving along. Where a distance has to be kept, it depends on the box.
/// </remarks>
internal static class BodyClear
{
    /// <summary>States the places that are clear of a piece.</summary>
    /// <param name="site">The box, whose size is stated.</param>
    /// <param name="statement">Takes the slabs.</param>
    /// <param name="left">The piece's left side.</param>
    /// <param name="right">The piece's right side.</param>
    /// <param name="bottom">Its lower edge; the floor where that is null.</param>
    /// <param name="top">Its upper edge; the ceiling where that is null.</param>
    /// <param name="keptOff">Whether the piece is taken wider by a distance to keep from it.</param>
    /// <param name="isAssumed">Whether where the piece stands is only assumed.</param>
    public static void State(
        PlacementSite site, PlacementStatement statement, Distance left, Distance right, Level? bottom, Level? top, bool keptOff = false, bool isAssumed = false)
    {
        AllowedHeights off = (top is { } high ? site.AtLeast(TargetLine.BoxBottom, high, left, right) : AllowedHeights.Nothing)
            | (bottom is { } low ? site.AtMost(TargetLine.BoxTop, low, left, right) : AllowedHeights.Nothing);
        DistanceRange wide = site.Box.Size.WidthRange;
        Distance tick = Distance.FromTicks(1);
        Distance least = EvenSize.Half(wide.From);
        Distance most = EvenSize.Half(wide.To);
        statement.Within(left - least + tick, right + least - tick, off, isAssumed);
        if (keptOff && least < most)
        {
            AllowedHeights ifWide = AllowedHeights.OneOf(off, AllowedHeights.Anything, MissingFacts.BoxSize);
            statement.Within(left - most + tick, left - least, ifWide, isAssumed);
            statement.Within(right + least, right + most - tick, ifWide, isAssumed);
        }
    }
}
