namespace BoxHeights.Rules;

/// <summary>What heights along a wall are taken from that lies elsewhere at another place: a countertop, or the nosings of a stair.</summary>
/// <param name="Anchor">What a countertop or splash that the height is taken from is itself taken from; null where it is taken from something else.</param>
/// <param name="Nosing">How high the nosings are, on the wall of a stair; null elsewhere.</param>
internal sealed record HeightLine(Level? Anchor, DistanceRange? Nosing)
{
    /// <summary>None where neither is there: most boxes have none.</summary>
    public static HeightLine? Of(Level? anchor, DistanceRange? nosing) => anchor is null && nosing is null ? null : new(anchor, nosing);

    /// <summary>Whether one is that of these, without making another.</summary>
    public static bool Is(HeightLine? line, in Level? anchor, in DistanceRange? nosing) => line?.Anchor == anchor && line?.Nosing == nosing;
}
