namespace BoxHeights;

/// <summary>A counter that stands against a wall.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Left), nameof(Right))]
public sealed partial record Counter
{
    /// <summary>The name it is addressed by on its wall.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public CounterKind Kind { get; init; }

    /// <summary>Its left end along the wall, from the wall's left end (framing face).</summary>
    public Distance Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along the wall, from the wall's left end (framing face).</summary>
    public Distance Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>The height of its top. Where it isn't stated, what documents ask of boxes over it can't be told; habits of the trade assume 36 in, and say so.</summary>
    public Level? Top { get; init; }

    /// <summary>From the finished wall to its front edge, overhang included.</summary>
    public Distance? Depth { get; init => field = Guard.Positive(value, nameof(Depth)); }

    /// <summary>How far the top reaches beyond the base.</summary>
    public Distance? Overhang { get; init => field = Guard.NotNegative(value, nameof(Overhang)); }

    /// <summary>How deep a seated person's knees fit under it; zero is "none".</summary>
    public Distance? KneeSpace { get; init => field = Guard.NotNegative(value, nameof(KneeSpace)); }

    /// <summary>How thick the top is at the wall, from the surface down.</summary>
    public Distance? Thickness { get; init => field = Guard.Positive(value, nameof(Thickness)); }

    /// <summary>Whether its base stands on the subfloor or on the finished floor.</summary>
    public Datum? BaseStandsOn { get; init => field = Guard.Known(value, Datum.ExistingPlate, nameof(BaseStandsOn)); }

    /// <summary>Sinks, ranges and whatever else interrupts its top.</summary>
    public Items<CounterInterruption> Interruptions { get; init; }
}
