namespace BoxHeights.Rules;

/// <summary>The body of a box that is set into a wall, clear of what fills the wall there: headers, posts, ducts, the pocket that a door slides into, and over the openings of a bearing wall the header.</summary>
/// <remarks>An edge that isn't stated is the floor or the ceiling. Boxes on the face of the wall or of a cabinet aren't judged.</remarks>
internal static class FilledCavity
{
    /// <summary>States the places that are clear of it.</summary>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="wall">Its wall.</param>
    /// <param name="headers">How tall headers are that aren't described; how tall one is is open between the two.</param>
    /// <param name="statement">Takes the slabs.</param>
    public static void State(PlacementSite site, Wall wall, DistanceRange headers, PlacementStatement statement)
    {
        if (!site.Box.IsRecessed)
        {
            return;
        }

        foreach (NoCavity filled in wall.NoCavity)
        {
            Clear(filled.Left, filled.Right, filled.Bottom, filled.Top);
        }

        foreach (Opening opening in wall.Openings)
        {
            if (DoorPocket.TryOf(opening, site.Usual, out DoorPocket pocket))
            {
                Clear(pocket.Left, pocket.Right, null, pocket.Top);
            }

            if (wall.Bearing && HeaderSpan.TryOf(opening, wall, site.Framing?.Thickness, site.Usual, out HeaderSpan header))
            {
                Clear(header.Left, header.Right, header.Bottom, header.TopAt(headers.From));
                IfTall(header);
            }
        }

        // Over what any header takes, it depends on how tall this one is.
        void IfTall(HeaderSpan header)
        {
            PlacementStatement tall = new();
            BodyClear.State(site, tall, header.Left, header.Right, header.Bottom, header.TopAt(headers.To));
            foreach (Slab slab in tall.Take())
            {
                statement.Within(slab.Left, slab.Right, AllowedHeights.OneOf(slab.Allowed, AllowedHeights.Anything, MissingFacts.HeaderHeight));
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
                statement.Within(left, right, AllowedHeights.DependsOn(MissingFacts.BoxSize));
            }
        }
    }
}
