namespace BoxHeights;

/// <summary>Lights along a flight: one place on each so many treads.</summary>
public sealed record StairLights
{
    /// <summary>Describes a stair lights by what it must have.</summary>
    /// <param name="every">One light every so many treads; at least 1.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public StairLights(int every)
    {
        Every = every;
    }

    /// <summary>One light every so many treads; at least 1.</summary>
    public int Every { get; init => field = Valid.Count(value, nameof(Every)); }

    /// <summary>The tread of the first light, counted from 1.</summary>
    public int? StartTread { get; init => field = Valid.Count(value, nameof(StartTread)); }

    /// <summary>Where on its tread each light sits: 0 at the nosing, 1 at the next.</summary>
    public Ratio? Phase { get; init; }

    /// <summary>How high above its tread each light sits.</summary>
    public Distance? AboveTread { get; init => field = Valid.NotNegative(value, nameof(AboveTread)); }

    /// <summary>The width of each light's box in device widths.</summary>
    public int? Gangs { get; init => field = Valid.Count(value, nameof(Gangs)); }

    /// <summary>The same with another <see cref="Every"/>.</summary>
    /// <param name="every">One light every so many treads; at least 1.</param>
    public StairLights WithEvery(int every) => this with { Every = every };

    /// <summary>The same with another <see cref="StartTread"/>.</summary>
    /// <param name="startTread">The tread of the first light, counted from 1.</param>
    public StairLights WithStartTread(int? startTread) => this with { StartTread = startTread };

    /// <summary>The same with another <see cref="Phase"/>.</summary>
    /// <param name="phase">Where on its tread each light sits: 0 at the nosing, 1 at the next.</param>
    public StairLights WithPhase(Ratio? phase) => this with { Phase = phase };

    /// <summary>The same with another <see cref="AboveTread"/>.</summary>
    /// <param name="aboveTread">How high above its tread each light sits.</param>
    public StairLights WithAboveTread(Distance? aboveTread) => this with { AboveTread = aboveTread };

    /// <summary>The same with another <see cref="Gangs"/>.</summary>
    /// <param name="gangs">The width of each light's box in device widths.</param>
    public StairLights WithGangs(int? gangs) => this with { Gangs = gangs };
}
