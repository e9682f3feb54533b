using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>Its straight sides, each of one face or of several that go straight on; and how long a passage is.</content>
internal sealed partial class WallPlan
{
    /// <summary>The side that each face is part of: faces between two corners, wherever a wall was described in pieces. Their numbers have no order.</summary>
    public int SideOf(int face)
    {
        int first = face;
        for (int steps = 1; steps < Count && (first > 0 || GoesRound) && turns[After(first, -1)] == 0m; steps++)
        {
            first = After(first, -1);
        }

        return first;
    }

    /// <summary>Whether a point lies in the room, or no further from its walls than a tolerance.</summary>
    public bool Holds(PlanPoint point, Distance tolerance)
    {
        bool holds = Outline.Holds(point);
        for (int face = 0; face < Count && !holds; face++)
        {
            holds = Gap(point, PlanPatch.Stretch(face, Distance.Zero, walls[face].Length)).IsWithin(tolerance) != false;
        }

        return holds;
    }

    /// <summary>A point in the room, as near as may be to one that lies at a part of its length and depth: 2 for the middle. Null where its walls don't close.</summary>
    public PlanPoint? Inside(int part)
    {
        if (!Closes)
        {
            return null;
        }

        (decimal left, decimal right, decimal near, decimal far) = Around;
        PlanPoint wanted = At(left + ((right - left) / part), near + ((far - near) / part));
        PlanOutline outline = Outline;
        if (outline.Holds(wanted))
        {
            return wanted;
        }

        // A finer grid would find a nearer one; what is meant is somewhere in the middle of the room, not of its wall.
        PlanPoint? best = null;
        decimal least = decimal.MaxValue;
        for (int column = 1; column < 16; column++)
        {
            for (int row = 1; row < 16; row++)
            {
                PlanPoint one = At(left + ((right - left) * column / 16m), near + ((far - near) * row / 16m));
                decimal off = new PlanPatch(-1, wanted.Right.Ticks, wanted.Right.Ticks, wanted.Into.Ticks, wanted.Into.Ticks).SquareFrom(one.Right.Ticks, one.Into.Ticks);
                (best, least) = off < least && outline.Holds(one) ? (one, off) : (best, least);
            }
        }

        return best;

        static PlanPoint At(decimal x, decimal y) => new(Distance.FromTicks((long)x), Distance.FromTicks((long)y));
    }

    /// <summary>The middle of a rectangular room; null for one of another shape, or whose walls don't close.</summary>
    public PlanPoint? MiddleOfRectangle
    {
        get
        {
            if (!Closes || Inside(2) is not { } middle)
            {
                return null;
            }

            (decimal wide, decimal deep) = (middle.Right.Ticks * 2m, middle.Into.Ticks * 2m);
            return Area is { } area && Math.Abs((wide * deep) - area) <= DrawingTolerance.GapAcross.Ticks * (wide + deep) ? middle : null;
        }
    }

    /// <summary>
    /// How long a passage of one way, straight or round any number of square corners, is along its middle. What of each side a corner makes longer outside it makes
    /// shorter inside, so that the middle is half of both sides together: of all walls but the two ends.
    /// </summary>
    /// <remarks>Where a shape can be taken for a passage in two ways, as a rectangle can, it is the longer.</remarks>
    /// <returns>False for a shape that branches or has other corners, and where the walls don't go round.</returns>
    public bool TryMiddle(out Distance middle)
    {
        middle = default;
        bool found = false;
        List<(Distance Length, decimal Turn)> sides = Sides();
        for (int end = 0; sides.Count % 2 == 0 && end < sides.Count / 2; end++)
        {
            int other = end + (sides.Count / 2);
            if (IsEnd(sides, end) && IsEnd(sides, other) && TurnAlike(sides, end, other))
            {
                found = true;
                middle = Distance.Max(middle, Middle(sides, end, other));
            }
        }

        return found;
    }

    private int After(int wall, int steps) => (wall + steps + walls.Count) % walls.Count;

    /// <summary>Its sides in order, each with the turn to the next; none where the walls don't go round.</summary>
    private List<(Distance Length, decimal Turn)> Sides()
    {
        List<(Distance Length, decimal Turn)> sides = [];
        int last = Count - 1;
        while (last > 0 && turns[last] == 0m)
        {
            last--;
        }

        Distance length = Distance.Zero;
        for (int step = 1; GoesRound && step <= Count; step++)
        {
            int face = After(last, step);
            length += walls[face].Length;
            if (turns[face] != 0m)
            {
                sides.Add((length, turns[face]));
                length = Distance.Zero;
            }
        }

        return sides;
    }

    private static (Distance Length, decimal Turn) At(List<(Distance Length, decimal Turn)> sides, int side) => sides[(side + sides.Count) % sides.Count];

    private static bool IsEnd(List<(Distance Length, decimal Turn)> sides, int side) => sides[side].Turn == 90m && At(sides, side - 1).Turn == 90m;

    /// <summary>Whether every corner of one long side is an outside corner where the other's is an inside one.</summary>
    private static bool TurnAlike(List<(Distance Length, decimal Turn)> sides, int end, int other)
    {
        for (int corner = 1; corner < other - end - 1; corner++)
        {
            decimal turn = At(sides, end + corner).Turn;
            if ((turn != 90m && turn != -90m) || At(sides, end - corner - 1).Turn != -turn)
            {
                return false;
            }
        }

        return true;
    }

    private static Distance Middle(List<(Distance Length, decimal Turn)> sides, int end, int other)
    {
        // Two sides that don't agree, as in a rectangle taped a little off, count by the shorter.
        if (sides.Count == 4)
        {
            return Distance.Min(At(sides, end + 1).Length, At(sides, other + 1).Length);
        }

        Distance both = Distance.Zero;
        for (int side = 0; side < sides.Count; side++)
        {
            both += side == end || side == other ? Distance.Zero : sides[side].Length;
        }

        return Distance.FromTicks(both.Ticks / 2);
    }
}
