using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Basins and appliances that have their outlet near them: NEC 210.52(D) and 210.50(C).</summary>
public sealed class FixtureSubjectTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    // 27 in along the wall and 36.. in out: 3-4-5 times 7.2 is 21.6, 28.8, 36.
    [Fact]
    public void BathReceptacle_RoundTheCorner_IsMeasuredStraightInPlan()
    {
        SquareRoom room = Bath(In("21.6"), In("0"));
        Distance at = room.Deep - In("22") - In("28.8");
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { West = [Receptacle(at, "44")] }).House()).IsClean);
        Finding far = Assert.Single(Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { West = [Receptacle(at - Tick, "44")] }).House()).Findings);
        Assert.Equal((Quantity)In("36"), far.Measured);
    }

    // Depth left behind a basin that isn't stated is up to 6 in: sqrt(36² - 6²) is 35.496... in along the wall.
    [Theory]
    [InlineData("35-1/2", true)]
    [InlineData("36", true)]
    [InlineData("35-7/16", false)]
    public void BathReceptacle_BasinOfUnstatedPlace_IsUnknownOnlyWhereThatDecides(string off, bool unknown)
    {
        SquareRoom room = Bath(In("40"), null);
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { North = [Receptacle(In("58") + In(off), "44")] }).House());
        Assert.Equal(unknown, evaluation.HasUnknowns);
        Assert.All(evaluation.Findings, finding => Assert.Equal(MissingFacts.PlanPlace, finding.Needs));
    }

    // Trade's own example: two basins, and the receptacle 37 in from the second.
    [Fact]
    public void BathReceptacle_ThirtySevenFromTheSecondBasin_IsLackingThereAlone_AndTheCureMendsIt()
    {
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", TwoBasins("67").House());
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal("square basin of vanity at 12 in", finding.Subject);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", cure.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    [Fact]
    public void BathReceptacle_ReachedAcrossABasin_IsDisputed()
    {
        RuleSet strict = RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).WithReading("bath-receptacle", "not-across-a-basin");
        Dwelling house = TwoBasins("65").House();
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", house).IsClean);
        Finding finding = Assert.Single(new LayoutEvaluator(OneBox.Only(strict, "bath-receptacle")).Evaluate(house).Findings);
        Assert.Equal("default", Assert.Single(finding.DisputedBy));

        // Between the two, or on either side of the one that it serves, it isn't.
        Assert.True(new LayoutEvaluator(OneBox.Only(strict, "bath-receptacle")).Evaluate(TwoBasins("38").House()).IsClean);
    }

    [Theory]
    [InlineData("dedicated")]
    [InlineData("switched")]
    [InlineData("240 V")]
    [InlineData("125/250 V")]
    [InlineData("30 A")]
    [InlineData("jack")]
    public void BathReceptacle_OfAnotherSort_DoesntCount(string sort)
    {
        DeviceBox box = Receptacle(In("62"), "44");
        box = sort switch
        {
            "dedicated" => box.WithDedicated("towel warmer"),
            "switched" => box.WithSwitched(SwitchedPart.All),
            "240 V" => box.WithRating("250 V 20 A"),
            "125/250 V" => box.WithRating("125/250 V 50 A"),
            "30 A" => box.WithRating("125 V 30 A"),
            _ => box.WithDevices(new[] { DeviceKind.DataJack }),
        };
        Assert.Single(Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [box, Receptacle(In("130"), "44").WithId("other")] }).House()).Findings);
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithSwitched(SwitchedPart.Half)] }).House()).IsClean);
    }

    // The laundry's own receptacle is at the ironing board; the washer is plugged in beside it, wherever what serves it is called.
    [Theory]
    [InlineData("50", "general", true)]
    [InlineData("113", "general", false)]
    [InlineData("50", "range", false)]
    public void Washer_ServedByAnotherBoxNearIt_LacksNothing(string at, string purpose, bool served)
    {
        SquareRoom room = new()
        {
            Kind = RoomKind.Laundry,
            Fixtures = [SquareRoom.Against("washer", FixtureKind.Washer, "north", In("10"), In("40"), In("28"))],
            North = [Receptacle(In("130"), "44").WithPurpose(BoxPurpose.Laundry), Receptacle(In(at), "44").WithId("near").WithPurpose(new BoxPurpose(purpose))],
        };
        Assert.Equal(served, Evaluate(NecEdition.Nec2023, "washer-receptacle", room.House()).IsClean);
    }

    [Theory]
    [InlineData("125 V 20 A", null)]
    [InlineData("120 V", null)]
    [InlineData("5-20R", MissingFacts.Devices)]
    public void BathReceptacle_Rating_CountsAsItDoesAlongAWall(string rating, MissingFacts? needs)
    {
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithRating(rating)] }).House());
        Assert.Equal(needs is { } needed ? [needed] : [], evaluation.Findings.Where(finding => finding.Fault is null).Select(finding => finding.Needs));
    }
}
