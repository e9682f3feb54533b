using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text.Json;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.16 from worked examples, each summed a second time in fractions.</summary>
public sealed class BoxFillCaseTests
{
    private static readonly (NecEdition Edition, int Year)[] Editions =
        [(NecEdition.Nec2017, 2017), (NecEdition.Nec2020, 2020), (NecEdition.Nec2023, 2023), (NecEdition.Nec2026, 2023)];

    private static IEnumerable<(JsonElement Row, string Id, FillSketch Sketch)> Cases => CaseFile.List("box-fill.json").Select(row => (row, row.GetProperty("id").GetString()!, Read(row)));

    [Fact]
    public void BoxFill_OfTheWorkedExamples_IsThePublishedSum()
    {
        foreach ((JsonElement row, string id, FillSketch sketch) in Cases)
        {
            foreach ((NecEdition edition, int year) in Editions)
            {
                decimal expected = Expected(row, year);
                Assert.True(Fraction.FromDecimal(expected) == sketch.Sum(year), id + ": the case file's own sum");
                BoxFill fill = BoxFill.Most(sketch.ToBox(), RuleSets.FillCounting(edition));
                Assert.True(Volume.FromCubicInches(expected) == fill.Total, id + ": " + fill);
                Assert.Equal(fill.Total, BoxFill.Least(sketch.ToBox(), RuleSets.FillCounting(edition)).Total);
                Assert.Equal(fill.Total, fill.Lines.Aggregate(Volume.Zero, (sum, line) => sum + line.Volume));
            }

            if (row.TryGetProperty("grounds", out JsonElement all))
            {
                BoxFill fill = BoxFill.Most(sketch.ToBox(), RuleSets.FillCounting(NecEdition.Nec2020));
                Assert.Equal(Volume.FromCubicInches(all.GetDecimal()), fill.Lines.Single(line => line.Paragraph == "(B)(5)").Volume);
                Assert.NotEqual(row.GetProperty("published grounds").GetDecimal(), all.GetDecimal());
                Assert.True(row.TryGetProperty("reason", out _), id);
            }
        }
    }

    [Fact]
    public void SmallestFor_TheWorkedExamples_IsThePublishedBox()
    {
        foreach ((JsonElement row, string id, FillSketch sketch) in Cases.Where(one => one.Row.TryGetProperty("smallest", out _)))
        {
            Volume? smallest = BoxFill.SmallestFor(sketch.ToBox(), RuleSets.FillCounting(NecEdition.Nec2023), PartsCatalog.Generic);
            Assert.True(Volume.FromCubicInches(row.GetProperty("smallest").GetDecimal()) == smallest, id + ": " + smallest);
        }

        Assert.Null(BoxFill.SmallestFor(Cases.Single(one => one.Id == "F15 inside clamp").Sketch.ToBox(), RuleSets.FillCounting(NecEdition.Nec2023), PartsCatalog.Generic));
    }

    [Fact]
    public void FillLimit_OnePicoliterBelowAtAndAbove_TurnsAtTheFill()
    {
        foreach ((JsonElement row, string id, FillSketch sketch) in Cases)
        {
            foreach ((NecEdition edition, int year) in Editions)
            {
                Volume full = Volume.FromCubicInches(Expected(row, year));
                foreach (long more in new[] { -1L, 0, 1 })
                {
                    Check check = Placed(edition, sketch.ToBox().WithVolume(Volume.FromPicoliters(full.Picoliters + more))).Check()!.Value;
                    Assert.True((more < 0 ? Verdict.Fails : Verdict.Passes) == check.Verdict, id);
                    Assert.Equal(Volume.FromPicoliters(more), check.Margin.AsVolume());
                }
            }
        }
    }

    // Two 10 AWG conductors, a ground, and two allowances for each gang that the device takes, 2.5 in³ each: above 20 A it takes both (from memory).
    [Theory]
    [InlineData(20, 12.5)]
    [InlineData(21, 17.5)]
    public void Least_OfASingleReceptacleInTwoGangs_CountsBothAbove20Amperes(int amperes, double expected)
    {
        DeviceBox box = new DeviceBox(OneBox.Id, BoxPurpose.General).WithKind(BoxKind.MetalDevice).WithGangs(2).WithDevices(new[] { DeviceKind.SingleReceptacle }).WithRating("250 V " + amperes + " A").WithCables(new[] { CableType.Parse("10-2") }).WithClamps(CableClamps.None);
        Assert.All(Editions, one => Assert.Equal(Volume.FromCubicInches((decimal)expected), BoxFill.Least(box, RuleSets.FillCounting(one.Edition)).Total));
    }

    // Seven grounds: three beyond the fourth take 1.5 in³ more from 2020, so a box of 47 in³ depends on the edition.
    [Theory]
    [InlineData(NecEdition.Nec2017, Verdict.Passes)]
    [InlineData(NecEdition.Nec2020, Verdict.Fails)]
    [InlineData(NecEdition.Nec2023, Verdict.Fails)]
    [InlineData(NecEdition.Nec2026, Verdict.Fails)]
    public void FillLimit_ThreeGangsOfSevenCables_DependsOnTheEdition(NecEdition edition, Verdict expected)
    {
        DeviceBox box = Cases.Single(one => one.Id.StartsWith("three gang", StringComparison.Ordinal)).Sketch.ToBox();
        Assert.Equal(expected, Placed(edition, box.WithVolume(Volume.FromCubicInches(47m))).Verdict());
    }

    // Table 314.16(A): volumes by trade depth, and the printed counts as the volume over the allowance, rounded down. One printed cell doesn't follow.
    [Fact]
    public void MetalBoxes_ByTheirDepth_HaveThePublishedVolumesAndCounts()
    {
        int quirks = 0;
        foreach (Dictionary<string, string> row in CaseFile.Table("metal-boxes.csv"))
        {
            Volume volume = Volume.FromCubicInches(decimal.Parse(row["in3"], CultureInfo.InvariantCulture));
            int gangs = int.Parse(row["gangs"], CultureInfo.InvariantCulture);
            Assert.True(PartsCatalog.Generic.TryFindVolumes(new BoxKind(row["kind"]), gangs, out VolumesPart? sold));
            int which = sold.Depths.ToList().IndexOf(CaseFile.Inches(row["depth"]));
            Assert.Equal(volume * gangs, sold.Volumes[which]);
            foreach (string awg in new[] { "18", "16", "14", "12", "10", "8", "6" })
            {
                bool isQuirk = awg == "8" && row["8"] != row["computed 8"];
                quirks += isQuirk ? 1 : 0;
                Assert.All(Editions, one => Assert.Equal(isQuirk ? row["computed 8"] : row[awg], RuleSets.FillCounting(one.Edition).CountIn(ConductorSize.Parse(awg + " AWG"), volume).ToString(CultureInfo.InvariantCulture)));
            }

            // A box whose depth is measured needs no mark: as many 14 AWG as are printed fit, and one more doesn't.
            DeviceBox box = new DeviceBox(OneBox.Id, BoxPurpose.General).WithKind(new BoxKind(row["kind"])).WithGangs(gangs).WithClamps(CableClamps.None).WithDevices(Enumerable.Repeat(DeviceKind.Blank, gangs).ToArray())
                .WithSize(new BoxSize(CaseFile.Inches("2"), CaseFile.Inches("3"), CaseFile.Inches(row["depth"])));
            int most = int.Parse(row["14"], CultureInfo.InvariantCulture) * gangs;
            foreach (int more in new[] { 0, 1 })
            {
                OneBox placed = Placed(NecEdition.Nec2023, box.WithConductors(new[] { new LooseConductors(most + more, ConductorSize.Awg14) }));
                Assert.Equal(more == 0 ? Verdict.Passes : Verdict.Fails, placed.Verdict());
            }
        }

        Assert.Equal(1, quirks);
    }

    internal static OneBox Placed(NecEdition edition, DeviceBox box) => new()
    {
        Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(edition), "box-fill"),
        Box = box.WithAt(OneBox.Middle).WithHeight(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor)),
    };

    internal static Volume InPicoliters(Fraction cubicInches)
    {
        Fraction picoliters = cubicInches * new Fraction(new BigInteger(16_387_064_000));
        Assert.True(picoliters.Denominator.IsOne);
        return Volume.FromPicoliters((long)picoliters.Numerator);
    }

    private static decimal Expected(JsonElement row, int year) => row.GetProperty("fill").GetProperty(year.ToString(CultureInfo.InvariantCulture)).GetDecimal();

    private static FillSketch Read(JsonElement row)
    {
        string[] Texts(string name) => row.TryGetProperty(name, out JsonElement list) ? list.EnumerateArray().Select(one => one.GetString()!).ToArray() : [];
        return new()
        {
            Kind = row.TryGetProperty("kind", out JsonElement kind) ? kind.GetString()! : "nail-on",
            Gangs = row.TryGetProperty("gangs", out JsonElement gangs) ? gangs.GetInt32() : 1,
            Cables = Texts("cables"),
            Conductors = Texts("conductors"),
            Devices = Texts("devices"),
            Connected = Texts("connected"),
            Widths = row.TryGetProperty("widths", out JsonElement widths) ? widths.EnumerateArray().Select(one => one.GetInt32()).ToArray() : [],
            Rating = row.TryGetProperty("rating", out JsonElement rating) ? rating.GetString() : null,
            Fittings = Texts("fittings"),
            Clamps = row.TryGetProperty("clamps", out JsonElement clamps) && clamps.GetBoolean(),
        };
    }
}
