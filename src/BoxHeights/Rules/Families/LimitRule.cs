using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A rule about one quantity of a box as it is placed, such as its fill: it lies within a set. Its remedy is another box, ring or projection, never a move.</summary>
/// <remarks>
/// The law of placement rules holds here too: a limit may read everything except where the box now is. What differs from place to place is stated for
/// each <see cref="LimitZone"/> of its surface, so that a box that is moved is compared with what was stated once.
/// </remarks>
public abstract record LimitRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected LimitRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>States the quantity and what is allowed.</summary>
    /// <param name="site">The box and everything around it.</param>
    /// <param name="statement">Takes both.</param>
    public abstract void State(PlacementSite site, LimitStatement statement);

    /// <summary>Boxes of the same purpose that would meet the rule, best first: larger or deeper ones, or one that is set further out.</summary>
    /// <param name="box">The box that doesn't.</param>
    /// <param name="measured">The quantity that isn't allowed.</param>
    /// <param name="catalog">What boxes there are.</param>
    /// <returns>The box with another volume, size or projection. The first that brings no other finding with it is offered.</returns>
    public abstract IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog);

    /// <summary>What to do where <see cref="Mends"/> knows no box, in one phrase.</summary>
    public virtual Wording ElseDo => $"nothing that is known here mends it";
}
