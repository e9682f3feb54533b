#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Interop;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>The example house: each planted mistake is found as one cause with its remedy, and what only looks like a mistake stays silent.</summary>
public class WholeHouseTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;
    private static readonly Dwelling House = DwellingJson.Read(Repository.Read("examples", "WholeHouse", "house.json"));
    private static readonly Evaluation Judged = new LayoutEvaluator(Rules).Evaluate(House);

    [Fact]
    public void Causes_AreThePlantedMistakes()
    {
        string[] planted =
        [
            "box-fill Fails K1: take a box marked at least 20.3 in3 for K1",
            "uniform-level Fails B1, B2, B3, B4: set the stick 16 in to top above subfloor for 4 boxes: B1, B2, B3, B4",
            "specified-height Unknown T1: find out first: which edge is meant",
            "specified-height Unknown V1: find out first: the floor finish",
            "board-seam Fails S1, S2, S3, S4, S5, S6: set the stick 48 in to top above subfloor for 6 boxes: S1, S2, S3, S4, S5, S6",
        ];
        Assert.Equal(planted, Judged.Causes.Select(cause => cause.RuleId + " " + cause.Outcome + " " + cause.Subjects + ": " + Assert.Single(cause.Remedies).Text));
    }

    [Fact]
    public void Unknowns_SayWhatTheyHangOn() => Assert.Equal(
        [
            "fails if the drawing means bottom or top",
            "good for any floor up to 7/8 in",
        ],
        Judged.Causes.Where(cause => cause.Outcome == Outcome.Unknown).Select(cause => cause.Title.Split(": ")[1]));

    [Theory]
    [InlineData("S7", "board-seam", "1/2 in")] // 48 in to the top, seam at 97-1/8 - 5/8 - 48 = 48-1/2 in
    [InlineData("L3", "box-fill", "0 in3")] // six conductors, a device and the grounds: 9 × 2 in3 in 18 in3
    [InlineData("K3", "specified-height", "1/4 in")] // set as drawn: all of the tolerance is left
    [InlineData("HW1", "switch-reach", null)]
    public void Decoys_StaySilentThoughTheyAreChecked(string box, string rule, string? margin)
    {
        Check check = Assert.Single(Judged.Checks, one => one.Subject == box && one.RuleId == rule);
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal(margin ?? check.Margin.ToString(), check.Margin.ToString());
        Assert.Empty(Judged.For(box));
    }

    [Fact]
    public void Remedies_AllCarriedOut_LeaveOnlyWhatHasToBeFoundOut()
    {
        Dwelling mended = Judged.Causes.SelectMany(cause => cause.Remedies).Aggregate(House, (house, remedy) => remedy.ApplyTo(house));
        Assert.All(new LayoutEvaluator(Rules).Evaluate(mended).Findings, finding => Assert.Equal(Outcome.Unknown, finding.Outcome));
    }

    [Fact]
    public void Marks_OfBoxesOnStuds_AreWhereTheStudIs()
    {
        // The second full stud's right side is at 15-1/4 + 16 + 1-1/2 in; half a 2-1/4 in box further is its center.
        MarkRow row = Assert.Single(MarkSheet.For(House, Rules).Rows, one => one.BoxId == "K1");
        Assert.Equal("stud 2, right side", row.Stud);
        Assert.Equal(Distance.Parse("33-7/8 in"), row.FromLeftCorner);
    }

    [Fact]
    public void Marks_OfBoxesOffTheStuds_NameNoSide()
    {
        Dictionary<string, string> studs = MarkSheet.For(House, Rules).Rows.ToDictionary(row => row.BoxId, row => row.Stud, StringComparer.Ordinal);
        Assert.Equal("near stud 8", studs["K5"]);
        Assert.Equal("near stud 2 (assumed layout)", studs["A1"]);
        Assert.Equal("", studs["K4"]);
    }

    [Fact]
    public void Counter_OutOfReach_IsNeverMovedOffItsCounter()
    {
        Evaluation reach = new LayoutEvaluator(Rules + RuleSets.Ada2010).Evaluate(House);
        Cause cause = Assert.Single(reach.Causes, one => one.Subjects.Contains("K1") && one.RuleId == "ada-reach");
        Assert.All(cause.Remedies, remedy => Assert.IsType<NoneFound>(remedy));
    }
}
#endif
