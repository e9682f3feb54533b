using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a plan of a run aims at.</summary>
/// <param name="Limit">How far any point of a run may be from a box, along the run; more than zero.</param>
internal sealed record RunPlannerOptions(Distance Limit)
{
    /// <summary>Plans for a limit with slack, so that studs can be met: a part of it, or at most so much.</summary>
    public static RunPlannerOptions WithSlackFor(Distance limit, RoomForBoxes custom) =>
        new(limit) { Reach = custom.PartOfReach is not { } parts ? limit : limit - (limit.Split(parts)[0] is var part && part > custom.OfReach ? custom.OfReach.Value : part) };

    /// <summary>How far any point shall be from a box where that can be had; at most the limit and at least half of it.</summary>
    public Distance Reach { get; init; } = Limit;

    /// <summary>A face of a run that is this long gets a box of its own; null for none.</summary>
    public Distance? FaceLength { get; init; }

    /// <summary>Whether only what the limit asks is planned: the fewest boxes, without slack, wishes or a box for each face.</summary>
    public bool CodeMinimum { get; init; }
}
