using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A box whose devices aren't stated counts by its purpose, for an alarm as for a light.</summary>
public sealed class UnstatedDeviceTests
{
    // IRC R314.3: one in each sleeping room, one outside, one on each storey.
    [Fact]
    public void AlarmBox_WithoutItsDevice_IsASmokeAlarm_AndOneForCarbonMonoxideAloneIsNone()
    {
        DeviceBox alarm = new DeviceBox("a", BoxPurpose.Alarm).WithPlan(new PlanPoint(Distance.FromInches(72m), Distance.FromInches(60m)));
        Assert.Empty(Lacking(alarm));
        Assert.Empty(Lacking(alarm.WithDevices(new[] { DeviceKind.SmokeAlarm })));
        Assert.Equal(["bedroom-alarm", "bedroom-hall-alarm", "storey-alarm"], Lacking(alarm.WithDevices(new[] { DeviceKind.CoAlarm })));
    }

    private static string[] Lacking(DeviceBox alarm)
    {
        SquareRoom bedroom = new() { Kind = RoomKind.Bedroom, Overhead = [alarm] };
        SquareRoom hall = new() { Kind = RoomKind.Hall, Overhead = [alarm.WithId("b")] };
        LayoutEvaluator evaluator = new(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        return evaluator.Evaluate(bedroom.House(hall.Build().WithId("hall"))).Findings.Select(finding => finding.RuleId).Where(id => id.EndsWith("-alarm", System.StringComparison.Ordinal))
            .Distinct().Order(System.StringComparer.Ordinal).ToArray();
    }
}
