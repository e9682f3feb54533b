using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <content>Mistakes that are made with the hammer in hand: against framing, doors, finishes, the other side of the wall, stairs.</content>
internal static partial class PlantedMistakes
{
    private const string OneMore = "z-added";

    private static IReadOnlyDictionary<string, Func<int, int, Planted?>> OnSite { get; } = new Dictionary<string, Func<int, int, Planted?>>(StringComparer.Ordinal)
    {
        ["receptacle in the pocket"] = InThePocket,
        ["switch behind the leaf"] = BehindTheLeaf,
        ["switch behind the barn door"] = BehindTheBarnDoor,
        ["inside the rough opening"] = InTheOpening,
        ["nailed to nothing"] = NailedToNothing,
        ["cut in on a stud"] = CutInOnAStud,
        ["deep box in a furred wall"] = DeepInAFurredWall,
        ["back to back"] = BackToBack,
        ["plate on plate"] = PlateOnPlate,
        ["two cables too many"] = TwoCablesTooMany,
        ["short of the wainscot"] = ShortOfTheWainscot,
        ["flush with the board under tile"] = FlushUnderTile,
        ["no switch at the foot"] = NoSwitchAtTheFoot,
        ["light at the handrail"] = LightAtTheHandrail,
        ["counter receptacle a tick too far"] = ATickTooFar,
        ["behind the dishwasher"] = BehindTheDishwasher,
        ["dishwasher's receptacle on another wall"] = (seed, rooms) => OnAnotherWall(seed, rooms, BoxPurpose.Dishwasher, "dishwasher-place"),
        ["dryer's receptacle on another wall"] = (seed, rooms) => OnAnotherWall(seed, rooms, BoxPurpose.Dryer, "dryer-place"),
        ["in the door that the other face has"] = InTheOtherFacesDoor,
    };

    private static Planted? InThePocket(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Add(house, seed, one => one.Box.Purpose == BoxPurpose.General && DoorOf(one, OpeningKind.PocketDoor) is not null, one =>
        {
            // The leaf of 28 in and half an inch, beside the doorway.
            Opening door = DoorOf(one, OpeningKind.PocketDoor)!;
            return door.PocketOn == WallEnd.Left ? door.Left - In(14) : door.Right + In(14);
        }, "in-cavity");
    }

    private static Planted? BehindTheLeaf(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Switches(house, OpeningKind.Door).Where(one => DoorOf(one, OpeningKind.Door) is { Swing: DoorSwing.Into } door && DoorDraft.Behind(door).All(leaf => leaf.Left > In(3) && leaf.Right < one.Wall!.Length - In(3))).ToList();
        return Change(house, Some(found, seed), box => Loose(box).WithAt(Middle(found, box)), false, "behind-open-door");
    }

    private static Planted? BehindTheBarnDoor(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Switches(house, OpeningKind.BarnDoor);
        return Change(house, Some(found, seed), box => Loose(box).WithAt(Middle(found, box)), false, "behind-barn-door");
    }

    private static Distance Middle(List<BoxAt> found, DeviceBox box)
    {
        (Distance left, Distance right) = DoorDraft.Behind(found.Find(one => one.Box.Id == box.Id)!.Wall!.Openings[0]).First();
        return left + Distance.FromTicks((right - left).Ticks / 2);
    }

    /// <summary>On the wrong side of king and jack.</summary>
    private static Planted? InTheOpening(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        BoxAt? one = Some(Switches(house, OpeningKind.Door), seed).FirstOrDefault();
        return one is null ? null : Change(house, [one], box => Loose(box).WithAt(IsLeftOfDoor(one) ? one.Wall!.Openings[0].Left + In(1.125m) : one.Wall!.Openings[0].Right - In(1.125m)), false, "trim-clearance");
    }

    /// <summary>In the middle of a bay of which it is known where its studs stand.</summary>
    private static Planted? NailedToNothing(int seed, int rooms) => OnKnownStuds(seed, rooms, (timber, one) =>
    {
        List<(Distance Left, Distance Right)> pieces = timber.Pieces(null);
        foreach ((Distance from, Distance to) in pieces.OrderBy(piece => piece.Left).Zip(pieces.OrderBy(piece => piece.Left).Skip(1), (a, b) => (a.Right, b.Left)))
        {
            Distance middle = from + Distance.FromTicks((to - from).Ticks / 2);
            if (to - from > In(9) && IsAsideOfItsDoor(one, middle))
            {
                return one.Box.WithKind(null).WithMounting(new Mounting(MountingMethod.Stud)).WithAt(middle);
            }
        }

        return null;
    });

    private static Planted? CutInOnAStud(int seed, int rooms) => OnKnownStuds(seed, rooms, (timber, one) =>
        timber.Commons.Where(stud => IsAsideOfItsDoor(one, stud.Left)).Select(stud => one.Box.WithKind(BoxKind.CutIn).WithSize(null).WithMounting(new Mounting(MountingMethod.CutIn)).WithAt(stud.Left + In(0.5m))).FirstOrDefault());

    private static Planted? OnKnownStuds(int seed, int rooms, Func<Timber, BoxAt, DeviceBox?> set)
    {
        (Dwelling house, IReadOnlyList<SetWall> walls) = OrdinaryHouses.Framed(seed, rooms);
        foreach (BoxAt one in Switches(house, OpeningKind.Door))
        {
            SetWall wall = walls.Single(other => other.Address == one.Room!.Id + "/" + one.Wall!.Id);
            bool isKnown = (one.Wall!.Studs ?? house.Storeys.Single(storey => storey.Id == one.Room!.Storey).Studs) is { Known: not StudKnowledge.Assumed };
            bool isUpright = house.Storeys.Single(storey => storey.Id == one.Room!.Storey).Boards is { Hung: BoardDirection.Vertical };
            if (isKnown && !isUpright && one.Box.Devices.Count == 1 && IsOneFace(house, one) && one.Wall.NoCavity.Count == 0 && set(wall.Timber, one) is { } moved)
            {
                return Change(house, [one], _ => moved.WithSpecified(null), false, "framing-fit");
            }
        }

        return null;
    }

    /// <summary>Within 30 in of the door on its strike side, off the casing and clear of whatever else is on the wall.</summary>
    private static bool IsAsideOfItsDoor(BoxAt one, Distance at)
    {
        Opening door = one.Wall!.Openings[0];
        Distance away = IsLeftOfDoor(one) ? door.Left - at : at - door.Right;
        return away > In(8) && away < In(30) && at > In(4) && at < one.Wall.Length - In(4) && !one.Wall.Boxes.Any(other => other != one.Box && (other.At!.Value - at).Abs() < In(6))
            && one.Wall.Openings.Count == 1 && DoorDraft.Behind(door).All(leaf => at < leaf.Left || leaf.Right < at);
    }

    /// <summary>Two by two furring is 1-1/2 in deep, and half an inch of board stands before it: a plastic box is 2-3/4 in deep at the least (from memory).</summary>
    private static Planted? DeepInAFurredWall(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Some(Found(house, one => one.Wall?.Cavity == In(1.5m) && one.Box.Kind == BoxKind.FourSquare), seed);
        Planted? planted = Change(house, found, box => Loose(box).WithKind(BoxKind.NailOn).WithSetFor(null).WithVolume(Volume.FromCubicInches(18)), false, "cavity-depth");
        return planted is null ? null : planted with
        {
            House = planted.House.WithRooms(planted.House.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => room.Id == found[0].Room!.Id && wall.Id == found[0].Wall!.Id ? wall.WithBoards(new BoardLayout().WithThickness(In(0.5m))).WithBoxes(wall.Boxes.Select(box => box.WithSetFor(null))) : wall)))),
        };
    }

    /// <summary>The same box once more, on the other face: two of 2-3/4 in or more (from memory), each with half an inch of board before the studs, in 3-1/2 in.</summary>
    private static Planted? BackToBack(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        foreach ((Room room, Wall face) in house.Rooms.SelectMany(room => room.Walls.Where(wall => wall.BackOf is not null && wall.Finishes.Count == 0).Select(wall => (room, wall))))
        {
            (Room behind, Wall other) = house.Rooms.SelectMany(one => one.Walls.Select(wall => (one, wall))).Single(one => one.one.Id + "/" + one.wall.Id == face.BackOf);
            DeviceBox? box = other.Finishes.Count > 0 || BoardOf(house, room) is null || face.Cavity != In(3.5m) ? null
                : other.Boxes.FirstOrDefault(one => one.Kind is null && one.Size is null && one.SetFor is null && !one.Existing && one.Surface is null && one.Purpose == BoxPurpose.General
                    && !face.Boxes.Any(near => (near.At!.Value - (face.Length - one.At!.Value)).Abs() < In(6)));
            if (box is not null)
            {
                return WithOneMore(house, new(room, face, box.WithAt(face.Length - box.At!.Value)), "back-to-back");
            }
        }

        return null;
    }

    /// <summary>2-1/2 in from center to center: bodies of 2-1/4 in pass, plates of 2-3/4 in don't.</summary>
    private static Planted? PlateOnPlate(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Add(house, seed, one => one.Box is { Purpose: var purpose, Devices.Count: 1, Kind: null, Existing: false } && purpose == BoxPurpose.General && one.Wall is { Finishes.Count: 0, Coverings.Count: 0, Openings.Count: 0, Counters.Count: 0 }
            && !one.Wall.Boxes.Any(other => other != one.Box && (other.At!.Value - one.Box.At!.Value).Abs() < In(9)), one => one.Box.At!.Value + In(2.5m), "next-box");
    }

    /// <summary>Two more of three conductors: 12 in³ of 14 AWG at the least, where the fullest box has 8 to spare.</summary>
    private static Planted? TwoCablesTooMany(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box is { Kind: null, Volume: not null, Devices.Count: 1, Cables.Count: > 0 });
        return Change(house, Some(found, seed), box => box.WithCables(box.Cables.With(new CableType(box.Cables[0].Size, 3)).With(new CableType(box.Cables[0].Size, 3))), false, "box-fill");
    }

    /// <summary>Wood burns: NEC 314.20 asks for a box that is flush with it or stands out. 1/8 in behind.</summary>
    private static Planted? ShortOfTheWainscot(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Purpose == BoxPurpose.General && !one.Box.Existing && one.Room is { } room && BoardOf(house, room) is not null
            && one.Wall!.Finishes.Any(finish => finish.Kind == FinishKind.Wainscot && finish is { Combustible: true, Thickness: not null }));
        return Change(house, Some(found, seed), box => box.WithSetFor(BoardOf(house, found.Find(one => one.Box.Id == box.Id)!.Room!)!.Value + In(0.375m)), false, "box-setback");
    }

    /// <summary>1/8 in of mortar and 1/4 in of tile or more over a box that is flush with the board: 3/8 in behind or more, where NEC 314.20 allows 1/4 in.</summary>
    private static Planted? FlushUnderTile(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Surface is null && one.Room is { Kind: var kind } room && kind == RoomKind.Bathroom && BoardOf(house, room) is not null
            && one.Wall!.Finishes.Any(finish => finish.Top is null && finish.Thickness is not null));
        return Change(house, Some(found, seed), box => box.WithSetFor(BoardOf(house, found.Find(one => one.Box.Id == box.Id)!.Room!)), false, "box-setback");
    }

    /// <summary>Where the switch belongs there is a jack.</summary>
    private static Planted? NoSwitchAtTheFoot(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        bool wasOneOfTwo = !house.PlacedBoxes().Any(placed => placed.Box.Existing) && Found(house, one => one.Wall!.Id == "flight" && one.Box.Devices.Contains(DeviceKind.ThreeWaySwitch)).Count > 0;
        return house.Flights.Count == 0 ? null : new(house.WithBoxes(box => Found(house, one => one.Box.Id == box.Id && one.Wall!.Id == "flight").Count > 0 && box.Purpose == BoxPurpose.Switch
            ? box.WithPurpose(BoxPurpose.Media).WithDevices(new[] { DeviceKind.DataJack }).WithCables(Items<CableType>.None) : box), wasOneOfTwo ? ["stair-switches", "three-way-mates"] : ["stair-switches"], [], false, true);
    }

    /// <summary>36 in above the nosings: where a rail runs, and in the eyes of who comes down.</summary>
    private static Planted? LightAtTheHandrail(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Purpose == BoxPurpose.Light && one.Wall!.Id == "flight" && house.Storeys[0].Boards is null);
        return Change(house, Some(found, seed), box => box.WithHeight(BoxHeight.ToCenter(In(36), Datum.Nosing)), false, "clear-of-handrail", "stair-lamp");
    }

    /// <summary>The first receptacle of a counter 24 in and a tick from its end: NEC 210.52(C)(1) allows 24 in. At 24 in nothing is wrong.</summary>
    private static Planted? ATickTooFar(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Purpose == BoxPurpose.Counter);
        if (found.Count == 0)
        {
            return null;
        }

        BoxAt first = found.OrderBy(one => one.Box.At!.Value.Ticks).First();
        Distance limit = first.Wall!.Counters[0].Left + In(24);
        Planted? At(Distance place) => Change(house, [first], box => Loose(box).WithAt(place), false, "counter-outlets");
        return At(limit + Distance.FromTicks(1))! with { Boxes = [], NeedsOutlets = true, Still = At(limit)!.House };
    }

    /// <summary>A tick further along than its edge: a built-in machine can't be pulled out to reach a plug behind it. At its edge it is beside it. Common practice, no source.</summary>
    private static Planted? BehindTheDishwasher(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Some(Found(house, one => one.Box.Purpose == BoxPurpose.Dishwasher && IsOneFace(house, one) && one.Room!.Fixtures.Count > 0), seed);
        Distance? edge = found.Count == 0 ? null : found[0].Room!.Fixtures.Single(fixture => fixture.Kind == FixtureKind.Dishwasher).Left;
        Planted? At(Distance along) => Change(house, found, box => Loose(box).WithAt(along), false, "dishwasher-place");
        return edge is not { } left ? null : At(left + Distance.FromTicks(1))! with { Still = At(left)!.House };
    }

    /// <summary>On a wall that nothing else is on for 18 in to either side, and 40 in from its corners, where no door swings.</summary>
    /// <summary>Whether a wall is a box's own, or the one before or after it, which may be as near.</summary>
    private static bool IsRoundTheCorner(BoxAt one, int wall)
    {
        int count = one.Room!.Walls.Count;
        int own = one.Room.Walls.AsEnumerable().ToList().FindIndex(each => each.Id == one.Wall!.Id);
        return (wall - own + count + 1) % count <= 2;
    }

    private static Planted? OnAnotherWall(int seed, int rooms, BoxPurpose purpose, string rule)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        foreach (BoxAt one in Found(house, one => one.Box.Purpose == purpose && one.Room!.Fixtures.Count > 0))
        {
            foreach (Wall wall in one.Room!.Walls.Where((wall, i) => !IsRoundTheCorner(one, i) && wall is { Open: false, Finishes.Count: 0, Coverings.Count: 0, NoCavity.Count: 0, Top.Count: 0, Boards: null }))
            {
                for (Distance at = In(40); IsOneFace(house, one with { Wall = wall }) && at < wall.Length - In(40); at += In(1))
                {
                    if (wall.Boxes.All(box => (box.At!.Value - at).Abs() > In(18)) && wall.Openings.All(opening => at < opening.Left - In(40) || at > opening.Right + In(40)))
                    {
                        DeviceBox moved = Loose(one.Box).WithAt(at).WithSpecified(null);
                        return new(house.WithRooms(house.Rooms.Select(room => room.Id != one.Room.Id ? room : room.WithWalls(room.Walls.Select(each =>
                            each.Id == wall.Id ? wall.WithBoxes(wall.Boxes.With(moved)) : each.Id == one.Wall!.Id ? each.WithBoxes(new Items<DeviceBox>(each.Boxes.Where(box => box.Id != moved.Id))) : each)))), [rule], [moved.Id]);
                    }
                }
            }
        }

        return null;
    }

    /// <summary>Only one of two faces has their door drawn, and only one of them says that they are one wall.</summary>
    private static Planted? InTheOtherFacesDoor(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        foreach ((Room room, Wall face) in house.Rooms.SelectMany(room => room.Walls.Where(wall => wall is { BackOf: not null, Finishes.Count: 0, Coverings.Count: 0 }).Select(wall => (room, wall))))
        {
            if (face.Openings.FirstOrDefault(one => one.Kind == OpeningKind.Door) is { } door && !face.Boxes.Any(box => door.Left - In(6) < box.At && box.At < door.Right + In(6)))
            {
                Wall bare = face.WithOpenings(Items<Opening>.None);
                Dwelling drawnOnce = house.WithRooms(house.Rooms.Select(one => one.WithWalls(one.Walls.Select(wall =>
                    one.Id == room.Id && wall.Id == face.Id ? (seed % 2 == 0 ? bare : bare.WithBackOf(null).WithBackOffset(null))
                    : one.Id + "/" + wall.Id == face.BackOf && seed % 2 == 1 ? wall.WithBackOf(room.Id + "/" + face.Id).WithBackOffset(face.BackOffset) : wall))));
                BoxAt inIt = new(room, bare, face.Boxes.Count > 0 ? face.Boxes[0] : house.PlacedBoxes()[0].Box);
                return WithOneMore(drawnOnce, inIt with { Box = new DeviceBox("none", BoxPurpose.General).WithDevices(new[] { DeviceKind.DataJack }).WithAt(door.Left + In(14)).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor)) }, "trim-clearance");
            }
        }

        return null;
    }

    private static Opening? DoorOf(BoxAt one, OpeningKind kind) => one.Wall is { Openings: { Count: > 0 } openings } && openings[0].Kind == kind ? openings[0] : null;

    /// <summary>Switches of which each is the one beside the door of its wall.</summary>
    private static List<BoxAt> Switches(Dwelling house, OpeningKind kind) => Found(house, one => one.Box.Purpose == BoxPurpose.Switch && one.Wall!.Id == "south" && DoorOf(one, kind) is not null && IsOneFace(house, one));

    /// <summary>Whether nobody has described the other face of its wall.</summary>
    private static bool IsOneFace(Dwelling house, BoxAt one) => one.Wall!.BackOf is null && !house.Rooms.Any(room => room.Walls.Any(wall => wall.BackOf == one.Room?.Id + "/" + one.Wall.Id));

    private static Planted? Add(Dwelling house, int seed, Func<BoxAt, bool> like, Func<BoxAt, Distance> at, string rule) =>
        Some(Found(house, one => one.Room is not null && !one.Box.Existing && like(one) && IsOneFace(house, one)), seed) is [{ } one] ? WithOneMore(house, one with { Box = one.Box.WithAt(at(one)) }, rule) : null;

    /// <summary>The house with one box more, of which it isn't told how it is held.</summary>
    private static Planted WithOneMore(Dwelling house, BoxAt one, string rule)
    {
        DeviceBox box = Loose(one.Box).WithId(OneMore).WithSpecified(null);
        return new(house.WithRooms(house.Rooms.Select(room => room.Id != one.Room!.Id ? room : room.WithWalls(room.Walls.Select(wall => wall.Id == one.Wall!.Id ? wall.WithBoxes(wall.Boxes.With(box)) : wall)))), [rule], [OneMore]);
    }
}
