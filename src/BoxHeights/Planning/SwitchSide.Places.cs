using BoxHeights.Rules;

namespace BoxHeights;

/// <content>The places themselves: nailed to the king, packed out, on blocking, round the corner, beyond the open leaf.</content>
public sealed partial class SwitchSide
{
    /// <summary>Nailed to the king, packed out as far as the casing asks for, or on blocking close by.</summary>
    private bool TryBeside(WallEnd side, SwitchPlaceKind kind, string where)
    {
        DistanceSet free = Free(index).Centers;
        Distance? face = Free(index).FaceToNailTo(side, Side(side), box, out bool isNext);
        string stud = isNext ? "stud beside the king" : "king";
        for (int packs = 0; face is { } nailTo && packs <= (Free(index).IsLumber && habit.Pack is not null ? BlockingNeeded.MostPacked : 0); packs++)
        {
            Distance center = Beyond(side, nailTo, box.HalfWidth + ((habit.Pack ?? Distance.Zero) * packs));
            if (free.Contains(center))
            {
                Add(kind, center, packs, where, packs == 0 ? ", nailed to the " + stud + (isNext ? "" : " stud") : ", the " + stud + " packed out with " + (packs == 1 ? "one " + habit.PackName : "two " + habit.PackName + "s"));
                return true;
            }
        }

        if (Covered(side))
        {
            refusals.Add(where + ": an open door or a pocket takes that wall");
            return false;
        }

        if (TryNearest(free, side, Beyond(side, face ?? Side(side), box.HalfWidth), Free(index).EndToward(side, RoughEdge(side)), out Distance nearest))
        {
            Add(kind, nearest, 0, where, ", on blocking of its own");
            return true;
        }

        refusals.Add(where + ": too little wall for the studs of the opening, a box and its plate");
        return false;
    }

    private void TryReturn(WallEnd side, string reason)
    {
        Distance toCorner = side == WallEnd.Left ? trimmed.Opening.Left : room.Walls[index].Length - trimmed.Opening.Right;
        if (toCorner > habit.WithinReach || DoorCover.Neighbor(room.Walls, index, side) is not { } next)
        {
            return;
        }

        // On the wall to the right one counts from its left end, on the wall to the left from its right end.
        Wall wall = room.Walls[next];
        FreeWall there = Free(next);
        Distance corner = side == WallEnd.Right ? Distance.Zero : wall.Length;
        Distance start = Beyond(side, there.FaceToNailTo(side, corner, box, out _) ?? corner, box.HalfWidth);
        if (!TryNearest(there.Centers, side, start, there.EndToward(side, corner), out Distance center))
        {
            refusals.Add("round the corner: no room on \"" + wall.Id + "\" within " + BothUnits.Of(habit.WithinReach.ToString(), units));
            return;
        }

        Distance fromCorner = side == WallEnd.Right ? center : wall.Length - center;
        places.Add(new(SwitchPlaceKind.ReturnWall, SurfaceAddress.Of(room.Id, wall.Id), center, fromCorner - plate.HalfWidth - there.CornerBoard(Opposite(side)), 0, reason));
    }

    private void TryBeyond(WallEnd side)
    {
        Distance beyond = Distance.MinValue;
        string what = "";
        foreach (DoorCover cover in DoorCover.In(room, usual))
        {
            if (ReferenceEquals(cover.Opening, trimmed.Opening) && cover.Wall == room.Walls[index].Id && IsOn(cover, side))
            {
                Distance edge = side == WallEnd.Left ? -cover.Left : cover.Right;
                beyond = edge + plate.HalfWidth + (cover.Kind == DoorCoverKind.Pocket ? Distance.Zero : habit.BeyondLeaf);
                what = cover.Kind == DoorCoverKind.Pocket ? "beyond the pocket" : cover.Kind == DoorCoverKind.Panel ? "beyond the open panel" : "beyond the open leaf";
            }
        }

        if (beyond == Distance.MinValue)
        {
            return;
        }

        Distance end = Free(index).EndToward(side, RoughEdge(side));
        if (TryNearest(Free(index).Centers, side, side == WallEnd.Left ? -beyond : beyond, end, out Distance center))
        {
            Add(SwitchPlaceKind.BeyondLeaf, center, 0, what);
        }
        else
        {
            refusals.Add(what + ": no room on the wall within " + BothUnits.Of(habit.WithinReach.ToString(), units));
        }
    }

    private bool Covered(WallEnd side) =>
        DoorCover.In(room, usual).Exists(cover => cover.Wall == room.Walls[index].Id && ReferenceEquals(cover.Opening, trimmed.Opening) && IsOn(cover, side));

    private bool IsOn(DoorCover cover, WallEnd side) => side == WallEnd.Left ? cover.Right <= trimmed.JambLeft : cover.Left >= trimmed.JambRight;

    /// <summary>The side of what one walks through.</summary>
    private Distance Side(WallEnd side) => side == WallEnd.Left ? trimmed.Doorway.From : trimmed.Doorway.To;

    private static Distance Beyond(WallEnd side, Distance face, Distance by) => side == WallEnd.Left ? face - by : face + by;

    /// <summary>The nearest free center from a place, going one way, no farther than a reach and not past an end.</summary>
    private bool TryNearest(DistanceSet free, WallEnd way, Distance from, Distance end, out Distance center)
    {
        DistanceSet ahead = way == WallEnd.Left
            ? DistanceSet.Between(Distance.Max(from - habit.WithinReach, end), from)
            : DistanceSet.Between(from, Distance.Min(from + habit.WithinReach, end));
        return (free & ahead).TryNearest(from, out center);
    }

    private void Add(SwitchPlaceKind kind, Distance center, int packs, string where, string held = "") =>
        places.Add(new(kind, SurfaceAddress.Of(room.Id, room.Walls[index].Id), center, trimmed.Clearance(center, plate), packs, where + held) { Where = where });
}
