using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 210.52(G)(1): one in each vehicle bay, so that neither one on the post between two nor two in one bay do for both (common reading since 2017).</summary>
public sealed class GarageBayTests
{
    private static readonly LayoutEvaluator Bays = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "garage-bay"));

    // Doors of 108 in from 20 and from 136 in, seen from inside a garage 264 in wide: their middles are 74 and 190 in, the line between the bays at 132 in,
    // which is 132 in from the north wall's left end too.
    [Theory]
    [InlineData("60 200", null, 0)]
    [InlineData("140 200", null, 1)]
    [InlineData("132 200", null, 0)]
    [InlineData("132", null, 1)]
    [InlineData("132 132", null, 0)]
    [InlineData("60", "100", 1)]
    [InlineData("200", "100", 0)]
    public void Bays_WithReceptaclesOnTheNorthAndWestWalls_AreServedWhereThoseAre(string north, string? west, int lacking)
    {
        Evaluation evaluation = Bays.Evaluate(Garage(north.Split(' ', StringSplitOptions.RemoveEmptyEntries), west).House());
        Assert.Equal(lacking, evaluation.Findings.Count);
        Assert.True(evaluation.Findings.All(finding => finding.Verdict == Verdict.Fails));
    }

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    public void Receptacle_OneTickPastTheLine_IsInTheNextBay(int ticks, int lacking)
    {
        // Counted from the north wall's left end, which is the right end of the doors' wall.
        SquareRoom garage = Garage(["200"], null);
        DeviceBox other = garage.North[0].WithId("other").WithAt(In("132") + Distance.FromTicks(ticks));
        Assert.Equal(lacking, Bays.Evaluate((garage with { North = [.. garage.North, other] }).House()).Findings.Count);
    }

    [Fact]
    public void BayWithoutOne_IsMendedThere()
    {
        Dwelling house = Garage(["140", "200"], null).House();
        Finding finding = Assert.Single(Bays.Evaluate(house).Findings);
        Assert.Contains("1 receptacle of 2, one to a bay", finding.Message, StringComparison.Ordinal);
        Assert.True(Bays.Evaluate(Assert.IsType<AddBox>(Assert.Single(finding.Remedies)).ApplyTo(house)).IsClean);
    }

    [Fact]
    public void ReceptacleWithoutAPlace_MayBeInTheOtherBay()
    {
        Dwelling house = Garage(["200", "201"], null).House().WithBoxes(box => box.Id == "n1" ? box.WithAt(null) : box);
        Finding finding = Assert.Single(Bays.Evaluate(house).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.Along), (finding.Verdict, finding.Needs));
    }

    // Which bay it is in is known, only not whether it counts: it can't do for the other one.
    [Theory]
    [InlineData("201", Verdict.Fails)]
    [InlineData("60", Verdict.Unknown)]
    public void ReceptacleThatMayBeTooHigh_MayServeItsOwnBayAlone(string at, Verdict expected)
    {
        // A tape says 5 ft 6 in, give or take 1/8 in.
        MeasuredHeight tape = new(BoxHeight.ToCenter(In("66"), Datum.FinishedFloor));
        Dwelling house = Garage(["200", at], null).House().WithBoxes(box => box.Id == "n1" ? box.WithMeasured(tape) : box);
        Finding? finding = Bays.Evaluate(house).Findings.SingleOrDefault();
        Assert.Equal(expected, finding?.Verdict);
    }

    [Fact]
    public void Planned_EachBayGetsOne()
    {
        Dwelling bare = Garage([], null).House();
        RoomPlan plan = new RoughInPlanner(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "garage-bay")).Plan(bare, bare.Rooms[0].Id);
        Assert.Equal(2, plan.Reasons.Count(reason => reason.RuleId == "garage-bay"));
        Assert.Empty(plan.Obstacles);
        Assert.True(Bays.Evaluate(plan.Dwelling).IsClean);
    }

    [Fact]
    public void DoorsInTwoWalls_AreCountedOnly()
    {
        SquareRoom garage = Garage(["140", "200"], null);
        Dwelling house = (garage with { SouthOpenings = [garage.SouthOpenings[0]], NorthOpenings = [new("back", new OpeningKind("overhead-door"), In("20"), In("128"))] }).House();
        Assert.True(Bays.Evaluate(house).IsClean);
    }

    private static SquareRoom Garage(string[] north, string? west) => new()
    {
        Kind = RoomKind.Garage,
        Wide = In("264"),
        SouthOpenings = [new("left", new OpeningKind("garage-door"), In("20"), In("128")), new("right", new OpeningKind("garage-door"), In("136"), In("244"))],
        North = north.Select((at, i) => Box("n" + i, at)).ToArray(),
        West = west is null ? [] : [Box("w", west)],
        Overhead = [SquareRoom.Box("duplex-receptacle", "garage", null, In("0")).WithId("opener").WithHeight(null).WithPlan(new PlanPoint(In("100"), In("60"))).WithDedicated("door opener")],
    };

    private static DeviceBox Box(string id, string at) => SquareRoom.Box("duplex-receptacle", "garage", In(at), In("48")).WithId(id);
}
