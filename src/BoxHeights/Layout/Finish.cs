namespace BoxHeights;

/// <summary>A finish that lies on part of a wall.</summary>
public sealed record Finish
{
    /// <summary>Describes a finish by what it must have.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Finish(string id, FinishKind kind, Distance left, Distance right)
    {
        Id = id;
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FinishKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

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

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    public Finish WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Finish WithKind(FinishKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public Finish WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public Finish WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Bottom"/>.</summary>
    /// <param name="bottom">Its lower edge; the floor unless stated.</param>
    public Finish WithBottom(Level? bottom) => this with { Bottom = bottom };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">Its upper edge; the ceiling unless stated.</param>
    public Finish WithTop(Level? top) => this with { Top = top };

    /// <summary>The same with another <see cref="Thickness"/>.</summary>
    /// <param name="thickness">Its thickness.</param>
    public Finish WithThickness(DistanceRange? thickness) => this with { Thickness = thickness };

    /// <summary>The same with another <see cref="Bed"/>.</summary>
    /// <param name="bed">The thickness of mortar or adhesive under it.</param>
    public Finish WithBed(DistanceRange? bed) => this with { Bed = bed };

    /// <summary>The same with another <see cref="Combustible"/>.</summary>
    /// <param name="combustible">Whether it burns.</param>
    public Finish WithCombustible(bool? combustible) => this with { Combustible = combustible };
}
