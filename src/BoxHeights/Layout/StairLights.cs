namespace BoxHeights;

/// <summary>Lights along a flight: one place on each so many treads.</summary>
[Described(nameof(Every))]
public sealed partial record StairLights
{
    /// <summary>One light every so many treads; at least 1.</summary>
    public int Every { get; init => field = Guard.Count(value, nameof(Every)); }

    /// <summary>The tread of the first light, counted from 1.</summary>
    public int? StartTread { get; init => field = Guard.Count(value, nameof(StartTread)); }

    /// <summary>Where on its tread each light sits: 0 at the nosing, 1 at the next.</summary>
    public Ratio? Phase { get; init; }

    /// <summary>How high above its tread each light sits.</summary>
    public Distance? AboveTread { get; init => field = Guard.NotNegative(value, nameof(AboveTread)); }

    /// <summary>The width of each light's box in device widths.</summary>
    public int? Gangs { get; init => field = Guard.Count(value, nameof(Gangs)); }
}
