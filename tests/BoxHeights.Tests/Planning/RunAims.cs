using BoxHeights.Rules;

namespace BoxHeights.Tests.Planning;

/// <summary>What plans of runs aim at after NEC 210.52(A)(1) and (C)(1); the slack and the face are common practice, no source.</summary>
internal static class RunAims
{
    /// <summary>A sixth of the reach is kept in hand, 6 in at the most.</summary>
    public static RoomForBoxes Custom { get; } = new("room", "a sixth in hand", Citation.CommonPractice) { PartOfReach = 6, OfReach = Distance.FromInches(6) };

    /// <summary>Every point within 6 ft, planned for 5 ft 6 in, and a box on each face of 6 ft or more.</summary>
    public static RunPlannerOptions Walls { get; } = RunPlannerOptions.WithSlackFor(Distance.FromFeet(6), Custom) with { FaceLength = Distance.FromFeet(6) };

    /// <summary>Every point within 24 in, planned for 20 in.</summary>
    public static RunPlannerOptions Counters { get; } = RunPlannerOptions.WithSlackFor(Distance.FromFeet(2), Custom);
}
