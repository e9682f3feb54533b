using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace BoxHeights.Benchmarks;

/// <summary>Several copies of a house as one dwelling, each with storeys, rooms, faces, flights and boxes of its own.</summary>
internal static class Copies
{
    public static Dwelling Of(Dwelling house, int count)
    {
        List<Dwelling> copies = [.. Enumerable.Range(0, count).Select(i => Named(house, i == 0 ? "" : "copy" + i.ToString(CultureInfo.InvariantCulture) + "-"))];
        return house.WithStoreys(All(copies, one => one.Storeys)).WithRooms(All(copies, one => one.Rooms)).WithOutside(All(copies, one => one.Outside)).WithFlights(All(copies, one => one.Flights));
    }

    /// <summary>The house as the framers left it: what was there before stays.</summary>
    public static Dwelling Bare(Dwelling house) =>
        house.WithRooms(house.Rooms.Select(room => Boxes(room, Existing))).WithOutside(house.Outside.Select(face => face.WithWalls(face.Walls.Select(wall => wall.WithBoxes(Existing(wall.Boxes))))));

    private static T[] All<T>(List<Dwelling> copies, Func<Dwelling, Items<T>> of) => copies.SelectMany(one => of(one)).ToArray();

    private static Items<DeviceBox> Existing(Items<DeviceBox> boxes) => boxes.Where(box => box.Existing).ToArray();

    private static Room Boxes(Room room, Func<Items<DeviceBox>, Items<DeviceBox>> change) =>
        room.WithWalls(room.Walls.Select(wall => wall.WithBoxes(change(wall.Boxes)))).WithOverhead(change(room.Overhead)).WithInFloor(change(room.InFloor));

    private static Dwelling Named(Dwelling house, string prefix)
    {
        return house.WithStoreys(house.Storeys.Select(storey => storey.WithId(prefix + storey.Id)))
            .WithRooms(house.Rooms.Select(room => Boxes(room.WithId(prefix + room.Id).WithStorey(prefix + room.Storey).WithWalls(room.Walls.Select(Backed)), Named)))
            .WithOutside(house.Outside.Select(face => face.WithId(prefix + face.Id).WithStorey(face.Storey is { } storey ? prefix + storey : null)
                .WithWalls(face.Walls.Select(wall => Backed(wall).WithBoxes(Named(wall.Boxes))))))
            .WithFlights(house.Flights.Select(flight => flight.WithId(prefix + flight.Id).WithFrom(prefix + flight.From).WithTo(prefix + flight.To).WithWall(flight.Wall is { } wall ? prefix + wall : null)));

        Wall Backed(Wall wall) => wall.WithBackOf(wall.BackOf is { } back ? prefix + back : null);

        Items<DeviceBox> Named(Items<DeviceBox> boxes) => boxes.Select(box => box.WithId(prefix + box.Id));
    }
}
