namespace BoxHeights;

/// <summary>How a mark sheet is set out. Immutable.</summary>
[Described]
public sealed partial record MarkOptions
{
    /// <summary>Each box to the edge it is described by, without words for what rounding left over.</summary>
    public static MarkOptions Default { get; } = new();

    /// <summary>The edge that all marks are to; null for the edge that each box is described by (the center where that isn't stated).</summary>
    public Edge? Edge { get; init => field = Guard.Known(value, BoxHeights.Edge.Top, nameof(Edge)); }

    /// <summary>Whether a mark says "strong" or "shy" where the exact height is a little more or less.</summary>
    public bool StrongAndShy { get; init; }

    /// <summary>Whether boxes are marked as they are described, with a stop at each that the report sets otherwise, instead of where they end when it is carried out.</summary>
    public bool AsDescribed { get; init; }
}
