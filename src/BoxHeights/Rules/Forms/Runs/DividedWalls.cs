using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Joins what is left of a room's walls round its corners, with the sides of half walls, railings and counters that face the room where these meet a wall.</summary>
/// <remarks>
/// What has an outline besides its line has one side: the line is the side of it that faces the room. What has a line alone has two, but for one that stands along
/// an open side: its other side is the next room's.
/// </remarks>
internal sealed class DividedWalls
{
    private readonly Room room;
    private readonly WallPlan plan;
    private readonly Items<FreestandingKind> kinds;
    private readonly Distance gap;
    private readonly List<RunStretch> pieces = [];
    private readonly List<Freestanding> dividers = [];
    private readonly RunJoiner joiner = new();

    public DividedWalls(Room room, WallPlan plan, Items<FreestandingKind> kinds, Distance gap)
    {
        this.gap = gap;
        this.room = room;
        this.plan = plan;
        this.kinds = kinds;
        foreach (Freestanding one in room.Freestanding)
        {
            if (kinds.Contains(one.Kind) && one.Line.Count > 1 && HasExtent(one) && !IsAlongAnOpenSide(one))
            {
                dividers.Add(one);
            }
        }
    }

    /// <summary>The stretches of an open side that a railing stands along.</summary>
    public IEnumerable<(Distance From, Distance To)> RailsAlong(int wall)
    {
        DistanceSet railed = DistanceSet.Empty;
        foreach (Freestanding one in room.Freestanding)
        {
            if (kinds.Contains(one.Kind) && HasExtent(one) && TryAlong(one, wall, out Distance from, out Distance to) && !IsInside(one, wall))
            {
                railed |= DistanceSet.Between(from, to);
            }
        }

        for (int i = 0; i < railed.Count; i++)
        {
            if (!railed[i].IsExact)
            {
                yield return (railed[i].From, railed[i].To);
            }
        }
    }

    /// <summary>Adds what is left of a wall between two breaks, cut where a divider meets it.</summary>
    public void Add(int wall, Distance from, Distance to, Distance around)
    {
        SortedSet<long> cuts = [];
        foreach (Freestanding divider in dividers)
        {
            foreach (PlanPoint end in new[] { divider.Line[0], divider.Line[divider.Line.Count - 1] })
            {
                if (Meets(wall, end, out Distance along) && from < along && along < to)
                {
                    cuts.Add(along.Ticks);
                }
            }
        }

        Distance at = from;
        foreach (long cut in cuts)
        {
            Piece(wall, at, Distance.FromTicks(cut), around);
            at = Distance.FromTicks(cut);
        }

        Piece(wall, at, to, around);
    }

    public List<Run> Runs(Distance around)
    {
        // Corners first, then dividers: a divider that stands in a corner parts the two walls there.
        foreach (RunStretch left in pieces)
        {
            foreach (RunStretch right in pieces)
            {
                bool follows = right.Wall == left.Wall + 1 || (plan.GoesRound && left.Wall == plan.Count - 1 && right.Wall == 0);
                if (follows && left.To == plan[left.Wall].Length && right.From == Distance.Zero)
                {
                    joiner.Join(left, right);
                }
            }
        }

        foreach (Freestanding divider in dividers)
        {
            Distance gap = Distance.FromTicks(1);
            List<PlanPoint> line = [.. divider.Line];
            List<RunStretch> near = FacesTheRoom(divider, line) ? Side(divider, line, ref around, gap) : [];
            line.Reverse();
            List<RunStretch> far = FacesTheRoom(divider, line) ? Side(divider, line, ref around, gap) : [];
            Meet(divider.Line[0], First(near), Last(far));
            Meet(line[0], First(far), Last(near));
        }

        return joiner.Runs();
    }

    private void Piece(int wall, Distance from, Distance to, Distance around)
    {
        // Where the walls don't go once round the room, more may follow before the first and after the last; between them each is said to follow the one before.
        RunStretch piece = new(SurfaceAddress.Of(room.Id, room.Walls[wall].Id), wall, plan[wall], from, to, around + from)
        {
            IsOpenLeft = !plan.GoesRound && wall == 0 && from == Distance.Zero,
            IsOpenRight = !plan.GoesRound && wall == plan.Count - 1 && to == plan[wall].Length,
        };
        pieces.Add(piece);
        joiner.Add(piece);
    }

    private List<RunStretch> Side(Freestanding divider, List<PlanPoint> line, ref Distance around, Distance gap)
    {
        List<RunStretch> side = [];
        around += gap;
        for (int i = 1; i < line.Count; i++)
        {
            if (line[i - 1] == line[i])
            {
                continue;
            }

            PlanLine part = PlanLine.Between(line[i - 1], line[i]);
            RunStretch stretch = new(SurfaceAddress.Of(room.Id, divider.Id), -1, part, Distance.Zero, part.Length, around);
            around += part.Length;
            joiner.Add(stretch);
            if (side.Count > 0)
            {
                joiner.Join(side[side.Count - 1], stretch);
            }

            side.Add(stretch);
        }

        return side;
    }

    /// <summary>Where a divider meets a wall, the wall before goes on along the side that leaves it, and the side that comes back goes on along the wall after.</summary>
    private void Meet(PlanPoint root, RunStretch? leaves, RunStretch? comes)
    {
        RunStretch? before = null;
        RunStretch? after = null;
        foreach (RunStretch piece in pieces)
        {
            if (Meets(piece.Wall, root, out Distance along))
            {
                before = piece.From < along && along <= piece.To ? piece : before;
                after = piece.From <= along && along < piece.To ? piece : after;
            }
        }

        if (before is not null && leaves is not null)
        {
            joiner.Join(before, leaves);
        }

        if (after is not null && comes is not null)
        {
            joiner.Join(comes, after);
        }
    }

    private bool Meets(int wall, PlanPoint point, out Distance along)
    {
        plan[wall].Locate(point, out along, out Distance off);
        if (room.Walls[wall].Open || off.Abs() > gap || along < -gap || along > plan[wall].Length + gap)
        {
            return false;
        }

        along = along < Distance.Zero ? Distance.Zero : along > plan[wall].Length ? plan[wall].Length : along;
        return true;
    }

    private static RunStretch? First(List<RunStretch> side) => side.Count == 0 ? null : side[0];

    private static RunStretch? Last(List<RunStretch> side) => side.Count == 0 ? null : side[side.Count - 1];

    /// <summary>Whether a line, as it is walked, has the room at its right hand: all of an outline lies behind it.</summary>
    private static bool FacesTheRoom(Freestanding one, List<PlanPoint> line)
    {
        for (int i = 1; i < line.Count; i++)
        {
            foreach (PlanPoint corner in line[i - 1] == line[i] ? default : one.Corners)
            {
                PlanLine.Between(line[i - 1], line[i]).Locate(corner, out _, out Distance off);
                if (off > Distance.FromTicks(1))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool IsAlongAnOpenSide(Freestanding one)
    {
        for (int i = 0; i < plan.Count; i++)
        {
            if (TryAlong(one, i, out _, out _))
            {
                return true;
            }
        }

        return false;
    }

    private bool TryAlong(Freestanding one, int wall, out Distance from, out Distance to)
    {
        from = to = default;
        if (!room.Walls[wall].Open || one.Line.Count < 2)
        {
            return false;
        }

        for (int i = 0; i < one.Line.Count; i++)
        {
            plan[wall].Locate(one.Line[i], out Distance along, out Distance off);
            if (off.Abs() > gap || along < -gap || along > plan[wall].Length + gap)
            {
                return false;
            }

            from = i == 0 || along < from ? along : from;
            to = i == 0 || along > to ? along : to;
        }

        from = from <= gap ? Distance.Zero : from;
        to = to >= plan[wall].Length - gap ? plan[wall].Length : to;
        return true;
    }

    /// <summary>Whether what stands along an open side stands in this room, so that its line is the side that faces the next.</summary>
    private bool IsInside(Freestanding one, int wall)
    {
        foreach (PlanPoint corner in one.Corners)
        {
            plan[wall].Locate(corner, out _, out Distance off);
            if (off > gap)
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasExtent(Freestanding one)
    {
        bool has = false;
        foreach (PlanPoint point in one.Corners)
        {
            if (!WallPlan.IsInAHouse(point))
            {
                return false;
            }
        }

        foreach (PlanPoint point in one.Line)
        {
            if (!WallPlan.IsInAHouse(point))
            {
                return false;
            }

            has |= point != one.Line[0];
        }

        return has;
    }
}
