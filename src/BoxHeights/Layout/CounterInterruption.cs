namespace BoxHeights;

/// <summary>Something that interrupts a counter's top.</summary>
[Described(nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record CounterInterruption
{
    /// <summary>What it is.</summary>
    public InterruptionKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>How much counter is left behind it.</summary>
    public Distance? Behind { get; init => field = Guard.NotNegative(value, nameof(Behind)); }
}
