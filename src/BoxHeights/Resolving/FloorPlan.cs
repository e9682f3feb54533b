using System;

namespace BoxHeights;

/// <summary>A room's wall faces in plan, laid end to end from the first wall's left end.</summary>
internal sealed class FloorPlan
{
    /// <summary>How far the last wall may end from where the first starts and still be taken to meet it: 12 in. A tape misses by less, a wall that was left out by more.</summary>
    private static readonly Distance MostOff = Distance.FromInches(12);

    // Some 14 km: sums and turns of anything shorter stay on the grid.
    private const long Reason = 1L << 50;

    private readonly PlanLine[] walls;

    private FloorPlan(PlanLine[] walls, bool closes)
    {
        this.walls = walls;
        Closes = closes;
    }

    public int Count => walls.Length;

    public PlanLine this[int wall] => walls[wall];

    /// <summary>Whether the walls go once round the room.</summary>
    public bool Closes { get; }

    /// <summary>The room's area in square ticks between framing faces; null where the walls don't close.</summary>
    public decimal? Area
    {
        get
        {
            decimal twice = 0m;
            for (int i = 0; i < walls.Length; i++)
            {
                PlanPoint a = walls[i].Start;
                PlanPoint b = walls[(i + 1) % walls.Length].Start;
                twice += ((decimal)a.Right.Ticks * b.Into.Ticks) - ((decimal)b.Right.Ticks * a.Into.Ticks);
            }

            return Closes ? Math.Abs(twice) / 2m : null;
        }
    }

    /// <summary>How long a passage is along its middle: a rectangle's longer side, and both legs of an L up to where their middles cross.</summary>
    /// <returns>False for any other shape, and where the walls don't close.</returns>
    public bool TryMiddle(Items<Wall> described, out Distance middle)
    {
        middle = default;
        int reflex = -1;
        for (int i = 0; i < walls.Length; i++)
        {
            if (described[i].TurnDegrees == -90m && walls.Length == 6 && reflex < 0)
            {
                reflex = i;
            }
            else if (described[i].TurnDegrees != 90m)
            {
                return false;
            }
        }

        if (!Closes || walls.Length != (reflex < 0 ? 4 : 6))
        {
            return false;
        }

        Distance Side(int after) => walls[(reflex + after) % walls.Length].Length;
        if (reflex < 0)
        {
            Distance one = Least(walls[0].Length, walls[2].Length);
            Distance other = Least(walls[1].Length, walls[3].Length);
            middle = one > other ? one : other;
        }
        else
        {
            // From the inner corner: a leg's inner side and its end, both outer sides, the other leg's end and inner side.
            middle = Side(3) + Side(4) - Distance.FromTicks((Side(2) + Side(5)).Ticks / 2);
        }

        return true;

        static Distance Least(Distance one, Distance other) => one < other ? one : other;
    }

    /// <summary>Whether a point is no further away than anything in a house can be.</summary>
    public static bool IsWithinReason(PlanPoint point) => Math.Abs(point.Right.Ticks / 2) < Reason / 2 && Math.Abs(point.Into.Ticks / 2) < Reason / 2;

    /// <summary>The plan of a room's walls.</summary>
    /// <returns>Null where the room has no walls, or their lengths can't be added up.</returns>
    public static FloorPlan? Of(Items<Wall> described)
    {
        decimal around = 0m;
        foreach (Wall wall in described)
        {
            around += wall.Length.Ticks;
        }

        if (described.Count == 0 || around >= Reason)
        {
            return null;
        }

        PlanLine[] lines = new PlanLine[described.Count];
        PlanPoint at = default;
        decimal heading = 0m;
        for (int i = 0; i < lines.Length; i++)
        {
            lines[i] = PlanLine.Heading(at, heading, described[i].Length);
            at = lines[i].End;
            heading += described[i].TurnDegrees;
        }

        return new(lines, heading == 360m && at.Right.Abs() <= MostOff && at.Into.Abs() <= MostOff);
    }
}
