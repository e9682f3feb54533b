using System;
using System.Linq;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What no room is like is a finding and an obstacle, and nothing throws, hangs or fills the memory.</summary>
public sealed class HostileRoomTests
{
    private static readonly Distance Huge = Distance.FromTicks(long.MaxValue - 1);
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoughInOptions WithExtras = RoughInOptions.Default.WithExtras(new[] { BoxPurpose.Bedside, BoxPurpose.Television });

    [Fact]
    public void Length_BeyondMeasure_IsAFaultOfThatWall_AndAnObstacle()
    {
        Dwelling house = House(room => room, wall => wall.WithLength(Huge));
        Assert.Contains(new LayoutEvaluator(Rules).Evaluate(house).Findings, finding => finding is { Fault.Kind: LayoutFaultKind.BeyondMeasure, Subject: "bed/north" });
        Assert.Contains(new RoughInPlanner(Rules, WithExtras).Plan(house).Obstacles, obstacle => obstacle.StartsWith("bed/north: ", StringComparison.Ordinal));
    }

    // Some 7500 receptacles would stand along 1000000 in.
    [Fact]
    public void Room_LongerThanAnyHouse_IsAnObstacle_AndTheRestIsPlanned()
    {
        RoomPlan plan = new RoughInPlanner(Rules, WithExtras).Plan(House(room => room, wall => wall.WithLength(In(1000000))));
        Assert.Contains(plan.Obstacles, obstacle => obstacle.StartsWith("bed/north: it is 1000000 in long", StringComparison.Ordinal));
        Assert.Contains(plan.Reasons, box => box.Address == "hall/ceiling");
        Assert.InRange(plan.Reasons.Count, 1, 100);
    }

    [Fact]
    public void Parts_BeyondMeasure_AreJudgedNowhere_AndPlannedNowhere()
    {
        Opening door = new Opening("d", OpeningKind.Door, In(20), In(52)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        Func<Wall, Wall>[] walls =
        [
            wall => wall.WithOpenings(new[] { door.WithCasing(Huge).WithReveal(Huge).WithLeaf(Huge) }),
            wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, In(0), In(60)).WithDepth(Huge).WithOverhang(Huge) }),
        ];
        Func<Room, Room>[] rooms =
        [
            room => room.WithFixtures(new[] { new Fixture("f", FixtureKind.Bed).WithWall("north").WithLeft(In(30)).WithRight(Huge).WithDepth(Huge) }),
            room => room.WithFreestanding(new[] { new Freestanding("i", FreestandingKind.Island).WithOverhang(Huge).WithCorners(new[] { new PlanPoint(-Huge, Huge), new PlanPoint(Huge, Huge), new PlanPoint(Huge, -Huge) }) }),
        ];
        DeviceBox far = new DeviceBox("far", BoxPurpose.General).WithAt(Huge).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor));
        walls = [.. walls, wall => wall.WithLength(Huge).WithStuds(new StudLayout().WithFaces(new[] { In(16), In(32) })).WithBoxes(new[] { far })];
        foreach (Dwelling house in walls.Select(wall => House(room => room, wall)).Concat(rooms.Select(room => House(room, wall => wall))))
        {
            Assert.NotEmpty(new LayoutEvaluator(Rules).Evaluate(house).ToText());
            RoomPlan plan = new RoughInPlanner(Rules, WithExtras).Plan(house);
            Assert.Contains(plan.Reasons, box => box.Address == "hall/ceiling");
            Assert.NotEmpty(Sheets.For(house, Rules).ToMarkdown());
        }
    }

    [Fact]
    public void Fixture_WithItsEndsSwapped_IsAFault_AndTheRestIsPlanned()
    {
        Dwelling house = House(room => room.WithFixtures(new[] { new Fixture("queen", FixtureKind.Bed).WithWall("north").WithLeft(In(114)).WithRight(In(54)) }), wall => wall);
        Assert.Contains(new LayoutEvaluator(Rules).Evaluate(house).Findings, finding => finding is { Fault.Kind: LayoutFaultKind.NoExtent, Subject: "bed/queen" });
        RoomPlan plan = new RoughInPlanner(Rules, WithExtras).Plan(house);
        Assert.Contains(plan.Obstacles, obstacle => obstacle.StartsWith("bed/queen: this fixture runs from 114 in to 54 in", StringComparison.Ordinal));
        Assert.Contains(plan.Reasons, box => box.Address == "hall/ceiling");
    }

    [Fact]
    public void Switch_AtAnOpeningBeyondMeasure_SaysSo()
    {
        Opening door = new Opening("d", OpeningKind.Door, In(20), In(52)).WithHinge(WallEnd.Left).WithCasing(Huge).WithReveal(Huge).WithLeaf(Huge);
        Room room = House(one => one, wall => wall.WithOpenings(new[] { door })).Rooms[0];
        Assert.Contains("larger than anything in a house", Assert.Throws<ArgumentException>(() => SwitchSide.For(room, "north", "d")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void StairLights_OfAFlightBeyondMeasure_SaySo()
    {
        StudPositions studs = StudPositions.Along(new StudLayout().WithSpacing(In(16)), In(200));
        StairFlight flight = new StairFlight("f", "first", "second", int.MaxValue).WithTread(In(10)).WithFirstNosing(In(20));
        foreach (StairFlight odd in new[] { flight, flight.WithRisers(14).WithTread(Huge) })
        {
            Assert.Contains("larger than anything in a house", Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(odd, studs)).Message, StringComparison.Ordinal);
        }
    }

    // Every tread number but the first is beyond the flight's head: one light.
    [Fact]
    public void StairLights_FurtherApartThanTheFlightIsLong_AreOne()
    {
        StudPositions studs = StudPositions.Along(new StudLayout().WithSpacing(In(16)), In(200));
        StairFlight flight = new StairFlight("f", "first", "second", 14).WithTread(In(10)).WithFirstNosing(In(20)).WithLights(new StairLights(int.MaxValue));
        Assert.Single(StairLightPlanner.Plan(flight, studs).Lights);
        Assert.NotEmpty(StairLightPlanner.Plan(flight.WithLights(null), studs, StairLightOptions.Default.WithMostTreads(int.MaxValue)).Lights);
    }

    [Theory]
    [InlineData(360.5)]
    [InlineData(-999999)]
    [InlineData(79228162514264337593543950335d)]
    public void Turn_OfMoreThanAFullOne_IsRefused(double degrees)
    {
        decimal turn = degrees > 1e9 ? decimal.MaxValue : (decimal)degrees;
        Assert.Throws<ArgumentOutOfRangeException>(() => new Wall("w", In(100)).WithTurnDegrees(turn));
    }

    [Fact]
    public void Inspection_OfABoxBeyondMeasure_LeavesItOut()
    {
        DeviceBox odd = new DeviceBox("odd", BoxPurpose.General).WithAt(Huge).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor));
        Dwelling house = House(room => room, wall => wall.WithBoxes(new[] { odd }).WithFinishes(new[] { new Finish("tile", FinishKind.Tile, In(0), In(60)) }));
        Assert.Contains(Output.Houses.Inspected(house).NotListed, box => box.BoxId == "odd");
    }

    /// <summary>A bedroom whose first wall and whose own parts are odd, and a hall that is in order.</summary>
    private static Dwelling House(Func<Room, Room> room, Func<Wall, Wall> north)
    {
        Items<Wall> Walls(Func<Wall, Wall> first) => new[] { first(new Wall("north", In(168))), new Wall("east", In(144)), new Wall("south", In(168)), new Wall("west", In(144)) };
        return new Dwelling("odd").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
        {
            room(new Room("bed", RoomKind.Bedroom, "first").WithWalls(Walls(north))),
            new Room("hall", RoomKind.Hall, "first").WithWalls(Walls(wall => wall)),
        });
    }
}
