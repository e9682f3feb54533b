namespace BoxHeights;

/// <summary>A point on the top of a wall's framing.</summary>
[Described(nameof(Along), nameof(Up))]
public sealed partial record WallTopPoint
{
    /// <summary>From the wall's left end.</summary>
    public Distance Along { get; init => field = Guard.NotNegative(value, nameof(Along)); }

    /// <summary>From the subfloor.</summary>
    public Distance Up { get; init => field = Guard.NotNegative(value, nameof(Up)); }
}
