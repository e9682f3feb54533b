using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Why a plan has a box where it has one.</summary>
internal enum PositionReason
{
    /// <summary>It was there, or is pinned.</summary>
    Stays = 0,

    /// <summary>One is wanted there.</summary>
    Wished,

    /// <summary>Without it a point of the run would be too far from every box.</summary>
    Coverage,

    /// <summary>The wall face is long enough to get one of its own.</summary>
    Face,
}

/// <summary>A box in a plan of a run.</summary>
internal readonly record struct PlannedPosition(Distance At, PositionReason Reason)
{
    public bool IsFixed => Reason == PositionReason.Stays;
}

/// <summary>A stretch further than the limit from every place where a box can be.</summary>
internal sealed record RunObstacle(DistanceRange Uncovered, Distance Limit);

/// <summary>Where a run gets boxes, from left to right: those that stay and those that are planned.</summary>
internal sealed class RunPlan(RunToPlan run, Items<PlannedPosition> positions, Distance reach, Distance limit)
{
    public Items<PlannedPosition> Positions => positions;

    /// <summary>The plan of the run seen from its other end.</summary>
    /// <param name="other">The run as it is seen there.</param>
    public RunPlan Mirrored(RunToPlan other)
    {
        List<PlannedPosition> turned = [];
        for (int i = positions.Count - 1; i >= 0; i--)
        {
            turned.Add(positions[i] with { At = run.Mirrored(positions[i].At) });
        }

        return new(other, new(turned), reach, limit);
    }

    /// <summary>The stretches further than what is planned for from every box.</summary>
    public Items<DistanceRange> WithoutSlack => new(Beyond(reach.Ticks));

    /// <summary>The stretches further than the limit from every box. None of them can be covered from any candidate.</summary>
    public Items<RunObstacle> Obstacles => new(Beyond(limit.Ticks).ConvertAll(bare => new RunObstacle(bare, limit)));

    private List<DistanceRange> Beyond(long reach)
    {
        long from = run.Line.From.Ticks, to = run.Line.To.Ticks;
        List<DistanceRange> found = [];
        bool isLoop = run.IsLoop && positions.Count > 0;
        for (int i = isLoop ? 1 : 0; i <= positions.Count; i++)
        {
            long first = i == 0 ? from : positions[i - 1].At.Ticks + reach;
            long last = i < positions.Count ? positions[i].At.Ticks - reach : isLoop ? positions[0].At.Ticks + to - from - reach : to;

            // Past the end of a loop is at its start again.
            Add(first, Math.Min(last, to));
            Add(Math.Max(first, to) - to + from, last - to + from);
        }

        return found;

        void Add(long first, long last)
        {
            if (first < last)
            {
                found.Add(new(Distance.FromTicks(first), Distance.FromTicks(last)));
            }
        }
    }
}
