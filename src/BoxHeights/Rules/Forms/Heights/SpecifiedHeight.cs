namespace BoxHeights.Rules;

/// <summary>A box is set where its drawing asks for it. A height without an edge is read in all three ways.</summary>
[Row(nameof(Within))]
public sealed partial record SpecifiedHeight : PlacementRule
{
    /// <summary>How far off the drawing's height a box may be, up or down, itself allowed.</summary>
    public Distance Within { get; init; }

    /// <inheritdoc/>
    public override Distance? OffTheDrawing => Within;

    /// <inheritdoc/>
    public override bool ReadsWallParts => false;

    /// <inheritdoc/>
    public override string Numbers => "within " + Within + " of the height on the drawing";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box.Specified is not { } asked)
        {
            return;
        }

        if (asked.Edge is { } edge)
        {
            statement.Everywhere(Near(site, asked, edge));
            return;
        }

        AllowedHeights any = AllowedHeights.OneOf(
            AllowedHeights.OneOf(Near(site, asked, Edge.Bottom), Near(site, asked, Edge.Center), MissingFacts.EdgeMeant),
            Near(site, asked, Edge.Top),
            MissingFacts.EdgeMeant);

        // Which edge is meant is to be asked first: until then nobody can tell whether the size of the box matters.
        statement.Everywhere(new(any.Sure, any.Possible, any.Needs & ~MissingFacts.BoxSize));
    }

    /// <inheritdoc/>
    public override bool StateIfMeant(Edge edge, PlacementSite site, PlacementStatement statement)
    {
        if (site.Box.Specified is { } asked)
        {
            statement.Everywhere(Near(site, asked, edge));
        }

        return true;
    }

    /// <inheritdoc/>
    public override Wording? AskedOf(PlacementSite site) => site.Box.Specified is { } drawn ? Printed.Exactly(drawn, site.Units) : null;

    private AllowedHeights Near(PlacementSite site, BoxHeight asked, Edge edge)
    {
        TargetLine line = edge switch { Edge.Bottom => TargetLine.BoxBottom, Edge.Top => TargetLine.BoxTop, _ => TargetLine.Center };
        return site.AtLeast(line, asked.Value - Within, asked.Datum) & site.AtMost(line, asked.Value + Within, asked.Datum);
    }
}
