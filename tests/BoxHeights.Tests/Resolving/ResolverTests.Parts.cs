using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>Parts of a wall that aren't on it, or in each other's way.</content>
public sealed partial class ResolverTests
{
    [Fact]
    public void OutsideItsWall_CounterBeyondItsEnd_IsNamed() => AssertFinds(House(wall => wall.Add(Counter("long", "100", "150"))), LayoutFaultKind.OutsideItsWall, "room/wall/long", "150 in", false);

    [Fact]
    public void OutsideItsWall_WallThatIsOpen_IsNamedAndNotJudged()
    {
        Dwelling dwelling = House(_ => { });
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("side", CaseFile.Inches("144")) { Open = true, Boxes = new[] { Box("nowhere", "20") } }))));
        Evaluation evaluation = AssertFinds(dwelling, LayoutFaultKind.OutsideItsWall, "nowhere", "no wall");
        Assert.DoesNotContain(evaluation.Checks, check => check.Subject == "nowhere");
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void OutsideItsWall_FixtureBeyondTheEnd_IsNamedWithItsWall(int ticks, bool isFault)
    {
        Dwelling dwelling = House(_ => { });
        Distance length = dwelling.Rooms[0].Walls[0].Length;
        Fixture tub = new Fixture("tub", FixtureKind.Tub).WithWall("wall").WithLeft(length - CaseFile.Inches("60")).WithRight(length + Distance.FromTicks(ticks));
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { tub })));
        if (!isFault)
        {
            Assert.DoesNotContain(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
            return;
        }

        AssertFinds(dwelling, LayoutFaultKind.OutsideItsWall, "room/tub", "along its wall \"wall\", but the wall is 144 in long", false);
        tub = tub.WithLeft(CaseFile.Inches("150")).WithRight(null);
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { tub }))), LayoutFaultKind.OutsideItsWall, "room/tub", "this fixture begins at 150 in along its wall \"wall\"", false);
    }

    [Fact]
    public void NoExtent_CounterFromRightToLeft_IsNamed() => AssertFinds(House(wall => wall.Add(Counter("thin", "40", "40"))), LayoutFaultKind.NoExtent, "room/wall/thin", "40 in", false);

    [Fact]
    public void OverlappingOpenings_BothWays_IsNamed()
    {
        Opening door = new("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("96")) { Head = new Level(CaseFile.Inches("82"), Datum.Subfloor) };
        Opening window = new("window", OpeningKind.Window, CaseFile.Inches("90"), CaseFile.Inches("110"));
        Opening Sill(string sill) => window.WithSill(new Level(CaseFile.Inches(sill), Datum.Subfloor));
        AssertFinds(House(wall => wall.Add(door).Add(Sill("40"))), LayoutFaultKind.OverlappingOpenings, "room/wall/door", "\"window\"", false);
        Assert.DoesNotContain(Evaluator.Evaluate(House(wall => wall.Add(door).Add(Sill("82")))).Findings, finding => finding.Fault is not null);
        Assert.DoesNotContain(Evaluator.Evaluate(House(wall => wall.Add(door).Add(Sill("40").WithLeft(CaseFile.Inches("96"))))).Findings, finding => finding.Fault is not null);
    }

    // What is wrong with a counter leaves open what it would have changed: reach is unknown on that wall, other rules go on.
    [Fact]
    public void Findings_BrokenCounter_LeavesOnlyRulesThatReadItOpen()
    {
        Evaluation evaluation = Evaluator.Evaluate(House(wall => wall.Add(Counter("thin", "40", "40"))));
        Finding reach = evaluation.For("high").Single(finding => finding.RuleId == "ada-reach");
        Assert.Equal(Verdict.Unknown, reach.Verdict);
        Assert.Equal(MissingFacts.BrokenPart, reach.Needs);
        Assert.Contains(evaluation.Checks, check => check.RuleId == "general-height" && check.Verdict == Verdict.Passes);
    }

    // Ten thousand feet are more than any house has.
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void BeyondMeasure_TenThousandFeet_AreTheMost(int ticks, bool isFault)
    {
        Distance most = Distance.FromFeet(10_000) + Distance.FromTicks(ticks);
        Dwelling dwelling = Square(room => room, "120");
        foreach (Dwelling odd in new[]
        {
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(new[] { new Wall("long", most) }))),
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithSubfloorOffset(most))),
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, CaseFile.Inches("60")).WithDepth(most) }))))),
        })
        {
            Assert.Equal(isFault, Evaluator.Evaluate(odd).Findings.Any(finding => finding.Fault?.Kind == LayoutFaultKind.BeyondMeasure));
        }
    }
}
