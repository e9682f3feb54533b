namespace BoxHeights;

/// <summary>How the joists over a room lie, for boxes in its ceiling.</summary>
[Described(nameof(Spacing))]
public sealed partial record JoistLayout
{
    /// <summary>From middle to middle; more than zero.</summary>
    public Distance Spacing { get; init => field = Guard.Positive(value, nameof(Spacing)); }

    /// <summary>Which way they run.</summary>
    public JoistRun Runs { get; init => field = Guard.Known(value, JoistRun.Away, nameof(Runs)); }

    /// <summary>From the room's first wall to the middle of the first joist where they run along it, else from that wall's left end; not negative.</summary>
    /// <remarks>Where that isn't stated, no joist is known to be anywhere.</remarks>
    public Distance? First { get; init => field = Guard.NotNegative(value, nameof(First)); }

    /// <summary>How far a point in plan is across the joists, from where <see cref="First"/> is measured.</summary>
    internal Distance Across(PlanPoint point) => Runs == JoistRun.Along ? point.Into : point.Right;

    /// <summary>The middle of the joist that is nearest to a place across them; null where none is known.</summary>
    internal Distance? Nearest(Distance across) => First is { } first ? first + Whole(across - first, half: true) : null;

    /// <summary>The middle of the bay that a place across them is in; null where none is known.</summary>
    internal Distance? Bay(Distance across) => First is { } first ? first + Whole(across - first, half: false) + Distance.FromTicks(Spacing.Ticks / 2) : null;

    /// <summary>So many whole spacings: the nearest, or the last before a place.</summary>
    private Distance Whole(Distance off, bool half)
    {
        long ticks = off.Ticks + (half ? Spacing.Ticks / 2 : 0);
        long rest = ticks % Spacing.Ticks;
        return Distance.FromTicks(ticks - (rest < 0 ? rest + Spacing.Ticks : rest));
    }
}

/// <summary>Which way joists run.</summary>
public enum JoistRun
{
    /// <summary>Along the room's first wall.</summary>
    Along = 0,

    /// <summary>Away from the room's first wall.</summary>
    Away = 1,
}
