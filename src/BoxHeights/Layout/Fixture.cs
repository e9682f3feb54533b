namespace BoxHeights;

/// <summary>A fixture, an appliance or a piece of furniture.</summary>
[Described(nameof(Id), nameof(Kind))]
public sealed partial record Fixture
{
    /// <summary>The name it is addressed by in its room.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FixtureKind Kind { get; init; }

    /// <summary>The id of the wall it stands against.</summary>
    public string? Wall { get; init; }

    /// <summary>Its left end along that wall.</summary>
    public Distance? Left { get; init => field = Guard.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along that wall.</summary>
    public Distance? Right { get; init => field = Guard.NotNegative(value, nameof(Right)); }

    /// <summary>How far it reaches into the room.</summary>
    public Distance? Depth { get; init => field = Guard.Positive(value, nameof(Depth)); }

    /// <summary>Two opposite corners of it in plan, where it stands free; of more of them the rectangle that holds them.</summary>
    public Items<PlanPoint> Plan { get; init => field = Guard.Corners(value, nameof(Plan)); }

    /// <summary>The height of its top, for what is reached over.</summary>
    public Level? Top { get; init; }

    /// <summary>The height of a tub's rim or a shower's threshold.</summary>
    public Level? Rim { get; init; }

    /// <summary>What closes it off ("none", "glass to ceiling"). A zone round a tub or shower that barriers end goes on where nothing is stated.</summary>
    public string? Screen { get; init; }
}
