using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A house with exactly one mistake in it.</summary>
/// <param name="House">The house.</param>
/// <param name="Rules">The ids of the rules that the mistake breaks.</param>
/// <param name="Boxes">The boxes that are wrong.</param>
/// <param name="IsOneStick">Whether all of them come from one stick, so that they are one cause.</param>
/// <param name="NeedsOutlets">Whether it is one of what has to be there, so that no box is wrong.</param>
/// <param name="Still">The house in which it is only just no mistake; null where there is none.</param>
internal sealed record Planted(Dwelling House, string[] Rules, HashSet<string> Boxes, bool IsOneStick = false, bool NeedsOutlets = false, Dwelling? Still = null)
{
    /// <summary>What is said of it; unknown where it may be made up for somewhere else.</summary>
    public Verdict Verdict { get; init; } = Verdict.Fails;
}

/// <summary>Stories that a builder believes, each put into an ordinary house. Where the house offers no place for one, there is none.</summary>
internal static partial class PlantedMistakes
{
    public static IReadOnlyDictionary<string, Func<int, int, Planted?>> Kinds => AtTheDesk.Concat(OnSite).Concat(Lacking).ToDictionary(one => one.Key, one => one.Value);

    private static IReadOnlyDictionary<string, Func<int, int, Planted?>> AtTheDesk { get; } = new Dictionary<string, Func<int, int, Planted?>>(StringComparer.Ordinal)
    {
        ["stick from the finished floor"] = FromFinishedFloor,
        ["courses that end short of the floor"] = ShortCourses,
        ["floor raised under one ceiling"] = RaisedFloor,
        ["hammer on the bottom plate"] = HammerOnPlate,
        ["plate across the splash"] = AcrossTheSplash,
        ["behind the mirror"] = BehindTheMirror,
        ["behind the tall cabinet"] = BehindTheTallCabinet,
        ["plate on the casing"] = OnTheCasing,
        ["three 12-2 in 18"] = TooFull,
        ["dryer receptacle in 18"] = WideDevice,
        ["14 AWG at the basin"] = ThinAtTheBasin,
        ["set for the board where tile comes"] = SetForTheBoard,
        ["board cut 1/4 in too wide"] = CutTooWide,
        ["deep switch in a shallow box"] = TooShallow,
        ["21 in above the counter"] = FarAboveTheCounter,
        ["garage receptacle at 70"] = HighInTheGarage,
        ["outdoor receptacle at 80"] = HighOutdoors,
        ["alarm 14 in below the ceiling"] = LowAlarm,
        ["drawing missed by 1 in"] = MissedDrawing,
        ["switch at 85"] = HighSwitch,
    };

    /// <summary>48 to the top from a floor of 3/4 in is 48-3/4 above the subfloor; under 5/8 in of ceiling the seam is at 48-1/2.</summary>
    private static Planted? FromFinishedFloor(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms, plain: true);
        return Change(house, Found(house, one => IsOnTheLine(one, BoxPurpose.Switch) && one.Room!.Storey == "first"), box => box.WithHeight(BoxHeight.ToTop(In(48), Datum.FinishedFloor)), true, "board-seam");
    }

    /// <summary>48 in and less than another 48: the strip that fills the rest has its seam just where the range's receptacle is. An inch short is a gap.</summary>
    private static Planted? ShortCourses(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms, plain: true);
        List<BoxAt> found = Found(house, one => one.Box.Purpose == BoxPurpose.Range && one.Box.Height is { Edge: Edge.Center, Datum: Datum.FinishedFloor } && one.Room!.Storey == "first");
        Planted? At(Distance end) => Change(house, found, box => box, false, "board-seam") is not { } planted ? null : planted with
        {
            House = planted.House.WithStoreys(planted.House.Storeys.Select(storey => storey.Id == "first" ? storey.WithBoards(storey.Boards!.WithWidths(new[] { In(48), In(48.5m) - end })) : storey)),
        };
        return found.Count == 0 || Found(house, one => one.Box.Purpose == BoxPurpose.Dishwasher && one.Box.Height!.Value.Value < In(12)).Count > 0 ? null : At(found[0].Box.Height!.Value.Value + In(0.75m))! with { Still = At(In(1))!.House };
    }

    /// <summary>The storey's ceiling and the seam at 48-1/2 in under it stay where they are: 2 in higher, switches that were set from the floor are across it.</summary>
    private static Planted? RaisedFloor(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms, plain: true);
        Room? room = house.Rooms.FirstOrDefault(one => one is { Storey: "first", SubfloorOffset: null, Ceiling: null } && (one.Kind == RoomKind.Bedroom || one.Kind == RoomKind.Hall || one.Kind == RoomKind.Office)
            && one.Walls.All(wall => wall.BackOf is null && wall.Boards is null && wall.Top.Count == 0 && wall.Boxes.All(box => FromRaisedSeam(box) is < 1.7m or > 2.1m)
                && !house.Rooms.Any(other => other.Walls.Any(behind => behind.BackOf == one.Id + "/" + wall.Id))));
        List<BoxAt> found = room is null ? [] : Found(house, one => one.Room == room && FromRaisedSeam(one.Box) < 2);
        return Change(house, found, box => box, false, "board-seam") is not { } planted ? null : planted with
        {
            House = planted.House.WithRooms(planted.House.Rooms.Select(one => one.Id == room!.Id ? one.WithSubfloorOffset(In(2)) : one)),
        };
    }

    /// <summary>How far a box's center is from 46-1/2 in above the subfloor, in inches; what isn't set from the subfloor counts as just out of its reach or right across it.</summary>
    private static decimal FromRaisedSeam(DeviceBox box) => box.Height is not { Edge: { } edge, Datum: Datum.Subfloor } height ? box.Height?.Datum == Datum.FinishedFloor && box.Height.Value.Value < In(40) ? 99 : 2
        : Math.Abs(height.Value.Inches + (edge switch { Edge.Top => -1.875m, Edge.Bottom => 1.875m, _ => 0 }) - 46.5m);

    /// <summary>In one room the same stick stood on the plate: 1-1/2 in higher.</summary>
    private static Planted? HammerOnPlate(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> general = Found(house, one => IsOnTheLine(one, BoxPurpose.General));
        foreach (IGrouping<string, BoxAt> storey in general.GroupBy(one => one.Room!.Storey))
        {
            List<BoxAt> some = storey.GroupBy(one => one.Room!.Id).OrderBy(room => room.Count()).First().ToList();
            Stick[] low = [new(Edge.Top, 16, Datum.Subfloor), new(Edge.Top, 16.125m, Datum.Subfloor), new(Edge.Top, 16.25m, Datum.Subfloor), new(Edge.Bottom, 12, Datum.Subfloor), new(Edge.Center, 14, Datum.Subfloor)];

            // A crew that works from the level line has no stick to stand on the plate; and the others have to be many enough to show what the line is.
            if (some.TrueForAll(one => low.Any(stick => stick.Height == one.Box.Height)) && storey.Count(one => one.Box.Kind is null && one.Box.Size is null && !some.Contains(one)) > some.Count)
            {
                bool alike = some.Select(one => (one.Box.Kind, one.Box.Size)).Distinct().Count() == 1;
                return Change(house, some, box => box.WithHeight(BoxHeight.To(box.Height!.Value.Edge!.Value, box.Height.Value.Value, Datum.BottomPlate)), alike, "uniform-level");
            }
        }

        return null;
    }

    /// <summary>42 to the center off the subfloor, where cabinets of 36 in stand on the finished floor and the splash is 4 in.</summary>
    private static Planted? AcrossTheSplash(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Change(house, Found(house, one => one.Box.Purpose == BoxPurpose.Counter && one.Wall!.Finishes[0].Top!.Value.Datum == Datum.Countertop), box => box.WithHeight(BoxHeight.ToCenter(In(42), Datum.Subfloor)).WithSetFor(null), true, "counter-edge");
    }

    private static Planted? BehindTheMirror(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        BoxAt? one = Found(house, one => one.Box.Purpose == BoxPurpose.Bath).FirstOrDefault();
        return one is null ? null : Change(house, [one], box => Loose(box).WithHeight(BoxHeight.ToTop(In(46), Datum.Subfloor)).WithAt(one.Wall!.Coverings[0].Left + In(26)), false, "not-buried");
    }

    private static Planted? BehindTheTallCabinet(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        BoxAt? one = Found(house, one => one.Box.Purpose == BoxPurpose.General && one.Wall!.Coverings.Any(covering => covering.Kind == CoveringKind.TallCabinet)).FirstOrDefault();
        if (one is null)
        {
            return null;
        }

        Planted planted = Change(house, [one], box => Loose(box).WithAt(one.Wall!.Coverings.Single(covering => covering.Kind == CoveringKind.TallCabinet).Left + In(13)), false, "not-buried")!;
        return planted with
        {
            House = planted.House.WithRooms(planted.House.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCoverings(
                wall.Coverings.Select(covering => covering.Kind == CoveringKind.TallCabinet ? covering.WithOpenInside(false) : covering)))))),
        };
    }

    private static Planted? OnTheCasing(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        BoxAt? one = AtADoor(house, seed);
        return one is null ? null : Change(house, [one], box => Loose(box).WithAt(IsLeftOfDoor(one) ? one.Wall!.Openings[0].Left - In(2) : one.Wall!.Openings[0].Right + In(2)), false, "trim-clearance");
    }

    /// <summary>Six 12 AWG conductors, a device and the grounds: 13.5 + 4.5 + 2.25 = 20.25 in³.</summary>
    private static Planted? TooFull(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Devices.Count == 1 && (one.Box.Devices[0] == DeviceKind.DuplexReceptacle || one.Box.Devices[0] == DeviceKind.Switch));
        CableType[] cables = [CableType.Parse("12-2"), CableType.Parse("12-2"), CableType.Parse("12-2")];
        return Change(house, Some(found, seed), box => Loose(box).WithCables(cables).WithVolume(Volume.FromCubicInches(18)), false, "box-fill");
    }

    /// <summary>14 AWG, where the basin's receptacle is on 20 A. On 12 AWG nothing is wrong.</summary>
    private static Planted? ThinAtTheBasin(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Some(Found(house, one => one.Box.Purpose == BoxPurpose.Bath && one.Box.Dedicated is null && one.Box.Volume is null && one.Box.Size?.Depth is null), seed);
        Planted? Of(string cable) => Change(house, found, box => box.WithVolume(Volume.FromCubicInches(21)).WithCables(new[] { CableType.Parse(cable) }), false, "circuit-20a");
        return Of("14-2") is { } planted ? planted with { Still = Of("12-2")!.House } : null;
    }

    /// <summary>Three 10 AWG conductors, a ground and a receptacle that needs two gangs: 7.5 + 2.5 + 10 = 20 in³, in 18. In 20 nothing is wrong.</summary>
    private static Planted? WideDevice(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms, plain: true);
        List<BoxAt> found = Some(Found(house, one => one.Box.Devices.Count == 1 && one.Box.Devices[0] == DeviceKind.DryerReceptacle), seed);
        CableType[] cables = [CableType.Parse("10-3")];
        Planted? At(decimal volume) => Change(house, found, box => box.WithSize(null).WithCables(cables).WithClamps(CableClamps.None).WithVolume(Volume.FromCubicInches(volume)), false, "box-fill");
        return At(18) is { } planted ? planted with { Still = At(20)!.House } : null;
    }

    /// <summary>1/8 in of mortar and 3/8 in of tile over boxes that are flush with the board: 1/2 in behind, where 1/4 in is allowed.</summary>
    private static Planted? SetForTheBoard(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Some(Found(house, one => one is { Room: { } room, Wall.Finishes.Count: 0, Box.Surface: null } && BoardOf(house, room) is not null), seed);
        if (found.Count == 0)
        {
            return null;
        }

        (Room tiled, Wall wall) = (found[0].Room!, found[0].Wall!);
        Distance board = BoardOf(house, tiled)!.Value;
        List<BoxAt> all = Found(house, one => one.Room == tiled && one.Wall == wall && one.Box.Surface is null && one.Box.Mounting?.How is not (MountingMethod.Surface or MountingMethod.Cabinet));
        Finish tile = new Finish("tile", FinishKind.Tile, Distance.Zero, wall.Length).WithBed(In(0.125m)).WithThickness(In(0.375m));
        Planted planted = Change(house, all, box => box.WithSetFor(board), false, "box-setback")!;
        return planted with
        {
            House = planted.House.WithRooms(planted.House.Rooms.Select(room => room.Id != tiled.Id ? room : room.WithWalls(room.Walls.Select(one => one.Id == wall.Id ? one.WithFinishes(new[] { tile }) : one)))),
        };
    }

    private static Planted? CutTooWide(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one is { Room: not null, Wall.Finishes.Count: 0, Box.Surface: null } && one.Box.Mounting?.How is not (MountingMethod.Surface or MountingMethod.Cabinet));
        return Change(house, Some(found, seed), box => box.WithBoardGap(In(0.25m)), false, "box-gap");
    }

    /// <summary>A device 1-7/8 in deep on 12 AWG wants 1/4 in behind it: 2-1/8 in, in a box of 2 in.</summary>
    private static Planted? TooShallow(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box is { Devices.Count: 1, Kind: null, Size: null } && one.Box.Devices[0] == DeviceKind.Switch);
        CableType[] cables = [CableType.Parse("12-2")];
        Distance[] deep = [In(1.875m)];
        return Change(house, Some(found, seed), box => box.WithCables(cables).WithVolume(Volume.FromCubicInches(18)).WithSize(new BoxSize(In(2.25m), In(3.75m), In(2))).WithDeviceDepths(deep), false, "box-depth");
    }

    private static Distance? BoardOf(Dwelling house, Room room) => house.Storeys.Single(storey => storey.Id == room.Storey).Boards?.Thickness;

    /// <summary>A low counter, such as one for kneading, under boxes that stayed on the line.</summary>
    private static Planted? FarAboveTheCounter(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Found(house, one => one.Box.Purpose == BoxPurpose.Counter);
        if (found.Count == 0 || found[0].Box.Height is not { Datum: Datum.Subfloor } height)
        {
            return null;
        }

        Distance center = height.Value + In(height.Edge switch { Edge.Top => -1.875m, Edge.Bottom => 1.875m, _ => 0 });
        Planted planted = Change(house, found, box => box, false, "counter-receptacle")!;
        return planted with
        {
            House = planted.House.WithRooms(planted.House.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCounters(
                wall.Counters.Select(counter => counter.Kind == CounterKind.Kitchen ? counter.WithTop(new Level(center - In(21), Datum.Subfloor)).WithThickness(In(0.5m)) : counter)))))),
        };
    }

    /// <summary>In a box of 3-1/2 in, which no way of hanging board that the houses have would cut at that height.</summary>
    private static Planted? HighInTheGarage(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Change(house, Some(Found(house, one => one.Box.Purpose == BoxPurpose.Garage), seed), box => Loose(box).WithSize(new BoxSize(In(2.25m), In(3.5m))).WithHeight(BoxHeight.ToCenter(In(70), Datum.Subfloor)), false, "garage-receptacle", "garage-height", "room-level");
    }

    private static Planted? HighOutdoors(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Change(house, Some(Found(house, one => one.Box.Purpose == BoxPurpose.Exterior), seed), box => box.WithHeight(BoxHeight.ToCenter(In(80), Datum.Grade)), false, "outdoor-receptacle", "exterior-height");
    }

    /// <summary>The cover reaches 2-3/4 in above the center (from memory).</summary>
    private static Planted? LowAlarm(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Change(house, Some(Found(house, one => one.Box.Purpose == BoxPurpose.Alarm), seed), box => box.WithHeight(BoxHeight.ToCenter(-In(16.75m), Datum.FinishedCeiling)), false, "wall-alarm");
    }

    private static Planted? MissedDrawing(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return Change(house, Some(Found(house, one => one.Box.Height is { Edge: { } }), seed), box => box.WithSpecified(box.Height!.Value.WithValue(box.Height.Value.Value + In(1))), false, "specified-height");
    }

    /// <summary>About 85 to the center, by the crew's own edge: out of reach, out of habit and out of line with the other switches.</summary>
    private static Planted? HighSwitch(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        return AtADoor(house, seed) is { Box.Height: { Datum: Datum.Subfloor } height } one && height.Value <= In(height.Edge == Edge.Bottom ? 44 : 48) && Found(house, other => IsOnTheLine(other, BoxPurpose.Switch) && other.Room!.Storey == one.Room!.Storey).Count > 2
            ? Change(house, [one], box => box.WithHeight(height.WithValue(In(height.Edge switch { Edge.Top => 87, Edge.Bottom => 83, _ => 85 }))), false, "switch-reach", "switch-height", "uniform-level")
            : null;
    }

    private static BoxAt? AtADoor(Dwelling house, int seed) =>
        Some(Found(house, one => IsOnTheLine(one, BoxPurpose.Switch) && one.Wall is { NoCavity.Count: 0, Openings: { Count: > 0 } openings } && openings[0].Kind == OpeningKind.Door && openings[0].Left - In(12) < one.Box.At && one.Box.At < openings[0].Right + In(12)), seed).FirstOrDefault();

    private static bool IsLeftOfDoor(BoxAt one) => one.Box.At < one.Wall!.Openings[0].Left;

    /// <summary>The box without what tells how it is held, so that it may be moved: of studs it is said at most that one goes through it.</summary>
    private static DeviceBox Loose(DeviceBox box) => box.WithMounting(null).WithKind(null);

    /// <summary>Whether nothing keeps a box from the line that its purpose has in the storey.</summary>
    private static bool IsOnTheLine(BoxAt one, BoxPurpose purpose) =>
        one.Box.Purpose == purpose && !one.Box.Existing && one.Wall is { Top.Count: 0 } && one.Room is { SubfloorOffset: null };

    private static Planted? Change(Dwelling house, List<BoxAt> boxes, Func<DeviceBox, DeviceBox> change, bool isOneStick, params string[] rules)
    {
        HashSet<string> ids = [.. boxes.Select(one => one.Box.Id)];
        return ids.Count == 0 ? null : new(house.WithBoxes(box => ids.Contains(box.Id) ? change(box.WithSpecified(null)) : box), rules, ids, isOneStick);
    }

    private static List<BoxAt> Some(List<BoxAt> found, int seed) => found.Count == 0 ? found : [found[seed % found.Count]];

    private static List<BoxAt> Found(Dwelling house, Func<BoxAt, bool> which) =>
        house.Rooms.SelectMany(room => room.Walls.SelectMany(wall => wall.Boxes.Select(box => new BoxAt(room, wall, box))))
            .Concat(house.Outside.SelectMany(face => face.Walls.SelectMany(wall => wall.Boxes.Select(box => new BoxAt(null, wall, box))))).Where(which).ToList();

    private sealed record BoxAt(Room? Room, Wall? Wall, DeviceBox Box);
}
