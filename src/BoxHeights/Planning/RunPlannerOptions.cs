namespace BoxHeights;

/// <summary>What a plan of a run aims at.</summary>
/// <param name="Limit">How far any point of a run may be from a box, along the run; more than zero.</param>
internal sealed record RunPlannerOptions(Distance Limit)
{
    /// <summary>Plans for a limit with slack, so that studs can be met: a sixth of it, or at most so much. Common practice, no source.</summary>
    public static RunPlannerOptions WithSlackFor(Distance limit, Distance? most = null) =>
        new(limit) { Reach = limit - (limit.Split(6)[0] is var sixth && sixth > most ? most.Value : sixth) };

    /// <summary>How far any point shall be from a box where that can be had; at most the limit and at least half of it.</summary>
    public Distance Reach { get; init; } = Limit;

    /// <summary>A face of a run that is this long gets a box of its own; null for none.</summary>
    public Distance? FaceLength { get; init; }

    /// <summary>Whether only what the limit asks is planned: the fewest boxes, without slack, wishes or a box for each face.</summary>
    public bool CodeMinimum { get; init; }
}
