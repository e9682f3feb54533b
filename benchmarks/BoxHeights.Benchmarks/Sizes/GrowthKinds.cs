using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Benchmarks;

/// <summary>Dwellings that are large in one respect each.</summary>
internal static class GrowthKinds
{
    /// <summary>Inches from one to the next.</summary>
    private const int Apart = 60;

    /// <summary>The same of boxes alone: a wall of 3,000 of them is still one of a house, shorter than 10,000 ft.</summary>
    private const int Close = 36;

    private static readonly DeviceKind[] Receptacle = [DeviceKind.DuplexReceptacle];

    public static IReadOnlyList<(string Name, Func<int, Dwelling> Make)> All { get; } =
    [
        ("boxes alike on a wall", n => RowOfBoxes(n, wall => wall.WithBoxes(Each(n, i => Outlet(i, 16, Close))))),
        ("boxes unlike on a wall", n => RowOfBoxes(n, wall => wall.WithBoxes(Each(n, i => Outlet(i, 16, Close).WithVolume(Volume.FromCubicInches(18 + (i * 0.01m))))))),
        ("boxes too high on a wall", n => RowOfBoxes(n, wall => wall.WithBoxes(Each(n, i => Outlet(i, 70, Close))))),
        ("boxes on the studs of a wall", n => RowOfBoxes(n, wall => wall.WithStuds(new StudLayout { Spacing = In(16) }).WithBoxes(Each(n, i => Outlet(i, 16, Close).WithMounting(new(MountingMethod.Stud)))))),
        ("openings in a wall", n => OneWall(n, wall => wall.WithOpenings(Each(n, i => new Opening("o" + i, OpeningKind.Window, In((i * Apart) + 20), In((i * Apart) + 50)).WithSill(Level(36)).WithHead(Level(80)))))),
        ("doors in a wall", n => OneWall(n, wall => wall.WithOpenings(Each(n, i => new Opening("o" + i, OpeningKind.Door, In((i * Apart) + 20), In((i * Apart) + 52)))))),
        ("counters on a wall", n => OneWall(n, wall => wall.WithCounters(Each(n, i => new Counter("c" + i, CounterKind.Kitchen, In(i * Apart), In((i * Apart) + 50)).WithTop(Level(36)))))),
        ("interruptions of a counter", n => OneWall(n, wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, In(0), In(n * Apart)).WithTop(Level(36)).WithInterruptions(Each(n, i => new CounterInterruption(InterruptionKind.Sink, In((i * Apart) + 20), In((i * Apart) + 40)))) }))),
        ("corners of a wall's top", n => OneWall(n, wall => wall.WithTop(Each(n, i => new WallTopPoint(In(i * Apart), In(97 + (i % 2))))))),
        ("fixtures in a room", n => House(1, _ => Room("r0", n, 0).WithFixtures(Each(n, i => new Fixture("f" + i, FixtureKind.Toilet).WithWall("w0").WithLeft(In((i * Apart) + 10)).WithRight(In((i * Apart) + 40)))))),
        ("walls of a room", n => House(1, _ => new Room("r0", RoomKind.Bedroom, "s0").WithWalls(Each(n, i => new Wall("w" + i, In(120)).WithTurnDegrees(i % 2 == 0 ? 90 : -90).WithBoxes(new[] { Outlet(i, 16) }))))),
        ("rooms of a storey", n => House(n, i => Room("r" + i, 4, i))),
        ("storeys and flights", n => House(n, i => Room("r" + i, 4, i, "s" + i)).WithStoreys(Each(n, i => new Storey("s" + i))).WithFlights(Each(n - 1, i => new StairFlight("t" + i, "s" + i, "s" + (i + 1), 14)))),
        ("outside faces", n => House(1, _ => Room("r0", 4)).WithOutside(Each(n, i => new OutsideFace("f" + i).WithWalls(new[] { new Wall("w", In(240)).WithBoxes(new[] { Outlet(i, 24) }) })))),
    ];

    private static Distance In(int inches) => Distance.FromInches(inches, 0, 1);

    private static Level Level(int inches) => new(In(inches), Datum.Subfloor);

    private static DeviceBox Outlet(int i, int top, int apart = Apart) =>
        new DeviceBox("b" + i, BoxPurpose.General).WithDevices(Receptacle).WithAt(In((i * apart) + 12)).WithHeight(BoxHeight.ToTop(In(top), Datum.Subfloor));

    private static T[] Each<T>(int n, Func<int, T> make) => Enumerable.Range(0, n).Select(make).ToArray();

    private static Dwelling RowOfBoxes(int n, Func<Wall, Wall> change) => OneWall(n, change, Close);

    private static Dwelling OneWall(int n, Func<Wall, Wall> change, int apart = Apart)
    {
        Room room = Room("r0", n, 0, apart: apart);
        return House(1, _ => room.WithWalls(new[] { change(room.Walls[0]), room.Walls[1], room.Walls[2], room.Walls[3] }));
    }

    /// <summary>Four walls, two of them as long as n things take.</summary>
    private static Room Room(string id, int n, int box = -1, string storey = "s0", int apart = Apart) => new Room(id, RoomKind.Kitchen, storey).WithWalls(
        Each(4, w => new Wall("w" + w, w % 2 == 0 ? In(n * apart) : In(120)).WithTurnDegrees(90).WithBoxes(box >= 0 && w == 0 ? new[] { Outlet(0, 16).WithId("b" + box) } : Array.Empty<DeviceBox>())));

    private static Dwelling House(int rooms, Func<int, Room> room) => new Dwelling("growth").WithStoreys(new[] { new Storey("s0") }).WithRooms(Each(rooms, room));
}
