namespace BoxHeights;

/// <summary>A height read from a tape.</summary>
public sealed record MeasuredHeight
{
    /// <summary>Describes a measured height by what it must have.</summary>
    /// <param name="height">What was read.</param>
    public MeasuredHeight(BoxHeight height)
    {
        Height = height;
    }

    /// <summary>What was read.</summary>
    public BoxHeight Height { get; init; }

    /// <summary>How far off the reading may be; 1/8 in unless stated.</summary>
    public Distance? Within { get; init => field = Valid.NotNegative(value, nameof(Within)); }

    /// <summary>The same with another <see cref="Height"/>.</summary>
    /// <param name="height">What was read.</param>
    public MeasuredHeight WithHeight(BoxHeight height) => this with { Height = height };

    /// <summary>The same with another <see cref="Within"/>.</summary>
    /// <param name="within">How far off the reading may be; 1/8 in unless stated.</param>
    public MeasuredHeight WithWithin(Distance? within) => this with { Within = within };
}
