namespace BoxHeights.Rules;

/// <summary>The body of a box that is set into a wall is clear of what fills the wall there: headers, posts, ducts, and the pocket that a door slides into.</summary>
/// <remarks>
/// Only what is stated, and the pocket of a pocket door whose side is stated, is known to be there: a header isn't made up over every opening.
/// An edge that isn't stated is the floor or the ceiling. Boxes on the face of the wall or of a cabinet aren't judged.
/// </remarks>
[Row]
public sealed partial record InCavity : PlacementRule
{
    /// <inheritdoc/>
    public override bool AsksForAPlace => true;

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override string Numbers => "the body of the box in no part of a wall that is stated to have no cavity, nor in a pocket door's pocket";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Wall is not { } wall || !BodyClear.IsRecessed(site.Box))
        {
            return;
        }

        foreach (NoCavity filled in wall.NoCavity)
        {
            Clear(filled.Left, filled.Right, filled.Bottom, filled.Top);
        }

        foreach (Opening opening in wall.Openings)
        {
            if (DoorPocket.TryOf(opening, out DoorPocket pocket))
            {
                Clear(pocket.Left, pocket.Right, null, pocket.Top);
            }
        }

        void Clear(Distance left, Distance right, Level? bottom, Level? top)
        {
            if (site.Box.Size.IsStated)
            {
                BodyClear.State(site, statement, left, right, bottom, top);
            }
            else
            {
                statement.Within(left, right, AllowedHeights.DependsOn(Facts.BoxSize));
            }
        }
    }
}
