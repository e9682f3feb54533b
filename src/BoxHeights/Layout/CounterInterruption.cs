namespace BoxHeights;

/// <summary>Something that interrupts a counter's top.</summary>
public sealed record CounterInterruption
{
    /// <summary>Describes a counter interruption by what it must have.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public CounterInterruption(InterruptionKind kind, Distance left, Distance right)
    {
        Kind = kind;
        Left = left;
        Right = right;
    }

    /// <summary>What it is.</summary>
    public InterruptionKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>How much counter is left behind it.</summary>
    public Distance? Behind { get; init => field = Valid.NotNegative(value, nameof(Behind)); }

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public CounterInterruption WithKind(InterruptionKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along the wall, from the wall's left end (framing face).</param>
    public CounterInterruption WithLeft(Distance left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along the wall, from the wall's left end (framing face).</param>
    public CounterInterruption WithRight(Distance right) => this with { Right = right };

    /// <summary>The same with another <see cref="Behind"/>.</summary>
    /// <param name="behind">How much counter is left behind it.</param>
    public CounterInterruption WithBehind(Distance? behind) => this with { Behind = behind };
}
