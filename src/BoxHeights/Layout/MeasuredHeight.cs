namespace BoxHeights;

/// <summary>A height read from a tape.</summary>
[Described(nameof(Height))]
public sealed partial record MeasuredHeight
{
    /// <summary>What was read.</summary>
    public BoxHeight Height { get; init; }

    /// <summary>How far off the reading may be; 1/8 in unless stated.</summary>
    public Distance? Within { get; init => field = Guard.NotNegative(value, nameof(Within)); }
}
