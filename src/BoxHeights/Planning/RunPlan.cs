namespace BoxHeights;

/// <summary>Why a plan has a box where it has one.</summary>
public enum PositionReason
{
    /// <summary>It was there, or is pinned.</summary>
    Stays = 0,

    /// <summary>The user wants one there.</summary>
    Wished,

    /// <summary>Without it a point of the run would be too far from every box.</summary>
    Coverage,

    /// <summary>The wall face is long enough to get one of its own.</summary>
    Face,
}

/// <summary>A box in a plan of a run.</summary>
/// <param name="At">Its center, in the run's coordinate.</param>
/// <param name="Reason">Why it is there.</param>
public readonly record struct PlannedPosition(Distance At, PositionReason Reason)
{
    /// <summary>Whether it was there before or is pinned.</summary>
    public bool IsFixed => Reason == PositionReason.Stays;
}

/// <summary>A stretch of a run that no candidate and no fixed box covers.</summary>
public sealed class RunObstacle
{
    internal RunObstacle(DistanceRange uncovered, Items<string> faces, Distance limit)
    {
        Uncovered = uncovered;
        Faces = faces;
        Limit = limit;
    }

    /// <summary>The points further than the limit from every place where a box can be; the ends themselves are just within it, unless they end the run.</summary>
    public DistanceRange Uncovered { get; }

    /// <summary>The names of the run's faces that it lies on.</summary>
    public Items<string> Faces { get; }

    /// <summary>The limit.</summary>
    public Distance Limit { get; }

    /// <summary>The stretch in words, in inches.</summary>
    public override string ToString() => ToString(LengthUnits.Inches);

    /// <summary>The stretch in words.</summary>
    /// <param name="units">The units, such as <see cref="Dwelling.Units"/>.</param>
    public string ToString(LengthUnits units) => (Faces.Count == 0 ? "the run" : string.Join(", ", Faces)) + ": no place for a box within " + Printed.NoMoreThan(Limit, units)
        + " of " + Printed.Of(Uncovered.From, units) + " to " + Printed.Of(Uncovered.To, units);
}

/// <summary>Where a run gets boxes.</summary>
public sealed class RunPlan
{
    internal RunPlan(Items<PlannedPosition> positions, Items<Distance> gaps, Distance largestGap)
    {
        Positions = positions;
        Gaps = gaps;
        LargestGap = largestGap;
    }

    /// <summary>All boxes of the run, from left to right: those that stay and those that are planned.</summary>
    public Items<PlannedPosition> Positions { get; }

    /// <summary>Where the boxes are.</summary>
    public override string ToString() => Positions.Count == 0 ? "no boxes" : "boxes at " + Positions.Select(position => position.At);

    /// <summary>From the run's left end to the first box, from box to box, and from the last box to the right end; round a loop, from box to box and from the last to the first. The whole run where there is no box.</summary>
    public Items<Distance> Gaps { get; }

    /// <summary>The largest of the gaps, where one at an end of the run counts double: twice as far as any point is from its nearest box. Twice the run where there is no box.</summary>
    public Distance LargestGap { get; }

    /// <summary>Whether every point is within the planner's reach, less what boxes may drift, of a box.</summary>
    public bool HasSlack => WithoutSlack.Count == 0;

    /// <summary>The stretches further than that from every box.</summary>
    public Items<DistanceRange> WithoutSlack { get; internal init; }

    /// <summary>The stretches further than the limit from every box. None of them can be covered from any candidate.</summary>
    public Items<RunObstacle> Obstacles { get; internal init; }

    /// <summary>The wishes that no candidate and no fixed box lies in.</summary>
    public Items<DistanceRange> UnmetWishes { get; internal init; }
}
