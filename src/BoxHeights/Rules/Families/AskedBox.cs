namespace BoxHeights.Rules;

/// <summary>A box that is asked about at a place along its wall, where it isn't: what a provision rule may know of it.</summary>
/// <param name="Site">The box.</param>
/// <param name="Along">The place.</param>
/// <param name="CanBeWithin">Tells whether the placement rules leave it there.</param>
internal sealed record AskedBox(PlacementSite Site, Distance Along, AskedBox.Leaves CanBeWithin)
{
    /// <summary>Whether placement rules let the box have its center at some heights above the storey's subfloor.</summary>
    public delegate Verdict Leaves(in DistanceSet centers, bool habitsToo, out MissingFacts needs);
}
