using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>An outline in plan: of an island, of a tub.</summary>
internal sealed class PlanOutline
{
    private readonly Items<PlanPoint> corners;

    private PlanOutline(Items<PlanPoint> corners)
    {
        this.corners = corners;
        (Distance one, Distance other) = corners.Count == 4
            ? (PlanLine.Between(corners[0], corners[1]).Length, PlanLine.Between(corners[1], corners[2]).Length)
            : Extent(corners);
        LongSide = one > other ? one : other;
        ShortSide = one > other ? other : one;
    }

    /// <summary>The longer side; of more than four corners, of the rectangle around them.</summary>
    public Distance LongSide { get; }

    /// <summary>The shorter side; of more than four corners, of the rectangle around them.</summary>
    public Distance ShortSide { get; }

    /// <summary>The area in square ticks.</summary>
    public decimal Area
    {
        get
        {
            decimal twice = 0m;
            for (int i = 0; i < corners.Count; i++)
            {
                twice += Cross(corners[0], corners[i], corners[(i + 1) % corners.Count]);
            }

            return Math.Abs(twice) / 2m;
        }
    }

    /// <summary>An outline by its corners, in order.</summary>
    /// <returns>False where there are too few, or two that follow each other are one.</returns>
    public static bool TryOf(Items<PlanPoint> corners, [NotNullWhen(true)] out PlanOutline? outline)
    {
        outline = null;
        for (int i = 0; i < corners.Count; i++)
        {
            if (!FloorPlan.IsWithinReason(corners[i]) || corners[i] == corners[(i + 1) % corners.Count])
            {
                return false;
            }
        }

        outline = corners.Count < 3 ? null : new(corners);
        return outline is not null;
    }

    /// <summary>Whether a point lies within the outline or on it.</summary>
    public bool Holds(PlanPoint point)
    {
        bool within = false;
        for (int i = 0; i < corners.Count && FloorPlan.IsWithinReason(point); i++)
        {
            PlanPoint a = corners[i];
            PlanPoint b = corners[(i + 1) % corners.Count];
            decimal side = Cross(a, b, point);
            if (side == 0m && IsBetween(a.Right, b.Right, point.Right) && IsBetween(a.Into, b.Into, point.Into))
            {
                return true;
            }

            if (a.Into > point.Into != b.Into > point.Into)
            {
                within ^= b.Into > a.Into ? side > 0m : side < 0m;
            }
        }

        return within;
    }

    private static bool IsBetween(Distance one, Distance other, Distance at) => one < other ? one <= at && at <= other : other <= at && at <= one;

    private static decimal Cross(PlanPoint from, PlanPoint a, PlanPoint b) =>
        ((decimal)(a.Right - from.Right).Ticks * (b.Into - from.Into).Ticks) - ((decimal)(b.Right - from.Right).Ticks * (a.Into - from.Into).Ticks);

    private static (Distance One, Distance Other) Extent(Items<PlanPoint> corners)
    {
        Distance left = corners[0].Right, right = left, near = corners[0].Into, far = near;
        foreach (PlanPoint corner in corners)
        {
            left = corner.Right < left ? corner.Right : left;
            right = corner.Right > right ? corner.Right : right;
            near = corner.Into < near ? corner.Into : near;
            far = corner.Into > far ? corner.Into : far;
        }

        return (right - left, far - near);
    }
}
