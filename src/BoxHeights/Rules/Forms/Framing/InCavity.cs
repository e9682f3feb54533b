namespace BoxHeights.Rules;

/// <summary>The body of a box that is set into a wall is clear of what fills the wall there: headers, posts, ducts, and the pocket that a door slides into.</summary>
/// <remarks>
/// Only what is stated is known to be there, the pocket of a pocket door whose side is stated, and over the openings of a wall that is stated to carry something a
/// header: on its jacks, from the head up, as long as the opening and a jack at each end. One that is stated over an opening is taken as it is stated.
/// Elsewhere no header is made up. An edge that isn't stated is the floor or the ceiling. Boxes on the face of the wall or of a cabinet aren't judged.
/// </remarks>
[Row]
public sealed partial record InCavity : PlacementRule
{
    /// <summary>How tall a header is at least.</summary>
    public Distance LeastHeader { get; init; }

    /// <summary>How tall a header is at most; its height is open between the two.</summary>
    public Distance MostHeader { get; init; }

    /// <inheritdoc/>
    public override bool AsksForAPlace => true;

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override string Numbers => "the body of the box in no part of a wall that is stated to have no cavity, nor in a pocket door's pocket, nor in the header of a bearing wall's opening, " + LeastHeader + " to " + MostHeader + " over its head";

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

            if (wall.Bearing && HeaderSpan.TryOf(opening, wall, site.Framing?.Thickness, out HeaderSpan header))
            {
                Clear(header.Left, header.Right, header.Bottom, header.TopAt(LeastHeader));
                IfTall(header);
            }
        }

        // Over what any header takes, it depends on how tall this one is.
        void IfTall(HeaderSpan header)
        {
            PlacementStatement tall = new();
            BodyClear.State(site, tall, header.Left, header.Right, header.Bottom, header.TopAt(MostHeader));
            foreach (Slab slab in tall.Take())
            {
                statement.Within(slab.Left, slab.Right, AllowedHeights.OneOf(slab.Allowed, AllowedHeights.Anything, Facts.HeaderHeight));
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
