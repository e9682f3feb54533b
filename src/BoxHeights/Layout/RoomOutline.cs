using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A room's walls as corners on a drawing, in any place and either way round, turned into lengths and turns.</summary>
/// <remarks>
/// The drawing's axes are those of a screen or a sheet that is read from its upper left: to the right, and down. Where a program counts up instead, give the second
/// distance with the other sign, or the room is its own mirror image. Distances are between framing faces, as a wall's length is.
/// </remarks>
public sealed class RoomOutline
{
    private const decimal TicksPerFoot = 24_384_000m;
    private const decimal TicksPerMeter = 80_000_000m;
    private const long Most = 1L << 36;

    /// <summary>More corners than any outline in a house has.</summary>
    internal const int MostCorners = 1000;

    private readonly decimal twiceArea;

    private RoomOutline(List<PlanPoint> corners, List<int> edges, decimal twiceArea, Distance closureError)
    {
        this.twiceArea = twiceArea;
        ClosureError = closureError;
        Corners = new(corners);
        List<Wall> walls = [];
        for (int i = 0; i < corners.Count; i++)
        {
            PlanPoint here = corners[i];
            PlanPoint next = corners[(i + 1) % corners.Count];
            walls.Add(new Wall("w" + (edges[i] + 1), Length(here, next)).WithTurnDegrees(Turn(here, next, corners[(i + 2) % corners.Count])));
        }

        Walls = new(walls);
    }

    /// <summary>The corners on the drawing, in the order of <see cref="Walls"/>: each is the left end of its wall, seen from inside.</summary>
    public Items<PlanPoint> Corners { get; }

    /// <summary>The walls from left to right, as a person sees them who stands in the room.</summary>
    /// <remarks>Their ids are w1, w2 and so on, by the edge from each point to the next as they were given, so that w1 is first whichever way round.</remarks>
    public Items<Wall> Walls { get; }

    /// <summary>How far the last point missed the first, where it repeats it; else zero.</summary>
    public Distance ClosureError { get; }

    /// <summary>The area between framing faces in square feet.</summary>
    public decimal SquareFeet => twiceArea / 2m / TicksPerFoot / TicksPerFoot;

    /// <summary>The area between framing faces in square meters.</summary>
    public decimal SquareMeters => twiceArea / 2m / TicksPerMeter / TicksPerMeter;

    /// <summary>Reads an outline.</summary>
    /// <param name="points">Its corners in order, either way round, at least three. The last may repeat the first, up to 12 in off.</param>
    /// <exception cref="ArgumentException">There are fewer than three corners or more than 1,000, two that follow each other are one, walls cross, or a corner is further away than anything in a house.</exception>
    public static RoomOutline Of(Items<PlanPoint> points)
    {
        List<PlanPoint> corners = [.. points];
        Distance miss = Distance.Zero;
        foreach (PlanPoint corner in corners)
        {
            RefuseFar(corner, nameof(points));
        }

        if (corners.Count > 3 && Length(corners[0], corners[corners.Count - 1]) is var last && last <= DrawingTolerance.Gap)
        {
            miss = last;
            corners.RemoveAt(corners.Count - 1);
        }

        if (corners.Count is < 3 or > MostCorners)
        {
            throw new ArgumentException("An outline has 3 to 1,000 corners; this one has " + corners.Count + ".", nameof(points));
        }

        decimal twice = 0m;
        List<int> edges = [];
        for (int i = 0; i < corners.Count; i++)
        {
            PlanPoint next = corners[(i + 1) % corners.Count];
            if (corners[i] == next)
            {
                throw new ArgumentException("Two corners that follow each other are both at " + next + ".", nameof(points));
            }

            twice += Twice(corners[0], corners[i], next);
            edges.Add(i);
        }

        if (Crossing(corners) is var (a, b, c, d))
        {
            throw new ArgumentException("The walls from " + a + " to " + b + " and from " + c + " to " + d + " cross.", nameof(points));
        }

        if (twice < 0m)
        {
            // The other way round, from the far end of the first edge.
            corners.Reverse();
            corners.Insert(0, corners[corners.Count - 2]);
            corners.RemoveAt(corners.Count - 2);
            corners.Insert(1, corners[corners.Count - 1]);
            corners.RemoveAt(corners.Count - 1);
            edges.Reverse();
            edges.Insert(0, 0);
            edges.RemoveAt(edges.Count - 1);
        }

        return new(corners, edges, Math.Abs(twice), miss);
    }

    /// <summary>An arc as chords: corners from one end to the other, none of its chords further off the arc than a tolerance.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="through">Any point of it between its ends.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="tolerance">How far a chord may lie off the arc, more than zero.</param>
    /// <exception cref="ArgumentException">The three points lie on a straight line, or are further away than anything in a house.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> isn't more than zero, or so small that there would be more than 256 chords.</exception>
    public static Items<PlanPoint> Arc(PlanPoint from, PlanPoint through, PlanPoint to, Distance tolerance)
    {
        _ = Guard.Positive(tolerance, nameof(tolerance));
        foreach (PlanPoint point in new[] { from, through, to })
        {
            RefuseFar(point, nameof(through));
        }

        decimal turn = Twice(from, through, to);
        if (turn == 0m)
        {
            throw new ArgumentException("The three points of an arc lie on a straight line.", nameof(through));
        }

        // The center, counted from the first end.
        decimal bx = (through.Right - from.Right).Ticks;
        decimal by = (through.Into - from.Into).Ticks;
        decimal cx = (to.Right - from.Right).Ticks;
        decimal cy = (to.Into - from.Into).Ticks;
        decimal b = (bx * bx) + (by * by);
        decimal c = (cx * cx) + (cy * cy);
        decimal ux = ((b * (cy / turn)) - (c * (by / turn))) / 2m;
        decimal uy = ((c * (bx / turn)) - (b * (cx / turn))) / 2m;
        decimal radius = Grid.SquareRoot((ux * ux) + (uy * uy));
        List<(decimal X, decimal Y)> corners = [(0m, 0m), (cx, cy)];
        while (Sagitta(corners[0], corners[1]) > tolerance.Ticks)
        {
            if (corners.Count > 256)
            {
                throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "A tolerance of " + tolerance + " would make more than 256 chords.");
            }

            for (int i = corners.Count - 2; i >= 0; i--)
            {
                (decimal nx, decimal ny) = Outward(corners[i], corners[i + 1]);
                corners.Insert(i + 1, (ux + (nx * radius), uy + (ny * radius)));
            }
        }

        return new(corners.ConvertAll(one => new PlanPoint(from.Right + Distance.FromTicks((long)Math.Round(one.X)), from.Into + Distance.FromTicks((long)Math.Round(one.Y)))));

        // How far the middle of the arc over a chord lies off it.
        decimal Sagitta((decimal X, decimal Y) one, (decimal X, decimal Y) other)
        {
            (decimal nx, decimal ny) = Outward(one, other);
            return radius + (((ux - one.X) * nx) + ((uy - one.Y) * ny));
        }

        // One step square to a chord, toward the arc over it.
        (decimal X, decimal Y) Outward((decimal X, decimal Y) one, (decimal X, decimal Y) other)
        {
            decimal dx = other.X - one.X;
            decimal dy = other.Y - one.Y;
            decimal length = Grid.SquareRoot((dx * dx) + (dy * dy));
            return turn > 0m ? (dy / length, -dx / length) : (-dy / length, dx / length);
        }
    }

    /// <summary>How many walls it has, and its area.</summary>
    public override string ToString() => Walls.Count + " walls, " + SquareFeet.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " sq ft";

    /// <summary>A point on the drawing as a point of the room: right along its first wall, and into it.</summary>
    /// <param name="drawn">The point on the drawing.</param>
    public PlanPoint InRoom(PlanPoint drawn)
    {
        decimal dx = (Corners[1].Right - Corners[0].Right).Ticks;
        decimal dy = (Corners[1].Into - Corners[0].Into).Ticks;
        decimal x = (drawn.Right - Corners[0].Right).Ticks;
        decimal y = (drawn.Into - Corners[0].Into).Ticks;
        decimal length = Walls[0].Length.Ticks;
        return new(Distance.FromTicks((long)Math.Round(((x * dx) + (y * dy)) / length)), Distance.FromTicks((long)Math.Round(((y * dx) - (x * dy)) / length)));
    }

    /// <summary>The wall that a point on the drawing is nearest to, and where along it: for a symbol on a wall's line, or a little off it.</summary>
    /// <param name="drawn">The point on the drawing.</param>
    /// <returns>The nearest wall; at a corner that of the two which comes first.</returns>
    /// <exception cref="ArgumentException">The point is further away than anything in a house.</exception>
    public OutlinePlace OnWall(PlanPoint drawn)
    {
        RefuseFar(drawn, nameof(drawn));
        OutlinePlace? nearest = null;
        for (int i = 0; i < Corners.Count; i++)
        {
            PlanPoint from = Corners[i];
            PlanPoint to = Corners[(i + 1) % Corners.Count];
            decimal length = Walls[i].Length.Ticks;
            decimal dx = (to.Right - from.Right).Ticks / length;
            decimal dy = (to.Into - from.Into).Ticks / length;
            decimal along = ((drawn.Right - from.Right).Ticks * dx) + ((drawn.Into - from.Into).Ticks * dy);
            long ticks = (long)Math.Round(Math.Min(Math.Max(along, 0m), length));
            PlanPoint beside = new(from.Right + Distance.FromTicks((long)Math.Round(ticks * dx)), from.Into + Distance.FromTicks((long)Math.Round(ticks * dy)));
            if (Length(beside, drawn) is var away && (nearest is null || away < nearest.Away))
            {
                nearest = new(Walls[i].Id, Distance.FromTicks(ticks), away);
            }
        }

        return nearest!;
    }

    private static Distance Length(PlanPoint from, PlanPoint to)
    {
        decimal x = (to.Right - from.Right).Ticks;
        decimal y = (to.Into - from.Into).Ticks;
        return Distance.FromTicks((long)((Grid.SquareRoot(4m * ((x * x) + (y * y))) + 1m) / 2m));
    }

    /// <summary>Twice the area of a triangle: above zero where the way from the first to the last by the second turns to the right on a drawing that counts down.</summary>
    private static decimal Twice(PlanPoint a, PlanPoint b, PlanPoint c) =>
        ((decimal)(b.Right - a.Right).Ticks * (c.Into - a.Into).Ticks) - ((decimal)(c.Right - a.Right).Ticks * (b.Into - a.Into).Ticks);

    /// <summary>The turn at the second of three corners. Right angles come out exact; others are good to a billionth of a degree.</summary>
    private static decimal Turn(PlanPoint a, PlanPoint b, PlanPoint c)
    {
        decimal across = ((decimal)(b.Right - a.Right).Ticks * (c.Into - b.Into).Ticks) - ((decimal)(c.Right - b.Right).Ticks * (b.Into - a.Into).Ticks);
        decimal along = ((decimal)(b.Right - a.Right).Ticks * (c.Right - b.Right).Ticks) + ((decimal)(b.Into - a.Into).Ticks * (c.Into - b.Into).Ticks);
        return along == 0m ? (across > 0m ? 90m : -90m) : (decimal)Math.Round(Math.Atan2((double)across, (double)along) * 180d / Math.PI, 9);
    }

    private static void RefuseFar(PlanPoint point, string name)
    {
        if (Math.Abs(point.Right.Ticks / 2) > Most || Math.Abs(point.Into.Ticks / 2) > Most)
        {
            throw new ArgumentException("A corner at " + point + " is further away than anything in a house.", name);
        }
    }

    /// <summary>Two sides of an outline that cross, by their ends; null where none do.</summary>
    internal static (PlanPoint A, PlanPoint B, PlanPoint C, PlanPoint D)? Crossing(IReadOnlyList<PlanPoint> corners)
    {
        for (int i = 0; i < corners.Count; i++)
        {
            for (int j = i + 2; j < corners.Count; j++)
            {
                (PlanPoint a, PlanPoint b) = (corners[i], corners[i + 1]);
                (PlanPoint c, PlanPoint d) = (corners[j], corners[(j + 1) % corners.Count]);
                if (a != d && Math.Sign(Twice(a, b, c)) * Math.Sign(Twice(a, b, d)) < 0 && Math.Sign(Twice(c, d, a)) * Math.Sign(Twice(c, d, b)) < 0)
                {
                    return (a, b, c, d);
                }
            }
        }

        return null;
    }
}

/// <summary>Where a point on a drawing is at an outline's walls.</summary>
[Told]
public sealed partial class OutlinePlace
{
    /// <summary>The wall's id in its room: <see cref="RoomBuilder.FindWall"/> goes on with it.</summary>
    public string Wall { get; }

    /// <summary>From the wall's left end along it; not beyond its ends. It is the <see cref="DeviceBox.At"/> of a box drawn there.</summary>
    public Distance Along { get; }

    /// <summary>How far from the wall's line the point is drawn.</summary>
    public Distance Away { get; }

    /// <summary>The wall and the place along it.</summary>
    public override string ToString() => Wall + ", " + Along + " along";
}
