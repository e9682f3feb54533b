namespace BoxHeights;

/// <summary>An opening in a wall, between the faces of its rough framing.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record Opening
{
    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public OpeningKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>The bottom of the rough opening; the floor unless stated.</summary>
    public Level? Sill { get; init; }

    /// <summary>The top of the rough opening.</summary>
    public Level? Head { get; init; }

    /// <summary>The width of the door leaf.</summary>
    public Distance? Leaf { get; init => field = Guard.Positive(value, nameof(Leaf)); }

    /// <summary>The side that the hinges are on, seen from this room; of a double door, the side of the leaf that is used first.</summary>
    public WallEnd? Hinge { get; init => field = Guard.Known(value, WallEnd.Right, nameof(Hinge)); }

    /// <summary>Whether the leaf swings into this room or away from it.</summary>
    public DoorSwing? Swing { get; init => field = Guard.Known(value, DoorSwing.Away, nameof(Swing)); }

    /// <summary>The width of its casing.</summary>
    public Distance? Casing { get; init => field = Guard.NotNegative(value, nameof(Casing)); }

    /// <summary>From the jamb's edge to the casing.</summary>
    public Distance? Reveal { get; init => field = Guard.NotNegative(value, nameof(Reveal)); }

    /// <summary>The thickness of the window stool.</summary>
    public Distance? Stool { get; init => field = Guard.NotNegative(value, nameof(Stool)); }

    /// <summary>The side that a pocket door slides into; of a barn or sliding door, the side that its panel stands on when it is open.</summary>
    public WallEnd? PocketOn { get; init => field = Guard.Known(value, WallEnd.Right, nameof(PocketOn)); }

    /// <summary>Whether this room is the inside or the outside of an entrance to the dwelling.</summary>
    public EntranceSide? Entrance { get; init => field = Guard.Known(value, EntranceSide.Outside, nameof(Entrance)); }
}
