namespace BoxHeights.Rules;

/// <summary>The wall that a door's leaf stands before once it is fully open into the room.</summary>
internal static class OpenLeaves
{
    /// <summary>Adds what the leaves of one wall's doors cover when open: beside their hinges, or where the corner is nearer than that, along the next wall.</summary>
    public static void Add(Items<Wall> walls, int wall, bool closes, Breaks[] breaks)
    {
        foreach (Opening door in walls[wall].Openings)
        {
            if (door.Swing == DoorSwing.Away || (door.Kind != OpeningKind.Door && door.Kind != OpeningKind.DoubleDoor))
            {
                continue;
            }

            bool pair = door.Kind == OpeningKind.DoubleDoor;
            Distance width = door.Leaf ?? door.Right - door.Left;
            Distance leaf = pair && door.Leaf is null ? Distance.FromTicks(width.Ticks / 2) : width;
            Verdict known = door.Swing is not null ? Verdict.Passes : Verdict.Unknown;
            if (pair || door.Hinge != WallEnd.Right)
            {
                Left(walls, wall, closes, breaks, door.Left, leaf, pair || door.Hinge is not null ? known : Verdict.Unknown);
            }

            if (pair || door.Hinge != WallEnd.Left)
            {
                Right(walls, wall, closes, breaks, door.Right, leaf, pair || door.Hinge is not null ? known : Verdict.Unknown);
            }
        }
    }

    private static void Left(Items<Wall> walls, int wall, bool closes, Breaks[] breaks, Distance hinge, Distance leaf, Verdict known)
    {
        breaks[wall].Add(hinge - leaf, hinge, known);
        int before = wall > 0 ? wall - 1 : closes ? walls.Count - 1 : -1;
        if (hinge < leaf && before >= 0 && DoorCover.BeyondTheEnd(DrawingTolerance.Squared(walls[before].TurnDegrees), leaf, hinge) is { } far)
        {
            breaks[before].Add(walls[before].Length - far, walls[before].Length, known);
        }
    }

    private static void Right(Items<Wall> walls, int wall, bool closes, Breaks[] breaks, Distance hinge, Distance leaf, Verdict known)
    {
        breaks[wall].Add(hinge, hinge + leaf, known);
        int after = wall + 1 < walls.Count ? wall + 1 : closes ? 0 : -1;
        Distance toTheEnd = walls[wall].Length - hinge;
        if (toTheEnd < leaf && after >= 0 && DoorCover.BeyondTheEnd(DrawingTolerance.Squared(walls[wall].TurnDegrees), leaf, toTheEnd) is { } far)
        {
            breaks[after].Add(Distance.Zero, far, known);
        }
    }
}
