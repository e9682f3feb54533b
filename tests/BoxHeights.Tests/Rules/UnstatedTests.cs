using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What nobody states is judged as if it were stated anywhere within what is built (common practice, no source): held on both sides against the same thing stated at its end.</summary>
public class UnstatedTests
{
    private static readonly RoomAnchor Tub = new() { Fixtures = new[] { FixtureKind.Tub } };

    // A zone up to 30 in above the rim of a tub, which is at most 24 in above the floor: from 54 in on a box is surely outside.
    [Theory]
    [InlineData("54", 1, Verdict.Passes)]
    [InlineData("54", -1, Verdict.Unknown)]
    [InlineData("30", -1, Verdict.Fails)]
    public void Rim_Unstated_IsFromTheFloorTo24Inches(string center, long ticks, Verdict expected)
    {
        Distance height = In(center) + Distance.FromTicks(ticks);
        Assert.Equal(expected, Said(null));
        Assert.Equal(expected, Said(In("24")) is var high && high == Said(Distance.Zero) ? high : Verdict.Unknown);

        Verdict Said(Distance? rim)
        {
            Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", In("0"), In("60"), In("30"));
            Zone row = new("own", "outside", Severity.Violation, new("House rules"), Tub, Distance.Zero) { Top = Level.Parse("30 in above rim") };
            return Of(row, new SquareRoom { Fixtures = [rim is { } stated ? tub.WithRim(new Level(stated, Datum.FinishedFloor)) : tub], North = [SquareRoom.Box("switch", "switch", In("30"), height)] });
        }
    }

    // A receptacle overhead 36 in beyond a tub: one that stands out 5 ft at the most ends its zone at 96 in.
    [Theory]
    [InlineData("96", 1, Verdict.Passes)]
    [InlineData("96", -1, Verdict.Unknown)]
    public void DepthOfAThing_Unstated_IsUpToFiveFeet(string into, long ticks, Verdict expected)
    {
        Zone row = new("own", "outside", Severity.Violation, new("House rules"), Tub, In("36"));
        DeviceBox box = SquareRoom.Box("single-receptacle", "general", null, In("0")).WithHeight(null).WithPlan(new PlanPoint(In("30"), In(into) + Distance.FromTicks(ticks)));
        Fixture tub = new Fixture("tub", FixtureKind.Tub).WithWall("north").WithLeft(In("0")).WithRight(In("60"));
        Assert.Equal(expected, Of(row, new SquareRoom { Deep = Distance.FromFeet(20), Fixtures = [tub], Overhead = [box] }));
        Assert.Equal(ticks > 0 ? Verdict.Passes : Verdict.Fails, Of(row, new SquareRoom { Deep = Distance.FromFeet(20), Fixtures = [tub.WithDepth(In("60"))], Overhead = [box] }));
    }

    // A cavity of 3-1/2 in behind board of 1-1/4 in at the most: a box of 4-3/4 in may fit, so that nothing is said of it; a tick more doesn't.
    [Theory]
    [InlineData(0, null)]
    [InlineData(1, Verdict.Fails)]
    public void Board_Unstated_IsUpToTwoLayers(long ticks, Verdict? expected)
    {
        OneBox one = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(In("3-1/2")) };
        BoxSize size = new(In("2"), In("4"), In("4-3/4") + Distance.FromTicks(ticks));
        Assert.Equal(expected, (one with { Box = one.Box.WithSize(size).WithHeight(BoxHeight.ToCenter(In("16"), Datum.Subfloor)) }).Check()?.Verdict);
    }

    // A cabinet stands on the floor line over a toe kick of 6 in, and hangs a tick higher: then the wall behind it wants its receptacle.
    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void ToeKick_IsUpTo6Inches(long ticks, bool stands)
    {
        Covering cabinet = new("pantry", CoveringKind.TallCabinet, In("0"), In("100"));
        string[] stretches = Stretches(cabinet.WithBottom(new Level(In("6") + Distance.FromTicks(ticks), Datum.FinishedFloor)));
        Assert.Equal(Stretches(stands ? cabinet : null), stretches);
        Assert.NotEqual(Stretches(stands ? null : cabinet), stretches);

        string[] Stretches(Covering? covering)
        {
            Room room = new SquareRoom { Kind = RoomKind.Bedroom }.Build();
            Wall north = room.Walls[0].WithCoverings(covering is null ? default : new[] { covering });
            Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room.WithWalls(new[] { north, room.Walls[1], room.Walls[2], room.Walls[3] }) });
            LayoutEvaluator evaluator = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
            return evaluator.Evaluate(house).Findings.SelectMany(finding => finding.Stretches).Select(stretch => stretch.ToString()).ToArray();
        }
    }

    private static Verdict Of(Rule row, SquareRoom room)
    {
        Finding[] found = new LayoutEvaluator(new RuleSet([row])).Evaluate(room.House()).Findings.ToArray();
        Assert.True(found.Length <= 1, string.Join("\n", found.Select(finding => finding.Message)));
        return found.Length == 0 ? Verdict.Passes : found[0].Verdict;
    }
}
