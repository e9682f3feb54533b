using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the wall faces of a room are in plan: laid end to end by their lengths and turns, once for everything that asks.</summary>
/// <remarks>
/// The first face lies along the axis that plan points are given in; a side may be open, and a room needn't close. While every corner is a multiple of 90 degrees
/// all of it is whole numbers of ticks and exact. Beyond any other corner places are worked out to 28 digits, and what is said of them is rounded by a tick: inward
/// for what is sure, outward for what is possible.
/// </remarks>
internal sealed partial class WallPlan
{
    /// <summary>Some 13 km: squares of such lengths still have a decimal's digits to spare.</summary>
    private const long Most = 1L << 40;

    /// <summary>How far the last face may end from where the first begins and still be taken to meet it: 12 in. A tape misses by less, a wall that was left out by more. Common practice, no source.</summary>
    private static readonly decimal MostGap = Distance.FromInches(12).Ticks;

    /// <summary>How far it may miss where distances across the room are measured from the far walls: 1 in. Common practice, no source.</summary>
    private static readonly decimal MostGapAcross = Distance.FromInches(1).Ticks;

    private readonly Items<Wall> walls;
    private readonly List<PlanLine> faces = [];

    /// <summary>How many faces there are before the first corner that isn't square.</summary>
    private readonly int exact;

    public WallPlan(Room room)
    {
        walls = room.Walls;
        decimal x = 0m;
        decimal y = 0m;
        decimal turned = 0m;
        IsTooLarge = walls.Count > 1000;
        foreach (Wall wall in walls)
        {
            PlanLine face = PlanLine.Heading(x, y, turned, wall.Length);
            faces.Add(face);
            exact += exact == faces.Count - 1 && (faces.Count == 1 || walls[faces.Count - 2].TurnDegrees % 90m == 0m) ? 1 : 0;
            (x, y) = face.InPlan(Math.Min(wall.Length.Ticks, Most), 0m);
            turned += wall.TurnDegrees % 360m;
            IsTooLarge |= wall.Length.Ticks > Most;
        }

        decimal gap = Math.Max(Math.Abs(x), Math.Abs(y));
        GoesRound = turned == 360m && gap <= MostGap && !IsTooLarge;
        Closes = GoesRound && faces.Count > 2 && gap <= MostGapAcross;
    }

    /// <summary>Whether its faces go once round the room, so that the last is joined to the first.</summary>
    public bool GoesRound { get; }

    /// <summary>Whether they go round so nearly that what is across the room is where it is laid out.</summary>
    public bool Closes { get; }

    /// <summary>Whether it is larger than any house, so that nothing is said of it.</summary>
    public bool IsTooLarge { get; }

    /// <summary>How many faces it has.</summary>
    public int Count => faces.Count;

    /// <summary>The room's area in square ticks between framing faces; null where its faces don't go round.</summary>
    public decimal? Area => GoesRound ? PlanOutline.AreaOf(faces.ConvertAll(face => face.InPlan(0m, 0m))) : null;

    /// <summary>A face as a line in plan.</summary>
    public PlanLine this[int face] => faces[face];

    public Wall WallOf(int face) => walls[face];

    /// <summary>The place of a wall in the room's order; -1 where it has none of that id.</summary>
    public int IndexOf(string id)
    {
        int face = 0;
        while (face < walls.Count && walls[face].Id != id)
        {
            face++;
        }

        return face < walls.Count ? face : -1;
    }

    /// <summary>Whether a point is near enough to the first wall's left end for its distances to be worked out.</summary>
    public static bool IsInAHouse(PlanPoint point) => point.Right.Ticks is > -Most and < Most && point.Into.Ticks is > -Most and < Most;

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

    private bool IsExact(int one, int other) => one == other || (one < exact && other < exact);

    /// <summary>A point of one frame in another.</summary>
    private (decimal Along, decimal Away) Turn(int from, int to, decimal along, decimal away)
    {
        if (from == to)
        {
            return (along, away);
        }

        (decimal x, decimal y) = from < 0 ? (along, away) : faces[from].InPlan(along, away);
        return to < 0 ? (x, y) : faces[to].Seen(x, y);
    }
}
