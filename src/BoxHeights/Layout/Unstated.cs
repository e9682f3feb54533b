namespace BoxHeights;

/// <summary>How far what nobody states may reach: the most, or the range, that is built. Common practice, no source. What depends on it is unknown, never met or failed.</summary>
internal static class Unstated
{
    /// <summary>A tub's rim or a shower's threshold above the finished floor: the floor to 24 in.</summary>
    public static DistanceRange Rim { get; } = new(Distance.Zero, Distance.FromInches(24, 0, 1));

    /// <summary>Thin-set under tile: up to 1/4 in.</summary>
    public static Distance Bed { get; } = Distance.FromInches(0, 1, 4);

    /// <summary>The board of a wall: up to two layers of 5/8 in.</summary>
    public static Distance Board { get; } = Distance.FromInches(1, 1, 4);

    /// <summary>How far out from a wall the front of a counter is that somebody joins: up to 30 in.</summary>
    public static Distance CounterDepth { get; } = Distance.FromInches(30);

    /// <summary>How far out from its wall a tub, range or basin stands: up to 5 ft.</summary>
    public static Distance ThingDepth { get; } = Distance.FromFeetInches(5, 0);

    /// <summary>How much counter is left behind a basin or a range: up to 6 in.</summary>
    public static Distance BehindABasin { get; } = Distance.FromInches(6, 0, 1);

    /// <summary>How high a cabinet's bottom is that still stands on the floor line, over a toe kick: up to 6 in.</summary>
    public static Distance ToeKick { get; } = Distance.FromInches(6);
}
