namespace BoxHeights;

/// <summary>An opening in a wall, between the faces of its rough framing.</summary>
public sealed record Opening
{
    /// <summary>Describes an opening by what it must have.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Opening(string id, OpeningKind kind, Distance left, Distance right)
    {
        Id = id;
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public OpeningKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>The bottom of the rough opening; the floor unless stated.</summary>
    public Level? Sill { get; init; }

    /// <summary>The top of the rough opening.</summary>
    public Level? Head { get; init; }

    /// <summary>The width of the door leaf.</summary>
    public Distance? Leaf { get; init => field = Valid.Positive(value, nameof(Leaf)); }

    /// <summary>The side that the hinges are on, seen from this room; of a double door, the side of the leaf that is used first.</summary>
    public WallEnd? Hinge { get; init; }

    /// <summary>Whether the leaf swings into this room or away from it.</summary>
    public DoorSwing? Swing { get; init; }

    /// <summary>The width of its casing.</summary>
    public Distance? Casing { get; init => field = Valid.NotNegative(value, nameof(Casing)); }

    /// <summary>From the jamb's edge to the casing.</summary>
    public Distance? Reveal { get; init => field = Valid.NotNegative(value, nameof(Reveal)); }

    /// <summary>The thickness of the window stool.</summary>
    public Distance? Stool { get; init => field = Valid.NotNegative(value, nameof(Stool)); }

    /// <summary>The side that a pocket door slides into; of a barn or sliding door, the side that its panel stands on when it is open.</summary>
    public WallEnd? PocketOn { get; init; }

    /// <summary>Whether this room is the inside or the outside of an entrance to the dwelling.</summary>
    public EntranceSide? Entrance { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    public Opening WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Opening WithKind(OpeningKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public Opening WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public Opening WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Sill"/>.</summary>
    /// <param name="sill">The bottom of the rough opening; the floor unless stated.</param>
    public Opening WithSill(Level? sill) => this with { Sill = sill };

    /// <summary>The same with another <see cref="Head"/>.</summary>
    /// <param name="head">The top of the rough opening.</param>
    public Opening WithHead(Level? head) => this with { Head = head };

    /// <summary>The same with another <see cref="Leaf"/>.</summary>
    /// <param name="leaf">The width of the door leaf.</param>
    public Opening WithLeaf(Distance? leaf) => this with { Leaf = leaf };

    /// <summary>The same with another <see cref="Hinge"/>.</summary>
    /// <param name="hinge">The side that the hinges are on, seen from this room; of a double door, the side of the leaf that is used first.</param>
    public Opening WithHinge(WallEnd? hinge) => this with { Hinge = hinge };

    /// <summary>The same with another <see cref="Swing"/>.</summary>
    /// <param name="swing">Whether the leaf swings into this room or away from it.</param>
    public Opening WithSwing(DoorSwing? swing) => this with { Swing = swing };

    /// <summary>The same with another <see cref="Casing"/>.</summary>
    /// <param name="casing">The width of its casing.</param>
    public Opening WithCasing(Distance? casing) => this with { Casing = casing };

    /// <summary>The same with another <see cref="Reveal"/>.</summary>
    /// <param name="reveal">From the jamb's edge to the casing.</param>
    public Opening WithReveal(Distance? reveal) => this with { Reveal = reveal };

    /// <summary>The same with another <see cref="Stool"/>.</summary>
    /// <param name="stool">The thickness of the window stool.</param>
    public Opening WithStool(Distance? stool) => this with { Stool = stool };

    /// <summary>The same with another <see cref="PocketOn"/>.</summary>
    /// <param name="pocketOn">The side that a pocket door slides into; of a barn or sliding door, the side that its panel stands on when it is open.</param>
    public Opening WithPocketOn(WallEnd? pocketOn) => this with { PocketOn = pocketOn };

    /// <summary>The same with another <see cref="Entrance"/>.</summary>
    /// <param name="entrance">Whether this room is the inside or the outside of an entrance to the dwelling.</param>
    public Opening WithEntrance(EntranceSide? entrance) => this with { Entrance = entrance };
}
