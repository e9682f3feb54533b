using System;
using System.Linq;
using System.Text.RegularExpressions;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a finding knows is read from it, not from its words: stretches, partners, keys; and what an evaluation was made with.</summary>
public sealed class FindingDataTests
{
    private static readonly LayoutEvaluator Walls = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets"));

    // 144 in between two doors, the only outlet 10 in from its left end: it reaches to 132 in on the wall, and the right end is 134 in away.
    [Fact]
    public void Stretches_OfARun_AreWhatIsntReached()
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:194:300"])).Findings);
        WallStretch stretch = Assert.Single(finding.Stretches);
        Assert.Equal(("room/w0", In("132"), In("194")), (stretch.Address, stretch.Left, stretch.Right));
        Assert.Equal(("room/w0", In("194"), In("134")), (finding.Worst!.Address, finding.Worst.Along, finding.Worst.Away));
        Assert.Equal(finding.Measured, (Quantity)(stretch.Right - stretch.Left));
    }

    [Fact]
    public void Rule_OfAFinding_IsItsRow_AndAFaultHasNone()
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:194:300"])).Findings);
        Assert.Same(Walls.Rules.Row(finding.RuleId), finding.Rule);
        Assert.Null(Assert.Single(Walls.Evaluate(new OneBox { Box = new(OneBox.Id, BoxPurpose.General) { At = In("60") } }.Build()).Findings, one => one.Fault is not null).Rule);
    }

    [Fact]
    public void Stretches_OfARunWithoutOutlet_AreAllOfIt_AndNoPointIsWorst()
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 door:194:300"])).Findings);
        Assert.Equal(["room/w0 50 in to 194 in"], finding.Stretches.Select(one => one.ToString()));
        Assert.Null(finding.Worst);
    }

    [Fact]
    public void Involves_OfBoxesInEachOthersWay_IsTheOther()
    {
        Evaluation evaluation = Two("72", "73");
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(("the-box", "beside"), (finding.Subject, Assert.Single(finding.Involves)));
    }

    // A plate that laps the casing of a door names the door by its address.
    [Fact]
    public void Involves_OfAPlateOnACasing_IsTheDoor()
    {
        OneBox box = new()
        {
            Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice, "trim-clearance"),
            Wall = wall => wall.WithOpenings(new[] { new Opening("d", OpeningKind.Door, In("20"), In("52")).WithCasing(In("3-1/2")) }),
        };
        Finding finding = Assert.Single((box with { Box = box.Box.WithAt(In("54")) }).At(BoxHeight.Parse("48 in to top above subfloor")).Evaluate().Findings);
        Assert.Equal(["room/wall/d"], finding.Involves);
    }

    // The same house twice, by two evaluators; then one box a tick further.
    [Fact]
    public void Findings_OfTwoEvaluations_AreEqualWhereTheySayTheSame()
    {
        Evaluation one = Two("72", "73");
        Evaluation other = Two("72", "73");
        Assert.Equal(one.Findings, other.Findings);
        Assert.Equal(one.Findings[0].GetHashCode(), other.Findings[0].GetHashCode());
        Evaluation moved = Two("72.125", "73");
        Assert.Equal(one.Findings[0].Key, moved.Findings[0].Key);
        Assert.NotEqual(one.Findings[0], moved.Findings[0]);
    }

    [Fact]
    public void DiffFrom_IsWhatASessionTellsOfTheSameChange()
    {
        Dwelling before = RoomSketch.House("bedroom", ["300 door:0:50 box:122 door:194:300"]);
        LayoutSession session = Walls.Open(before);
        string box = before.PlacedBoxes()[0].Box.Id;
        SessionChange told = session.Move(box, In("121"), BoxHeight.ToCenter(In("16"), Datum.FinishedFloor));
        SessionChange read = session.Evaluate().DiffFrom(Walls.Evaluate(before));
        Assert.Equal(told.Appeared, read.Appeared);
        Assert.Equal(("1 appeared, 0 cleared, 0 changed", told.ToString()), (read.ToString(), read.ToString()));
        Assert.Equal("0 appeared, 1 cleared, 0 changed", Walls.Evaluate(before).DiffFrom(session.Evaluate()).ToString());
    }

    // 1/16 in is what its words show of a run: a drag of less says nothing new, and one of more does.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2_032_000 / 8, 1)]
    public void Move_AlongARunThatLacks_ChangesOnlyWithWhatIsSaid(long ticks, int changed)
    {
        Dwelling house = RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:194:300"]);
        SessionChange change = Walls.Open(house).Move(house.PlacedBoxes()[0].Box.Id, In("60") + Distance.FromTicks(ticks), BoxHeight.ToCenter(In("16"), Datum.FinishedFloor));
        Assert.Equal((0, 0, changed), (change.Appeared.Count, change.Cleared.Count, change.Changed.Count));
    }

    [Fact]
    public void Stamp_TellsApartWhatDecides_AndNothingElse()
    {
        Dwelling house = new OneBox().At(BoxHeight.Parse("16 in to top above subfloor")).Build();
        EvaluationStamp Of(RuleSet rules, EvaluatorOptions options) => new LayoutEvaluator(rules, options).Evaluate(house).Stamp;
        EvaluationStamp stamp = Of(RuleSets.Ada2010, EvaluatorOptions.Default);
        Rule row = RuleSets.Ada2010.Row("ada-reach");
        Assert.Equal(stamp, Of(RuleSets.Ada2010.With(row with { Summary = "otherwise put" }), EvaluatorOptions.Default.WithUnits(LengthUnits.Inches)));
        EvaluationStamp[] others =
        [
            stamp, Of(RuleSets.TypeA2009, EvaluatorOptions.Default), Of(RuleSets.Ada2010, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)),
            Of(RuleSets.Ada2010, EvaluatorOptions.Default.WithHeightStep(In("1"))), Of(RuleSets.Ada2010, EvaluatorOptions.Default.WithOwnKinds(new[] { "sauna" })),
            Of(RuleSets.Ada2010, EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.With(new DevicePart(new DeviceKind("timer"), new OperableParts(In("1"), In("1")), new("House rules"))))),
        ];
        Assert.Equal(others.Length, others.Distinct().Count());
        Assert.Contains("<Version>" + stamp.Library + "</Version>", Regex.Replace(Repository.Read("src", "BoxHeights", "BoxHeights.csproj"), @"\s", ""), StringComparison.Ordinal);
    }

    // 2-1/4 in3 for each of six conductors, the grounds, and twice for the device: 20-1/4 in 18, which are 331.8 in 294.967 cm3, 36.87 too much.
    [Fact]
    public void Fill_InAMetricHouse_IsInCubicCentimeters()
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "box-fill"), Options = EvaluatorOptions.Default.WithUnits(LengthUnits.Millimeters) };
        box = box with { Box = box.Box.WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("12-2"), CableType.Parse("12-2") }).WithVolume(Volume.Parse("18 in3")).WithClamps(CableClamps.None) };
        Finding finding = Assert.Single(box.At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate().Findings);
        Assert.Contains("fill 331.9 cm3 (12 AWG conductors 6 × 36.9 cm3 = 221.2 cm3;", finding.Message, StringComparison.Ordinal);
        Assert.Contains("allowed at most 294.9 cm3, off by 36.9 cm3", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("in3", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("in3", Assert.Single(finding.Remedies).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Quantity_WithoutABound_SaysSo()
    {
        QuantitySet most = QuantitySet.AtMost(Volume.Parse("18 in3"));
        Assert.Equal((null, Volume.Parse("18 in3")), (most.Least, most.Most!.Value.AsVolume()));
        Quantity margin = ((QuantitySet)DistanceSet.All).Margin(In("16"));
        Assert.True(margin.IsUnbounded);
        Assert.Equal("without a bound", margin.ToString());
        Assert.Equal((null, null, false), (((QuantitySet)DistanceSet.All).Least, ((QuantitySet)DistanceSet.All).Most, ((QuantitySet)DistanceSet.All).IsEmpty));
        Assert.True(((QuantitySet)DistanceSet.Empty).IsEmpty);
    }

    private static Evaluation Two(string at, string beside)
    {
        OneBox box = new()
        {
            Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice, "next-box"),
            Wall = wall => wall.WithBoxes(new[] { new DeviceBox("beside", BoxPurpose.General).WithDevices(new[] { DeviceKind.Switch }).WithAt(In(beside)).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) }),
        };
        return (box with { Box = box.Box.WithAt(In(at)) }).At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate();
    }
}
