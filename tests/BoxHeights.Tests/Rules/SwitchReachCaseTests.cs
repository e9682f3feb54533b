using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 404.8(A): the center of the grip, at its highest, at most 6 ft 7 in above the floor.</summary>
public sealed class SwitchReachCaseTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    [Fact]
    public void SwitchReach_AtTheHighestGrip_OneTickUnderAtAndOver()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("switch-reach.csv"))
        {
            Fraction limit = (CaseFile.Number(row["limit ft"]) * new Fraction(12)) + CaseFile.Number(row["limit in"]);
            Assert.Equal(CaseFile.Number(row["highest center"]), limit - CaseFile.Number(row["grip above center"]));
            OneBox box = Switch(row["device"], (NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture));
            Distance highest = CaseFile.Inches(row["highest center"]);
            foreach ((Distance off, Verdict expected) in new[] { (-Tick, Verdict.Passes), (Distance.Zero, Verdict.Passes), (Tick, Verdict.Fails) })
            {
                Check check = box.At(BoxHeight.ToCenter(highest + off, Datum.FinishedFloor)).Check()!.Value;
                Assert.Equal(expected, check.Verdict);
                Assert.Equal(-off, check.Margin.AsDistance());
            }
        }
    }

    // The highest grip 79-5/8 in above the subfloor: a floor of 5/8 in or more brings it within 79 in.
    [Fact]
    public void SwitchReach_FloorNotChosen_SaysForWhichFloorsItHolds()
    {
        OneBox box = Switch("toggle-switch", NecEdition.Nec2023).At(BoxHeight.ToCenter(CaseFile.Inches("79-1/4"), Datum.Subfloor));
        Check check = box.Check()!.Value;
        Assert.Equal(Verdict.Unknown, check.Verdict);
        Assert.Equal(MissingFacts.FloorFinish, check.Needs);
        Finding finding = box.Evaluate().Findings.Single();
        Assert.Equal(Verdict.Unknown, finding.Verdict);
        Assert.Contains("good for any floor of at least 5/8 in", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("78.625", Verdict.Passes)]
    [InlineData("79.875", Verdict.Unknown)]
    public void SwitchReach_FloorNotChosen_IsDecidedAtTheEndsOfItsRange(string center, Verdict at)
    {
        OneBox box = Switch("toggle-switch", NecEdition.Nec2023);
        Assert.Equal(at, box.At(BoxHeight.ToCenter(CaseFile.Inches(center), Datum.Subfloor)).Verdict());
        Assert.Equal(at + 1, box.At(BoxHeight.ToCenter(CaseFile.Inches(center) + Tick, Datum.Subfloor)).Verdict());
    }

    [Fact]
    public void SwitchReach_AReceptacle_IsNoSwitch()
    {
        OneBox box = new OneBox { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "switch-reach") };
        Assert.Null(box.At(BoxHeight.ToCenter(CaseFile.Inches("90"), Datum.FinishedFloor)).Check());
    }

    private static OneBox Switch(string device, NecEdition edition) => new()
    {
        Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(edition), "switch-reach"),
        Box = new DeviceBox(OneBox.Id, BoxPurpose.Switch) { Devices = new[] { new DeviceKind(device) }, At = OneBox.Middle },
    };
}
