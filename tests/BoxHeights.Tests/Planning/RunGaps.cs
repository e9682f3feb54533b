using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Planning;

/// <summary>What lies between the boxes of a plan, worked out from its positions alone.</summary>
internal static class RunGaps
{
    /// <summary>From the run's left end to the first box, from box to box, and to the right end; round a loop, from box to box.</summary>
    public static List<Distance> Gaps(this RunPlan plan, RunToPlan run)
    {
        List<Distance> at = [.. plan.Positions.Select(one => one.At)];
        return run.IsLoop && at.Count > 0
            ? [.. at.Zip(at.Skip(1).Append(at[0] + run.Line.Width), (from, to) => to - from)]
            : [.. at.Prepend(run.Line.From).Zip(at.Append(run.Line.To), (from, to) => to - from)];
    }

    /// <summary>Twice as far as any point is from its nearest box.</summary>
    public static Distance LargestGap(this RunPlan plan, RunToPlan run)
    {
        List<Distance> gaps = plan.Gaps(run);
        return run.IsLoop && plan.Positions.Count > 0 ? gaps.Max() : gaps.Append(gaps[0] * 2).Append(gaps[^1] * 2).Max();
    }

    /// <summary>Whether no point is further from every box than the plan aims at.</summary>
    public static bool HasSlack(this RunPlan plan) => plan.WithoutSlack.Count == 0;
}
