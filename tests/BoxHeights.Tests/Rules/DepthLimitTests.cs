using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.24: how deep a box is.</summary>
public sealed class DepthLimitTests
{
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
        Assert.Equal(expected == Verdict.Unknown ? Facts.Devices : Facts.None, check.Needs);
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
        Box = box.WithSize(new BoxSize(CaseFile.Inches("2"), CaseFile.Inches("4"), depth)),
    };
}
