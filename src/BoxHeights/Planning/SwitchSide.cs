using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>On which side of an entrance its switch goes: the places that have room, best first, each with the reason.</summary>
/// <remarks>
/// <para>The order of the trade: beside the latch; where that stretch of wall is too short for king, box and plate, round the corner on the wall that returns there; then the
/// other side of the opening where no leaf stands before it; then beyond the open leaf by 3 in. Beside a cased opening, a bifold or bypass door: the side with more
/// wall first, of two alike the left one. Of a double door: the side of the leaf that is used first. Of a pocket, barn or sliding door: the side that the panel doesn't go to.
/// Common practice, no source.</para>
/// <para>The box is nailed to the king, jack and king taking 3 in; where its plate would leave less than 1/2 in of wall beside the casing, one or two 2-bys are packed onto
/// the king. Where even that has no room the box goes to the nearest free place within 24 in, on blocking of its own.</para>
/// </remarks>
public sealed class SwitchSide
{
    private const int MostPacks = 2;

    private static readonly Distance Reach = Distance.FromInches(24, 0, 1);
    private static readonly Distance CornerStuds = StudPositions.UsualThickness * 2;
    private static readonly Items<RoomKind> Closets = new[] { RoomKind.Closet, RoomKind.Pantry, new("walk-in-closet"), new("linen-closet") };

    private readonly Room room;
    private readonly int index;
    private readonly TrimmedOpening trimmed;
    private readonly BoxSize box;
    private readonly PlateSize plate;
    private readonly List<SwitchPlace> places = [];
    private readonly List<string> refusals = [];

    private SwitchSide(Room room, int index, Opening opening, BoxSize box, PlateSize plate)
    {
        this.room = room;
        this.index = index;
        this.box = box;
        this.plate = plate;
        trimmed = TrimmedOpening.Of(opening);
    }

    /// <summary>How much wall is wanted between plate and casing: 1/2 in. Common practice, no source.</summary>
    public static Distance WantedGap { get; } = Distance.FromInches(0, 1, 2);

    /// <summary>The places that have room, best first.</summary>
    public Items<SwitchPlace> Places { get; private set; }

    /// <summary>The usual places that don't do here, with why, in the order in which they were tried; also what isn't stated.</summary>
    public Items<string> Refusals { get; private set; }

    /// <summary>Whether the switch is better set outside this room, on the latch side: for a closet or a pantry it is.</summary>
    public bool IsBetterOutside => IsSetOutside(room.Kind);

    /// <summary>Whether the switch of such a room is set outside it.</summary>
    internal static bool IsSetOutside(RoomKind kind) => Closets.Contains(kind);

    /// <summary>Finds the places for a one-gang switch with a standard plate.</summary>
    /// <param name="room">The room that is entered.</param>
    /// <param name="wall">The id of the wall that the opening is in.</param>
    /// <param name="opening">The id of the opening.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The room has no such wall, or the wall no such opening.</exception>
    public static SwitchSide For(Room room, string wall, string opening) =>
        For(room, wall, opening, new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }), PartsCatalog.Generic);

    /// <summary>Finds the places for a box.</summary>
    /// <param name="room">The room that is entered.</param>
    /// <param name="wall">The id of the wall that the opening is in.</param>
    /// <param name="opening">The id of the opening.</param>
    /// <param name="box">The box: its gangs, kind, size and plate are read.</param>
    /// <param name="catalog">Sizes that the box doesn't state.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The room has no such wall, the wall no such opening, the size of the box or its plate isn't known, or a measure is larger than anything in a house.</exception>
    public static SwitchSide For(Room room, string wall, string opening, DeviceBox box, PartsCatalog catalog)
    {
        if (room is null || box is null || catalog is null)
        {
            throw new ArgumentNullException(room is null ? nameof(room) : box is null ? nameof(box) : nameof(catalog));
        }

        BoxSize size = ResolvedBox.SizeOf(box, catalog);
        if (!size.IsStated || !catalog.TryFindPlate(box.Plate ?? PlateKind.Standard, ResolvedBox.GangsOf(box), out PlatePart? plate))
        {
            throw new ArgumentException("The size of the box or of its plate isn't known.", nameof(box));
        }

        for (int i = 0; i < room.Walls.Count; i++)
        {
            foreach (Opening one in room.Walls[i].Openings)
            {
                if (room.Walls[i].Id == wall && one.Id == opening && one.Right > one.Left)
                {
                    int index = i;
                    return Valid.WithinReason(() => new SwitchSide(room, index, one, size, plate.Size).Find(), "the room", nameof(room));
                }
            }
        }

        throw new ArgumentException("The room \"" + room.Id + "\" has no opening \"" + wall + "/" + opening + "\" of any width.", nameof(opening));
    }

    private SwitchSide Find()
    {
        Opening opening = trimmed.Opening;
        OpeningKind kind = opening.Kind;
        if (kind == OpeningKind.Window || kind == OpeningKind.PassThrough)
        {
            refusals.Add("nobody enters by a " + kind);
        }
        else if (kind == OpeningKind.Door)
        {
            FromSide(Other(opening.Hinge), "beside the latch", "which side its hinges are on");
        }
        else if (kind == OpeningKind.PocketDoor || kind == OpeningKind.BarnDoor || kind == OpeningKind.SlidingDoor)
        {
            FromSide(Other(opening.PocketOn), kind == OpeningKind.PocketDoor ? "on the strike side" : "at the end that opens", "which side its panel goes to");
        }
        else if (kind == OpeningKind.DoubleDoor && opening.Hinge is { } first)
        {
            FromSide(first, "on the side of the leaf that is used first", "");
        }
        else
        {
            Distance left = WallFrom(WallEnd.Left);
            Distance right = WallFrom(WallEnd.Right);
            FromSide(left >= right ? WallEnd.Left : WallEnd.Right, "on the side with more wall", "");
        }

        Places = new(places);
        Refusals = new(refusals);
        return this;

        static WallEnd? Other(WallEnd? side) => side is { } one ? Opposite(one) : null;
    }

    private static WallEnd Opposite(WallEnd side) => side == WallEnd.Left ? WallEnd.Right : WallEnd.Left;

    private Distance WallFrom(WallEnd side) => (Free(index).EndToward(side, RoughEdge(side)) - RoughEdge(side)).Abs();

    private Distance RoughEdge(WallEnd side) => side == WallEnd.Left ? trimmed.Opening.Left : trimmed.Opening.Right;

    private FreeWall Free(int wall) => new(room, wall, box.HalfWidth, plate.HalfWidth, WantedGap);

    private void FromSide(WallEnd? best, string where, string needs)
    {
        if (best is not { } side)
        {
            refusals.Add("it isn't stated " + needs);
            return;
        }

        WallEnd far = Opposite(side);
        string unknown = UnknownOfTheLeaf();
        bool bothSides = trimmed.Opening.Kind == OpeningKind.DoubleDoor;
        if (!(bothSides && unknown.Length > 0) && !TryBeside(side, SwitchPlaceKind.LatchSide, where))
        {
            if (Covered(side))
            {
                TryBeyond(side);
            }
            else
            {
                TryReturn(side);
            }
        }

        if (unknown.Length > 0)
        {
            refusals.Add((bothSides ? "beside the opening" : "on the other side of the opening") + ": it isn't stated " + unknown);
        }
        else if (!TryBeside(far, SwitchPlaceKind.FarSide, "on the other side of the opening"))
        {
            TryBeyond(far);
        }
    }

    /// <summary>What would have to be known to tell which wall the open door takes; empty where that is known, or the door takes none.</summary>
    private string UnknownOfTheLeaf()
    {
        Opening opening = trimmed.Opening;
        bool swings = opening.Kind == OpeningKind.Door || opening.Kind == OpeningKind.DoubleDoor;
        bool takesWall = swings ? opening.Swing != DoorSwing.Away : opening.Kind == OpeningKind.PocketDoor || opening.Kind == OpeningKind.BarnDoor;
        return swings && opening.Swing is null ? "whether it swings into the room" : takesWall && opening.Leaf is null ? "how wide the leaf is" : "";
    }

    /// <summary>Nailed to the king, packed out as far as the casing asks for, or on blocking close by.</summary>
    private bool TryBeside(WallEnd side, SwitchPlaceKind kind, string where)
    {
        DistanceSet free = Free(index).Centers;
        for (int packs = 0; packs <= MostPacks; packs++)
        {
            Distance center = FromKing(side, box.HalfWidth + (StudPositions.UsualThickness * packs));
            if (free.Contains(center))
            {
                Add(kind, center, packs, where + (packs == 0 ? ", nailed to the king stud" : packs == 1 ? ", the king packed out with one 2-by" : ", the king packed out with two 2-bys"));
                return true;
            }
        }

        if (Covered(side))
        {
            refusals.Add(where + ": an open door or a pocket takes that wall");
            return false;
        }

        if (TryNearest(free, side, FromKing(side, box.HalfWidth), Free(index).EndToward(side, RoughEdge(side)), out Distance nearest))
        {
            Add(kind, nearest, 0, where + ", on blocking of its own");
            return true;
        }

        refusals.Add(where + ": too little wall for the studs of the opening, a box and its plate");
        return false;
    }

    private void TryReturn(WallEnd side)
    {
        Distance toCorner = side == WallEnd.Left ? trimmed.Opening.Left : room.Walls[index].Length - trimmed.Opening.Right;
        if (toCorner > Reach || DoorCover.Neighbor(room.Walls, index, side) is not { } next)
        {
            return;
        }

        // On the wall to the right one counts from its left end, on the wall to the left from its right end.
        Wall wall = room.Walls[next];
        Distance start = CornerStuds + box.HalfWidth;
        DistanceSet free = Free(next).Centers;
        Distance end = Free(next).EndToward(side, side == WallEnd.Right ? Distance.Zero : wall.Length);
        if (!TryNearest(free, side, side == WallEnd.Right ? start : wall.Length - start, end, out Distance center))
        {
            refusals.Add("round the corner: no room on \"" + wall.Id + "\" within " + Reach);
            return;
        }

        Distance fromCorner = side == WallEnd.Right ? center : wall.Length - center;
        places.Add(new(SwitchPlaceKind.ReturnWall, room.Id + "/" + wall.Id, center, fromCorner - plate.HalfWidth - Free(next).CornerBoard(Opposite(side)), 0,
            "round the corner on the wall that returns beside the latch"));
    }

    private void TryBeyond(WallEnd side)
    {
        Distance beyond = Distance.MinValue;
        string what = "";
        foreach (DoorCover cover in DoorCover.In(room))
        {
            if (ReferenceEquals(cover.Opening, trimmed.Opening) && cover.Wall == room.Walls[index].Id && IsOn(cover, side))
            {
                Distance edge = side == WallEnd.Left ? -cover.Left : cover.Right;
                beyond = edge + plate.HalfWidth + (cover.Kind == DoorCoverKind.Pocket ? Distance.Zero : FreeWall.BeyondLeaf);
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
            refusals.Add(what + ": no room on the wall within " + Reach);
        }
    }

    private bool Covered(WallEnd side)
    {
        foreach (DoorCover cover in DoorCover.In(room))
        {
            if (cover.Wall == room.Walls[index].Id && ReferenceEquals(cover.Opening, trimmed.Opening) && IsOn(cover, side))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsOn(DoorCover cover, WallEnd side) => side == WallEnd.Left ? cover.Right <= trimmed.JambLeft : cover.Left >= trimmed.JambRight;

    private Distance FromKing(WallEnd side, Distance beyond) => side == WallEnd.Left
        ? trimmed.Doorway.From - FreeWall.JackAndKing - beyond
        : trimmed.Doorway.To + FreeWall.JackAndKing + beyond;

    /// <summary>The nearest free center from a place, going one way, no farther than a reach and not past an end.</summary>
    private static bool TryNearest(DistanceSet free, WallEnd way, Distance from, Distance end, out Distance center)
    {
        DistanceSet ahead = way == WallEnd.Left
            ? DistanceSet.Between(Distance.Max(from - Reach, end), from)
            : DistanceSet.Between(from, Distance.Min(from + Reach, end));
        return (free & ahead).TryNearest(from, out center);
    }

    private void Add(SwitchPlaceKind kind, Distance center, int packs, string reason) =>
        places.Add(new(kind, room.Id + "/" + room.Walls[index].Id, center, trimmed.Clearance(center, plate), packs, reason));
}
