namespace BoxHeights;

/// <summary>How a mark sheet is set out. Immutable.</summary>
public sealed record MarkOptions
{
    /// <summary>Each box to the edge it is described by, without words for what rounding left over.</summary>
    public static MarkOptions Default { get; } = new();

    /// <summary>The edge that all marks are to; null for the edge that each box is described by (the center where that isn't stated).</summary>
    public Edge? Edge { get; init; }

    /// <summary>Whether a mark says "strong" or "shy" where the exact height is a little more or less.</summary>
    public bool StrongAndShy { get; init; }

    /// <summary>Whether boxes are marked as they are described, with a stop at each that the report sets otherwise, instead of where they end when it is carried out.</summary>
    public bool AsDescribed { get; init; }

    /// <summary>The same with another <see cref="Edge"/>.</summary>
    /// <param name="edge">The edge that all marks are to.</param>
    public MarkOptions WithEdge(Edge? edge) => this with { Edge = edge };

    /// <summary>The same with another <see cref="StrongAndShy"/>.</summary>
    /// <param name="strongAndShy">Whether marks say so.</param>
    public MarkOptions WithStrongAndShy(bool strongAndShy) => this with { StrongAndShy = strongAndShy };

    /// <summary>The same with another <see cref="AsDescribed"/>.</summary>
    /// <param name="asDescribed">Whether boxes are marked as they are described.</param>
    public MarkOptions WithAsDescribed(bool asDescribed) => this with { AsDescribed = asDescribed };
}
