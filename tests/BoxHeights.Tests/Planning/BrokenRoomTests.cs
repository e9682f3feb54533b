using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What can't be about a room is told with its wall and its numbers, and everything else is planned.</summary>
public sealed class BrokenRoomTests
{
    private static readonly RoughInPlanner Planner = new(
        RuleSets.OfAHouse,
        RoughInOptions.Default.WithExtras(new[] { BoxPurpose.Bedside, BoxPurpose.Television }));

    private static readonly Dictionary<string, (Func<Room, Room> Break, string[] Told)> Broken = new(StringComparer.Ordinal)
    {
        ["an opening beyond its wall"] = (On(wall => wall.WithOpenings(new[] { Door("d", 150, 182) })), ["bed/north/d: ", "182 in", "168 in"]),
        ["an opening whose ends are swapped"] = (On(wall => wall.WithOpenings(new[] { Door("d", 60, 28) })), ["bed/north/d: ", "60 in", "28 in"]),
        ["an opening without width"] = (On(wall => wall.WithOpenings(new[] { Door("d", 60, 60) })), ["bed/north/d: ", "60 in"]),
        ["openings that overlap"] = (On(wall => wall.WithOpenings(new[] { Door("d", 40, 72), Door("e", 60, 92) })), ["bed/north/d: ", "\"e\""]),
        ["openings of one id"] = (On(wall => wall.WithOpenings(new[] { Door("d", 20, 52), Door("d", 80, 112) })), ["bed/north/d: ", "20 in", "80 in"]),
        ["a counter beyond its wall"] = (On(wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Desk, In(100), In(170)) })), ["bed/north/c: ", "170 in", "168 in"]),
        ["a finish beyond its wall"] = (On(wall => wall.WithFinishes(new[] { new Finish("t", FinishKind.Tile, In(0), In(169)) })), ["bed/north/t: ", "169 in", "168 in"]),
        ["a cabinet whose ends are swapped"] = (On(wall => wall.WithCoverings(new[] { new Covering("k", CoveringKind.TallCabinet, In(50), In(20)) })), ["bed/north/k: ", "50 in", "20 in"]),
        ["a duct beyond its wall"] = (On(wall => wall.WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, In(160), In(174)) })), ["bed/north: ", "174 in", "168 in"]),
        ["a top that runs back"] = (On(wall => wall.WithTop(new[] { new WallTopPoint(In(100), In(90)), new WallTopPoint(In(20), In(96)) })), ["bed/north: ", "20 in", "100 in"]),
        ["a box beyond its wall"] = (On(wall => wall.WithBoxes(new[] { Box("own", 200) })), ["own: ", "200 in", "168 in"]),
        ["a box that the wall's end cuts"] = (On(wall => wall.WithBoxes(new[] { Box("own", 0.5m) })), ["own: ", "1/2 in", "168 in"]),
        ["a box on a stud that isn't there"] = (On(wall => wall.WithStuds(new StudLayout().WithSpacing(In(16))).WithBoxes(new[] { Box("own", null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(40).WithSide(StudSide.Left)) })), ["own: ", "40"]),
        ["a box without height"] = (On(wall => wall.WithBoxes(new[] { Box("own", 40).WithHeight(null) })), ["own: ", "no height"]),
        ["a bed at a wall that isn't there"] = (room => room.WithFixtures(new[] { new Fixture("queen", FixtureKind.Bed).WithWall("attic").WithLeft(In(54)).WithRight(In(114)) }), ["bed/queen: ", "\"attic\""]),
        ["a bed whose ends are swapped"] = (room => room.WithFixtures(new[] { new Fixture("queen", FixtureKind.Bed).WithWall("north").WithLeft(In(114)).WithRight(In(54)) }), ["bed/queen: ", "114 in", "54 in"]),
        ["a wall behind no wall"] = (On(wall => wall.WithBackOf("nowhere/at-all")), ["bed/north: ", "\"nowhere/at-all\""]),
        ["walls of one id"] = (room => room.WithWalls(room.Walls.With(new Wall("north", In(50)))), ["bed/north: ", "1", "5"]),
        ["a storey that isn't there"] = (room => room.WithStorey("cellar"), ["bed: ", "\"cellar\""]),
    };

    public static TheoryData<string> Cases
    {
        get
        {
            TheoryData<string> names = [];
            foreach (string name in Broken.Keys)
            {
                names.Add(name);
            }

            return names;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Part_ThatCantBe_IsTold_AndTheRestIsPlanned(string name)
    {
        Dwelling house = House(Broken[name].Break);
        foreach (RoomPlan plan in new[] { Planner.Plan(house), Planner.Plan(house, "bed") })
        {
            Assert.Contains(plan.Obstacles, obstacle => obstacle.StartsWith(Broken[name].Told[0], StringComparison.Ordinal) && Broken[name].Told.All(part => obstacle.Contains(part, StringComparison.Ordinal)));
            Assert.Contains("! " + Broken[name].Told[0], plan.ToText(), StringComparison.Ordinal);
            Assert.Contains(plan.Reasons, one => one.Address == "bed/south" && one.Id.Contains("switch", StringComparison.Ordinal));
        }

        Assert.Contains(Planner.Plan(house).Reasons, one => one.Address == "hall/ceiling");
        Assert.Equal(5, Planner.Plan(house).Reasons.Count(one => one.Address.StartsWith("den/", StringComparison.Ordinal) && one.Id.Contains("general", StringComparison.Ordinal)));
    }

    [Fact]
    public void Room_ThatIsInOrder_HasNoObstacle() => Assert.Empty(Planner.Plan(House(room => room)).Obstacles);

    [Fact]
    public void Measure_ThatIsNegative_IsRefusedWhereItIsMade()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Wall("w", -In(10)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Wall("w", Distance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Opening("d", OpeningKind.Door, -In(1), In(20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Fixture("f", FixtureKind.Bed).WithDepth(-In(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Box("own", 10).WithAt(-In(1)));
    }

    [Fact]
    public void Box_OnAWallThatIsntThere_IsRefused_NamingIt() =>
        Assert.Contains("\"bed/attic\"", Assert.Throws<ArgumentException>(() => House(room => room).WithBox(new PlacedBox("bed/attic", Box("own", 10)))).Message, StringComparison.Ordinal);

    private static Func<Room, Room> On(Func<Wall, Wall> change) => room => room.WithWalls(room.Walls.Select(wall => wall.Id == "north" ? change(wall) : wall));

    private static Opening Door(string id, decimal left, decimal right) => new Opening(id, OpeningKind.Door, In(left), In(right)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);

    private static DeviceBox Box(string id, decimal? at) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
        .WithAt(at is { } place ? In(place) : null).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor));

    /// <summary>A bedroom that is broken, and a den whose 592 in of wall take five boxes: worked in <see cref="RoughInPlannerTests"/>.</summary>
    private static Dwelling House(Func<Room, Room> change)
    {
        Items<Wall> Walls() => new[] { new Wall("north", In(168)), new Wall("east", In(144)), new Wall("south", In(168)).WithOpenings(new[] { Door("way", 12, 44) }), new Wall("west", In(144)) };
        return new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
        {
            change(new Room("bed", RoomKind.Bedroom, "first").WithWalls(Walls())
                .WithFixtures(new[] { new Fixture("queen", FixtureKind.Bed).WithWall("north").WithLeft(In(54)).WithRight(In(114)).WithDepth(In(80)), new Fixture("screen", FixtureKind.Television).WithWall("west").WithLeft(In(40)).WithRight(In(90)) })),
            new Room("den", RoomKind.FamilyRoom, "first").WithWalls(Walls()), new Room("hall", RoomKind.Hall, "first").WithWalls(Walls()),
        });
    }
}
