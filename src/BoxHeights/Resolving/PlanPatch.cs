using System;

namespace BoxHeights;

/// <summary>A rectangle in plan, in ticks along and away from a wall face; with no depth, a stretch of that face.</summary>
/// <param name="frame">The wall in its room's order; -1 for the axes that plan points are given in.</param>
/// <param name="left">Its left end along the face.</param>
/// <param name="right">Its right end.</param>
/// <param name="near">How far from the face it begins.</param>
/// <param name="far">How far from the face it ends.</param>
internal readonly struct PlanPatch(int frame, decimal left, decimal right, decimal near, decimal far)
{
    public int Frame { get; } = frame;

    public decimal Left { get; } = left;

    public decimal Right { get; } = right;

    public decimal Near { get; } = near;

    public decimal Far { get; } = far;

    /// <summary>All of it but its edges.</summary>
    public PlanPatch Inside => new(Frame, Left + 1m, Right - 1m, Near + 1m, Far - 1m);

    /// <summary>Its middle, to the tick below.</summary>
    public PlanPatch Middle
    {
        get
        {
            decimal along = decimal.Floor((Left + Right) / 2m);
            decimal away = decimal.Floor((Near + Far) / 2m);
            return new(Frame, along, along, away, away);
        }
    }

    /// <summary>Whether anything is in it.</summary>
    public bool IsEmpty => Left > Right || Near > Far;

    /// <summary>A stretch of a face.</summary>
    public static PlanPatch Stretch(int face, Distance left, Distance right) => new(face, left.Ticks, right.Ticks, 0m, 0m);

    /// <summary>A rectangle that stands against a face.</summary>
    public static PlanPatch Against(int face, Distance left, Distance right, Distance near, Distance far) => new(face, left.Ticks, right.Ticks, near.Ticks, far.Ticks);

    /// <summary>The rectangle round points in plan.</summary>
    public static PlanPatch Around(Items<PlanPoint> points)
    {
        PlanPoint first = points[0];
        (long left, long right, long near, long far) = (first.Right.Ticks, first.Right.Ticks, first.Into.Ticks, first.Into.Ticks);
        foreach (PlanPoint point in points)
        {
            (left, right) = (Math.Min(left, point.Right.Ticks), Math.Max(right, point.Right.Ticks));
            (near, far) = (Math.Min(near, point.Into.Ticks), Math.Max(far, point.Into.Ticks));
        }

        return new(-1, left, right, near, far);
    }

    /// <summary>The square of the way from a point in the same frame.</summary>
    public decimal SquareFrom(decimal along, decimal away)
    {
        decimal aside = along < Left ? Left - along : along > Right ? along - Right : 0m;
        decimal off = away < Near ? Near - away : away > Far ? away - Far : 0m;
        return (aside * aside) + (off * off);
    }
}

/// <summary>How far two things are apart in plan, straight: exactly, or within a tick where a corner of the room isn't square.</summary>
internal readonly struct PlanGap(decimal square, bool isExact)
{
    private readonly decimal slack = isExact ? 0m : 1m;

    /// <summary>The way in whole ticks, rounded down.</summary>
    public Distance RoundedDown => Distance.FromTicks((long)Grid.SquareRoot(square));

    /// <summary>Whether it is no more than a reach; null where a tick decides that isn't known.</summary>
    public bool? IsWithin(Distance reach) => Of(square <= Square(reach.Ticks - slack) && reach.Ticks >= slack, square > Square(reach.Ticks + slack));

    /// <summary>Whether it is no less than a reach; null where a tick decides that isn't known.</summary>
    public bool? IsClearOf(Distance reach) => Of(square >= Square(reach.Ticks + slack), square < Square(reach.Ticks - slack));

    private static decimal Square(decimal ticks) => ticks <= 0m ? 0m : ticks * ticks;

    private static bool? Of(bool surely, bool surelyNot) => surely ? true : surelyNot ? false : null;
}
