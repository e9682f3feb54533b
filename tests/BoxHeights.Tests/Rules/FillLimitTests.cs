using System;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a description leaves open about a box's fill, and what mends one that is too full.</summary>
public sealed class FillLimitTests
{
    private static readonly FillCounting Counting = RuleSets.FillCounting(NecEdition.Nec2023);

    [Fact]
    public void Lines_OfAFullBox_NameTheParagraphAndTheSum()
    {
        DeviceBox box = Box("12-2,14-3", 1).WithClamps(CableClamps.Internal);
        BoxFill fill = BoxFill.Most(box, Counting);
        Assert.Equal(["(B)(1)", "(B)(1)", "(B)(2)", "(B)(4)", "(B)(5)"], fill.Lines.Select(line => line.Paragraph).OrderBy(text => text, StringComparer.Ordinal));
        Assert.Equal(4 * 2, fill.Lines.Single(line => line.Paragraph == "(B)(4)").Quarters);
        Assert.Contains("12 AWG conductors 2 × 2.25 in3 = 4.5 in3", fill.ToString(), StringComparison.Ordinal);
        Assert.Contains(fill.Total.ToString(), fill.ToString(), StringComparison.Ordinal);

        // 12-2 is 4.5, 14-3 is 6, clamps 2.25, a device 4.5 on 12 AWG and 4 on 14, grounds 2.25.
        Assert.Equal(Volume.FromCubicInches(19.5m), fill.Total);
        Assert.Equal(Volume.FromCubicInches(19.0m), BoxFill.Least(box, Counting).Total);
    }

    // A document that counts otherwise: 3 in3 a conductor of 14 AWG, one for a device, and no paragraphs.
    [Fact]
    public void Counting_OfAnotherDocument_IsItsOwn()
    {
        FillCounting own = new(new[] { new ConductorAllowance(ConductorSize.Awg14, Volume.FromCubicInches(3m)) }, GroundCounting.AllAsOne) { ForADevice = 1 };
        BoxFill fill = BoxFill.Most(Box("14-2", 1), own);
        Assert.Equal(Volume.FromCubicInches((2 + 1 + 1) * 3m), fill.Total);
        Assert.All(fill.Lines, line => Assert.Equal("", line.Paragraph));
        Assert.Equal(4, own.CountIn(ConductorSize.Awg14, Volume.FromCubicInches(14m)));
        Assert.Equal(0, own.CountIn(ConductorSize.Awg12, Volume.FromCubicInches(14m)));
        Assert.NotEqual(own, own.WithForADevice(2));
        Assert.Equal(own, own.WithForADevice(2).WithForADevice(1));
    }

    [Fact]
    public void BoxFill_NothingToCountFromOrNull_Throws()
    {
        DeviceBox empty = Box("", 1);
        Assert.Throws<ArgumentException>(() => BoxFill.Least(empty, Counting));
        Assert.Throws<ArgumentException>(() => BoxFill.Most(empty, Counting));
        Assert.Throws<ArgumentException>(() => BoxFill.SmallestFor(empty, Counting, PartsCatalog.Generic));
        Assert.Throws<ArgumentException>(() => BoxFill.RoomFor(default, Box("14-2", 1), Counting, PartsCatalog.Generic));
        Assert.Throws<ArgumentNullException>(() => BoxFill.Most(null!, Counting));
        Assert.Throws<ArgumentNullException>(() => BoxFill.Most(Box("14-2", 1), null!));
        Assert.Throws<ArgumentNullException>(() => BoxFill.SmallestFor(Box("14-2", 1), Counting, null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => Counting.CountIn(ConductorSize.Awg14, Volume.FromPicoliters(-1)));
    }

    // 18 in³: a device takes 4, each 14-2 4 and all grounds 2. An empty box has room for three; without a volume nobody knows.
    [Fact]
    public void RoomFor_EmptyFullOrUnknown_IsToldApart()
    {
        CableType cable = CableType.Parse("14-2");
        DeviceBox empty = Box("", 1).WithVolume(Volume.FromCubicInches(18m));
        Assert.Equal(3, BoxFill.RoomFor(cable, empty, Counting, PartsCatalog.Generic));
        Assert.Equal(0, BoxFill.RoomFor(cable, Box("14-2,14-2,14-2,14-2", 1).WithVolume(Volume.FromCubicInches(18m)), Counting, PartsCatalog.Generic));
        Assert.Null(BoxFill.RoomFor(cable, Box("", 1), Counting, PartsCatalog.Generic));
    }

    // NEC 314.16(B)(2): clamps inside take one allowance. A wider plastic box or a metal one may have some; a one-gang plastic box holds cables by its flap, a cast one by its hubs.
    [Theory]
    [InlineData("nail-on", 1, "18", Verdict.Passes)]
    [InlineData("metal-device", 1, "18", Verdict.Unknown)]
    [InlineData("metal-device", 1, "20", Verdict.Passes)]
    [InlineData("metal-device", 1, "17.9", Verdict.Fails)]
    [InlineData("nail-on", 2, "22", Verdict.Unknown)]
    [InlineData("cast", 1, "18", Verdict.Passes)]
    [InlineData("nail-on", 2, "24", Verdict.Passes)]
    public void State_ClampsNotStated_MatterOnlyWhereTheyTurnTheVerdict(string kind, int devices, string volume, Verdict expected) =>
        AssertSays(Box("14-2,14-2,14-2", devices).WithKind(new BoxKind(kind)), volume, expected, MissingFacts.Clamps);

    // Two cables of 14-2 fill 10 in³ without a device and 14 with one; whether a timer sits on a yoke, or what a box is for at all, isn't known here.
    [Theory]
    [InlineData("", "13.9", Verdict.Unknown)]
    [InlineData("timer", "13.9", Verdict.Unknown)]
    [InlineData("timer", "14", Verdict.Passes)]
    [InlineData("timer", "9.9", Verdict.Fails)]
    [InlineData("thermostat", "13.9", Verdict.Fails)]
    [InlineData("blank", "10", Verdict.Passes)]
    public void State_DevicesOfEveryKind_TakeTheirRoom(string device, string volume, Verdict expected) =>
        AssertSays(Box("14-2,14-2", 1).WithDevices(device.Length == 0 ? default : new[] { new DeviceKind(device) }), volume, expected, MissingFacts.Devices);

    // 10-2 is 5 and a ground 2.5; a device takes 5 for each gang that it needs (NEC 314.16(B)(4)). What sits in the second gang is told, or may be more.
    [Theory]
    [InlineData("single-receptacle", "250 V 30 A", 2, 0, "17.5", Verdict.Passes)]
    [InlineData("single-receptacle", "250 V 30 A", 2, 0, "17.4", Verdict.Fails)]
    [InlineData("single-receptacle", "250 V 30 A", 2, 1, "17.4", Verdict.Unknown)]
    [InlineData("single-receptacle", "250 V 30 A", 2, 2, "17.4", Verdict.Fails)]
    [InlineData("single-receptacle", "250 V 30 A", 1, 0, "12.5", Verdict.Passes)]
    [InlineData("single-receptacle", "250 V 30 A", null, 0, "17.4", Verdict.Unknown)]
    [InlineData("single-receptacle", "250 V 30 A", null, 0, "17.5", Verdict.Passes)]
    [InlineData("single-receptacle", "250 V 20 A", null, 0, "12.5", Verdict.Passes)]
    [InlineData("heater-control", null, 2, 0, "17.4", Verdict.Unknown)]
    [InlineData("heater-control", null, 2, 0, "17.5", Verdict.Passes)]
    [InlineData("heater-control", null, 2, 0, "7.4", Verdict.Fails)]
    [InlineData("switch", null, 2, 0, "17.4", Verdict.Unknown)]
    [InlineData("switch", null, 2, 0, "17.5", Verdict.Passes)]
    [InlineData("switch", null, 2, 2, "17.4", Verdict.Fails)]
    [InlineData("switch blank", null, 2, 0, "12.5", Verdict.Passes)]
    [InlineData("switch blank", null, 2, 0, "12.4", Verdict.Fails)]
    [InlineData("dryer-receptacle", null, null, 0, "17.5", Verdict.Passes)]
    [InlineData("dryer-receptacle", null, null, 0, "17.4", Verdict.Fails)]
    public void State_DeviceOfOneOrTwoGangs_CountsEach(string devices, string? rating, int? gangs, int needs, string volume, Verdict expected) => AssertSays(
        Box("10-2", 1).WithDevices(devices.Split(' ').Select(name => new DeviceKind(name)).ToArray()).WithRating(rating).WithGangs(gangs).WithDeviceGangs(needs == 0 ? default : new[] { needs })
            .WithClamps(CableClamps.None), volume, expected, MissingFacts.Devices);

    // A compartment's device may need the gang that nobody speaks of; what is stated of a device goes with it.
    [Theory]
    [InlineData(0, "15", Verdict.Unknown)]
    [InlineData(0, "17.5", Verdict.Passes)]
    [InlineData(1, "12.5", Verdict.Passes)]
    [InlineData(2, "17.4", Verdict.Fails)]
    public void State_DeviceOfTwoGangsInACompartment_CountsEach(int needs, string volume, Verdict expected)
    {
        DeviceBox box = Box("10-2,10-2", 1).WithDevices(new[] { DeviceKind.Switch, new DeviceKind("heater-control") }).WithGangs(needs == 1 ? 2 : 3).WithDeviceGangs(needs == 0 ? default : new[] { 1, needs })
            .WithClamps(CableClamps.None).WithCompartments(new[] { new BoxCompartment().WithDevices(1).WithCables(1), new BoxCompartment().WithDevices(1).WithCables(1).WithVolume(Volume.FromCubicInches(decimal.Parse(volume, CultureInfo.InvariantCulture))) });
        AssertSays(box, "99", expected, MissingFacts.Devices);
    }

    // NEC Table 314.16(A): an octagon of 4 in has 12.5 in³ at the least, a square box 18. Three 14-2 fill 14; a plastic box has no table.
    [Theory]
    [InlineData("octagon", "14-2", null, Verdict.Passes)]
    [InlineData("octagon", "14-2,14-2", null, Verdict.Passes)]
    [InlineData("octagon", "12-2,12-2", null, Verdict.Passes)]
    [InlineData("octagon", "14-2,14-2,14-2", null, Verdict.Unknown)]
    [InlineData("octagon", "14-2,14-2,14-2", 1.5, Verdict.Passes)]
    [InlineData("octagon", "14-2,14-2,14-2", 1.49, Verdict.Unknown)]
    [InlineData("four-square", "14-2,14-2,14-2,14-2", null, Verdict.Passes)]
    [InlineData("four-square", "14-2,14-2,14-2,14-2,14-2", null, Verdict.Unknown)]
    [InlineData("fan-rated", "14-2", null, Verdict.Unknown)]
    [InlineData("pancake", "14-2", null, Verdict.Unknown)]
    [InlineData("nail-on", "14-2", null, Verdict.Unknown)]
    public void State_VolumeNotStated_MattersOnlyWhereTheSmallestOfItsKindIsTooSmall(string kind, string cables, double? ring, Verdict expected)
    {
        DeviceBox box = Box(cables, 0).WithKind(new BoxKind(kind)).WithClamps(CableClamps.None).WithDevices(new[] { DeviceKind.Blank }).WithExtension(ring is { } more ? Volume.FromCubicInches((decimal)more) : null);
        Check check = BoxFillCaseTests.Placed(NecEdition.Nec2023, box).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.BoxVolume : MissingFacts.None, check.Needs);
        if (ring is null)
        {
            // One that is smaller than boxes of its kind are may have less room.
            BoxSize small = new(Distance.FromInches(3, 1, 2), Distance.FromInches(3, 1, 2));
            Assert.Equal(Verdict.Unknown, BoxFillCaseTests.Placed(NecEdition.Nec2023, box.WithSize(small)).Verdict());
        }
    }

    // 12-2 and 14-2: 4.5 + 4 + 2.25 of ground, and the switch 4 or 4.5, whichever it is connected to.
    [Theory]
    [InlineData("", "14.75", Verdict.Unknown)]
    [InlineData("", "14.7", Verdict.Fails)]
    [InlineData("", "15.25", Verdict.Passes)]
    [InlineData("14 AWG", "14.75", Verdict.Passes)]
    [InlineData("12 AWG", "15.2", Verdict.Fails)]
    public void State_CablesOfTwoSizes_DependsOnWhatTheDeviceIsConnectedTo(string connected, string volume, Verdict expected) =>
        AssertSays(Box("12-2,14-2", 1).WithConnected(connected.Length == 0 ? default : new[] { ConductorSize.Parse(connected) }), volume, expected, MissingFacts.Devices);

    // A ring marked 3.8 in³ on a box of 15.5: 19.3 in³ together (NEC 314.16(A)).
    [Theory]
    [InlineData(3.8, Verdict.Passes)]
    [InlineData(2.4, Verdict.Fails)]
    public void State_MarkedRing_AddsItsRoom(double ring, Verdict expected)
    {
        DeviceBox box = Box("14-2,14-2,14-2", 1).WithExtension(Volume.FromCubicInches((decimal)ring));
        AssertSays(box, "15.5", expected, MissingFacts.None);
    }

    [Fact]
    public void State_NoCables_IsSilentAndNoVolume_IsUnknown()
    {
        Assert.Null(BoxFillCaseTests.Placed(NecEdition.Nec2023, Box("", 1).WithVolume(Volume.FromCubicInches(18m))).Check());
        Check check = BoxFillCaseTests.Placed(NecEdition.Nec2023, Box("14-2", 1)).Check()!.Value;
        Assert.Equal(Verdict.Unknown, check.Verdict);
        Assert.Equal(MissingFacts.BoxVolume, check.Needs);
    }

    // Three 14-2 and a device fill 18 in³ exactly; a flap that counts as a clamp takes 2 more.
    [Fact]
    public void State_MoldedFlap_IsAnotherReading()
    {
        OneBox box = BoxFillCaseTests.Placed(NecEdition.Nec2023, Box("14-2,14-2,14-2", 1).WithVolume(Volume.FromCubicInches(18m)).WithClamps(CableClamps.Flap));
        Check check = box.Check()!.Value;
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal(["flap-is-clamp"], check.DisputedBy.ToArray());

        OneBox strict = box with { Rules = box.Rules.WithReading("box-fill", "flap-is-clamp") };
        Finding finding = strict.Evaluate().Findings.Single();
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Equal(["default"], finding.DisputedBy.ToArray());
        Assert.Equal(Volume.FromCubicInches(20m), finding.Measured.AsVolume());
        Assert.Equal(Verdict.Passes, (strict with { Rules = strict.Rules.WithReading("box-fill", "default") }).Verdict());
    }

    [Fact]
    public void Remedies_OverfullBox_IsTheSmallestStandardOneThatHolds()
    {
        OneBox box = BoxFillCaseTests.Placed(NecEdition.Nec2023, Box("12-2,12-2,12-2", 1).WithVolume(Volume.FromCubicInches(18m)));
        Evaluation evaluation = box.Evaluate();
        ResizeBox remedy = Assert.IsType<ResizeBox>(evaluation.Findings.Single().Remedies.Single());
        Assert.Equal(Volume.FromCubicInches(20.3m), remedy.Volume);
        Assert.Null(remedy.Size);
        Assert.Equal([OneBox.Id], remedy.Ids.ToArray());
        Assert.True(new LayoutEvaluator(box.Rules).Evaluate(remedy.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    // Two boxes of one fill and volume share a cause, but a metal one is sold in other volumes than a plastic one.
    [Fact]
    public void Remedies_BoxesOfTwoKinds_AreEachMendedByTheirOwn()
    {
        DeviceBox full = Box("12-2,12-2,12-2", 1).WithVolume(Volume.FromCubicInches(18m)).WithHeight(BoxHeight.ToTop(Distance.FromInches(48), Datum.Subfloor)).WithClamps(CableClamps.None);
        OneBox box = BoxFillCaseTests.Placed(NecEdition.Nec2023, full);
        Dwelling two = box.Build().WithBox(new(OneBox.WallAddress, full.WithId("square").WithKind(BoxKind.FourSquare).WithAt(Distance.FromInches(100))));
        Cause cause = Assert.Single(new LayoutEvaluator(box.Rules).Evaluate(two).Causes);
        Assert.Equal([20.3m, 21m], cause.Remedies.Select(remedy => Assert.IsType<ResizeBox>(remedy).Volume.CubicInches));
    }

    [Fact]
    public void Remedies_MoreCablesThanAnyBoxOfItsKindHolds_IsNone()
    {
        OneBox box = BoxFillCaseTests.Placed(NecEdition.Nec2023, Box("12-3,12-3,12-3,12-3", 1).WithVolume(Volume.FromCubicInches(18m)));
        NoneFound remedy = Assert.IsType<NoneFound>(box.Evaluate().Findings.Single().Remedies.Single());
        Assert.Equal(["box-fill"], remedy.Conflicting.ToArray());
    }

    private static void AssertSays(DeviceBox box, string volume, Verdict expected, MissingFacts ifUnknown)
    {
        Check check = BoxFillCaseTests.Placed(NecEdition.Nec2023, box.WithVolume(Volume.FromCubicInches(decimal.Parse(volume, CultureInfo.InvariantCulture)))).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? ifUnknown : MissingFacts.None, check.Needs);
    }

    private static DeviceBox Box(string cables, int devices) => new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        .WithDevices(Enumerable.Repeat(DeviceKind.Switch, devices).ToArray())
        .WithCables(cables.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(CableType.Parse).ToArray());
}
