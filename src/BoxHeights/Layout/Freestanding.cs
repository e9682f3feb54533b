namespace BoxHeights;

/// <summary>Something that stands in a room, away from its walls.</summary>
public sealed record Freestanding
{
    /// <summary>Describes a freestanding by what it must have.</summary>
    /// <param name="id">The name it is addressed by in its room.</param>
    /// <param name="kind">What it is.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Freestanding(string id, FreestandingKind kind)
    {
        Id = id;
        Kind = kind;
    }

    /// <summary>The name it is addressed by in its room.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FreestandingKind Kind { get; init; }

    /// <summary>Its outline in plan.</summary>
    public Items<PlanPoint> Corners { get; init; }

    /// <summary>Its line in plan, for rails and half walls; of an island, a peninsula or a bar, the side of its outline that divides the room.</summary>
    public Items<PlanPoint> Line { get; init; }

    /// <summary>The height of its top.</summary>
    public Level? Top { get; init; }

    /// <summary>How far its top reaches beyond its base.</summary>
    public Distance? Overhang { get; init => field = Valid.NotNegative(value, nameof(Overhang)); }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by in its room.</param>
    public Freestanding WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Freestanding WithKind(FreestandingKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Corners"/>.</summary>
    /// <param name="corners">Its outline in plan.</param>
    public Freestanding WithCorners(Items<PlanPoint> corners) => this with { Corners = corners };

    /// <summary>The same with another <see cref="Line"/>.</summary>
    /// <param name="line">Its line in plan, for rails and half walls; of an island, a peninsula or a bar, the side of its outline that divides the room.</param>
    public Freestanding WithLine(Items<PlanPoint> line) => this with { Line = line };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">The height of its top.</param>
    public Freestanding WithTop(Level? top) => this with { Top = top };

    /// <summary>The same with another <see cref="Overhang"/>.</summary>
    /// <param name="overhang">How far its top reaches beyond its base.</param>
    public Freestanding WithOverhang(Distance? overhang) => this with { Overhang = overhang };
}
