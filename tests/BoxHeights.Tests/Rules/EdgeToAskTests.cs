using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A height that is right for one edge of the box and wrong for another is asked about before anything is set otherwise.</summary>
public sealed class EdgeToAskTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.Ada2010 + RuleSets.RoughInPractice);

    // 15 to 48 in to the operable parts: 48 in does to the top and not to the bottom, 16 in to the bottom and not to the top.
    [Theory]
    [InlineData("switch", "48 in above subfloor", "fails if it means bottom or center")]
    [InlineData("general", "16 in above subfloor", "fails if it means center or top")]
    public void Remedy_OfAnEdgeThatIsntStated_IsToAsk(string purpose, string height, string fails)
    {
        Evaluation evaluation = Evaluator.Evaluate(House(purpose, height));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains(fails, finding.Message, StringComparison.Ordinal);
        NoneFound none = Assert.IsType<NoneFound>(Assert.Single(finding.Remedies));
        Assert.Equal(NoRemedyReason.NotKnown, none.Reason);
        Assert.Equal(OneBox.Id, Assert.Single(none.Ids));
        Assert.Equal("find out first: which edge is meant (to top, to center or to bottom)", none.Text);
        Assert.Equal(evaluation.Dwelling, evaluation.Mend().Dwelling);
    }

    // No edge does for 80 in: there is nothing to ask, and it is set right.
    [Fact]
    public void Remedy_WhereNoEdgeDoes_IsAMove() =>
        Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(Evaluator.Evaluate(House("switch", "80 in above subfloor")).Findings, finding => finding.RuleId == "ada-reach").Remedies));

    // Set at a height of its own, but its drawing names no edge: what the drawing means is asked.
    [Fact]
    public void Remedy_OfADrawingThatNamesNoEdge_IsToAsk()
    {
        Dwelling house = House("switch", "46 in to top above subfloor").WithBoxes(box => box.WithSpecified(BoxHeight.Parse("46 in above subfloor")));
        Assert.Equal(NoRemedyReason.NotKnown, Assert.IsType<NoneFound>(Assert.Single(Assert.Single(Evaluator.Evaluate(house).Findings).Remedies)).Reason);
    }

    // Beside it a switch too high for certain is set right, and doesn't take the one with it that is to be asked about.
    [Fact]
    public void Mend_BesideABoxToAskAbout_LeavesItAlone()
    {
        Dwelling house = House("switch", "48 in above subfloor");
        house = house.WithBox(new PlacedBox(OneBox.WallAddress, house.PlacedBoxes().Single().Box.WithId("other").WithAt(CaseFile.Inches("24")).WithHeight(BoxHeight.Parse("56 in to top above subfloor"))));
        MendedDwelling mended = Evaluator.Evaluate(house).Mend();
        Assert.Equal(["other"], mended.Boxes.Select(box => box.After.Box.Id));
        Assert.Equal(house.PlacedBoxes()[0].Box, mended.Dwelling.PlacedBoxes()[0].Box);
    }

    private static Dwelling House(string purpose, string height) => new OneBox
    {
        Room = room => room.WithFloor(OneBox.Floor(Distance.Zero)),
        Box = new DeviceBox(OneBox.Id, new BoxPurpose(purpose)).WithDevices(new[] { purpose == "switch" ? DeviceKind.Switch : DeviceKind.DuplexReceptacle }).WithAt(OneBox.Middle),
    }.At(BoxHeight.Parse(height)).Build();
}
