namespace BoxHeights.Rules;

/// <summary>A box that is screwed to a metal stud is on its closed side, the web: the open side has nothing but lips to hold it.</summary>
/// <remarks>
/// Silent where the open side isn't stated, where studs are only assumed, and about studs that stand at an opening, which may be turned. A place at which
/// something else holds the box, such as the web of the next stud across a bay as wide as the box, is fine. Boxes on brackets, bars and blocks aren't judged.
/// </remarks>
public sealed record WebSide : PlacementRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="within">How far from a stud's face the side of a box may be and count as on it.</param>
    public WebSide(string id, string summary, Severity severity, Citation citation, Distance within)
        : base(id, summary, severity, citation) => Within = within;

    /// <summary>How far from a stud's face the side of a box may be and count as on it: as for <see cref="FramingFit.Within"/>.</summary>
    public Distance Within { get; init; }

    /// <inheritdoc/>
    public override bool AsksForAPlace => true;

    /// <inheritdoc/>
    public override HeldInstead HeldInstead => HeldInstead.Bracket;

    /// <inheritdoc/>
    public override string Numbers => "a box within " + Within + " of a metal stud's face on the side of its web";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box is { Surface: BoxSurface.Wall, Mounting: MountingMethod.Stud, Size.IsStated: true }
            && site.Framing is { OpenSide: not null, Known: not StudKnowledge.Assumed, Members.Count: > 0 and <= WallFraming.MostWorkedThrough } framing)
        {
            NailedStretches.StateOpenSides(site, framing, Within, statement);
        }
    }
}
