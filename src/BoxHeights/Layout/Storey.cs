namespace BoxHeights;

/// <summary>One storey: everything that stands on one subfloor level.</summary>
public sealed partial record Storey
{
    /// <summary>Describes a storey by what it must have.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Storey(string id)
    {
        Id = id;
    }

    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>The height of the line that the crew shoots through the storey, usually from its subfloor.</summary>
    public Level? LevelLine { get; init; }

    /// <summary>How far the finished grade outside lies below this storey's subfloor.</summary>
    public DistanceRange? GradeBelowSubfloor { get; init; }

    /// <summary>From the subfloor of the storey below up to this storey's subfloor.</summary>
    public Distance? AboveBelow { get; init => field = Valid.NotNegative(value, nameof(AboveBelow)); }

    /// <summary>The ceiling of each room that doesn't state its own: one plane over all of them, measured from the storey's subfloor unless it says otherwise.</summary>
    public Ceiling? Ceiling { get; init; }

    /// <summary>The studs of each wall that doesn't state its own.</summary>
    public StudLayout? Studs { get; init; }

    /// <summary>The wall board of each wall that doesn't state its own.</summary>
    public BoardLayout? Boards { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    public Storey WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="LevelLine"/>.</summary>
    /// <param name="levelLine">The height of the line that the crew shoots through the storey, usually from its subfloor.</param>
    public Storey WithLevelLine(Level? levelLine) => this with { LevelLine = levelLine };

    /// <summary>The same with another <see cref="GradeBelowSubfloor"/>.</summary>
    /// <param name="gradeBelowSubfloor">How far the finished grade outside lies below this storey's subfloor.</param>
    public Storey WithGradeBelowSubfloor(DistanceRange? gradeBelowSubfloor) => this with { GradeBelowSubfloor = gradeBelowSubfloor };

    /// <summary>The same with another <see cref="AboveBelow"/>.</summary>
    /// <param name="aboveBelow">From the subfloor of the storey below up to this storey's subfloor.</param>
    public Storey WithAboveBelow(Distance? aboveBelow) => this with { AboveBelow = aboveBelow };

    /// <summary>The same with another <see cref="Ceiling"/>.</summary>
    /// <param name="ceiling">The ceiling of each room that doesn't state its own.</param>
    public Storey WithCeiling(Ceiling? ceiling) => this with { Ceiling = ceiling };

    /// <summary>The same with another <see cref="Studs"/>.</summary>
    /// <param name="studs">The studs of each wall that doesn't state its own.</param>
    public Storey WithStuds(StudLayout? studs) => this with { Studs = studs };

    /// <summary>The same with another <see cref="Boards"/>.</summary>
    /// <param name="boards">The wall board of each wall that doesn't state its own.</param>
    public Storey WithBoards(BoardLayout? boards) => this with { Boards = boards };
}
