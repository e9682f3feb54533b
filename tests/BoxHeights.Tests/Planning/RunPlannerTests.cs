using System;
using System.Linq;
using Xunit;
using static BoxHeights.Tests.Cases.CaseFile;

namespace BoxHeights.Tests.Planning;

/// <summary>Single plans, where what is expected can be seen by eye; limits come from a case file.</summary>
public sealed class RunPlannerTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    public static TheoryData<string, string> Limits()
    {
        TheoryData<string, string> data = [];
        foreach (var row in Table("run-limits.csv"))
        {
            data.Add(row["limit"], row["reach"]);
        }

        return data;
    }

    // Common practice, no source: a sixth of the reach, 6 in at most.
    [Fact]
    public void Slack_OfThePublishedCustom_LeavesTheReachOfTheCases()
    {
        BoxHeights.Rules.RoomForBoxes custom = (BoxHeights.Rules.RoomForBoxes)RuleSets.RoughInPractice.Row("room-for-boxes");
        Assert.All(Table("run-limits.csv").Where(row => row["source"].StartsWith("NEC", StringComparison.Ordinal)), row => Assert.Equal(Inches(row["reach"]), RunPlannerOptions.WithSlackFor(Inches(row["limit"]), custom).Reach));
    }

    /// <summary>One box in the middle: a run of twice the limit, a tick less and two ticks more (one tick more puts the middle off the grid: see below).</summary>
    [Theory]
    [MemberData(nameof(Limits))]
    public void Plan_RunOfTwiceTheLimit_OneBoxUpToTheTick(string limitText, string reachText)
    {
        Distance limit = Inches(limitText), reach = Inches(reachText);
        RunPlannerOptions options = new RunPlannerOptions(limit) with { Reach = reach };
        foreach (Distance half in new[] { limit - Tick, limit, limit + Tick })
        {
            RunPlan plan = new RunPlanner(options).Plan(Run(half + half, half));
            Assert.Equal(half <= limit, plan.Obstacles.Count == 0);
            Assert.False(plan.HasSlack());
            Assert.Equal(half <= limit ? 0 : 2, plan.Obstacles.Count);
        }

        foreach (Distance half in new[] { reach - Tick, reach, reach + Tick })
        {
            RunPlan plan = new RunPlanner(options).Plan(Run(half + half, half));
            Assert.Equal(half <= reach, plan.HasSlack());
            Assert.Empty(plan.Obstacles);
        }
    }

    /// <summary>Between two boxes that stay: a gap of twice the limit needs no third, one tick more does.</summary>
    [Theory]
    [MemberData(nameof(Limits))]
    public void Plan_CodeMinimumBetweenTwoFixed_ThirdFromOneTickMore(string limitText, string reachText)
    {
        Distance limit = Inches(limitText);
        RunPlanner planner = new(new RunPlannerOptions(limit) with { Reach = Inches(reachText), CodeMinimum = true });
        foreach (int more in new[] { -1, 0, 1 })
        {
            Distance gap = limit + limit + Distance.FromTicks(more);
            RunPlan plan = planner.Plan(Run(gap, limit) with { Fixed = new[] { Distance.Zero, gap } });
            Assert.Equal(more > 0 ? 3 : 2, plan.Positions.Count);
            Assert.Empty(plan.Obstacles);
            Assert.Equal(more > 0 ? [PositionReason.Stays, PositionReason.Coverage, PositionReason.Stays] : [PositionReason.Stays, PositionReason.Stays], plan.Positions.Select(one => one.Reason));
        }
    }

    [Fact]
    public void Plan_PlannedWithSlack_TakesABoxMoreThanTheCodeMinimum()
    {
        // 12 ft: one box in the middle meets 6 ft exactly, two have slack.
        RunToPlan run = Run(Inches("144"), Inches("36"), Inches("72"), Inches("108"));
        Assert.Equal([Inches("36"), Inches("108")], At(new RunPlanner(RunAims.Walls).Plan(run)));
        RunPlan least = new RunPlanner(RunAims.Walls with { CodeMinimum = true }).Plan(run);
        Assert.Equal([Inches("72")], At(least));
        Assert.False(least.HasSlack());
        Assert.Equal([new DistanceRange(Distance.Zero, Inches("6")), new DistanceRange(Inches("138"), Inches("144"))], least.WithoutSlack);
    }

    [Fact]
    public void Plan_HoleTooWideForSlack_GoesUpToTheLimitThereAndKeepsSlackElsewhere()
    {
        // Nothing can be set between 100 and 236 in: 136 in, more than 132.
        RunToPlan run = Run(Inches("336"), Many("40 60 90 98 100 236 240 280 300"));
        RunPlan plan = new RunPlanner(RunAims.Walls with { FaceLength = null }).Plan(run);
        Assert.Empty(plan.Obstacles);
        DistanceRange tight = Assert.Single(plan.WithoutSlack);
        Assert.True(tight.From >= Inches("100") && tight.To <= Inches("236"));
        Assert.True(plan.LargestGap(run) <= Inches("144"));
    }

    [Fact]
    public void Plan_HoleTooWideEvenForTheLimit_NamesTheStretchAndPlansTheRest()
    {
        RunToPlan run = Run(Inches("400"), Many("30 60 100 300 340")) with { Faces = new[] { Face("0", "160"), Face("160", "170"), Face("170", "260"), Face("260", "400") } };
        RunPlan plan = new RunPlanner(RunAims.Walls with { FaceLength = null }).Plan(run);
        RunObstacle obstacle = Assert.Single(plan.Obstacles);
        Assert.Equal(new DistanceRange(Inches("172"), Inches("228")), obstacle.Uncovered);
        Assert.Equal([Inches("30"), Inches("100"), Inches("300"), Inches("340")], At(plan));
    }

    [Fact]
    public void Plan_NoPlaces_IsUncoveredFromEndToEnd()
    {
        RunToPlan run = Run(Inches("90")) with { Faces = new[] { Face("0", "90") } };
        RunPlan plan = new RunPlanner(RunAims.Walls).Plan(run);
        Assert.Empty(plan.Positions);
        Assert.Equal(new DistanceRange(Distance.Zero, Inches("90")), Assert.Single(plan.Obstacles).Uncovered);
        Assert.Equal([Inches("90")], plan.Gaps(run));
        Assert.Equal(Inches("180"), plan.LargestGap(run));
        Assert.False(plan.HasSlack());
    }

    [Fact]
    public void Plan_FaceOfSixFeet_GetsABoxUpToTheTick()
    {
        // Face b is covered from a's box at 60; it is 6 ft long, or a tick less.
        foreach (int more in new[] { -1, 0, 1 })
        {
            Distance end = Inches("52") + Inches("72") + Distance.FromTicks(more);
            RunToPlan run = Run(end, Inches("60"), Inches("110")) with { Fixed = new[] { Inches("51") }, Faces = new[] { Face("0", "52"), new DistanceRange(Inches("52"), end) } };
            RunPlanner planner = new(RunAims.Walls with { Limit = Inches("90"), Reach = Inches("80") });
            RunPlan plan = planner.Plan(run);
            Assert.Equal(more < 0 ? 1 : 2, plan.Positions.Count);
            Assert.Equal(more < 0 ? PositionReason.Stays : PositionReason.Face, plan.Positions[^1].Reason);
        }
    }

    [Fact]
    public void Plan_Wish_ComesBeforeFewest()
    {
        RunToPlan run = Run(Inches("100"), Inches("20"), Inches("50"), Inches("80")) with { Wishes = new[] { new DistanceRange(Inches("75"), Inches("90")), new DistanceRange(Inches("1"), Inches("2")) } };
        RunPlan plan = new RunPlanner(RunAims.Walls with { FaceLength = null }).Plan(run);
        Assert.Equal([Inches("20"), Inches("80")], At(plan));
        Assert.Equal([PositionReason.Coverage, PositionReason.Wished], plan.Positions.Select(one => one.Reason));
        Assert.Equal([Inches("50")], At(new RunPlanner(RunAims.Walls with { CodeMinimum = true }).Plan(run)));
    }

    [Fact]
    public void Plan_BehindTheBed_OnlyWhereNothingElseCovers()
    {
        // 11 ft with a bed in the middle: one box behind it would do, two beside it are better.
        RunCandidate behind = new(Inches("66"), CandidateRank.LastResort);
        RunCandidate[] beside = [new(Inches("30")), behind, new(Inches("102"))];
        Assert.Equal([Inches("30"), Inches("102")], At(Planned(beside)));
        Assert.Equal([Inches("66")], At(Planned([beside[1]])));
        Assert.Equal([Inches("66")], At(new RunPlanner(RunAims.Walls with { CodeMinimum = true }).Plan(Run(Inches("132")) with { Candidates = beside })));

        static RunPlan Planned(RunCandidate[] candidates) => new RunPlanner(RunAims.Walls).Plan(Run(Inches("132")) with { Candidates = candidates });
    }

    [Fact]
    public void Plan_OnABlock_OnlyWhereItSavesABox()
    {
        RunPlanner planner = new(RunAims.Walls with { FaceLength = null });
        RunCandidate block = new(Inches("66"), CandidateRank.Fair);
        Assert.Equal([Inches("60")], At(planner.Plan(Run(Inches("120")) with { Candidates = new[] { new(Inches("60")), block } })));
        Assert.Equal([Inches("66")], At(planner.Plan(Run(Inches("132")) with { Candidates = new[] { new(Inches("60")), block, new(Inches("90")) } })));
    }

    [Fact]
    public void Plan_Counter_IsTheSamePlannerWithItsOwnReach()
    {
        // 8 ft of counter, a place every inch, planned for 20 in: three boxes, evenly 16 and 32 in.
        RunToPlan run = Run(Inches("96"), [.. Enumerable.Range(1, 95).Select(inch => Distance.FromInches(inch))]);
        RunPlan plan = new RunPlanner(RunPlannerOptions.WithSlackFor(Inches("24"), RunAims.Custom)).Plan(run);
        Assert.Equal([Inches("16"), Inches("48"), Inches("80")], At(plan));
        Assert.Equal(Inches("32"), plan.LargestGap(run));
        Assert.True(plan.HasSlack());

        // At the limit itself, two: 24 and 48 in.
        RunPlan least = new RunPlanner(RunPlannerOptions.WithSlackFor(Inches("24"), RunAims.Custom) with { CodeMinimum = true }).Plan(Run(Inches("96"), Inches("24"), Inches("48"), Inches("72")));
        Assert.Equal([Inches("24"), Inches("72")], At(least));
    }

    [Fact]
    public void Plan_ManyLongGaps_SumOfSquaresBeyondALong()
    {
        // 600 places 12 ft apart in a line, each needed: their squares add up to more than 2^63 ticks.
        Distance[] places = [.. Enumerable.Range(0, 600).Select(i => Distance.FromInches(144m * i) + Inches("72"))];
        Distance[] extra = [.. places.Select(at => at + Inches("1"))];
        RunPlan plan = new RunPlanner(RunAims.Walls with { CodeMinimum = true }).Plan(Run(Distance.FromInches(144m * 600), [.. places, .. extra]));
        Assert.Equal(places, At(plan));
    }

    [Fact]
    public void Plan_RunAcrossTheWholeScale_IsRefusedOrPlannedWithoutOverflow()
    {
        RunPlanner planner = new(RunAims.Walls);
        Assert.Throws<OverflowException>(() => planner.Plan(new(new(Distance.MinValue, Distance.MaxValue))));
        Distance far = Distance.FromTicks(long.MaxValue);
        Distance near = far - Inches("50");
        Assert.Equal([far - Inches("25")], At(planner.Plan(new RunToPlan(new(near, far)) with { Candidates = new[] { new RunCandidate(far - Inches("25")) } })));
        Distance huge = Distance.FromTicks(1L << 61);
        RunPlan plan = planner.Plan(new RunToPlan(new(Distance.Zero, huge)) with { Candidates = new[] { new RunCandidate(Distance.FromTicks(5)), new RunCandidate(huge) }, Wishes = new[] { new DistanceRange(Distance.MinValue, Distance.MaxValue) } });
        Assert.Equal(2, plan.Positions.Count);
        Assert.Single(plan.Obstacles);
    }

    [Fact]
    public void Plan_PlaceOffItsRun_Throws()
    {
        RunPlanner planner = new(RunAims.Walls);
        RunToPlan run = Run(Inches("100"), Inches("50"));
        Assert.Throws<ArgumentException>(() => planner.Plan(run with { Fixed = new[] { Inches("101") } }));
        Assert.Throws<ArgumentException>(() => planner.Plan(run with { Candidates = new[] { new RunCandidate(-Tick) } }));
    }

    private static RunToPlan Run(Distance length, params Distance[] candidates) =>
        new RunToPlan(new(Distance.Zero, length)) with { Candidates = new(candidates.Select(at => new RunCandidate(at))) };

    private static Distance[] Many(string inches) => [.. inches.Split(' ').Select(Inches)];

    private static DistanceRange Face(string from, string to) => new(Inches(from), Inches(to));

    private static Distance[] At(RunPlan plan) => [.. plan.Positions.Select(one => one.At)];
}
