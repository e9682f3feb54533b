using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>NEC 210.52(D): a receptacle within 3 ft of the outside edge of each basin.</summary>
public sealed class PlannedBathTests
{
    // One receptacle beside the first basin is 3 ft from the second in plan, if that reaches to the wall: nobody states how deep a basin is, so it gets one of its own.
    [Fact]
    public void Plan_TwoBasinsWhosePlaceInPlanIsNotStated_SurelyServesBoth()
    {
        Counter vanity = new Counter("vanity", CounterKind.Bath, In(10), In(82)).WithTop(Level.Parse("34 in above finished floor")).WithDepth(In(22))
            .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, In(20), In(36)), new CounterInterruption(InterruptionKind.Basin, In(56), In(72)) });
        RuleSet rules = RuleSets.OfAHouse;
        RoomPlan plan = new RoughInPlanner(rules).Plan(new SquareRoom { Wide = In(96), NorthCounters = [vanity] }.House());
        Assert.DoesNotContain(plan.Obstacles, obstacle => obstacle.Contains("basin", System.StringComparison.Ordinal));
        foreach ((Distance left, Distance right) in new[] { (In(20), In(36)), (In(56), In(72)) })
        {
            Assert.Contains(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Bath && placed.Address == "square/north" && placed.Box.At > left - In(36) && placed.Box.At < right + In(36));
        }

        Assert.DoesNotContain(new LayoutEvaluator(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(plan.Dwelling).Findings, finding => finding.Message.Contains("basin", System.StringComparison.Ordinal));
    }
}
