using System;

namespace BoxHeights;

/// <summary>What a stair light planner takes for granted where the flight doesn't state it.</summary>
public sealed record StairLightOptions
{
    /// <summary>The usual ones. Common practice, no source.</summary>
    public static StairLightOptions Default { get; } = new();

    /// <summary>The width of each light's box; a one-gang box 2-1/4 in wide unless stated. More than zero, an even number of ticks.</summary>
    public Distance BoxWidth { get; init => field = EvenSize.Check(value, nameof(BoxWidth)); } = Distance.FromInches(2, 1, 4);

    /// <summary>How far along the wall a box may be shifted from its exact place so as to be nailed to a stud; 1 in unless stated. Not negative.</summary>
    public Distance Adjustment { get; init => field = Valid.NotNegative(value, nameof(Adjustment)); } = Distance.FromInches(1, 0, 1);

    /// <summary>The lowest place on a tread: 0 at its nosing, 1 at the next; 1/4 unless stated.</summary>
    public Ratio LowestPhase { get; init => field = Phase(value, nameof(LowestPhase)); } = new(1, 4);

    /// <summary>The highest place on a tread; 3/4 unless stated.</summary>
    public Ratio HighestPhase { get; init => field = Phase(value, nameof(HighestPhase)); } = new(3, 4);

    /// <summary>The fewest treads from light to light; 2 unless stated. From 1.</summary>
    public int FewestTreads { get; init => field = Valid.Count(value, nameof(FewestTreads)); } = 2;

    /// <summary>The most treads from light to light; 3 unless stated. From 1.</summary>
    public int MostTreads { get; init => field = Valid.Count(value, nameof(MostTreads)); } = 3;

    /// <summary>How reasons print lengths; inches unless stated.</summary>
    public LengthUnits Units { get; init; }

    /// <summary>The same with another <see cref="BoxWidth"/>.</summary>
    /// <param name="boxWidth">The width of each light's box.</param>
    public StairLightOptions WithBoxWidth(Distance boxWidth) => this with { BoxWidth = boxWidth };

    /// <summary>The same with another <see cref="Adjustment"/>.</summary>
    /// <param name="adjustment">How far along the wall a box may be shifted.</param>
    public StairLightOptions WithAdjustment(Distance adjustment) => this with { Adjustment = adjustment };

    /// <summary>The same with another <see cref="LowestPhase"/>.</summary>
    /// <param name="lowestPhase">The lowest place on a tread.</param>
    public StairLightOptions WithLowestPhase(Ratio lowestPhase) => this with { LowestPhase = lowestPhase };

    /// <summary>The same with another <see cref="HighestPhase"/>.</summary>
    /// <param name="highestPhase">The highest place on a tread.</param>
    public StairLightOptions WithHighestPhase(Ratio highestPhase) => this with { HighestPhase = highestPhase };

    /// <summary>The same with another <see cref="FewestTreads"/>.</summary>
    /// <param name="fewestTreads">The fewest treads from light to light.</param>
    public StairLightOptions WithFewestTreads(int fewestTreads) => this with { FewestTreads = fewestTreads };

    /// <summary>The same with another <see cref="MostTreads"/>.</summary>
    /// <param name="mostTreads">The most treads from light to light.</param>
    public StairLightOptions WithMostTreads(int mostTreads) => this with { MostTreads = mostTreads };

    /// <summary>The same with another <see cref="Units"/>.</summary>
    /// <param name="units">How reasons print lengths.</param>
    public StairLightOptions WithUnits(LengthUnits units) => this with { Units = units };

    private static Ratio Phase(Ratio value, string name) => value >= Ratio.Zero && value <= new Ratio(1)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "A place on a tread is 0 to 1.");
}
