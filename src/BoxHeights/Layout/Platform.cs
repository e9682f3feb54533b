namespace BoxHeights;

/// <summary>A deck, porch or balcony.</summary>
public sealed record Platform
{
    /// <summary>Describes a platform by what it must have.</summary>
    /// <param name="id">The name it is addressed by at its face.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the first wall of its face, from that wall's left end (framing face).</param>
    /// <param name="right">Its right end along the first wall of its face, from that wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Platform(string id, PlatformKind kind, Distance left, Distance right)
    {
        Id = id;
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>The name it is addressed by at its face.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public PlatformKind Kind { get; init; }

    /// <summary>Its left end along the first wall of its face, from that wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the first wall of its face, from that wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>The gap between the wall and the platform.</summary>
    public Distance? Gap { get; init => field = Valid.NotNegative(value, nameof(Gap)); }

    /// <summary>The height of its walking surface.</summary>
    public Level? Surface { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by at its face.</param>
    public Platform WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Platform WithKind(PlatformKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the first wall of its face, from that wall's left end (framing face).</param>
    public Platform WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the first wall of its face, from that wall's left end (framing face).</param>
    public Platform WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Gap"/>.</summary>
    /// <param name="gap">The gap between the wall and the platform.</param>
    public Platform WithGap(Distance? gap) => this with { Gap = gap };

    /// <summary>The same with another <see cref="Surface"/>.</summary>
    /// <param name="surface">The height of its walking surface.</param>
    public Platform WithSurface(Level? surface) => this with { Surface = surface };
}
