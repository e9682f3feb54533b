using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the wall faces of a room are in plan: laid end to end by their lengths and turns, once for everything that asks.</summary>
/// <remarks>
/// The first face lies along the axis that plan points are given in; a side may be open, and a room needn't close. Corners are squared within a drawing's tolerance,
/// but where a room that closes as it is drawn wouldn't any more. While every corner is a multiple of 90 degrees all of it is whole numbers of ticks and exact. Beyond any other corner places are worked out to 28 digits, and what is said of them is rounded by a tick: inward
/// for what is sure, outward for what is possible.
/// </remarks>
internal sealed partial class WallPlan
{
    /// <summary>Some 13 km: squares of such lengths still have a decimal's digits to spare.</summary>
    private const long Most = 1L << 40;

    private readonly Items<Wall> walls;
    private readonly List<PlanLine> faces;

    /// <summary>The turns after each face, squared: what a corner was meant to be.</summary>
    private readonly decimal[] turns;

    /// <summary>How many faces there are before the first corner that isn't square.</summary>
    private readonly int exact;

    public WallPlan(Room room)
    {
        walls = room.Walls;
        turns = new decimal[walls.Count];
        IsTooLarge = walls.Count > RoomOutline.MostCorners;
        bool isDrawnSquare = true;
        for (int i = 0; i < turns.Length; i++)
        {
            turns[i] = DrawingTolerance.Squared(walls[i].TurnDegrees);
            isDrawnSquare &= DrawingTolerance.Turn(walls[i].TurnDegrees) == turns[i];
            IsTooLarge |= walls[i].Length.Ticks > Most;
        }

        Laid laid = new(walls, turns);
        if (!isDrawnSquare && !laid.Meets(DrawingTolerance.GapAcross))
        {
            Laid asDrawn = new(walls, Array.ConvertAll([.. walls], wall => DrawingTolerance.Turn(wall.TurnDegrees)));
            laid = asDrawn.Meets(DrawingTolerance.GapAcross) || (asDrawn.Meets(DrawingTolerance.Gap) && !laid.Meets(DrawingTolerance.Gap)) ? asDrawn : laid;
        }

        (faces, exact, Turned, End) = (laid.Faces, laid.Exact, laid.Turned, laid.End);
        GoesRound = laid.Meets(DrawingTolerance.Gap) && !IsTooLarge;
        Closes = laid.Meets(DrawingTolerance.GapAcross) && faces.Count > 2 && !IsTooLarge;
    }

    /// <summary>How far its faces turn in all, in degrees: 360 where they go round once.</summary>
    public decimal Turned { get; }

    /// <summary>Where the last face ends, in ticks from where the first begins.</summary>
    public (decimal X, decimal Y) End { get; }

    /// <summary>Whether its faces go once round the room, so that the last is joined to the first.</summary>
    public bool GoesRound { get; }

    /// <summary>Whether they go round so nearly that what is across the room is where it is laid out.</summary>
    public bool Closes { get; }

    /// <summary>Whether it is larger than any house, so that nothing is said of it.</summary>
    public bool IsTooLarge { get; }

    /// <summary>How many faces it has.</summary>
    public int Count => faces.Count;

    /// <summary>The room's area in square ticks between framing faces; null where its faces don't go round.</summary>
    public decimal? Area => GoesRound ? Outline.Area : null;

    /// <summary>The middle of the rectangle round the room's walls, where it lies within them; null where they don't go round.</summary>
    public PlanPoint? RoomCenter
    {
        get
        {
            if (Extent is not { } extent)
            {
                return null;
            }

            PlanPoint middle = new(Half(extent.Least.Right, extent.Most.Right), Half(extent.Least.Into, extent.Most.Into));
            return Outline.Holds(middle) ? middle : null;

            static Distance Half(Distance from, Distance to) => from + Distance.FromTicks((to - from).Ticks / 2);
        }
    }

    /// <summary>The corners of the rectangle round the room's walls, rounded to the grid; null where they don't go round.</summary>
    public (PlanPoint Least, PlanPoint Most)? Extent
    {
        get
        {
            if (!GoesRound)
            {
                return null;
            }

            (decimal left, decimal right, decimal near, decimal far) = Around;
            return (At(left, near), At(right, far));

            static PlanPoint At(decimal x, decimal y) => new(Distance.FromTicks((long)Math.Round(x)), Distance.FromTicks((long)Math.Round(y)));
        }
    }

    /// <summary>The rectangle round the corners of its walls.</summary>
    private (decimal Left, decimal Right, decimal Near, decimal Far) Around
    {
        get
        {
            (decimal left, decimal right, decimal near, decimal far) = (0m, 0m, 0m, 0m);
            foreach (PlanLine face in faces)
            {
                (decimal x, decimal y) = face.InPlan(0m, 0m);
                (left, right, near, far) = (Math.Min(left, x), Math.Max(right, x), Math.Min(near, y), Math.Max(far, y));
            }

            return (left, right, near, far);
        }
    }

    private PlanOutline Outline => new(faces.ConvertAll(face => face.InPlan(0m, 0m)));

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

    /// <summary>Faces laid end to end by some turns.</summary>
    private sealed class Laid
    {
        public Laid(Items<Wall> walls, decimal[] turns)
        {
            decimal x = 0m;
            decimal y = 0m;
            for (int i = 0; i < turns.Length; i++)
            {
                PlanLine face = PlanLine.Heading(x, y, Turned, walls[i].Length);
                Faces.Add(face);
                Exact += Exact == i && (i == 0 || turns[i - 1] % 90m == 0m) ? 1 : 0;
                (x, y) = face.InPlan(Math.Min(walls[i].Length.Ticks, Most), 0m);
                Turned += turns[i];
            }

            End = (x, y);
        }

        public List<PlanLine> Faces { get; } = [];

        public int Exact { get; }

        public decimal Turned { get; }

        public (decimal X, decimal Y) End { get; }

        /// <summary>Whether the last goes on as the first, no further off than so much in either direction.</summary>
        public bool Meets(Distance gap) => DrawingTolerance.IsOnce(Turned, Faces.Count) && Math.Max(Math.Abs(End.X), Math.Abs(End.Y)) <= gap.Ticks;
    }
}
