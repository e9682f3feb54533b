using System;

namespace BoxHeights;

/// <summary>A room's wall faces in plan, laid end to end from the first wall's left end.</summary>
internal sealed class FloorPlan
{
    /// <summary>How far the last wall may end from where the first starts and still be taken to meet it: 12 in. A tape misses by less, a wall that was left out by more.</summary>
    private static readonly Distance MostOff = Distance.FromInches(12);

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

    /// <summary>The plan of a room's walls.</summary>
    /// <returns>Null where the room has no walls, or their lengths can't be added up.</returns>
    public static FloorPlan? Of(Items<Wall> described)
    {
        decimal around = 0m;
        foreach (Wall wall in described)
        {
            around += wall.Length.Ticks;
        }

        if (described.Count == 0 || !ResolvedBox.IsWithinReason(Distance.FromTicks((long)Math.Min(around, long.MaxValue))))
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
