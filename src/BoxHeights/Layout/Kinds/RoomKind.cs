using System;

namespace BoxHeights;

/// <summary>What a room is for. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct RoomKind : IEquatable<RoomKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public RoomKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>kitchen</c></summary>
    public static RoomKind Kitchen => new("kitchen");

    /// <summary><c>bathroom</c></summary>
    public static RoomKind Bathroom => new("bathroom");

    /// <summary><c>bedroom</c></summary>
    public static RoomKind Bedroom => new("bedroom");

    /// <summary><c>living-room</c></summary>
    public static RoomKind LivingRoom => new("living-room");

    /// <summary><c>dining-room</c></summary>
    public static RoomKind DiningRoom => new("dining-room");

    /// <summary><c>family-room</c></summary>
    public static RoomKind FamilyRoom => new("family-room");

    /// <summary><c>hall</c></summary>
    public static RoomKind Hall => new("hall");

    /// <summary><c>foyer</c></summary>
    public static RoomKind Foyer => new("foyer");

    /// <summary><c>laundry</c></summary>
    public static RoomKind Laundry => new("laundry");

    /// <summary><c>garage</c></summary>
    public static RoomKind Garage => new("garage");

    /// <summary><c>closet</c></summary>
    public static RoomKind Closet => new("closet");

    /// <summary><c>office</c></summary>
    public static RoomKind Office => new("office");

    /// <summary><c>basement</c></summary>
    public static RoomKind Basement => new("basement");

    /// <summary><c>attic</c></summary>
    public static RoomKind Attic => new("attic");

    /// <summary><c>stair</c></summary>
    public static RoomKind Stair => new("stair");

    /// <summary><c>utility</c></summary>
    public static RoomKind Utility => new("utility");

    /// <summary><c>pantry</c></summary>
    public static RoomKind Pantry => new("pantry");

    /// <summary><c>breakfast-room</c></summary>
    public static RoomKind BreakfastRoom => new("breakfast-room");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<RoomKind> Known { get; } = new[]
    {
        Kitchen, Bathroom, Bedroom, LivingRoom, DiningRoom, FamilyRoom, Hall, Foyer, Laundry, Garage, Closet, Office,
        Basement, Attic, Stair, Utility, Pantry, BreakfastRoom,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(RoomKind left, RoomKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(RoomKind left, RoomKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(RoomKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is RoomKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
