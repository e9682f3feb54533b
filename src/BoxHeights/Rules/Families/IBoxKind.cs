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
    public static bool IsListedIn(this IBoxKind kind, Dwelling dwelling) => dwelling.Rooms.Exists(kind.IsListedIn) || kind.IsListedOutside(dwelling);

    public static bool IsListedOutside(this IBoxKind kind, Dwelling dwelling) => dwelling.Outside.Exists(kind.IsListedIn);

    public static bool IsListedIn(this IBoxKind kind, Room room) => IsAmong(kind, room.Overhead) || IsOn(kind, room.Walls) || IsAmong(kind, room.InFloor);

    public static bool IsListedIn(this IBoxKind kind, OutsideFace face) => IsOn(kind, face.Walls);

    private static bool IsOn(IBoxKind kind, Items<Wall> walls) => walls.Exists(wall => IsAmong(kind, wall.Boxes));

    private static bool IsAmong(IBoxKind kind, Items<DeviceBox> boxes) => boxes.Exists(kind.IsOne);
}
