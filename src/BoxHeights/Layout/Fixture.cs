namespace BoxHeights;

/// <summary>A fixture, an appliance or a piece of furniture.</summary>
public sealed record Fixture
{
    /// <summary>Describes a fixture by what it must have.</summary>
    /// <param name="id">The name it is addressed by in its room.</param>
    /// <param name="kind">What it is.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Fixture(string id, FixtureKind kind)
    {
        Id = id;
        Kind = kind;
    }

    /// <summary>The name it is addressed by in its room.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What it is.</summary>
    public FixtureKind Kind { get; init; }

    /// <summary>The id of the wall it stands against.</summary>
    public string? Wall { get; init; }

    /// <summary>Its left end along that wall.</summary>
    public Distance? Left { get; init => field = Valid.NotNegative(value, nameof(Left)); }

    /// <summary>Its right end along that wall.</summary>
    public Distance? Right { get; init => field = Valid.NotNegative(value, nameof(Right)); }

    /// <summary>How far it reaches into the room.</summary>
    public Distance? Depth { get; init => field = Valid.Positive(value, nameof(Depth)); }

    /// <summary>Two opposite corners of it in plan, where it stands free.</summary>
    public Items<PlanPoint> Plan { get; init; }

    /// <summary>The height of its top, for what is reached over.</summary>
    public Level? Top { get; init; }

    /// <summary>The height of a tub's rim or a shower's threshold.</summary>
    public Level? Rim { get; init; }

    /// <summary>What closes it off ("none", "glass to ceiling"). A zone round a tub or shower that barriers end goes on where nothing is stated.</summary>
    public string? Screen { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by in its room.</param>
    public Fixture WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What it is.</param>
    public Fixture WithKind(FixtureKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Wall"/>.</summary>
    /// <param name="wall">The id of the wall it stands against.</param>
    public Fixture WithWall(string? wall) => this with { Wall = wall };

    /// <summary>The same with another <see cref="Left"/>.</summary>
    /// <param name="left">Its left end along that wall.</param>
    public Fixture WithLeft(Distance? left) => this with { Left = left };

    /// <summary>The same with another <see cref="Right"/>.</summary>
    /// <param name="right">Its right end along that wall.</param>
    public Fixture WithRight(Distance? right) => this with { Right = right };

    /// <summary>The same with another <see cref="Depth"/>.</summary>
    /// <param name="depth">How far it reaches into the room.</param>
    public Fixture WithDepth(Distance? depth) => this with { Depth = depth };

    /// <summary>The same with another <see cref="Plan"/>.</summary>
    /// <param name="plan">Two opposite corners of it in plan, where it stands free.</param>
    public Fixture WithPlan(Items<PlanPoint> plan) => this with { Plan = plan };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">The height of its top, for what is reached over.</param>
    public Fixture WithTop(Level? top) => this with { Top = top };

    /// <summary>The same with another <see cref="Rim"/>.</summary>
    /// <param name="rim">The height of a tub's rim or a shower's threshold.</param>
    public Fixture WithRim(Level? rim) => this with { Rim = rim };

    /// <summary>The same with another <see cref="Screen"/>.</summary>
    /// <param name="screen">What closes it off ("none", "glass to ceiling").</param>
    public Fixture WithScreen(string? screen) => this with { Screen = screen };
}
