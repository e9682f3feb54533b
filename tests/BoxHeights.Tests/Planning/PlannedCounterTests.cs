using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Counters get as few boxes as serve them, off their ends, and one that protects those it feeds. Worked by hand from the drawings of two kitchens.</summary>
public sealed class PlannedCounterTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    private static PlacedBox[] Counters(RoomPlan plan) => [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Address == "kitchen/north" && placed.Box.Purpose == BoxPurpose.Counter).OrderBy(placed => placed.Box.At)];

    // NEC 210.52(C)(1): 24 in of reach. 38 to 70 in, 100 to 140 in and 170 to 182 in of counter, between refrigerator, sink and range: one box each, the second on a block, since no stud is within reach of both its ends.
    [Fact]
    public void Counter_ThatOneBoxServes_GetsOne()
    {
        PlacedBox[] boxes = Counters(new RoughInPlanner(Rules).Plan(RanchHouse.Bare));
        Assert.Equal(3, boxes.Length);
        foreach ((decimal from, decimal to, int box) in new[] { (38m, 70m, 0), (100m, 140m, 1), (170m, 182m, 2) })
        {
            Assert.InRange(boxes[box].Box.At!.Value, Distance.FromInches(Math.Max(from, to - 24)), Distance.FromInches(Math.Min(to, from + 24)));
        }

        Assert.Equal([MountingMethod.Stud, MountingMethod.Blocking, MountingMethod.Stud], boxes.Select(placed => placed.Box.Mounting!.How));
        Assert.All(boxes, placed => Assert.Equal("gfci-receptacle", placed.Box.Devices.ToString()));
    }

    // 2.35 to 3.78 m of counter take two: that nearer to its end, at 3.55 m, protects the other, and the plan says so.
    [Fact]
    public void Counter_ThatTakesTwo_HasOneThatProtectsTheOther()
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RowHouse.Bare);
        PlacedBox[] boxes = Counters(plan);
        Assert.Equal(["duplex-receptacle", "gfci-receptacle"], boxes.Select(placed => placed.Box.Devices.ToString()));
        Assert.Contains("fed through " + boxes[1].Box.Id, plan.Reasons.Single(one => one.Id == boxes[0].Box.Id).Reason, StringComparison.Ordinal);
    }
}
