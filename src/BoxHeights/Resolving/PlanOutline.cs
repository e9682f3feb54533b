using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>An outline in plan: of an island, of a tub.</summary>
internal sealed class PlanOutline
{
    private readonly List<(decimal X, decimal Y)> corners;

    /// <summary>An outline by its corners in ticks, in order.</summary>
    public PlanOutline(List<(decimal X, decimal Y)> corners) => this.corners = corners;

    /// <summary>The area in square ticks.</summary>
    public decimal Area => AreaOf(corners);

    /// <summary>An outline by its corners, in order.</summary>
    /// <returns>False where there are too few, or two that follow each other are one.</returns>
    public static bool TryOf(Items<PlanPoint> corners, [NotNullWhen(true)] out PlanOutline? outline)
    {
        outline = null;
        List<(decimal X, decimal Y)> ticks = [];
        for (int i = 0; i < corners.Count; i++)
        {
            if (!WallPlan.IsInAHouse(corners[i]) || corners[i] == corners[(i + 1) % corners.Count])
            {
                return false;
            }

            ticks.Add((corners[i].Right.Ticks, corners[i].Into.Ticks));
        }

        outline = corners.Count < 3 ? null : new(ticks);
        return outline is not null;
    }

    /// <summary>The area within corners in order.</summary>
    public static decimal AreaOf(List<(decimal X, decimal Y)> corners)
    {
        decimal twice = 0m;
        for (int i = 0; i < corners.Count; i++)
        {
            twice += TwiceArea(corners[0], corners[i], corners[(i + 1) % corners.Count]);
        }

        return Math.Abs(twice) / 2m;
    }

    /// <summary>Twice the area of a triangle: above zero where the third corner lies on the room's side of the line from the first to the second, below zero behind it.</summary>
    public static decimal TwiceArea((decimal X, decimal Y) a, (decimal X, decimal Y) b, (decimal X, decimal Y) c) =>
        ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    /// <summary>Whether a point lies within the outline or on it.</summary>
    public bool Holds(PlanPoint point) => WallPlan.IsInAHouse(point) && Holds(point.Right.Ticks, point.Into.Ticks);

    /// <summary>The same of a point in ticks.</summary>
    public bool Holds(decimal x, decimal y)
    {
        bool within = false;
        (decimal X, decimal Y) at = (x, y);
        for (int i = 0; i < corners.Count; i++)
        {
            (decimal X, decimal Y) a = corners[i];
            (decimal X, decimal Y) b = corners[(i + 1) % corners.Count];
            decimal side = TwiceArea(a, b, at);
            if (side == 0m && IsBetween(a.X, b.X, at.X) && IsBetween(a.Y, b.Y, at.Y))
            {
                return true;
            }

            if (a.Y > at.Y != b.Y > at.Y)
            {
                within ^= b.Y > a.Y ? side > 0m : side < 0m;
            }
        }

        return within;
    }

    private static bool IsBetween(decimal one, decimal other, decimal at) => Math.Min(one, other) <= at && at <= Math.Max(one, other);
}
