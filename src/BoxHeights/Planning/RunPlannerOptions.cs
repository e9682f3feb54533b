using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What a plan of a run aims at. Immutable; checked when the planner is made.</summary>
public sealed record RunPlannerOptions
{
    /// <summary>Along walls: every point within 6 ft (NEC 210.52(A)(1)), planned for 5 ft 6 in, and a box on each face of 6 ft or more. The slack and the face are common practice, no source.</summary>
    public static RunPlannerOptions Walls { get; } = WithSlackFor(Distance.FromFeetInches(6, 0)).WithFaceLength(Distance.FromFeetInches(6, 0));

    /// <summary>Behind counters: every point within 24 in (NEC 210.52(C)(1)), planned for 20 in. The slack is common practice, no source.</summary>
    public static RunPlannerOptions Counters { get; } = WithSlackFor(Distance.FromFeetInches(2, 0));

    /// <summary>Plans for a limit with the usual slack: a sixth of it, 6 in at most, so that studs can be met. Common practice, no source.</summary>
    /// <param name="limit">How far any point of a run may be from a box, along the run; more than zero.</param>
    public static RunPlannerOptions WithSlackFor(Distance limit) => new(limit) { Reach = limit - Distance.Min(Distance.FromInches(6, 0, 1), limit.Split(6)[0]) };

    /// <summary>Plans for a limit, without slack.</summary>
    /// <param name="limit">How far any point of a run may be from a box, along the run; more than zero.</param>
    public RunPlannerOptions(Distance limit)
    {
        Limit = limit;
        Reach = limit;
    }

    /// <summary>How far any point of a run may be from a box, along the run; more than zero.</summary>
    public Distance Limit { get; init; }

    /// <summary>How far any point shall be from a box where that can be had; at most <see cref="Limit"/> and at least half of it.</summary>
    public Distance Reach { get; init; }

    /// <summary>A face of a run that is this long gets a box of its own; null for none. More than zero.</summary>
    public Distance? FaceLength { get; init; }

    /// <summary>Whether only what <see cref="Limit"/> asks is planned: the fewest boxes, without slack, wishes or a box for each face.</summary>
    public bool CodeMinimum { get; init; }

    /// <summary>The same with another <see cref="Limit"/>.</summary>
    /// <param name="limit">How far any point may be from a box.</param>
    public RunPlannerOptions WithLimit(Distance limit) => this with { Limit = limit };

    /// <summary>The same with another <see cref="Reach"/>.</summary>
    /// <param name="reach">How far any point shall be from a box.</param>
    public RunPlannerOptions WithReach(Distance reach) => this with { Reach = reach };

    /// <summary>The same with another <see cref="FaceLength"/>.</summary>
    /// <param name="faceLength">How long a face has to be to get a box of its own.</param>
    public RunPlannerOptions WithFaceLength(Distance? faceLength) => this with { FaceLength = faceLength };

    /// <summary>The same with another <see cref="CodeMinimum"/>.</summary>
    /// <param name="codeMinimum">Whether only what the limit asks is planned.</param>
    public RunPlannerOptions WithCodeMinimum(bool codeMinimum) => this with { CodeMinimum = codeMinimum };

    internal RunPlannerOptions Checked()
    {
        List<string> faults = [];
        void Require(bool good, string fault)
        {
            if (!good)
            {
                faults.Add(fault);
            }
        }

        Require(Limit > Distance.Zero, "Limit isn't more than zero");
        Require(Reach <= Limit, "Reach is more than Limit");
        Require(Reach.Ticks >= Limit.Ticks - Reach.Ticks, "Reach is less than half of Limit");
        Require(FaceLength is not { } length || length > Distance.Zero, "FaceLength isn't more than zero");
        return faults.Count == 0 ? this : throw new ArgumentException("These options don't do: " + string.Join("; ", faults) + ".", "options");
    }
}
