using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Places on and before the walls of a room, in plan, rounded once to the grid.</summary>
internal static class PlanPoints
{
    /// <summary>A place on a wall; null where the room has no such wall.</summary>
    public static PlanPoint? On(WallPlan plan, string wall, Distance along) => plan.IndexOf(wall) is >= 0 and var face ? At(plan[face], along, Distance.Zero) : null;

    /// <summary>A point, unless it lies beyond any house.</summary>
    public static PlanPoint? InAHouse(PlanPoint? point) => point is { } at && WallPlan.IsInAHouse(at) ? at : null;

    /// <summary>A place so far along a face and so far before it.</summary>
    public static PlanPoint At(PlanLine face, Distance along, Distance away)
    {
        (decimal x, decimal y) = face.InPlan(along.Ticks, away.Ticks);
        return new(Distance.FromTicks((long)Math.Round(x)), Distance.FromTicks((long)Math.Round(y)));
    }

    /// <summary>The outline of what stands against a face; only its stretch of the face where its depth isn't known.</summary>
    public static Items<PlanPoint> Against(PlanLine face, Distance left, Distance right, Distance? depth)
    {
        List<PlanPoint> corners = [At(face, left, Distance.Zero), At(face, right, Distance.Zero)];
        if (depth is { } deep)
        {
            corners.Add(At(face, right, deep));
            corners.Add(At(face, left, deep));
        }

        return new(corners);
    }
}
