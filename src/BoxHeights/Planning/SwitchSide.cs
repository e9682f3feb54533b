using System;
using System.Collections.Generic;
using BoxHeights.Rules;
using BoxHeights.Standards;

namespace BoxHeights;

/// <summary>On which side of an entrance its switch goes: the places that have room, best first, each with the reason.</summary>
/// <remarks>
/// <para>The order of the trade: beside the latch; where that stretch of wall is too short for king, box and plate, round the corner on the wall that returns there; then the
/// other side of the opening where no leaf stands before it; then beyond the open leaf by 3 in. Beside a cased opening, a bifold or bypass door: the side with more
/// wall first, of two alike either, in the mirror image of the room the other. Of a double door: the side of the leaf that is used first. Of a pocket, barn or sliding door: the side that the panel doesn't go to.
/// Common practice, no source.</para>
/// <para>The box is nailed to the outermost of the studs beside the opening: of those that the wall's layout gives, listed one by one or by a rule, else of jack and king, which
/// take 3 in. Where the next stud is too close for the box, it is nailed to that one. It is clear of whatever surely stands. Where its plate would leave less than 1/2 in of wall beside the casing, one or two 2-bys are packed onto
/// the king. Where even that has no room the box goes to the nearest free place within 24 in, on blocking of its own.</para>
/// </remarks>
public sealed partial class SwitchSide
{
    private static readonly Items<RoomKind> Closets = new[] { RoomKind.Closet, RoomKind.Pantry, new("walk-in-closet"), new("linen-closet") };

    private const string SizeNotKnown = "the size of the box or of its plate isn't known";

    private readonly Room room;
    private readonly int index;
    private readonly TrimmedOpening trimmed;
    private readonly FreeWall?[] free;
    private readonly LengthUnits units;
    private readonly SwitchesAtEntrances habit;
    private readonly UsualMeasures usual;
    private readonly BoxSize box;
    private readonly PlateSize plate;
    private readonly List<SwitchPlace> places = [];
    private readonly List<string> refusals = [];

    private SwitchSide(Room room, int index, Opening opening, BoxSize box, PlateSize plate, SwitchesAtEntrances habit, UsualMeasures usual, LengthUnits units)
    {
        this.habit = habit;
        this.usual = usual;
        this.units = units;
        this.room = room;
        this.index = index;
        this.box = box;
        this.plate = plate;
        trimmed = TrimmedOpening.Of(opening, usual);
        free = new FreeWall?[room.Walls.Count];
    }

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
    /// <exception cref="ArgumentException">The room has no such wall, the wall no such opening, or the opening lies beyond its wall.</exception>
    public static SwitchSide For(Room room, string wall, string opening) =>
        For(room, wall, opening, InEverySet.Switches.Box, PartsCatalog.Generic);

    /// <summary>Finds the places for a box.</summary>
    /// <param name="room">The room that is entered.</param>
    /// <param name="wall">The id of the wall that the opening is in.</param>
    /// <param name="opening">The id of the opening.</param>
    /// <param name="box">The box: its gangs, kind, size and plate are read.</param>
    /// <param name="catalog">Sizes that the box doesn't state.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The room has no such wall, the wall no such opening, the opening lies beyond its wall, the size of the box or its plate isn't known, or a measure is larger than anything in a house.</exception>
    public static SwitchSide For(Room room, string wall, string opening, DeviceBox box, PartsCatalog catalog) => For(room, wall, opening, box, catalog, null);

    /// <summary>Finds the places for a box in a room of a storey.</summary>
    /// <param name="room">The room that is entered.</param>
    /// <param name="wall">The id of the wall that the opening is in.</param>
    /// <param name="opening">The id of the opening.</param>
    /// <param name="box">The box: its gangs, kind, size and plate are read.</param>
    /// <param name="catalog">Sizes that the box doesn't state.</param>
    /// <param name="storey">Its studs and board are those of walls that state none of their own; null where it states none either.</param>
    /// <inheritdoc cref="For(Room, string, string, DeviceBox, PartsCatalog)" path="/exception"/>
    public static SwitchSide For(Room room, string wall, string opening, DeviceBox box, PartsCatalog catalog, Storey? storey) =>
        For(room, wall, opening, box, catalog, storey, InEverySet.Switches, LengthUnits.Inches);

    internal static SwitchSide For(Room room, string wall, string opening, DeviceBox box, PartsCatalog catalog, Storey? storey, SwitchesAtEntrances habit, LengthUnits units)
    {
        if (room is null || box is null || catalog is null)
        {
            throw new ArgumentNullException(room is null ? nameof(room) : box is null ? nameof(box) : nameof(catalog));
        }

        foreach (Wall one in room.Walls)
        {
            foreach (Opening there in one.Openings)
            {
                if (one.Id == wall && there.Id == opening && there.Right > there.Left)
                {
                    return there.Right <= one.Length ? For(new RoomOpening(room, one, there), box, catalog, storey, habit, units)
                        : throw new ArgumentException("The opening \"" + SurfaceAddress.Of(wall, opening) + "\" runs to " + there.Right + ", but its wall is " + one.Length + " long.", nameof(opening));
                }
            }
        }

        throw new ArgumentException("The room \"" + room.Id + "\" has no opening \"" + SurfaceAddress.Of(wall, opening) + "\" of any width.", nameof(opening));
    }

    /// <summary>The same for a way into a room after another custom, with measures in words in the units that the dwelling is marked in.</summary>
    internal static SwitchSide For(RoomOpening entrance, DeviceBox box, PartsCatalog catalog, Storey? storey, SwitchesAtEntrances habit, LengthUnits units)
    {
        BoxSize size = ResolvedBox.SizeOf(box, catalog);
        if (!size.IsStated || UprightPlateOf(box, catalog) is not { } plate)
        {
            throw new ArgumentException(SizeNotKnown, nameof(box));
        }

        return For(entrance, size, plate, catalog, storey, habit, units);
    }

    /// <summary>The same for a plan: a box of no known size has no place, and that is why.</summary>
    internal static SwitchSide InPlan(RoomOpening entrance, DeviceBox box, PartsCatalog catalog, Storey? storey, SwitchesAtEntrances habit, LengthUnits units)
    {
        BoxSize size = ResolvedBox.SizeOf(box, catalog);
        if (size.IsStated && UprightPlateOf(box, catalog) is { } known)
        {
            return For(entrance, size, known, catalog, storey, habit, units);
        }

        SwitchSide none = new(entrance.Room, 0, entrance.Opening, size, default, habit, catalog.UsualMeasures, units);
        none.Refusals = new[] { SizeNotKnown };
        return none;
    }

    private static SwitchSide For(RoomOpening entrance, BoxSize size, PlateSize plate, PartsCatalog catalog, Storey? storey, SwitchesAtEntrances habit, LengthUnits units)
    {
        Room room = entrance.Room;
        int index = 0;
        while (room.Walls[index] != entrance.Wall)
        {
            index++;
        }

        return Guard.WithinReason(() => new SwitchSide(InStorey(room, storey), index, entrance.Opening, size, plate, habit, catalog.UsualMeasures, units).Find(), "the room", nameof(room));
    }

    private static PlateSize? UprightPlateOf(DeviceBox box, PartsCatalog catalog) => ResolvedBox.PlateOf(box.OnItsSide ? box.WithOnItsSide(false) : box, catalog);

    private static Room InStorey(Room room, Storey? storey) => storey is null ? room
        : room.WithWalls(room.Walls.Select(wall => WallBuild.Settled(wall, storey)));

    private SwitchSide Find()
    {
        Opening opening = trimmed.Opening;
        OpeningKind kind = opening.Kind;
        if (room.Walls[index].Open)
        {
            TryReturn(WallEnd.Left, "on the wall beside the open side");
            TryReturn(WallEnd.Right, "on the wall beside the open side");
        }
        else if (kind == OpeningKind.Window || kind == OpeningKind.PassThrough)
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
            FromSide(left == right ? RoomHand.Of(room, null, usual) : left > right ? WallEnd.Left : WallEnd.Right, "on the side with more wall", "");
        }

        Places = new(places);
        Refusals = new(refusals);
        return this;

        static WallEnd? Other(WallEnd? side) => side is { } one ? Opposite(one) : null;
    }

    private static WallEnd Opposite(WallEnd side) => side == WallEnd.Left ? WallEnd.Right : WallEnd.Left;

    private Distance WallFrom(WallEnd side) => (Free(index).EndToward(side, RoughEdge(side)) - RoughEdge(side)).Abs();

    private Distance RoughEdge(WallEnd side) => side == WallEnd.Left ? trimmed.Opening.Left : trimmed.Opening.Right;

    private FreeWall Free(int wall) => free[wall] ??= new(room, wall, box.HalfWidth, plate.HalfWidth, habit, usual);

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
                TryReturn(side, "round the corner on the wall that returns beside the latch");
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
}
