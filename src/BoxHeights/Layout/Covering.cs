namespace BoxHeights;

/// <summary>Something that hides part of a wall.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record Covering
{
    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public CoveringKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>Its lower edge; the floor unless stated.</summary>
    public Level? Bottom { get; init; }

    /// <summary>Its upper edge; the ceiling unless stated.</summary>
    public Level? Top { get; init; }

    /// <summary>Whether a box inside it can still be reached.</summary>
    public bool? OpenInside { get; init; }

    /// <summary>How far a light rail hangs below it.</summary>
    public Distance? LightRail { get; init => field = Guard.NotNegative(value, nameof(LightRail)); }

    /// <summary>How far it stands out from the wall: how deep a shelf or a cabinet is.</summary>
    public Distance? Depth { get; init => field = Guard.Positive(value, nameof(Depth)); }
}
