namespace BoxHeights.Rules;

/// <summary>A box on a bar, or on a bracket held at both ends, is in a bay that the bar spans: neither wider nor narrower.</summary>
/// <remarks>Silent where what it spans isn't stated, and in bays whose width isn't sure: where a stud may or may not stand, a post or a duct fills some of it, or an opening is in it.</remarks>
[Row]
public sealed partial record BarSpan : PlacementRule
{
    /// <inheritdoc/>
    public override bool AsksForAPlace => true;

    /// <inheritdoc/>
    public override HeldInstead HeldInstead => HeldInstead.LongerBar | HeldInstead.Blocking;

    /// <inheritdoc/>
    public override string Numbers => "the clear bay at least and at most what the bar is stated to span";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box is not { Surface: BoxSurface.Wall, Mounting: MountingMethod.Bar or MountingMethod.Bracket, Span: { } span, Size.IsStated: true }
            || site.Framing is not { Members.Count: > 0 and <= WallFraming.MostWorkedThrough } framing)
        {
            return;
        }

        // A box that isn't clear of the studs beside it is framing's concern.
        Distance half = EvenSize.Half(site.Box.Size.WidthRange.From);
        foreach (FramingBay bay in FramingBay.Of(site.Wall!, framing))
        {
            if (!span.Contains(bay.Width))
            {
                AllowedHeights over = AllowedHeights.Nothing;
                foreach (Level top in bay.Tops)
                {
                    over |= site.AtLeast(TargetLine.BoxTop, top, bay.Left, bay.Right);
                }

                statement.Within(bay.Left + half, bay.Right - half, over, bay.IsAssumed);
            }
        }
    }
}
