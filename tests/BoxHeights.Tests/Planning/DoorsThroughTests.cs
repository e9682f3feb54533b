using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Openings as the room behind their wall describes them.</summary>
public sealed class DoorsThroughTests
{
    // Two rooms back to back along a wall of 200 in: an opening from 20 to 52 in is from 148 to 180 in behind.
    [Theory]
    [InlineData(0, "through")]
    [InlineData(1, "before")]
    public void OtherSide_OfOpeningsThatTouchIt_IsTheOneThatOverlaps(int ticks, string expected)
    {
        Distance over = Distance.FromTicks(ticks);
        Opening Cased(string id, int left, Distance right) => new(id, OpeningKind.Cased, Distance.FromInches(left), right);
        Opening way = Cased("way", 20, Distance.FromInches(52));
        Room behind = RoomOf("behind", Cased("before", 116, Distance.FromInches(148) + over), Cased("through", 150, Distance.FromInches(178)), Cased("after", 180, Distance.FromInches(190)));
        Assert.Equal(expected, OtherSide(way, behind)?.Opening.Id);

        // What is described from one side alone is there on the other.
        Assert.Equal("way", OtherSide(way, behind.WithWalls(behind.Walls.Select(wall => wall.WithOpenings(new[] { Cased("before", 116, Distance.FromInches(148)), Cased("after", 180, Distance.FromInches(190)) }))))?.Opening.Id);
    }

    [Fact]
    public void OtherSide_OfAWallThatNothingIsBehind_IsNone() =>
        Assert.Null(OtherSide(new("way", OpeningKind.Cased, Distance.FromInches(20), Distance.FromInches(52)), RoomOf("elsewhere")));

    private static RoomOpening? OtherSide(Opening way, Room behind)
    {
        Room room = RoomOf("front", way);
        room = room.WithWalls(new[] { room.Walls[0].WithBackOf(behind.Id == "behind" ? "behind/wall" : null) });
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room, behind });
        return new DoorsThrough(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).State).OtherSide(new(room, room.Walls[0], way));
    }

    private static Room RoomOf(string id, params Opening[] openings) =>
        new Room(id, RoomKind.Bedroom, "ground").WithWalls(new[] { new Wall("wall", Distance.FromInches(200)).WithOpenings(openings) });
}
