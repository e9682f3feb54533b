using System;

namespace BoxHeights;

/// <summary>What a stair light planner takes for granted where the flight doesn't state it.</summary>
[Described]
public sealed partial record StairLightOptions
{
    /// <summary>The usual ones. Common practice, no source.</summary>
    public static StairLightOptions Default { get; } = new();

    /// <summary>The width of each light's box; that of a generic one-gang box, 2-1/4 in, unless stated. More than zero, an even number of ticks.</summary>
    public Distance BoxWidth { get; init => field = EvenSize.Check(value, nameof(BoxWidth)); } = PartsCatalog.Generic.FindBox(BoxKind.NailOn, 1).Size.Width;

    /// <summary>How far along the wall a box may be shifted from its exact place so as to be nailed to a stud; 1 in unless stated. Not negative.</summary>
    public Distance Adjustment { get; init => field = Guard.NotNegative(value, nameof(Adjustment)); } = Distance.FromInches(1, 0, 1);

    /// <summary>The lowest place on a tread: 0 at its nosing, 1 at the next; 1/4 unless stated.</summary>
    public Ratio LowestPhase { get; init => field = Phase(value, nameof(LowestPhase)); } = new(1, 4);

    /// <summary>The highest place on a tread; 3/4 unless stated.</summary>
    public Ratio HighestPhase { get; init => field = Phase(value, nameof(HighestPhase)); } = new(3, 4);

    /// <summary>The fewest treads from light to light; 2 unless stated. From 1.</summary>
    public int FewestTreads { get; init => field = Guard.Count(value, nameof(FewestTreads)); } = 2;

    /// <summary>The most treads from light to light; 3 unless stated. From 1.</summary>
    public int MostTreads { get; init => field = Guard.Count(value, nameof(MostTreads)); } = 3;

    /// <summary>How many lights there are to be; null to choose. It goes before <see cref="FewestTreads"/> and <see cref="MostTreads"/>. From 1.</summary>
    public int? Count { get; init => field = Guard.Count(value, nameof(Count)); }

    /// <summary>How reasons print lengths; inches unless stated.</summary>
    public LengthUnits Units { get; init => field = Guard.Known(value, LengthUnits.Millimeters, nameof(Units)); }

    private static Ratio Phase(Ratio value, string name) => value >= Ratio.Zero && value <= new Ratio(1)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "A place on a tread is 0 to 1.");
}
