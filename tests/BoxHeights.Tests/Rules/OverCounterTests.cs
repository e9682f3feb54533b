using System;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A box over a counter stays over it, whatever rules alone would allow under it.</summary>
public sealed class OverCounterTests
{
    // A reach document alone knows no counter receptacle that has to be over its counter. Over 34 in of top and 24 in of depth a hand reaches 46 in, deeper or higher nothing.
    [Theory]
    [InlineData("counter", "34", "24", "50", true)]
    [InlineData("counter", "34", "25-1/2", "50", false)]
    [InlineData("counter", "36", "24", "50", false)]
    public void Remedy_OfABoxOverACounter_StaysOverIt(string purpose, string top, string depth, string at, bool isMended)
    {
        Evaluation evaluation = Kitchen(purpose, top, depth, at, RuleSets.Ada2010).Evaluate();
        Remedy remedy = Assert.Single(Assert.Single(evaluation.Findings).Remedies);
        if (!isMended)
        {
            Assert.Contains("ada-reach leaves none over the counter", Assert.IsType<NoneFound>(remedy).Text, StringComparison.Ordinal);
            return;
        }

        // Its box is 3-3/4 in tall and its plate 4-1/2 in: the plate's bottom edge is over the top.
        MoveBoxes move = Assert.IsType<MoveBoxes>(remedy);
        Assert.Equal(Edge.Top, move.Height.Edge);
        Assert.True(move.Height.Value >= CaseFile.Inches(top) + CaseFile.Inches("4-1/8"));
        Assert.True(new LayoutEvaluator(RuleSets.Ada2010).Evaluate(remedy.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    // A switch over a counter doesn't go under it, but off it: nothing says that it belongs to it.
    [Fact]
    public void Remedy_OfASwitchOverACounter_GoesAside()
    {
        Evaluation evaluation = Kitchen("switch", "36", "24", "50", RuleSets.Ada2010).Evaluate();
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(evaluation.Findings).Remedies));
        Assert.True(move.Along > CaseFile.Inches("96") && move.Height.Value > CaseFile.Inches("40"));
    }

    // What is under a counter, or by the side of it, goes where it may.
    [Theory]
    [InlineData("24", "12")]
    [InlineData("110", "52")]
    public void Remedy_OfABoxUnderOrBesideACounter_GoesWhereItMay(string along, string height)
    {
        OneBox kitchen = Kitchen("general", "36", "24", height, RuleSets.Ada2010);
        kitchen = kitchen with { Box = kitchen.Box.WithAt(CaseFile.Inches(along)) };
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(kitchen.Evaluate().Findings).Remedies));
        Assert.True(new LayoutEvaluator(RuleSets.Ada2010).Evaluate(move.ApplyTo(kitchen.Build())).IsClean);
    }

    private static OneBox Kitchen(string purpose, string top, string depth, string at, RuleSet rules) => new OneBox
    {
        Rules = rules,
        Room = room => room.WithFloor(OneBox.Floor(Distance.Zero)),
        Wall = wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, CaseFile.Inches("96")).WithTop(new(CaseFile.Inches(top), Datum.FinishedFloor)).WithDepth(CaseFile.Inches(depth)) }),
        Box = new DeviceBox(OneBox.Id, new BoxPurpose(purpose)).WithDevices(new[] { purpose == "switch" ? DeviceKind.Switch : DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("48")),
    }.At(BoxHeight.ToTop(CaseFile.Inches(at), Datum.Subfloor));
}
