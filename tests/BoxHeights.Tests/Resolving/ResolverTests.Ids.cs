using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>Ids that are there twice, and references to what isn't there.</content>
public sealed partial class ResolverTests
{
    [Fact]
    public void DuplicateId_TwoBoxes_IsNamed() =>
        AssertFinds(House(wall => wall.Add(Box("twin", "40")).Add(Box("twin", "60"))), LayoutFaultKind.DuplicateId, "twin", "id");

    [Fact]
    public void DuplicateId_TwoPartsOfAWall_IsNamed() =>
        AssertFinds(House(wall => wall.Add(Counter("same", "10", "20")).Add(Counter("same", "30", "40"))), LayoutFaultKind.DuplicateId, "room/wall/same", "counter", false);

    [Fact]
    public void DuplicateId_RoomAndStorey_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        AssertFinds(dwelling.WithStoreys(dwelling.Storeys.With(new Storey("room"))), LayoutFaultKind.DuplicateId, "room", "id");
    }

    // Its walls are there twice with it: what is wrong is the room, and no two walls of one.
    [Fact]
    public void DuplicateId_TwoRooms_SaysOfTheirWallsThatTheRoomsAreCalledAlike()
    {
        Dwelling dwelling = House(_ => { });
        dwelling = dwelling.WithRooms(dwelling.Rooms.With(dwelling.Rooms[0]));
        Finding finding = Assert.Single(Evaluator.Evaluate(dwelling).Findings, finding => finding.Subject == "room/wall" && finding.Fault?.Kind == LayoutFaultKind.DuplicateId);
        Assert.Contains("two rooms or faces called room have a wall wall", finding.Message, System.StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownReference_NoSuchStorey_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithStorey("attic"))), LayoutFaultKind.UnknownReference, "room", "\"attic\"");
    }

    [Fact]
    public void UnknownReference_NoSuchWallBehind_IsNamed() =>
        AssertFinds(House(wall => wall.With(one => one.WithBackOf("bath/east"))), LayoutFaultKind.UnknownReference, "room/wall", "\"bath/east\"");

    [Fact]
    public void UnknownReference_FixtureOnNoWall_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        Fixture washer = new("washer", FixtureKind.Washer) { Wall = "west" };
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { washer }))), LayoutFaultKind.UnknownReference, "room/washer", "\"west\"");
    }

    [Fact]
    public void UnknownReference_FlightToNoStorey_IsNamed() =>
        AssertFinds(House(_ => { }).WithFlights(new[] { new StairFlight("stairs", "ground", "attic", 14) }), LayoutFaultKind.UnknownReference, "stairs", "\"attic\"");

    [Theory]
    [InlineData("ceiling")]
    [InlineData("floor")]
    public void DuplicateId_WallCalledLikeTheCeiling_IsNamed(string id)
    {
        Dwelling dwelling = Square(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "n" ? wall.WithId(id) : wall)), "120");
        Finding finding = Assert.Single(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
        Assert.Equal((LayoutFaultKind.DuplicateId, "room/" + id), (finding.Fault!.Kind, finding.Subject));
    }

    [Fact]
    public void DuplicateId_BoxesOnTwoWalls_NamesBothPlaces()
    {
        Dwelling dwelling = House(wall => wall.Add(Box("twin", "40")));
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("side", CaseFile.Inches("144")).WithBoxes(new[] { Box("twin", "60") })))));
        Finding fault = Assert.Single(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
        Assert.Equal("twin (room/side): a box on room/wall and a box on room/side have the same id", fault.Message);
        Dwelling parts = House(wall => wall.Add(Counter("same", "10", "20")).Add(Counter("same", "30", "40")));
        Assert.Contains(Evaluator.Evaluate(parts).Findings, finding => finding.Message == "room/wall/same: the counter from 10 in and the counter from 30 in have the same id");
    }
}
