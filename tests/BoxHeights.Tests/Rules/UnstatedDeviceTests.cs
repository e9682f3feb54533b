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

    // 2010 ADA 308: operable parts at most 48 in. Whatever it holds, a box for a switch or a receptacle is operated; a light isn't, and an appliance's is excepted.
    [Theory]
    [InlineData("general", 40, Verdict.Unknown)]
    [InlineData("switch", 90, Verdict.Unknown)]
    [InlineData("light", 90, null)]
    [InlineData("range", 5, null)]
    public void BoxWithoutItsDevice_UnderReach_IsUnknown(string purpose, int center, Verdict? expected)
    {
        DeviceBox box = new DeviceBox("B", new BoxPurpose(purpose)).WithAt(Distance.FromInches(40)).WithHeight(BoxHeight.ToCenter(Distance.FromInches(center), Datum.FinishedFloor));
        Evaluation evaluation = new LayoutEvaluator(RuleSets.Ada2010).Evaluate(new SquareRoom { North = [box] }.House());
        Assert.Equal(expected, evaluation.Findings.SingleOrDefault()?.Verdict);
        Assert.All(evaluation.Findings, finding => Assert.Contains("which devices", finding.Message, System.StringComparison.Ordinal));
        Assert.All(evaluation.Findings, finding => Assert.StartsWith("find out first", Assert.Single(finding.Remedies).Text, System.StringComparison.Ordinal));
    }

    // California measures the box, whatever is in it.
    [Theory]
    [InlineData(40, 0)]
    [InlineData(90, 1)]
    public void BoxWithoutItsDevice_MeasuredToItsEdges_IsJudged(int center, int found)
    {
        DeviceBox box = new DeviceBox("B", BoxPurpose.General).WithSize(new BoxSize(Distance.FromInches(2.25m), Distance.FromInches(3.75m))).WithAt(Distance.FromInches(40))
            .WithHeight(BoxHeight.ToCenter(Distance.FromInches(center), Datum.FinishedFloor));
        Assert.Equal(found, new LayoutEvaluator(RuleSets.California).Evaluate(new SquareRoom { North = [box] }.House()).Findings.Count(finding => finding.Verdict == Verdict.Fails));
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
