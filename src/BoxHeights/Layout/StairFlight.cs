namespace BoxHeights;

/// <summary>A flight of stairs between two storeys.</summary>
public sealed record StairFlight
{
    /// <summary>Describes a stair flight by what it must have.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    /// <param name="from">The id of the storey that it starts from.</param>
    /// <param name="to">The id of the storey that it leads to.</param>
    /// <param name="risers">How many risers it has; at least 1.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public StairFlight(string id, string from, string to, int risers)
    {
        Id = id;
        From = from;
        To = to;
        Risers = risers;
    }

    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>The id of the storey that it starts from.</summary>
    public string From { get; init => field = Valid.Id(value, nameof(From)); }

    /// <summary>The id of the storey that it leads to.</summary>
    public string To { get; init => field = Valid.Id(value, nameof(To)); }

    /// <summary>How many risers it has; at least 1.</summary>
    public int Risers { get; init => field = Valid.Count(value, nameof(Risers)); }

    /// <summary>From nosing to nosing. Where treads aren't on any tape's grid (10-2/3 in), <see cref="Run"/> says it exactly.</summary>
    public Distance? Tread { get; init => field = Valid.Positive(value, nameof(Tread)); }

    /// <summary>All treads together, from the first nosing to the last (which is the upper floor's edge), instead of <see cref="Tread"/>; that counts where both are stated.</summary>
    public Distance? Run { get; init => field = Valid.Positive(value, nameof(Run)); }

    /// <summary>How far a tread reaches beyond the riser below it.</summary>
    public Distance? Nosing { get; init => field = Valid.NotNegative(value, nameof(Nosing)); }

    /// <summary>The thickness of finish on each tread.</summary>
    public Distance? TreadFinish { get; init => field = Valid.NotNegative(value, nameof(TreadFinish)); }

    /// <summary>The thickness of finish floor at its foot that its carriages are cut for; the floor that is laid there unless stated.</summary>
    public Distance? CutForFloorBelow { get; init => field = Valid.NotNegative(value, nameof(CutForFloorBelow)); }

    /// <summary>The thickness of finish floor at its head that its carriages are cut for; the floor that is laid there unless stated.</summary>
    public Distance? CutForFloorAbove { get; init => field = Valid.NotNegative(value, nameof(CutForFloorAbove)); }

    /// <summary>The address of the wall beside it ("hall/stair").</summary>
    public string? Wall { get; init; }

    /// <summary>Where the first nosing is along that wall.</summary>
    public Distance? FirstNosing { get; init => field = Valid.NotNegative(value, nameof(FirstNosing)); }

    /// <summary>The end of that wall that it climbs toward, seen by someone who faces the wall; the right unless stated.</summary>
    public WallEnd? Climbs { get; init; }

    /// <summary>The lights along it.</summary>
    public StairLights? Lights { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    public StairFlight WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="From"/>.</summary>
    /// <param name="from">The id of the storey that it starts from.</param>
    public StairFlight WithFrom(string from) => this with { From = from };

    /// <summary>The same with another <see cref="To"/>.</summary>
    /// <param name="to">The id of the storey that it leads to.</param>
    public StairFlight WithTo(string to) => this with { To = to };

    /// <summary>The same with another <see cref="Risers"/>.</summary>
    /// <param name="risers">How many risers it has; at least 1.</param>
    public StairFlight WithRisers(int risers) => this with { Risers = risers };

    /// <summary>The same with another <see cref="Tread"/>.</summary>
    /// <param name="tread">From nosing to nosing.</param>
    public StairFlight WithTread(Distance? tread) => this with { Tread = tread };

    /// <summary>The same with another <see cref="Run"/>.</summary>
    /// <param name="run">All treads together, from the first nosing to the last.</param>
    public StairFlight WithRun(Distance? run) => this with { Run = run };

    /// <summary>The same with another <see cref="Nosing"/>.</summary>
    /// <param name="nosing">How far a tread reaches beyond the riser below it.</param>
    public StairFlight WithNosing(Distance? nosing) => this with { Nosing = nosing };

    /// <summary>The same with another <see cref="TreadFinish"/>.</summary>
    /// <param name="treadFinish">The thickness of finish on each tread.</param>
    public StairFlight WithTreadFinish(Distance? treadFinish) => this with { TreadFinish = treadFinish };

    /// <summary>The same with another <see cref="CutForFloorBelow"/>.</summary>
    /// <param name="cutForFloorBelow">The thickness of finish floor at its foot that its carriages are cut for.</param>
    public StairFlight WithCutForFloorBelow(Distance? cutForFloorBelow) => this with { CutForFloorBelow = cutForFloorBelow };

    /// <summary>The same with another <see cref="CutForFloorAbove"/>.</summary>
    /// <param name="cutForFloorAbove">The thickness of finish floor at its head that its carriages are cut for.</param>
    public StairFlight WithCutForFloorAbove(Distance? cutForFloorAbove) => this with { CutForFloorAbove = cutForFloorAbove };

    /// <summary>The same with another <see cref="Wall"/>.</summary>
    /// <param name="wall">The address of the wall beside it ("hall/stair").</param>
    public StairFlight WithWall(string? wall) => this with { Wall = wall };

    /// <summary>The same with another <see cref="FirstNosing"/>.</summary>
    /// <param name="firstNosing">Where the first nosing is along that wall.</param>
    public StairFlight WithFirstNosing(Distance? firstNosing) => this with { FirstNosing = firstNosing };

    /// <summary>The same with another <see cref="Climbs"/>.</summary>
    /// <param name="climbs">The end of that wall that it climbs toward.</param>
    public StairFlight WithClimbs(WallEnd? climbs) => this with { Climbs = climbs };

    /// <summary>The same with another <see cref="Lights"/>.</summary>
    /// <param name="lights">The lights along it.</param>
    public StairFlight WithLights(StairLights? lights) => this with { Lights = lights };
}
