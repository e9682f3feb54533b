namespace BoxHeights;

/// <summary>A part of a wall in which no box can be set.</summary>
[Described(nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record NoCavity
{
    /// <summary>What fills it.</summary>
    public NoCavityKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>Its lower edge; the floor unless stated.</summary>
    public Level? Bottom { get; init; }

    /// <summary>Its upper edge; the ceiling unless stated.</summary>
    public Level? Top { get; init; }
}
