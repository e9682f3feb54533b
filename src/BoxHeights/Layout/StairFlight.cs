namespace BoxHeights;

/// <summary>A flight of stairs between two storeys.</summary>
[Described(nameof(Id), nameof(From), nameof(To), nameof(Risers))]
public sealed partial record StairFlight
{
    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>The id of the storey that it starts from: the lower one.</summary>
    public string From { get; init => field = Guard.Id(value, nameof(From)); }

    /// <summary>The id of the storey that it leads to.</summary>
    public string To { get; init => field = Guard.Id(value, nameof(To)); }

    /// <summary>How many risers it has; at least 1.</summary>
    public int Risers { get; init => field = Guard.Count(value, nameof(Risers)); }

    /// <summary>From nosing to nosing. Where treads aren't on any tape's grid (10-2/3 in), <see cref="Run"/> says it exactly.</summary>
    public Distance? Tread { get; init => field = Guard.Positive(value, nameof(Tread)); }

    /// <summary>All treads together, from the first nosing to the last (which is the upper floor's edge), instead of <see cref="Tread"/>; that counts where both are stated.</summary>
    public Distance? Run { get; init => field = Guard.Positive(value, nameof(Run)); }

    /// <summary>How far a tread reaches beyond the riser below it.</summary>
    public Distance? Nosing { get; init => field = Guard.NotNegative(value, nameof(Nosing)); }

    /// <summary>The thickness of finish on each tread.</summary>
    public Distance? TreadFinish { get; init => field = Guard.NotNegative(value, nameof(TreadFinish)); }

    /// <summary>The thickness of finish floor at its foot that its carriages are cut for; the floor that is laid there unless stated.</summary>
    public Distance? CutForFloorBelow { get; init => field = Guard.NotNegative(value, nameof(CutForFloorBelow)); }

    /// <summary>The thickness of finish floor at its head that its carriages are cut for; the floor that is laid there unless stated.</summary>
    public Distance? CutForFloorAbove { get; init => field = Guard.NotNegative(value, nameof(CutForFloorAbove)); }

    /// <summary>The address of the wall beside it ("hall/stair").</summary>
    public string? Wall { get; init; }

    /// <summary>Where the first nosing is along that wall.</summary>
    public Distance? FirstNosing { get; init => field = Guard.NotNegative(value, nameof(FirstNosing)); }

    /// <summary>The end of that wall that it climbs toward, seen by someone who faces the wall; the right unless stated.</summary>
    public WallEnd? Climbs { get; init => field = Guard.Known(value, WallEnd.Right, nameof(Climbs)); }

    /// <summary>The lights along it.</summary>
    public StairLights? Lights { get; init; }
}
