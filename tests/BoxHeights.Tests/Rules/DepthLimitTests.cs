using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.24: how deep a box is.</summary>
public sealed class DepthLimitTests
{
    private static readonly int[] Gauges = [14, 12, 10, 8];

    [Fact]
    public void State_OneTickBelowAtAndAbove_TurnsAtTheLeastDepth()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("box-depth.csv"))
        {
            Distance least = CaseFile.Inches(row["least"]);
            foreach (NecEdition edition in new[] { NecEdition.Nec2017, NecEdition.Nec2020, NecEdition.Nec2023, NecEdition.Nec2026 })
            {
                foreach (int ticks in new[] { -1, 0, 1 })
                {
                    Check check = Deep(Box(row), least + Distance.FromTicks(ticks), edition).Check()!.Value;
                    Assert.True((ticks < 0 ? Verdict.Fails : Verdict.Passes) == check.Verdict, row["id"]);
                    Assert.Equal(Distance.FromTicks(ticks), check.Margin.AsDistance());
                }
            }
        }
    }

    // The box is 2 in wide and 4 in tall, of a kind that takes no ring; the device is a dimmer.
    [Fact]
    public void State_DeviceOfAKnownDepth_TurnsAtTheLeastDepth()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("device-depths.csv"))
        {
            DeviceBox box = DeepDevice(row).WithDeviceDepths(new[] { CaseFile.Inches(row["device depth"]) });
            foreach (int ticks in new[] { -1, 0, 1 })
            {
                OneBox placed = Deep(box, CaseFile.Inches(row["least"]) + Distance.FromTicks(ticks), (NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture));
                Assert.True((ticks < 0 ? Verdict.Fails : Verdict.Passes) == placed.Verdict(), row["id"]);

                // The catalog may know the device as well as the box does.
                DevicePart known = new(DeviceKind.Dimmer, default, Citation.CommonPractice, null, CaseFile.Inches(row["device depth"]));
                OneBox byCatalog = placed with { Box = placed.Box.WithDeviceDepths(default), Options = EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.With(known)) };
                Assert.Equal(placed.Check()!.Value.Margin, byCatalog.Check()!.Value.Margin);
            }
        }
    }

    // On 12 AWG 1-7/8 + 1/4 = 2-1/8, on 8 AWG 2-1/16: the thicker conductor asks for less here.
    [Theory]
    [InlineData("2", Verdict.Fails)]
    [InlineData("2-1/16", Verdict.Unknown)]
    [InlineData("2-1/8", Verdict.Passes)]
    public void State_ThickerConductorAsksForLess_IsKnownOnlyFromTheThinner(string depth, Verdict expected)
    {
        DeviceBox box = DeepDevice(CaseFile.Table("device-depths.csv")[0]).WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("8-2") });
        Assert.Equal(expected, Deep(box.WithDeviceDepths(new[] { CaseFile.Inches("1-7/8") }), CaseFile.Inches(depth)).Verdict());
    }

    [Fact]
    public void Finding_OfADeepDevice_SaysHowDeepItIs()
    {
        OneBox box = Deep(DeepDevice(CaseFile.Table("device-depths.csv")[0]).WithDeviceDepths(new[] { CaseFile.Inches("1-3/4") }), CaseFile.Inches("1-7/8"));
        Finding finding = box.Evaluate().Findings.Single();
        Assert.Contains("1-7/8 in deep with a device 1-3/4 in deep", finding.Message, System.StringComparison.Ordinal);
        Assert.Equal(CaseFile.Inches("2-1/8"), Assert.IsType<ResizeBox>(finding.Remedies.Single()).Size!.Value.Depth);
    }

    /// <summary>Random boxes of up to three devices against the paragraphs in sixteenths: every way to connect what isn't stated is tried.</summary>
    [Fact]
    public void State_AnyDevices_AgreesWithEveryWayToConnectThem() => Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []), seed =>
    {
        System.Random random = new(seed);
        int[] gauges = Enumerable.Range(0, random.Next(1, 4)).Select(_ => Gauges[random.Next(4)]).ToArray();
        int count = random.Next(1, 4);
        int stated = random.Next(0, count + 1);
        int[] connected = Enumerable.Range(0, stated).Select(_ => gauges[random.Next(gauges.Length)]).ToArray();
        int[] depths = Enumerable.Range(0, count).Select(_ => random.Next(0, 40)).ToArray();
        bool back = random.Next(2) == 0;
        int deep = random.Next(6, 48);
        bool[] ways = Ways(0).ToArray();
        Verdict expected = ways.All(one => one) ? Verdict.Passes : ways.Any(one => one) ? Verdict.Unknown : Verdict.Fails;
        DeviceBox box = new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        {
            Kind = BoxKind.MetalDevice,
            Gangs = count,
            Devices = Enumerable.Repeat(DeviceKind.Switch, count).ToArray(),
            Cables = gauges.Select(awg => CableType.Parse(awg + "-2")).ToArray(),
            Connected = connected.Select(ConductorSize.FromAwg).ToArray(),
            DeviceDepths = depths.Select(DwellingGen.Sixteenths).ToArray(),
            BackEntry = back,
            At = OneBox.Middle,
            Height = BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor),
        };
        Assert.True(expected == Deep(box, DwellingGen.Sixteenths(deep)).Verdict(), seed.ToString(CultureInfo.InvariantCulture));
        return true;

        IEnumerable<bool> Ways(int device) => device == count ? [true]
            : (device < stated ? [connected[device]] : gauges.Distinct()).SelectMany(awg => Ways(device + 1).Select(rest => rest && deep >= Least(awg, depths[device], back)));
    }).Check(Tries.Always(300));

    /// <summary>314.24(B) of 2023 in sixteenths of an inch, paragraph by paragraph.</summary>
    private static int Least(int awg, int device, bool back)
    {
        List<int> asked = [device];
        if (device > 30)
        {
            asked.Add(device + 4);
        }

        switch (awg)
        {
            case 8 or 6:
                asked.Add(33);
                break;
            case 12 or 10:
                asked.Add(19);
                if (device > 16)
                {
                    asked.Add(device + (back ? 8 : 4));
                }

                break;
            default:
                asked.Add(15);
                break;
        }

        return asked.Max();
    }

    private static DeviceBox DeepDevice(Dictionary<string, string> row) => new DeviceBox(OneBox.Id, BoxPurpose.General)
        .WithKind(BoxKind.Handy)
        .WithDevices(new[] { DeviceKind.Dimmer })
        .WithCables(row["cables"].Split(' ').Select(CableType.Parse).ToArray())
        .WithConnected(row["connected"].Length == 0 ? default : new[] { ConductorSize.Parse(row["connected"]) })
        .WithBackEntry(row["back entry"].Length > 0)
        .WithAt(OneBox.Middle)
        .WithHeight(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor));

    [Fact]
    public void State_DepthNotKnownOrWithARing_IsSilent()
    {
        DeviceBox box = Box(CaseFile.Table("box-depth.csv").Single(row => row["id"] == "12 AWG"));
        Assert.Null(Deep(box, null).Check());
        Assert.Null(Deep(box.WithExtension(Volume.FromCubicInches(3m)), CaseFile.Inches("1")).Check());
        Assert.Null(Deep(box.WithKind(BoxKind.FourSquare), CaseFile.Inches("1")).Check());
    }

    // 12 AWG asks for 1-3/16, 14 AWG for 15/16: between them it depends on which the switch is connected to.
    [Theory]
    [InlineData("15/16", Verdict.Unknown)]
    [InlineData("1-1/8", Verdict.Unknown)]
    [InlineData("7/8", Verdict.Fails)]
    [InlineData("1-3/16", Verdict.Passes)]
    public void State_CablesOfTwoSizes_DependsOnWhatTheDeviceIsConnectedTo(string depth, Verdict expected)
    {
        DeviceBox box = Box(CaseFile.Table("box-depth.csv").Single(row => row["id"] == "12 AWG")).WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("14-2") });
        Check check = Deep(box, CaseFile.Inches(depth)).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.Devices : MissingFacts.None, check.Needs);
    }

    // Its one device is on 14 AWG, which asks for 15/16 in: what the gang that is left may hold one day isn't asked.
    [Fact]
    public void State_OneDeviceInTwoGangs_IsJudgedByThatDevice()
    {
        DeviceBox box = Box(CaseFile.Table("box-depth.csv").Single(row => row["id"] == "12 AWG")).WithKind(BoxKind.MetalDevice).WithGangs(2)
            .WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("14-2") }).WithConnected(new[] { ConductorSize.Awg14 });
        Assert.Equal(Verdict.Passes, Deep(box, CaseFile.Inches("1")).Verdict());
        Assert.Equal(Verdict.Unknown, Deep(box.WithDevices(default).WithConnected(default), CaseFile.Inches("1")).Verdict());
    }

    // The shallowest utility box is 1-1/2 in deep and holds 10.3 in³: Table 314.16(A).
    [Fact]
    public void Remedies_ShallowBox_IsADeeperOneOfItsKind()
    {
        OneBox box = Deep(Box(CaseFile.Table("box-depth.csv").Single(row => row["id"] == "12 AWG")), CaseFile.Inches("1"));
        Evaluation evaluation = box.Evaluate();
        ResizeBox remedy = Assert.IsType<ResizeBox>(evaluation.Findings.Single().Remedies.Single());
        Assert.Equal(CaseFile.Inches("1-1/2"), remedy.Size!.Value.Depth);
        Assert.Equal(10.3m, remedy.Volume.CubicInches);
        Assert.True(new LayoutEvaluator(box.Rules).Evaluate(remedy.ApplyTo(evaluation.Dwelling)).IsClean);

        OneBox plastic = box with { Box = box.Box.WithKind(BoxKind.NailOn) };
        Assert.IsType<NoneFound>(plastic.Evaluate().Findings.Single().Remedies.Single());
    }

    // 12-2 and a switch fill 4.5 + 4.5 + 2.25 = 11.25 in³: the shallowest deep enough holds 10.3, the next one 13.0.
    [Fact]
    public void Remedies_ShallowestDeepEnoughIsTooSmall_IsTheNext()
    {
        OneBox box = Deep(Box(CaseFile.Table("box-depth.csv").Single(row => row["id"] == "12 AWG")).WithClamps(CableClamps.None), CaseFile.Inches("1"));
        box = box with { Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) };
        Finding finding = box.Evaluate().Findings.Single(one => one.RuleId == "box-depth");
        ResizeBox remedy = Assert.IsType<ResizeBox>(finding.Remedies.Single());
        Assert.Equal((CaseFile.Inches("1-7/8"), 13m), (remedy.Size!.Value.Depth!.Value, remedy.Volume.CubicInches));
    }

    private static DeviceBox Box(Dictionary<string, string> row) => new DeviceBox(OneBox.Id, BoxPurpose.General)
        .WithKind(new BoxKind(row["kind"]))
        .WithDevices(new[] { new DeviceKind(row["devices"]) })
        .WithCables(row["cables"].Split(' ').Select(CableType.Parse).ToArray())
        .WithConnected(row["connected"].Length == 0 ? default : new[] { ConductorSize.Parse(row["connected"]) })
        .WithAt(OneBox.Middle)
        .WithHeight(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor));

    private static OneBox Deep(DeviceBox box, Distance? depth, NecEdition edition = NecEdition.Nec2023) => new()
    {
        Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(edition), "box-depth"),
        Box = box.WithSize(new BoxSize(CaseFile.Inches("2") * Math.Max(1, box.Gangs ?? 1), CaseFile.Inches("4"), depth)),
    };
}
