using System.Collections.Generic;

namespace BoxHeights;

/// <summary>How a place in a ceiling or floor is found with two tapes: square off the nearest wall, and off the nearest that runs across it.</summary>
[Told]
internal readonly partial record struct TapedFrom
{
    /// <summary>The place of the wall in the room's order.</summary>
    public int Face { get; }

    /// <summary>Where along the wall the tape is hooked, from its left end.</summary>
    public Distance Along { get; }

    /// <summary>Square off the framing face of the wall.</summary>
    public Distance Away { get; }

    /// <summary>The tapes to a point: two, or fewer where no wall stands that it lies before.</summary>
    public static Items<TapedFrom> To(WallPlan plan, PlanPoint point)
    {
        List<TapedFrom> before = [];
        for (int face = 0; face < plan.Count && !plan.IsTooLarge && WallPlan.IsInAHouse(point); face++)
        {
            plan[face].Locate(point, out Distance along, out Distance away);
            if (!plan.WallOf(face).Open && away >= Distance.Zero && along >= Distance.Zero && along <= plan[face].Length)
            {
                before.Add(new(face, along, away));
            }
        }

        before.Sort((a, b) => a.Away != b.Away ? a.Away.CompareTo(b.Away) : a.Face.CompareTo(b.Face));
        if (before.Count == 0)
        {
            return default;
        }

        int across = before.FindIndex(one => plan[one.Face].IsAcross(plan[before[0].Face]));
        return across < 0 ? new[] { before[0] } : new[] { before[0], before[across] };
    }
}
