namespace BoxHeights;

/// <summary>One storey: everything that stands on one subfloor level.</summary>
[Described(nameof(Id))]
public sealed partial record Storey
{
    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>The height of the line that the crew shoots through the storey, usually from its subfloor.</summary>
    public Level? LevelLine { get; init; }

    /// <summary>How far the finished grade outside lies below this storey's subfloor.</summary>
    public DistanceRange? GradeBelowSubfloor { get; init; }

    /// <summary>From the subfloor of the storey below up to this storey's subfloor.</summary>
    public Distance? AboveBelow { get; init => field = Guard.NotNegative(value, nameof(AboveBelow)); }

    /// <summary>The ceiling of each room that doesn't state its own: one plane over all of them, measured from the storey's subfloor unless it says otherwise.</summary>
    public Ceiling? Ceiling { get; init; }

    /// <summary>The studs of each wall that doesn't state its own.</summary>
    public StudLayout? Studs { get; init; }

    /// <summary>The wall board of each wall that doesn't state its own.</summary>
    public BoardLayout? Boards { get; init; }
}
