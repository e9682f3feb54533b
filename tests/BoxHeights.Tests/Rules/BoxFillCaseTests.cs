using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.16(B) from its own numbers, summed a second time in plain decimals.</summary>
public sealed class BoxFillCaseTests
{
    // Table 314.16(B): cubic inches for one conductor.
    private static readonly Dictionary<int, decimal> Allowance = new() { [18] = 1.5m, [16] = 1.75m, [14] = 2m, [12] = 2.25m, [10] = 2.5m, [8] = 3m, [6] = 5m };

    [Fact]
    public void BoxFill_OfTheWorkedExamples_IsThePublishedSum()
    {
        foreach (JsonElement row in CaseFile.List("box-fill.json"))
        {
            string id = row.GetProperty("id").GetString()!;
            string[] names = row.GetProperty("cables").EnumerateArray().Select(cable => cable.GetString()!).ToArray();
            int yokes = row.GetProperty("yokes").GetInt32();
            bool clamps = row.GetProperty("clamps").GetBoolean();
            foreach (GroundCounting grounds in new[] { GroundCounting.AllAsOne, GroundCounting.QuarterBeyondFour })
            {
                decimal expected = row.GetProperty(grounds == GroundCounting.AllAsOne ? "all as one" : "quarter beyond four").GetDecimal();
                Assert.True(expected == Sum(names.Select(Read).ToArray(), yokes, clamps, grounds), id + ": the case file's own sum");
                BoxFill fill = BoxFill.Of(new Items<CableType>(names.Select(CableType.Parse)), yokes, clamps, grounds);
                Assert.Equal(Volume.FromCubicInches(expected), fill.Total);
                Assert.Equal(fill.Total, fill.Lines.Aggregate(Volume.Zero, (sum, line) => sum + line.Volume));
            }

            if (row.TryGetProperty("grounds", out JsonElement all))
            {
                BoxFill fill = BoxFill.Of(new Items<CableType>(names.Select(CableType.Parse)), yokes, clamps, GroundCounting.QuarterBeyondFour);
                Assert.Equal(Volume.FromCubicInches(all.GetDecimal()), fill.Lines.Single(line => line.Paragraph == "(5)").Volume);
                Assert.NotEqual(row.GetProperty("published grounds").GetDecimal(), all.GetDecimal());
            }

            if (row.TryGetProperty("published", out JsonElement published))
            {
                Assert.NotEqual(published.GetDecimal(), row.GetProperty("all as one").GetDecimal());
                Assert.True(row.TryGetProperty("reason", out _), id);
            }
        }
    }

    [Fact]
    public void BoxFill_OfAnyCables_IsTheSumInDecimals()
    {
        Gen<(string Text, int Awg, int Insulated, bool Ground)> cable =
            from awg in Gen.Elements(18, 16, 14, 12, 10, 8, 6)
            from insulated in Gen.Choose(2, 4)
            from ground in Gen.Elements(true, false)
            select (awg + "-" + insulated + (ground ? "" : " without ground"), awg, insulated, ground);
        Gen<(string Text, int Awg, int Insulated, bool Ground)[]> cables = cable.NonEmptyListOf().Select(list => list.Take(8).ToArray());
        Prop.ForAll(Arb.From(cables), Arb.From(Gen.Choose(0, 4)), Arb.From(Gen.Elements(true, false)), (some, yokes, clamps) =>
        {
            Items<CableType> parsed = new(some.Select(one => CableType.Parse(one.Text)));
            return new[] { GroundCounting.AllAsOne, GroundCounting.QuarterBeyondFour }.All(grounds =>
                BoxFill.Of(parsed, yokes, clamps, grounds).Total == Volume.FromCubicInches(Sum(some.Select(one => (one.Awg, one.Insulated, one.Ground)).ToArray(), yokes, clamps, grounds))
                && BoxFill.Of(new Items<CableType>(parsed.Reverse()), yokes, clamps, grounds).Total == BoxFill.Of(parsed, yokes, clamps, grounds).Total);
        }).QuickCheckThrowOnFailure();
    }

    [Fact]
    public void Lines_OfAFullBox_NameTheParagraphAndTheSum()
    {
        BoxFill fill = BoxFill.Of(new[] { CableType.Parse("12-2"), CableType.Parse("14-3") }, 1, true, GroundCounting.QuarterBeyondFour);
        Assert.Equal(["(1)", "(1)", "(2)", "(4)", "(5)"], fill.Lines.Select(line => line.Paragraph).OrderBy(text => text, StringComparer.Ordinal));
        Assert.Equal(4 * 2, fill.Lines.Single(line => line.Paragraph == "(4)").Quarters);
        Assert.Contains("12 AWG", fill.ToString(), StringComparison.Ordinal);
        Assert.Contains(fill.Total.ToString(), fill.ToString(), StringComparison.Ordinal);

        // 12-2 is 4.5, 14-3 is 6, clamps 2.25, a device 4.5, grounds 2.25.
        Assert.Equal(Volume.FromCubicInches(19.5m), fill.Total);
    }

    [Fact]
    public void Of_NoCablesOrNegativeYokes_Throws()
    {
        Assert.Throws<ArgumentException>(() => BoxFill.Of(default, 1, false, GroundCounting.AllAsOne));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoxFill.Of(new[] { CableType.Parse("14-2") }, -1, false, GroundCounting.AllAsOne));
    }

    [Theory]
    [InlineData("14-2,14-2,14-2", 1, 18.0)]
    [InlineData("12-2,12-2,12-2", 1, 20.25)]
    public void FillLimit_OnePicoliterTooSmall_Fails(string cables, int yokes, double fill)
    {
        Volume full = Volume.FromCubicInches((decimal)fill);
        foreach (long more in new[] { -1L, 0, 1 })
        {
            Check check = Filled(NecEdition.Nec2023, cables, yokes, Volume.FromPicoliters(full.Picoliters + more)).Check()!.Value;
            Assert.Equal(more < 0 ? Verdict.Fails : Verdict.Passes, check.Verdict);
            Assert.Equal(Volume.FromPicoliters(more), check.Margin.AsVolume());
        }
    }

    // Two grounds and more beyond the fourth: 46.0 in3 until 2017, 47.5 from 2020, so a box of 47 depends on the edition.
    [Theory]
    [InlineData(NecEdition.Nec2017, Verdict.Passes)]
    [InlineData(NecEdition.Nec2020, Verdict.Fails)]
    [InlineData(NecEdition.Nec2023, Verdict.Fails)]
    [InlineData(NecEdition.Nec2026, Verdict.Fails)]
    public void FillLimit_ThreeGangsOfSevenCables_DependsOnTheEdition(NecEdition edition, Verdict expected) =>
        Assert.Equal(expected, With(Filled(edition, "14-2,14-2,14-2,14-2,14-2,14-3,14-3", 3, Volume.FromCubicInches(47m)), box => box.WithClamps(CableClamps.None)).Verdict());

    // NEC 314.16(B)(2): clamps inside take one allowance. A wider plastic box or a metal one may have some; a one-gang plastic box holds cables by its flap.
    [Theory]
    [InlineData("nail-on", 1, "18", Verdict.Passes)]
    [InlineData("metal-device", 1, "18", Verdict.Unknown)]
    [InlineData("metal-device", 1, "20", Verdict.Passes)]
    [InlineData("metal-device", 1, "17.9", Verdict.Fails)]
    [InlineData("nail-on", 2, "22", Verdict.Unknown)]
    [InlineData("nail-on", 2, "24", Verdict.Passes)]
    public void FillLimit_ClampsNotStated_MatterOnlyWhereTheyTurnTheVerdict(string kind, int devices, string volume, Verdict expected)
    {
        OneBox box = With(Filled(NecEdition.Nec2023, "14-2,14-2,14-2", devices, Volume.FromCubicInches(decimal.Parse(volume, CultureInfo.InvariantCulture))), one => one.WithKind(new BoxKind(kind)));
        Check check = box.Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? Facts.Clamps : Facts.None, check.Needs);
    }

    // Two cables of 14-2 fill 10 in3 without a device and 14 with one; whether a timer sits on a yoke, or what a box is for at all, isn't known here.
    [Theory]
    [InlineData("", "13.9", Verdict.Unknown)]
    [InlineData("timer", "13.9", Verdict.Unknown)]
    [InlineData("timer", "14", Verdict.Passes)]
    [InlineData("timer", "9.9", Verdict.Fails)]
    [InlineData("thermostat", "13.9", Verdict.Fails)]
    [InlineData("blank", "10", Verdict.Passes)]
    public void FillLimit_DevicesOfEveryKind_TakeTheirRoom(string device, string volume, Verdict expected)
    {
        Items<DeviceKind> devices = device.Length == 0 ? default : new[] { new DeviceKind(device) };
        OneBox box = With(Filled(NecEdition.Nec2023, "14-2,14-2", 1, Volume.FromCubicInches(decimal.Parse(volume, CultureInfo.InvariantCulture))), one => one.WithDevices(devices));
        Check check = box.Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? Facts.Devices : Facts.None, check.Needs);
    }

    // NEC 314.16(B)(4): a device that needs two gangs counts for both. 10-3: 3 x 2.5 + 4 x 2.5 + 2.5.
    [Fact]
    public void FillLimit_DryerReceptacle_CountsBothItsGangs()
    {
        OneBox box = With(Filled(NecEdition.Nec2023, "10-3", 1, Volume.FromCubicInches(20m)), one => one.WithDevices(new[] { DeviceKind.DryerReceptacle }).WithGangs(2).WithClamps(CableClamps.None));
        Check check = box.Check()!.Value;
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal(Volume.Zero, check.Margin.AsVolume());
    }

    [Fact]
    public void FillLimit_NoCables_IsSilentAndNoVolume_IsUnknown()
    {
        Assert.Null(Filled(NecEdition.Nec2023, "", 1, Volume.FromCubicInches(18m)).Check());
        Check check = Filled(NecEdition.Nec2023, "14-2", 1, null).Check()!.Value;
        Assert.Equal(Verdict.Unknown, check.Verdict);
        Assert.Equal(Facts.BoxVolume, check.Needs);
    }

    // Three 14-2 and a device fill 18 in3 exactly; a flap that counts as a clamp takes 2 more.
    [Fact]
    public void FillLimit_MoldedFlap_IsAnotherReading()
    {
        OneBox box = Filled(NecEdition.Nec2023, "14-2,14-2,14-2", 1, Volume.FromCubicInches(18m));
        box = box with { Box = box.Box.WithClamps(CableClamps.Flap) };
        Check check = box.Check()!.Value;
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal(["flap-is-clamp"], check.DisputedBy.ToArray());

        OneBox strict = box with { Rules = box.Rules.WithReading("box-fill", "flap-is-clamp") };
        Finding finding = strict.Evaluate().Findings.Single();
        Assert.Equal(Outcome.Fails, finding.Outcome);
        Assert.Equal(["default"], finding.DisputedBy.ToArray());
        Assert.Equal(Volume.FromCubicInches(20m), finding.Measured.AsVolume());
        Assert.Equal(box.Rules.Find("box-fill"), strict.Rules.WithReading("box-fill", "default").Find("box-fill") with { Readings = box.Rules.Find("box-fill").Readings });
        Assert.Equal(Verdict.Passes, (strict with { Rules = strict.Rules.WithReading("box-fill", "default") }).Verdict());
    }

    [Fact]
    public void Remedies_OverfullBox_IsTheSmallestStandardOneThatHolds()
    {
        OneBox box = Filled(NecEdition.Nec2023, "12-2,12-2,12-2", 1, Volume.FromCubicInches(18m));
        Evaluation evaluation = box.Evaluate();
        ResizeBox remedy = Assert.IsType<ResizeBox>(evaluation.Findings.Single().Remedies.Single());
        Assert.Equal(Volume.FromCubicInches(20.3m), remedy.Volume);
        Assert.Equal([OneBox.Id], remedy.Ids.ToArray());
        Assert.True(new LayoutEvaluator(box.Rules).Evaluate(remedy.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    [Fact]
    public void Remedies_MoreCablesThanAnyBoxOfItsKindHolds_IsNone()
    {
        OneBox box = Filled(NecEdition.Nec2023, "12-3,12-3,12-3,12-3", 1, Volume.FromCubicInches(18m));
        NoneFound remedy = Assert.IsType<NoneFound>(box.Evaluate().Findings.Single().Remedies.Single());
        Assert.Equal(["box-fill"], remedy.Conflicting.ToArray());
    }

    private static OneBox Filled(NecEdition edition, string cables, int devices, Volume? volume) => new()
    {
        Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(edition), "box-fill"),
        Box = new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        {
            Devices = Enumerable.Repeat(DeviceKind.Switch, devices).ToArray(),
            Cables = cables.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(CableType.Parse).ToArray(),
            Volume = volume,
            At = OneBox.Middle,
            Height = BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor),
        },
    };

    private static (int Awg, int Insulated, bool Ground) Read(string text)
    {
        string[] parts = text.Split(' ')[0].Split('-');
        return (int.Parse(parts[0], CultureInfo.InvariantCulture), int.Parse(parts[1], CultureInfo.InvariantCulture), !text.Contains("without", StringComparison.Ordinal));
    }

    private static decimal Sum((int Awg, int Insulated, bool Ground)[] cables, int yokes, bool clamps, GroundCounting counting)
    {
        decimal largest = cables.Max(cable => Allowance[cable.Awg]);
        decimal sum = cables.Sum(cable => cable.Insulated * Allowance[cable.Awg]) + (clamps ? largest : 0m) + (2 * yokes * largest);
        decimal[] grounds = cables.Where(cable => cable.Ground).Select(cable => Allowance[cable.Awg]).ToArray();
        decimal beyond = counting == GroundCounting.QuarterBeyondFour ? Math.Max(0, grounds.Length - 4) / 4m : 0m;
        return grounds.Length == 0 ? sum : sum + ((1 + beyond) * grounds.Max());
    }

    private static OneBox With(OneBox box, Func<DeviceBox, DeviceBox> change) => box with { Box = change(box.Box) };
}
