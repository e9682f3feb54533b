using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Random rooms of every kind, planned and then judged by the same rules that anybody's boxes are.</summary>
public sealed class PlannedRoomsTests
{
    private static readonly RuleSet America = United(NecEdition.Nec2023);
    private static readonly Items<BoxPurpose> Extras = new[] { BoxPurpose.Bedside, BoxPurpose.Television, BoxPurpose.Sofa, BoxPurpose.Office };

    private static readonly Dictionary<string, RuleSet> Reach = new(StringComparer.Ordinal)
    {
        ["ada-reach"] = RuleSets.Ada2010,
        ["fair-housing-reach"] = RuleSets.FairHousing,
        ["type-a-reach"] = RuleSets.TypeA2009,
        ["type-b-reach"] = RuleSets.TypeB2009,
        ["california-reach"] = RuleSets.California,
    };

    private static RuleSet United(NecEdition edition) => RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice;

    /// <summary>No violation, nothing unknown, no advice, no obstacle; the same plan each time; and a plan of the plan adds nothing.</summary>
    private static void AssertPlansClean(RuleSet rules, int rooms, Func<int, Dwelling> make)
    {
        RoughInPlanner planner = new(rules, RoughInOptions.Default.WithExtras(Extras));
        LayoutEvaluator evaluator = new(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            string what = "seed " + seed + ", " + RandomRooms.KindOf(seed) + ": ";
            RoomPlan plan = planner.Plan(make(seed));
            Finding[] left = evaluator.Evaluate(plan.Dwelling).Findings.Where(finding => finding.Severity > Severity.Note || finding.Verdict == Verdict.Unknown).ToArray();
            Assert.True(left.Length == 0, what + string.Join("\n", left.Select(finding => finding.RuleId + ": " + finding.Message)));
            Assert.True(plan.Obstacles.Count == 0, what + plan.ToText());
            Assert.Equal(plan.Reasons.Count, plan.Dwelling.PlacedBoxes().Count);
            if (seed % 4 == 0)
            {
                Assert.True(planner.Plan(make(seed)).Dwelling.Equals(plan.Dwelling), what + "another plan the second time");
                Assert.True(planner.Plan(plan.Dwelling).Reasons.Count == 0, what + "a plan of the plan adds " + planner.Plan(plan.Dwelling));
            }
        }).Check(Tries.Config(rooms));
    }

    [Theory]
    [InlineData(NecEdition.Nec2017)]
    [InlineData(NecEdition.Nec2020)]
    [InlineData(NecEdition.Nec2023)]
    [InlineData(NecEdition.Nec2026)]
    public void Plan_InAnEdition_EvaluatesClean(NecEdition edition) => AssertPlansClean(United(edition), 300, seed => RandomRooms.Make(seed));

    [Fact]
    public void Plan_InCanada_EvaluatesClean() => AssertPlansClean(RuleSets.CanadaDwelling + RuleSets.RoughInPractice, 300, seed => RandomRooms.Make(seed));

    [Fact]
    public void Plan_InABarrierFreeBuildingOfCanada_EvaluatesClean() =>
        AssertPlansClean(RuleSets.CanadaDwelling + RuleSets.CanadaBarrierFree + RuleSets.RoughInPractice, 200, seed => RandomRooms.Make(seed));

    // Counters 34 in high and 24 in deep are reached over (2010 ADA Standards 308.3.2; ICC A117.1 308.3.2), whichever document is added.
    [Theory]
    [InlineData("ada-reach")]
    [InlineData("fair-housing-reach")]
    [InlineData("type-a-reach")]
    [InlineData("type-b-reach")]
    [InlineData("california-reach")]
    public void Plan_UnderAReachDocument_WithCountersThatAreReachedOver_EvaluatesClean(string row) => AssertPlansClean(America + Reach[row], 200, seed => RandomRooms.Make(seed, 34, 24));

    // A stock counter, 36 in high and 25-1/2 in deep, isn't reached over: ADA and Type A leave no place behind it. The plan says by which row, adds nothing there that serves nobody, and every violation is told.
    [Theory]
    [InlineData("ada-reach")]
    [InlineData("type-a-reach")]
    public void Plan_UnderAReachDocument_OverAStockCounter_SaysWhyThereIsNoPlace(string row)
    {
        RuleSet rules = America + Reach[row];
        LayoutEvaluator evaluator = new(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        int seen = 0;
        for (int seed = 1; seen < 25; seed++)
        {
            if (RandomRooms.KindOf(seed) != RoomKind.Kitchen)
            {
                continue;
            }

            seen++;
            RoomPlan plan = new RoughInPlanner(rules).Plan(RandomRooms.Make(seed));
            Assert.Contains(plan.Obstacles, obstacle => obstacle.Contains("counter-outlets", StringComparison.Ordinal) && obstacle.Contains("no height there is left by", StringComparison.Ordinal) && obstacle.Contains(row, StringComparison.Ordinal));
            Assert.DoesNotContain(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Counter);
            Assert.All(evaluator.Evaluate(plan.Dwelling).Findings.Where(finding => finding.Severity == Severity.Violation), finding => Assert.Contains(finding.Message, plan.Obstacles));
            Assert.All(evaluator.Evaluate(plan.Dwelling).Findings.Where(finding => finding.IsViolation), finding => Assert.Equal("counter-outlets", finding.RuleId));
        }
    }

    // Fair Housing's manual and Type B take a stock counter as it is, its highest operable part at 46 in.
    [Theory]
    [InlineData("fair-housing-reach")]
    [InlineData("type-b-reach")]
    public void Plan_UnderADocumentThatTakesStockCounters_EvaluatesClean(string row) => AssertPlansClean(America + Reach[row], 150, seed => RandomRooms.Make(seed));

    [Fact]
    public void Plan_WithBoxesThatStay_LeavesThemAsTheyAre_AndCountsThem()
    {
        RoughInPlanner planner = new(America);
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            Dwelling bare = RandomRooms.Make(seed);
            PlacedBox[] kept = planner.Plan(bare).Dwelling.PlacedBoxes().Where((_, i) => (seed + i) % 3 == 0)
                .Select(placed => new PlacedBox(placed.Address, placed.Box.WithControls(default))).Select((placed, i) => new PlacedBox(placed.Address, i % 2 == 0 ? placed.Box.WithPinned(true) : placed.Box.WithExisting(true))).ToArray();
            RoomPlan plan = planner.Plan(kept.Aggregate(bare, (house, placed) => house.WithBox(placed)));
            Assert.All(kept, placed => Assert.Equal(placed.Box, plan.Dwelling.FindBox(placed.Box.Id)!.Box));
            Assert.All(plan.Reasons, planned => Assert.DoesNotContain(kept, placed => placed.Box.Id == planned.Id));
            Assert.Empty(plan.Obstacles);
        }).Check(Tries.Config(200));
    }

    // 210.52(A) asks for a box to each 144 in of a run; the usual plan has a box to each wall of 6 ft as well, and keeps to 66 in.
    [Fact]
    public void Plan_AtCodeMinimum_DropsSlackAndFaces_AndStillMeetsTheCode()
    {
        RoughInPlanner usual = new(America);
        RoughInPlanner least = new(America, RoughInOptions.Default.WithCodeMinimum(true));
        LayoutEvaluator evaluator = new(America, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        int fewer = 0;
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            RoomPlan plan = least.Plan(RandomRooms.Make(seed));
            Assert.DoesNotContain(plan.Reasons, planned => planned.Reason.StartsWith("one to each wall", StringComparison.Ordinal));
            Assert.DoesNotContain(evaluator.Evaluate(plan.Dwelling).Findings, finding => finding.Severity == Severity.Violation);
            int saved = usual.Plan(RandomRooms.Make(seed)).Reasons.Count - plan.Reasons.Count;
            Assert.True(saved >= 0, "seed " + seed);
            fewer += saved > 0 ? 1 : 0;
        }).Check(Tries.Config(150));
        Assert.True(fewer > Tries.Of(150) / 10, "slack and faces cost boxes in many rooms");
    }
}
