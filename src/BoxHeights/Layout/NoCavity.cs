namespace BoxHeights;

/// <summary>A part of a wall in which no box can be set.</summary>
public sealed record NoCavity
{
    /// <summary>Describes a no cavity by what it must have.</summary>
    /// <param name="kind">What fills it.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public NoCavity(NoCavityKind kind, Distance left, Distance right)
    {
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>What fills it.</summary>
    public NoCavityKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>Its lower edge; the floor unless stated.</summary>
    public Level? Bottom { get; init; }

    /// <summary>Its upper edge; the ceiling unless stated.</summary>
    public Level? Top { get; init; }

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What fills it.</param>
    public NoCavity WithKind(NoCavityKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public NoCavity WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public NoCavity WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Bottom"/>.</summary>
    /// <param name="bottom">Its lower edge; the floor unless stated.</param>
    public NoCavity WithBottom(Level? bottom) => this with { Bottom = bottom };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">Its upper edge; the ceiling unless stated.</param>
    public NoCavity WithTop(Level? top) => this with { Top = top };
}
