namespace BoxHeights.Rules;

/// <summary>The highest reach over something of a depth.</summary>
public sealed record ReachStep
{
    /// <summary>One step of a reach table.</summary>
    /// <param name="depth">For reach depths up to this, itself included.</param>
    /// <param name="high">The upper limit, itself allowed.</param>
    public ReachStep(Distance depth, Distance high)
    {
        Depth = depth;
        High = high;
    }

    /// <summary>For reach depths up to this, itself included.</summary>
    public Distance Depth { get; init; }

    /// <summary>The upper limit, itself allowed.</summary>
    public Distance High { get; init; }

    /// <summary>The step in words.</summary>
    public override string ToString() => "up to " + Depth + " deep " + High;
}

/// <summary>The limits of reach over a counter or an appliance, for both approaches.</summary>
/// <remarks>A forward approach needs knee space under the obstruction at least as deep as the reach. A side approach needs an obstruction that isn't too high.</remarks>
public sealed record ReachOver
{
    /// <summary>The steps of the forward approach, shallowest first; deeper than the last isn't allowed.</summary>
    public Items<ReachStep> Forward { get; init; }

    /// <summary>The steps of the side approach, shallowest first; deeper than the last isn't allowed.</summary>
    public Items<ReachStep> Side { get; init; }

    /// <summary>How high an obstruction may be that is reached over from the side.</summary>
    public Distance SideTopAtMost { get; init; }

    /// <summary>Up to this depth, itself included, an obstruction may be of any height from the side; null where none may.</summary>
    public Distance? ShallowDepth { get; init; }

    /// <summary>The same for the top of a washer or dryer.</summary>
    public Distance LaundryTopAtMost { get; init; }

    /// <summary>The table in words.</summary>
    public override string ToString() =>
        "reaching over, forward: " + Forward + "; from the side: " + Side + ", top at most " + SideTopAtMost + " (laundry machines " + LaundryTopAtMost + ")"
        + (ShallowDepth is { } shallow ? ", of any height up to " + shallow + " deep" : "");
}
