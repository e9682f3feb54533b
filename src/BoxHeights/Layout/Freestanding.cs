namespace BoxHeights;

/// <summary>Something that stands in a room, away from its walls.</summary>
[Described(nameof(Id), nameof(Kind))]
public sealed partial record Freestanding
{
    /// <summary>The name it is addressed by in its room.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FreestandingKind Kind { get; init; }

    /// <summary>Its outline in plan: three corners or more, in order, either way round.</summary>
    public Items<PlanPoint> Corners { get; init => field = Guard.Outline(value, nameof(Corners)); }

    /// <summary>Its line in plan, for rails and half walls; of an island, a peninsula or a bar, the side of its outline that divides the room.</summary>
    public Items<PlanPoint> Line { get; init; }

    /// <summary>The height of its top.</summary>
    public Level? Top { get; init; }

    /// <summary>How far its top reaches beyond its base.</summary>
    public Distance? Overhang { get; init => field = Guard.NotNegative(value, nameof(Overhang)); }
}
