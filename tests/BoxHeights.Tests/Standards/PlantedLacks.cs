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
