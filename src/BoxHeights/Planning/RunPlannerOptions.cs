namespace BoxHeights;

/// <summary>What a plan of a run aims at.</summary>
/// <param name="Limit">How far any point of a run may be from a box, along the run; more than zero.</param>
internal sealed record RunPlannerOptions(Distance Limit)
{
    /// <summary>Along walls: every point within 6 ft (NEC 210.52(A)(1)), planned for 5 ft 6 in, and a box on each face of 6 ft or more. The slack and the face are common practice, no source.</summary>
    public static RunPlannerOptions Walls { get; } = WithSlackFor(Distance.FromFeetInches(6, 0)) with { FaceLength = Distance.FromFeetInches(6, 0) };

    /// <summary>Plans for a limit with the usual slack: a sixth of it, 6 in at most, so that studs can be met. Common practice, no source.</summary>
    public static RunPlannerOptions WithSlackFor(Distance limit) => new(limit) { Reach = limit - Distance.Min(Distance.FromInches(6, 0, 1), limit.Split(6)[0]) };

    /// <summary>How far any point shall be from a box where that can be had; at most the limit and at least half of it.</summary>
    public Distance Reach { get; init; } = Limit;

    /// <summary>A face of a run that is this long gets a box of its own; null for none.</summary>
    public Distance? FaceLength { get; init; }

    /// <summary>Whether only what the limit asks is planned: the fewest boxes, without slack, wishes or a box for each face.</summary>
    public bool CodeMinimum { get; init; }
}
