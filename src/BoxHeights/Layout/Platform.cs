namespace BoxHeights;

/// <summary>A deck, porch or balcony.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record Platform
{
    /// <summary>The name it is addressed by at its face.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public PlatformKind Kind { get; init; }

    /// <summary>Its left end along the first wall of its face, from that wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the first wall of its face, from that wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>The gap between the wall and the platform.</summary>
    public Distance? Gap { get; init => field = Guard.NotNegative(value, nameof(Gap)); }

    /// <summary>The height of its walking surface.</summary>
    public Level? Surface { get; init; }
}
