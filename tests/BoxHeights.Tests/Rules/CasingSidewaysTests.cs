using System;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A plate too near to the casing is sent away from it, never onto it, however much nearer that is.</summary>
public sealed class CasingSidewaysTests
{
    // The casing's outer edges at 60 - 1 + 3/16 + 2-1/4 in and, mirrored, at 120 less that; half a plate 1-3/8 in; 1/4 in of wall is asked for, 1/16 in is there.
    [Theory]
    [InlineData(false, false, "3/16 in to the right")]
    [InlineData(true, false, "3/16 in to the left")]
    [InlineData(false, true, "3/16 in to the right")]
    [InlineData(true, true, "3/16 in to the left")]
    public void Message_OfAPlateASixteenthFromTheCasing_NamesTheSideThatIsClear(bool mirrored, bool alone, string way)
    {
        Distance at = In(61.4375m) + In(1.375m) + In(0.0625m);
        RuleSet rules = alone ? OneBox.Only(RuleSets.RoughInPractice, "casing-gap") : RuleSets.RoughInPractice;
        OneBox box = new()
        {
            Rules = rules,
            Wall = wall => wall.WithOpenings(new[]
            {
                new Opening("door", OpeningKind.Door, mirrored ? In(144) - In(60) : In(28), mirrored ? In(144) - In(28) : In(60))
                    .WithLeaf(In(30)).WithCasing(In(2.25m)).WithReveal(In(0.1875m)).WithHead(new Level(In(82.5m), Datum.Subfloor)),
            }),
        };
        box = (box with { Box = box.Box.WithPurpose(BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(mirrored ? In(144) - at : at) }).At(BoxHeight.Parse("48 in to top above subfloor"));
        string message = Assert.Single(box.Evaluate().Findings, finding => finding.RuleId == "casing-gap").Message;
        Assert.Contains(way, message, StringComparison.Ordinal);
    }

    // 1/16 in on the casing: what decides that is 1/16 in, and no 40 in up over the door; that the habit of 1/4 in asks for more is another finding's matter.
    [Fact]
    public void Message_OfAPlateASixteenthOnTheCasing_LeadsWithTheSixteenth()
    {
        OneBox box = new()
        {
            Rules = RuleSets.RoughInPractice,
            Wall = wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In(28), In(60)).WithLeaf(In(30)).WithCasing(In(2.25m)).WithReveal(In(0.1875m)).WithHead(new Level(In(82.5m), Datum.Subfloor)) }),
        };
        box = (box with { Box = box.Box.WithPurpose(BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(In(61.4375m) + In(1.375m) - In(0.0625m)) }).At(BoxHeight.Parse("48 in to top above subfloor"));
        Finding finding = Assert.Single(box.Evaluate().Findings, one => one.RuleId == "trim-clearance");
        Assert.Equal((In(0.0625m), ChangeDirection.Right), (finding.LeastChange!.Value.Amount, finding.LeastChange.Value.Direction));
        Assert.Contains("off by 1/16 in to the right", finding.Message, StringComparison.Ordinal);
    }
}
