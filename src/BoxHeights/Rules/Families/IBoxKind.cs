namespace BoxHeights.Rules;

/// <summary>Boxes of a kind, as a rule asks for them.</summary>
internal interface IBoxKind
{
    /// <summary>Whether a box is listed as one, whatever its height.</summary>
    bool IsOne(DeviceBox box);
}

/// <summary>Whether a description lists any box of a kind, whatever its height.</summary>
internal static class BoxListing
{
    public static bool IsListedIn(this IBoxKind kind, Dwelling dwelling)
    {
        foreach (Room room in dwelling.Rooms)
        {
            if (kind.IsListedIn(room))
            {
                return true;
            }
        }

        return kind.IsListedOutside(dwelling);
    }

    public static bool IsListedOutside(this IBoxKind kind, Dwelling dwelling)
    {
        foreach (OutsideFace face in dwelling.Outside)
        {
            if (kind.IsListedIn(face))
            {
                return true;
            }
        }

        return false;
    }

    public static bool IsListedIn(this IBoxKind kind, Room room) => IsAmong(kind, room.Overhead) || IsOn(kind, room.Walls) || IsAmong(kind, room.InFloor);

    public static bool IsListedIn(this IBoxKind kind, OutsideFace face) => IsOn(kind, face.Walls);

    private static bool IsOn(IBoxKind kind, Items<Wall> walls)
    {
        foreach (Wall wall in walls)
        {
            if (IsAmong(kind, wall.Boxes))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsAmong(IBoxKind kind, Items<DeviceBox> boxes)
    {
        foreach (DeviceBox box in boxes)
        {
            if (kind.IsOne(box))
            {
                return true;
            }
        }

        return false;
    }
}
