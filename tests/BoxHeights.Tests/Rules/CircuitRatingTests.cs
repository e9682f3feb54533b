using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>14 AWG is protected at 15 A (NEC 240.4(D)), where counters, basins and laundries ask for 20 A (210.11(C)).</summary>
public sealed class CircuitRatingTests
{
    [Theory]
    [InlineData("counter", "14-2", "", "circuit-20a", Verdict.Fails)]
    [InlineData("counter", "12-2", "", "circuit-20a", Verdict.Passes)]
    [InlineData("bath", "14-2,14-3", "", "circuit-20a", Verdict.Fails)]
    [InlineData("laundry", "10-2", "", "circuit-20a", Verdict.Passes)]
    [InlineData("garage", "14-2", "", "garage-circuit-20a", Verdict.Fails)]
    [InlineData("garage", "12-2", "", "garage-circuit-20a", Verdict.Passes)]
    [InlineData("counter", "12-2,14-2", "", "circuit-20a", Verdict.Unknown)]
    [InlineData("counter", "12-2,14-2", "12", "circuit-20a", Verdict.Passes)]
    [InlineData("counter", "12-2,14-2", "14", "circuit-20a", Verdict.Fails)]
    [InlineData("counter", "", "", "circuit-20a", null)]
    [InlineData("general", "14-2", "", "circuit-20a", null)]
    [InlineData("bath", "14-2", "", "garage-circuit-20a", null)]
    public void State_CablesOfAReceptacle_TurnAt12Awg(string purpose, string cables, string connected, string rule, Verdict? expected)
    {
        DeviceBox box = new DeviceBox(OneBox.Id, new BoxPurpose(purpose)).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(OneBox.Middle)
            .WithCables(cables.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(CableType.Parse).ToArray())
            .WithConnected(connected.Length == 0 ? default : new[] { ConductorSize.Parse(connected + " AWG") });
        OneBox one = new OneBox { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), rule), Box = box }.At(BoxHeight.ToCenter(CaseFile.Inches("44"), Datum.Subfloor));
        Assert.Equal(expected, one.Check()?.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.Devices : MissingFacts.None, one.Check()?.Needs ?? MissingFacts.None);
        Assert.Null((one with { Box = one.Box.WithExisting(true) }).Check());
        Assert.Null((one with { Box = one.Box.WithDedicated("disposal") }).Check());
    }

    // A row that asks for a circuit of one ampere less, as many and one more than its conductor is protected at.
    [Theory]
    [InlineData("circuit-20a", "counter")]
    [InlineData("garage-circuit-20a", "garage")]
    public void Row_OfEachConductor_TurnsJustPastItsRating(string rule, string purpose)
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("conductor-ratings.csv"))
        {
            CircuitRating circuit = Assert.IsType<CircuitRating>(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023).Row(rule));
            Assert.Contains("240.4(D)", circuit.Citation.Section, StringComparison.Ordinal);
            Assert.Equal(Confidence.FromMemory, circuit.Citation.Confidence);
            DeviceBox box = new DeviceBox(OneBox.Id, new BoxPurpose(purpose)).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(OneBox.Middle)
                .WithCables(new[] { CableType.Parse("12-2") }).WithConnected(new[] { ConductorSize.Parse(row["size"]) });
            int rated = int.Parse(row["amperes"], CultureInfo.InvariantCulture);
            foreach (int more in new[] { -1, 0, 1 })
            {
                OneBox one = new OneBox { Rules = new RuleSet([circuit with { Amperes = rated + more, Protected = circuit.Protected.With(new(ConductorSize.Awg6, 100)) }]), Box = box };
                Assert.True((more > 0 ? Verdict.Fails : Verdict.Passes) == one.At(BoxHeight.ToCenter(CaseFile.Inches("44"), Datum.Subfloor)).Verdict(), row["size"] + " at " + (rated + more) + " A");
            }
        }
    }

    [Theory]
    [InlineData("circuit-20a", "counter", "must be on a circuit of 20 A", "210.11(C)(1) to (3)")]
    [InlineData("garage-circuit-20a", "garage", "must be on a circuit of 20 A, as those that a garage has to have are", "210.11(C)(4)")]
    public void Message_OfThinCables_SaysWhatTheyAreGoodFor(string rule, string purpose, string asked, string section)
    {
        DeviceBox box = new DeviceBox(OneBox.Id, new BoxPurpose(purpose)).WithDevices(new[] { DeviceKind.GfciReceptacle }).WithAt(OneBox.Middle).WithCables(new[] { CableType.Parse("14-2") });
        OneBox one = new OneBox { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), rule), Box = box }.At(BoxHeight.ToCenter(CaseFile.Inches("44"), Datum.Subfloor));
        Finding finding = Assert.Single(one.Evaluate().Findings);
        Assert.Contains("fed by 14 AWG, which is protected at 15 A at most, " + asked + ": allowed at least 20, off by 5 [NEC 2023 " + section + ", 240.4(D) (from memory: check)]", finding.Message, StringComparison.Ordinal);
        Assert.Contains("12 AWG", Assert.IsType<NoneFound>(Assert.Single(finding.Remedies)).Text, StringComparison.Ordinal);
    }
}
