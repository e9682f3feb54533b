using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Where cabinets stand under a counter no knees fit. 2010 ADA 308.2.2 and 308.3.2: over 25 in deep only a forward reach with knee space is left, over 24 in none from the side.</summary>
public sealed class BaseCabinetTests
{
    private static readonly LayoutEvaluator Ada = new(new RuleSet([RuleSets.Ada2010.Row("ada-reach")!]));

    // A counter 25 in deep and 34 in high: forward 44 in, from the side none at that depth. Its left half has cabinets under it.
    [Theory]
    [InlineData(20, true, Verdict.Fails)]
    [InlineData(20, false, Verdict.Unknown)]
    [InlineData(80, true, Verdict.Unknown)]
    public void Counter_OverCabinets_IsReachedFromTheSideAlone(int at, bool cabinets, Verdict expected) => Assert.Equal(expected, Judged(At(at, cabinets, null)));

    // Stated knee space is taken as it is stated.
    [Fact]
    public void Counter_WhoseKneeSpaceIsStated_IsTakenAtItsWord() =>
        Assert.Equal(Judged(At(20, false, 25)), Judged(At(20, true, 25)));

    // Cabinets without a counter are reached over, too; how deep they are is nowhere said. What reaches the ceiling hides the wall instead.
    [Fact]
    public void Cabinets_WithoutACounter_AreReachedOver()
    {
        Dwelling house = At(20, true, null);
        Dwelling Bare(bool top) => house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCounters(Items<Counter>.None)
            .WithCoverings(wall.Coverings.Select(cabinet => top ? cabinet : cabinet.WithTop(null)))))));
        Assert.Equal(Verdict.Unknown, Judged(Bare(true)));
        Assert.Null(Judged(Bare(false)));
    }

    private static Verdict? Judged(Dwelling house) => Ada.Evaluate(house).Findings.SingleOrDefault()?.Verdict;

    private static Dwelling At(int at, bool cabinets, int? knees)
    {
        Counter counter = new Counter("top", CounterKind.Kitchen, In(0), In(100)).WithDepth(In(25)).WithTop(new Level(In(34), Datum.FinishedFloor)).WithKneeSpace(knees is { } deep ? In(deep) : null);
        Covering cabinet = new Covering("base", CoveringKind.BaseCabinet, In(0), In(50)).WithTop(new Level(In(33), Datum.FinishedFloor));
        SquareRoom room = new() { Kind = RoomKind.Kitchen, NorthCounters = [counter], North = [SquareRoom.Box("duplex-receptacle", "counter", In(at), In(42))] };
        Dwelling house = room.House();
        return house.WithRooms(house.Rooms.Select(one => one.WithWalls(one.Walls.Select(wall => wall.Id == "north" && cabinets ? wall.WithCoverings(new[] { cabinet }) : wall))));
    }
}
