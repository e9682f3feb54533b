using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the wall faces of a room are in plan, and how far things in it are apart.</summary>
/// <remarks>
/// Faces are laid end to end by their lengths and turns, the first along the axis that plan points are given in, so that a side may be open and a room needn't
/// close. While every corner is a multiple of 90 degrees all of it is whole numbers of ticks and exact. Beyond any other corner places are worked out to 28
/// digits, and what is said of them is rounded by a tick: inward for what is sure, outward for what is possible.
/// </remarks>
internal sealed partial class WallPlan
{
    /// <summary>Some 13 km: squares of such lengths still have a decimal's digits to spare.</summary>
    private const long Most = 1L << 40;

    /// <summary>How far the last face's end may miss the first one's start, for walls that were measured: 1 in. Common practice, no source.</summary>
    private static readonly decimal MostGap = Distance.FromInches(1, 0, 1).Ticks;

    private readonly List<Face> faces = [];

    public WallPlan(Room room)
    {
        decimal x = 0m;
        decimal y = 0m;
        decimal turned = 0m;
        decimal degrees = 0m;
        bool square = true;
        foreach (Wall wall in room.Walls)
        {
            (decimal right, decimal into) = Heading.Of(degrees);
            faces.Add(new(wall, x, y, right, into, square));
            x += right * Math.Min(wall.Length.Ticks, Most);
            y += into * Math.Min(wall.Length.Ticks, Most);
            turned += wall.TurnDegrees % 360m;
            degrees = (degrees + wall.TurnDegrees) % 360m;
            square &= wall.TurnDegrees % 90m == 0m;
            IsTooLarge |= wall.Length.Ticks > Most || faces.Count > 1000;
        }

        Closes = faces.Count > 2 && turned == 360m && Math.Abs(x) <= MostGap && Math.Abs(y) <= MostGap && !IsTooLarge;
    }

    /// <summary>Whether its faces come round to where the first begins, so that all of the room is described.</summary>
    public bool Closes { get; }

    /// <summary>Whether it is larger than any house, so that nothing is said of it.</summary>
    public bool IsTooLarge { get; }

    /// <summary>How many faces it has.</summary>
    public int Count => faces.Count;

    public Wall WallOf(int face) => faces[face].Wall;

    /// <summary>The place of a wall in the room's order; -1 where it has none of that id.</summary>
    public int IndexOf(string id) => faces.FindIndex(face => face.Wall.Id == id);

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

    /// <summary>Whether a point is near enough to the first wall's left end for its distances to be worked out.</summary>
    public static bool IsInAHouse(PlanPoint point) => point.Right.Ticks is > -Most and < Most && point.Into.Ticks is > -Most and < Most;

    /// <summary>How far a point of a face is from a patch, straight in plan.</summary>
    public PlanGap Gap(int face, Distance along, in PlanPatch patch)
    {
        (decimal a, decimal b) = Turn(face, patch.Frame, along.Ticks, 0m);
        return new(patch.SquareFrom(a, b), IsExact(face, patch.Frame));
    }

    /// <summary>How far a point in plan is from a patch, straight.</summary>
    public PlanGap Gap(PlanPoint point, in PlanPatch patch)
    {
        (decimal a, decimal b) = Turn(-1, patch.Frame, point.Right.Ticks, point.Into.Ticks);
        return new(patch.SquareFrom(a, b), IsExact(-1, patch.Frame));
    }

    /// <summary>
    /// The stretch of a face whose points are nearer to a patch than a reach, ends included; without reach, those inside its ends on a face that it touches.
    /// What lies behind the face doesn't count.
    /// </summary>
    /// <param name="face">The face.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="reach">The reach; a point exactly at it is outside.</param>
    /// <param name="outward">Whether to round outward where places aren't exact: what is possible instead of what is sure.</param>
    /// <param name="from">The left end found, in ticks along the face; it may lie beyond the face's own.</param>
    /// <param name="to">The right end found.</param>
    /// <returns>False when there are none.</returns>
    public bool TryNear(int face, in PlanPatch patch, Distance reach, bool outward, out long from, out long to)
    {
        from = to = 0;
        if (!IsExact(face, patch.Frame))
        {
            return TryNearAcross(face, patch, reach, outward, out from, out to);
        }

        PlanPatch here = Seen(patch, face);
        bool onTheFace = here.Near == 0m && here.Far == 0m;
        if (here.Far <= 0m && !onTheFace)
        {
            return false;
        }

        decimal off = Math.Max(here.Near, 0m);
        decimal left = (reach.Ticks * (decimal)reach.Ticks) - (off * off);
        if (reach == Distance.Zero ? off > 0m : left <= 0m)
        {
            return false;
        }

        // The furthest whole tick aside whose square is still less than what is left of the reach's.
        decimal aside = reach == Distance.Zero ? -1m : Grid.SquareRoot(left - 1m);
        from = (long)(here.Left - aside);
        to = (long)(here.Right + aside);
        return from <= to && to >= 0 && from <= faces[face].Wall.Length.Ticks;
    }

    /// <summary>How near a face comes to a patch.</summary>
    public decimal SquareBetween(int face, in PlanPatch patch)
    {
        PlanPatch here = Seen(patch, face);
        decimal length = faces[face].Wall.Length.Ticks;
        return here.SquareFrom(here.Left > length ? length : Math.Max(here.Left, 0m), 0m);
    }

    /// <summary>The rectangle round a patch as a face sees it.</summary>
    private PlanPatch Seen(in PlanPatch patch, int face)
    {
        if (patch.Frame == face)
        {
            return patch;
        }

        (decimal left, decimal near) = Turn(patch.Frame, face, patch.Left, patch.Near);
        (decimal right, decimal far) = (left, near);
        Take(Turn(patch.Frame, face, patch.Left, patch.Far));
        Take(Turn(patch.Frame, face, patch.Right, patch.Near));
        Take(Turn(patch.Frame, face, patch.Right, patch.Far));
        return new(face, left, right, near, far);

        void Take((decimal Along, decimal Away) corner)
        {
            (left, right) = (Math.Min(left, corner.Along), Math.Max(right, corner.Along));
            (near, far) = (Math.Min(near, corner.Away), Math.Max(far, corner.Away));
        }
    }

    /// <summary>Across a corner that isn't square: how near a straight face comes to a convex patch falls, then rises, so that both ends can be halved in upon.</summary>
    private bool TryNearAcross(int face, PlanPatch patch, Distance reach, bool outward, out long from, out long to)
    {
        from = to = 0;
        PlanPatch seen = Seen(patch, face);
        decimal slack = outward ? 1m : -1m;
        decimal most = reach.Ticks + slack;
        if (seen.Far < -1m || most <= 0m || (!outward && seen.Near < 0m))
        {
            return false;
        }

        decimal SquareAt(long along)
        {
            (decimal a, decimal b) = Turn(face, patch.Frame, along, 0m);
            return patch.SquareFrom(a, b);
        }

        bool IsNear(long along) => SquareAt(along) < most * most;

        long low = 0;
        long high = faces[face].Wall.Length.Ticks;
        while (low < high)
        {
            long middle = low + ((high - low) / 2);
            (low, high) = SquareAt(middle) <= SquareAt(middle + 1) ? (low, middle) : (middle + 1, high);
        }

        if (!IsNear(low))
        {
            return false;
        }

        from = Furthest(low, 0, IsNear);
        to = Furthest(low, faces[face].Wall.Length.Ticks, IsNear);
        return true;
    }

    /// <summary>The furthest tick towards an end at which something still holds that holds at the first.</summary>
    private static long Furthest(long holds, long end, Func<long, bool> still)
    {
        if (still(end))
        {
            return end;
        }

        long fails = end;
        while (Math.Abs(fails - holds) > 1)
        {
            long middle = holds + ((fails - holds) / 2);
            (holds, fails) = still(middle) ? (middle, fails) : (holds, middle);
        }

        return holds;
    }

    private bool IsExact(int one, int other) => one == other || ((one < 0 || faces[one].IsSquare) && (other < 0 || faces[other].IsSquare));

    /// <summary>A point of one frame in another.</summary>
    private (decimal Along, decimal Away) Turn(int from, int to, decimal along, decimal away)
    {
        if (from == to)
        {
            return (along, away);
        }

        (decimal x, decimal y) = from < 0 ? (along, away)
            : (faces[from].X + (along * faces[from].Right) - (away * faces[from].Into), faces[from].Y + (along * faces[from].Into) + (away * faces[from].Right));
        if (to < 0)
        {
            return (x, y);
        }

        (x, y) = (x - faces[to].X, y - faces[to].Y);
        return ((x * faces[to].Right) + (y * faces[to].Into), (y * faces[to].Right) - (x * faces[to].Into));
    }

    /// <summary>A wall face: where its left end is, and which way it runs.</summary>
    private sealed class Face(Wall wall, decimal x, decimal y, decimal right, decimal into, bool isSquare)
    {
        public Wall Wall { get; } = wall;

        public decimal X { get; } = x;

        public decimal Y { get; } = y;

        public decimal Right { get; } = right;

        public decimal Into { get; } = into;

        public bool IsSquare { get; } = isSquare;
    }
}
