namespace BoxHeights;

/// <summary>Something that hides part of a wall.</summary>
public sealed record Covering
{
    /// <summary>Describes a covering by what it must have.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Covering(string id, CoveringKind kind, Distance left, Distance right)
    {
        Id = id;
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public CoveringKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>Its lower edge; the floor unless stated.</summary>
    public Level? Bottom { get; init; }

    /// <summary>Its upper edge; the ceiling unless stated.</summary>
    public Level? Top { get; init; }

    /// <summary>Whether a box inside it can still be reached.</summary>
    public bool? OpenInside { get; init; }

    /// <summary>How far a light rail hangs below it.</summary>
    public Distance? LightRail { get; init => field = Valid.NotNegative(value, nameof(LightRail)); }

    /// <summary>How far it stands out from the wall: how deep a shelf or a cabinet is.</summary>
    public Distance? Depth { get; init => field = Valid.Positive(value, nameof(Depth)); }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    public Covering WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Covering WithKind(CoveringKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public Covering WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public Covering WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Bottom"/>.</summary>
    /// <param name="bottom">Its lower edge; the floor unless stated.</param>
    public Covering WithBottom(Level? bottom) => this with { Bottom = bottom };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">Its upper edge; the ceiling unless stated.</param>
    public Covering WithTop(Level? top) => this with { Top = top };

    /// <summary>The same with another <see cref="OpenInside"/>.</summary>
    /// <param name="openInside">Whether a box inside it can still be reached.</param>
    public Covering WithOpenInside(bool? openInside) => this with { OpenInside = openInside };

    /// <summary>The same with another <see cref="LightRail"/>.</summary>
    /// <param name="lightRail">How far a light rail hangs below it.</param>
    public Covering WithLightRail(Distance? lightRail) => this with { LightRail = lightRail };

    /// <summary>The same with another <see cref="Depth"/>.</summary>
    /// <param name="depth">How far it stands out from the wall.</param>
    public Covering WithDepth(Distance? depth) => this with { Depth = depth };
}
