using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <content>What somebody forgot: a light, a switch's mate, to set the last box like the others.</content>
internal static partial class PlantedMistakes
{
    private static IReadOnlyDictionary<string, Func<int, int, Planted?>> Lacking { get; } = new Dictionary<string, Func<int, int, Planted?>>(StringComparer.Ordinal)
    {
        ["hall without a light"] = (seed, rooms) => Dark(seed, rooms, "passage-light", RoomKind.Hall, RoomKind.Garage),
        ["laundry without a light"] = (seed, rooms) => Dark(seed, rooms, "laundry-light", RoomKind.Laundry),
        ["basement without a light"] = (seed, rooms) => Dark(seed, rooms, "service-light", RoomKind.Basement, RoomKind.Utility),
        ["bedroom without a switch"] = (seed, rooms) => Unswitched(seed, rooms, "room-switch", RoomKind.Bedroom, RoomKind.Office, RoomKind.Bathroom),
        ["laundry without a switch"] = (seed, rooms) => Unswitched(seed, rooms, "laundry-switch", RoomKind.Laundry),
        ["light 3 in off the middle"] = OffTheMiddle,
        ["box 1/8 in proud"] = Proud,
        ["chime in the header"] = InTheHeader,
        ["three-way without its mate"] = LoneThreeWay,
        ["garage receptacle off the others"] = OffTheOthers,
    };

    private static Planted? Dark(int seed, int rooms, string rule, params RoomKind[] kinds)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        Room? dark = house.Rooms.FirstOrDefault(room => kinds.Contains(room.Kind));
        return dark is null ? null : new(
            house.WithRooms(house.Rooms.Select(room => room.Id == dark.Id ? room.WithOverhead(new Items<DeviceBox>(room.Overhead.Where(box => box.Purpose != BoxPurpose.Light))) : room)),
            [rule], [], false, true);
    }

    /// <summary>Its switches are plain ones, so that no other is left without its mate.</summary>
    private static Planted? Unswitched(int seed, int rooms, string rule, params RoomKind[] kinds)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        Room? room = house.Rooms.FirstOrDefault(one => kinds.Contains(one.Kind)
            && one.Walls.SelectMany(wall => wall.Boxes).Where(box => box.Purpose == BoxPurpose.Switch).All(box => !box.Existing && !box.Devices.Contains(DeviceKind.ThreeWaySwitch)));
        return room is null ? null : new(
            house.WithRooms(house.Rooms.Select(one => one.Id != room.Id ? one : one.WithWalls(one.Walls.Select(wall => wall.WithBoxes(new Items<DeviceBox>(wall.Boxes.Where(box => box.Purpose != BoxPurpose.Switch))))))),
            [rule], [], false, true)
        {
            // A switch outside its door would do.
            Verdict = Verdict.Unknown,
        };
    }

    /// <summary>A joist was in the way. An inch off nobody sees it; further than 6 in it is meant to be elsewhere.</summary>
    private static Planted? OffTheMiddle(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        Room? room = house.Rooms.FirstOrDefault(one => (one.Kind == RoomKind.Bedroom || one.Kind == RoomKind.Office || one.Kind == RoomKind.DiningRoom || one.Kind == RoomKind.Laundry)
            && new WallPlan(one).MiddleOfRectangle is not null && one.Overhead.Count(box => box.Purpose == BoxPurpose.Light) == 1);
        Dwelling At(decimal off) => house.WithRooms(house.Rooms.Select(one => one.Id != room!.Id ? one : one.WithOverhead(one.Overhead.Select(box => box.Purpose != BoxPurpose.Light ? box
            : box.WithPlan(new PlanPoint(box.Plan!.Value.Right + In(off), box.Plan.Value.Into))))));
        return room is null ? null : new(At(3), ["room-light-center"], [], false, true, At(1));
    }

    /// <summary>Set for board of another job, 1/8 in thicker.</summary>
    private static Planted? Proud(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> found = Some(Found(house, one => one is { Room: { } room, Wall.Finishes.Count: 0, Box.Surface: null, Box.Existing: false } && BoardOf(house, room) is not null && one.Box.Mounting?.How is not (MountingMethod.Surface or MountingMethod.Cabinet)), seed);
        Planted? At(Distance past) => Change(house, found, box => box.WithSetFor(BoardOf(house, found[0].Room!)!.Value + past), false, "box-proud");
        return At(In(0.125m)) is { } planted ? planted with { Still = At(In(0.0625m))!.House } : null;
    }

    /// <summary>Over the door of a wall that carries the floor above, where a header lies that nobody has drawn.</summary>
    private static Planted? InTheHeader(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms, plain: true);
        foreach (Room room in house.Rooms.Where(one => one.SubfloorOffset is null))
        {
            foreach (Wall wall in room.Walls.Where(one => one is { Top.Count: 0, Coverings.Count: 0 }))
            {
                BoxAt at = new(room, wall, wall.Boxes.Count > 0 ? wall.Boxes[0] : new DeviceBox("none", BoxPurpose.General));
                if (IsOneFace(house, at) && wall.Openings.FirstOrDefault(one => one.Kind == OpeningKind.Door && one.Head is not null && !(one.Casing > In(3))) is { } door)
                {
                    Dwelling bearing = house.WithRooms(house.Rooms.Select(one => one.Id != room.Id ? one : one.WithWalls(one.Walls.Select(two => two.Id == wall.Id ? two.WithBearing(true) : two))));
                    DeviceBox chime = new DeviceBox("chime", BoxPurpose.DoorbellChime).WithAt(door.Left + In(12)).WithHeight(BoxHeight.ToBottom(door.Head!.Value.Offset + In(3.5m), door.Head.Value.Datum));
                    return WithOneMore(bearing, new(room, wall, chime), "in-cavity") with { Still = bearing };
                }
            }
        }

        return null;
    }

    /// <summary>Where nothing is left from before, so that its mate isn't behind an old plate.</summary>
    private static Planted? LoneThreeWay(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        BoxAt? one = house.PlacedBoxes().Any(placed => placed.Box.Existing) ? null : Found(house, one => one.Box.Devices.Count == 1 && one.Box.Devices[0] == DeviceKind.Switch).FirstOrDefault();
        return one is null ? null : Change(house, [one], box => box.WithDevices(new[] { DeviceKind.ThreeWaySwitch }), false, "three-way-mates")! with { Boxes = [], NeedsOutlets = true };
    }

    /// <summary>1/4 in and a tick above the others of its garage; at 1/4 in nobody would mind.</summary>
    private static Planted? OffTheOthers(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Make(seed, rooms);
        List<BoxAt> garage = Found(house, one => one.Box.Purpose == BoxPurpose.Garage && one.Box.Kind is null && one.Box.Size is null);
        bool stands = house.Storeys[0].Boards is null && garage.Count > 2 && garage.TrueForAll(one => one.Room == garage[0].Room && one.Box.Height == garage[0].Box.Height);
        Planted? At(Distance off) => Change(house, [garage[0]], box => box.WithHeight(box.Height!.Value.WithValue(box.Height.Value.Value + off)), false, "room-level");
        return !stands ? null : At(In(0.25m) + Distance.FromTicks(1))! with { Still = At(In(0.25m))!.House };
    }
}
