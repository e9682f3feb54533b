using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

public sealed class PlanAlternativesTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoughInPlanner Planner = new(Rules);
    private static readonly LayoutEvaluator Evaluator = new(Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
    private static readonly Lazy<RoomPlan> Ranch = new(() => Planner.Plan(RanchHouse.Bare));

    // The second road: each place carried out in the planned house, which is judged afresh.
    [Theory]
    [InlineData("bed-1", "switch")]
    [InlineData("kitchen", "counter")]
    [InlineData("hall", "general")]
    public void Costs_AreWhatIsFoundWhenTheBoxIsSetThere(string room, string purpose)
    {
        Dwelling planned = Ranch.Value.Dwelling;
        string[] before = [.. Evaluator.Evaluate(planned).Findings.Select(finding => finding.Key)];
        PlannedBox box = Ranch.Value.Reasons.First(one => one.Id.StartsWith(room + "-" + purpose, StringComparison.Ordinal));
        Items<PlanAlternative> all = Planner.Alternatives(Ranch.Value, box.Id);
        Assert.True(all.Count > 4, all.Count + " places");
        Assert.Contains(all, one => one.Costs.Count == 0);
        Assert.Contains(all, one => one.Costs.Count > 0);
        foreach (PlanAlternative one in all.Where((_, index) => index % 5 == 0))
        {
            Dwelling there = planned.WithBoxes(old => old.Id == box.Id ? old.WithAt(one.At).WithHeight(one.Height).WithMounting(one.Mounting) : old);
            string[] found = [.. Evaluator.Evaluate(there).Findings.Select(finding => finding.Key).Except(before).Order(StringComparer.Ordinal)];
            Assert.Equal(found.Select(key => key.Split('|')[0]).Order(StringComparer.Ordinal), one.Costs.Select(cost => cost.RuleId).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Alternatives_AreSortedByWhatTheyCost_AndSayWhy()
    {
        foreach (PlannedBox box in Ranch.Value.Reasons.Where(one => one.Address.StartsWith("bed-3/", StringComparison.Ordinal)))
        {
            Items<PlanAlternative> all = Planner.Alternatives(Ranch.Value, box.Id);
            int[] weights = [.. all.Select(one => one.Costs.Count == 0 ? 0 : one.Costs.Max(cost => (int)cost.Severity))];
            Assert.Equal(weights.Order(), weights);
            Assert.All(all, one => Assert.NotEqual("", one.Why));
            Assert.Equal(box.Address.EndsWith("/ceiling", StringComparison.Ordinal), all.Count == 0);
        }
    }

    // NEC 210.52(A)(1): no point of a wall further than 6 ft from an outlet, measured along the floor line. The wall is walked by quarters of an inch.
    [Fact]
    public void Further_OfAWall_IsWhatOneFindsByWalkingIt()
    {
        Dwelling bare = RoomSketch.House("bedroom", ["300", "120 open", "300 open", "120 open"]);
        bare = bare.WithStoreys(bare.Storeys[0].WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithFirstFace(CaseFile.Inches("15-1/4")).WithKnown(StudKnowledge.Declared)));
        RoughInPlanner planner = new(Rules, RoughInOptions.Default.WithSwitches(false));
        RoomPlan plan = planner.Plan(bare, "room");
        Distance[] outlets = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.General).Select(placed => placed.Box.At!.Value)];
        Assert.True(outlets.Length > 1, plan.ToText());
        string moved = plan.Reasons.First(one => one.RuleId == "wall-outlets").Id;
        Distance from = plan.Dwelling.FindBox(moved)!.Box.At!.Value;
        Items<PlanAlternative> all = planner.Alternatives(plan, moved);
        Assert.True(all.Count > 10, all.Count + " places");
        foreach (PlanAlternative one in all)
        {
            Distance then = Furthest([.. outlets.Where(at => at != from), one.At]);
            Assert.InRange(one.Further!.Value - (then - Furthest(outlets)), -CaseFile.Inches("1/4"), CaseFile.Inches("1/4"));
        }

        static Distance Furthest(Distance[] at) => Enumerable.Range(0, (300 * 4) + 1).Select(quarter => at.Min(one => (one - Distance.FromInches(0, quarter, 4)).Abs())).Max();
    }

    // The same round a room without a door, where the way goes on past the corner that its description begins with.
    [Fact]
    public void Further_RoundARoomWithoutADoor_IsWhatOneFindsByWalkingIt()
    {
        int[] lengths = [180, 120, 180, 120];
        Dwelling bare = RoomSketch.House("bedroom", [.. lengths.Select(length => length.ToString(System.Globalization.CultureInfo.InvariantCulture))]);
        RoughInPlanner planner = new(Rules, RoughInOptions.Default.WithSwitches(false));
        RoomPlan plan = planner.Plan(bare, "room");
        string[] order = [.. bare.Rooms[0].Walls.Select(wall => "room/" + wall.Id)];
        (string Id, Distance At)[] outlets = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.General).Select(placed => (placed.Box.Id, Round(placed.Address, placed.Box.At!.Value)))];
        Assert.True(outlets.Length > 3, plan.ToText());
        int further = 0;
        foreach ((string id, _) in outlets)
        {
            foreach (PlanAlternative one in planner.Alternatives(plan, id))
            {
                Distance change = Furthest([.. outlets.Select(other => other.Id == id ? Round(one.Address, one.At) : other.At)]) - Furthest([.. outlets.Select(other => other.At)]);
                Assert.InRange(one.Further!.Value - change, -CaseFile.Inches("1/4"), CaseFile.Inches("1/4"));
                further += change > CaseFile.Inches("1/4") ? 1 : 0;
            }
        }

        Assert.True(further > 10, further + " places from which some point is further");

        Distance Round(string address, Distance at) => Distance.FromInches(lengths.Take(Array.IndexOf(order, address)).Sum()) + at;
        static Distance Furthest(Distance[] at) => Enumerable.Range(0, 600 * 4).Select(quarter => at.Min(one => Apart((one - Distance.FromInches(0, quarter, 4)).Abs()))).Max();
        static Distance Apart(Distance away) => Distance.Min(away, Distance.FromInches(600) - away);
    }

    [Fact]
    public void ToString_InMillimeters_IsAsATapeShowsIt()
    {
        // Stud faces of an inch layout lie between millimeters.
        Dwelling bare = RoomSketch.House("bedroom", ["300", "120 open", "300 open", "120 open"]).WithUnits(LengthUnits.Millimeters);
        bare = bare.WithStoreys(bare.Storeys[0].WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithFirstFace(CaseFile.Inches("15-1/4")).WithKnown(StudKnowledge.Declared)));
        RoughInPlanner planner = new(Rules, RoughInOptions.Default.WithSwitches(false));
        RoomPlan plan = planner.Plan(bare, "room");
        Items<PlanAlternative> all = planner.Alternatives(plan, plan.Reasons.First(one => one.RuleId == "wall-outlets").Id);
        Assert.Contains(all, one => one.At.Millimeters % 1 != 0);
        Assert.All(all, one => Assert.Matches(@" at \d+ mm, \d+(\.\d)? mm to ", one.ToString()));
    }

    [Fact]
    public void Alternatives_OfABoxThatIsNotPlanned_Throw()
    {
        Assert.Throws<ArgumentException>(() => Planner.Alternatives(Ranch.Value, "nobody"));
        Assert.Throws<ArgumentNullException>(() => Planner.Alternatives(null!, "nobody"));
        Assert.Throws<ArgumentNullException>(() => Planner.Alternatives(Ranch.Value, null!));
    }
}
