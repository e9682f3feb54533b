namespace BoxHeights;

/// <summary>A counter that stands against a wall.</summary>
public sealed record Counter
{
    /// <summary>Describes a counter by what it must have.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Counter(string id, CounterKind kind, Distance left, Distance right)
    {
        Id = id;
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public CounterKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>The height of its top. Where it isn't stated, what documents ask of boxes over it can't be told; habits of the trade assume 36 in, and say so.</summary>
    public Level? Top { get; init; }

    /// <summary>From the finished wall to its front edge, overhang included.</summary>
    public Distance? Depth { get; init => field = Valid.Positive(value, nameof(Depth)); }

    /// <summary>How far the top reaches beyond the base.</summary>
    public Distance? Overhang { get; init => field = Valid.NotNegative(value, nameof(Overhang)); }

    /// <summary>How deep a seated person's knees fit under it; zero is "none".</summary>
    public Distance? KneeSpace { get; init => field = Valid.NotNegative(value, nameof(KneeSpace)); }

    /// <summary>How thick the top is at the wall, from the surface down.</summary>
    public Distance? Thickness { get; init => field = Valid.Positive(value, nameof(Thickness)); }

    /// <summary>Whether its base stands on the subfloor or on the finished floor.</summary>
    public Datum? BaseStandsOn { get; init; }

    /// <summary>Sinks, ranges and whatever else interrupts its top.</summary>
    public Items<CounterInterruption> Interruptions { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by on its wall.</param>
    public Counter WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Counter WithKind(CounterKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public Counter WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public Counter WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">The height of its top.</param>
    public Counter WithTop(Level? top) => this with { Top = top };

    /// <summary>The same with another <see cref="Depth"/>.</summary>
    /// <param name="depth">From the finished wall to its front edge, overhang included.</param>
    public Counter WithDepth(Distance? depth) => this with { Depth = depth };

    /// <summary>The same with another <see cref="Overhang"/>.</summary>
    /// <param name="overhang">How far the top reaches beyond the base.</param>
    public Counter WithOverhang(Distance? overhang) => this with { Overhang = overhang };

    /// <summary>The same with another <see cref="KneeSpace"/>.</summary>
    /// <param name="kneeSpace">How deep a seated person's knees fit under it; zero is "none".</param>
    public Counter WithKneeSpace(Distance? kneeSpace) => this with { KneeSpace = kneeSpace };

    /// <summary>The same with another <see cref="Thickness"/>.</summary>
    /// <param name="thickness">How thick the top is at the wall, from the surface down.</param>
    public Counter WithThickness(Distance? thickness) => this with { Thickness = thickness };

    /// <summary>The same with another <see cref="BaseStandsOn"/>.</summary>
    /// <param name="baseStandsOn">Whether its base stands on the subfloor or on the finished floor.</param>
    public Counter WithBaseStandsOn(Datum? baseStandsOn) => this with { BaseStandsOn = baseStandsOn };

    /// <summary>The same with another <see cref="Interruptions"/>.</summary>
    /// <param name="interruptions">Sinks, ranges and whatever else interrupts its top.</param>
    public Counter WithInterruptions(Items<CounterInterruption> interruptions) => this with { Interruptions = interruptions };
}
