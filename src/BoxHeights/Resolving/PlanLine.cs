using System;

namespace BoxHeights;

/// <summary>A straight line in plan that is walked with the room at one's right hand, as a wall face is from its left end to its right.</summary>
/// <remarks>On lines at right angles to a room's first wall places are exact; on others they are worked out to 28 digits.</remarks>
internal sealed class PlanLine
{
    private readonly decimal x;
    private readonly decimal y;
    private readonly decimal right;
    private readonly decimal into;

    private PlanLine(decimal x, decimal y, decimal right, decimal into, Distance length)
    {
        this.x = x;
        this.y = y;
        this.right = right;
        this.into = into;
        Length = length;
    }

    public Distance Length { get; }

    /// <summary>A line from a point, in ticks, that runs at so many degrees to the room's first wall, turning into the room.</summary>
    public static PlanLine Heading(decimal x, decimal y, decimal degrees, Distance length)
    {
        (decimal right, decimal into) = FaceDirection.Of(degrees);
        return new(x, y, right, into, length);
    }

    /// <summary>The line between two points that differ.</summary>
    public static PlanLine Between(PlanPoint from, PlanPoint to)
    {
        decimal right = (to.Right - from.Right).Ticks;
        decimal into = (to.Into - from.Into).Ticks;
        decimal length = right == 0 ? Math.Abs(into) : into == 0 ? Math.Abs(right) : Math.Abs(right) * Root(1m + (into / right * (into / right)));
        return new(from.Right.Ticks, from.Into.Ticks, right / length, into / length, Rounded(length));
    }

    /// <summary>Whether it runs more across another line than along it: at 45 degrees or more.</summary>
    public bool IsAcross(PlanLine other) => Math.Abs((right * other.right) + (into * other.into)) <= 0.70711m;

    /// <summary>The point in plan, in ticks, that lies so far along the line and so far off it toward the room.</summary>
    public (decimal X, decimal Y) InPlan(decimal along, decimal away) =>
        (x + (along * right) - (away * into), y + (along * into) + (away * right));

    /// <summary>Where a point in plan is seen from the line, in ticks: how far along it, and how far off it toward the room.</summary>
    public (decimal Along, decimal Away) Seen(decimal atX, decimal atY) =>
        (((atX - x) * right) + ((atY - y) * into), ((atY - y) * right) - ((atX - x) * into));

    /// <summary>The same, rounded once to the nearest tick.</summary>
    public void Locate(PlanPoint point, out Distance along, out Distance off)
    {
        (decimal at, decimal away) = Seen(point.Right.Ticks, point.Into.Ticks);
        along = Rounded(at);
        off = Rounded(away);
    }

    private static Distance Rounded(decimal ticks) => Distance.FromTicks((long)Math.Round(ticks));

    /// <summary>The square root to a decimal's digits: the same on every machine.</summary>
    private static decimal Root(decimal square)
    {
        decimal root = Math.Max(1m, square / 2m);
        for (int step = 0; step < 200; step++)
        {
            decimal next = (root + (square / root)) / 2m;
            if (next == root)
            {
                return next;
            }

            root = next;
        }

        return root;
    }
}
