namespace BoxHeights;

/// <summary>A finish that lies on part of a wall.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record Finish
{
    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FinishKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>Its lower edge; the floor unless stated.</summary>
    public Level? Bottom { get; init; }

    /// <summary>Its upper edge; the ceiling unless stated.</summary>
    public Level? Top { get; init; }

    /// <summary>Its thickness.</summary>
    public DistanceRange? Thickness { get; init; }

    /// <summary>The thickness of mortar or adhesive under it.</summary>
    public DistanceRange? Bed { get; init; }

    /// <summary>Whether it burns.</summary>
    public bool? Combustible { get; init; }

    /// <summary>Whether it burns, as stated or as its kind tells: tile and stone don't; null where neither says.</summary>
    internal bool? Burns => Combustible ?? (IsSetInMortar ? false : null);

    /// <summary>Whether it is of a kind that is set in a bed of mortar or adhesive.</summary>
    internal bool IsSetInMortar => Kind == FinishKind.Tile || Kind == FinishKind.Stone;
}
