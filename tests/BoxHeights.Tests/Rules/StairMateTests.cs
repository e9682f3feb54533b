using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Where switches say what they control, one that is lacking at a stair controls what its mate at the other end does.</summary>
public sealed class StairMateTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    private static StairFlight Stair { get; } = new StairFlight("main", "low", "high", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("20")).WithWall("hall/stair");

    // Lights L1 in the lower hall, U1 and U2 above; each switch is "where:devices>controls". What the added one controls is what a pair would.
    [Theory]
    [InlineData("high:three-way-switch>L1 high:switch>U1,U2", "main on low", "L1")]
    [InlineData("high:switch>U1,U2 high:three-way-switch>L1", "main on low", "L1")]
    [InlineData("high:three-way-switch>L1,U1 high:switch>U2", "main on low", "L1,U1")]
    [InlineData("high:switch+three-way-switch>U1,U2,L1", "main on low", "L1")]
    [InlineData("low:switch>L1 low:three-way-switch>U1,U2", "main on high", "U1,U2")]
    public void Remedy_OfAStairWithASwitchAtOneEnd_ControlsWhatItsMateDoes(string switches, string subject, string controls)
    {
        Dwelling house = House(switches);
        Finding finding = Assert.Single(Evaluator.Evaluate(house).Findings, one => one.RuleId == "stair-switches");
        Assert.Equal(subject, finding.Subject);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.Equal(controls, string.Join(",", Assert.Single(cure.Placed).Box.Controls));
        Assert.EndsWith("to control " + controls.Replace(",", " and ", StringComparison.Ordinal), cure.Text, StringComparison.Ordinal);

        // Judged afresh: the stair has its switches, and nothing is said of what they control that wasn't said before.
        Evaluation after = Evaluator.Evaluate(cure.ApplyTo(house));
        Assert.DoesNotContain(after.Findings, one => one.RuleId == "stair-switches");
        Assert.Empty(Controls(after).Except(Controls(Evaluator.Evaluate(house))));
        Assert.DoesNotContain("control-ways:" + controls.Split(',')[0], Controls(after));
    }

    [Fact]
    public void Remedy_OfAStairWhereNobodySaysWhatSwitchesControl_SaysNothingOfItEither()
    {
        Dwelling house = House("high:three-way-switch> high:switch>");
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(Assert.Single(Evaluator.Evaluate(house).Findings, one => one.RuleId == "stair-switches").Remedies));
        Assert.Empty(Assert.Single(cure.Placed).Box.Controls);
    }

    [Fact]
    public void Mend_OfAStairWithASwitchAtOneEnd_PairsIt()
    {
        Dwelling mended = Evaluator.Evaluate(House("high:three-way-switch>L1 high:switch>U1,U2")).Mend().Dwelling;
        Assert.Equal(["main-foot-switch", "s0"], mended.PlacedBoxes().Where(placed => placed.Box.Controls.Contains("L1")).Select(placed => placed.Box.Id).Order(StringComparer.Ordinal));
    }

    // The planner adds the switches itself: those at the head are described, the foot's is their mate.
    [Fact]
    public void Plan_BesideASwitchThatIsDescribed_PairsIt()
    {
        Dwelling planned = new RoughInPlanner(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice).Plan(House("high:three-way-switch>L1 high:switch>U1,U2")).Dwelling;
        Assert.DoesNotContain(Evaluator.Evaluate(planned).Findings, one => one.RuleId is "stair-switches" or "control-ways" or "switch-serves");
        Assert.True(planned.PlacedBoxes().Count(placed => placed.Box.Controls.Contains("L1")) > 1);
    }

    private static string[] Controls(Evaluation evaluation) =>
        evaluation.Findings.Where(one => one.RuleId is "control-ways" or "switch-serves" or "light-has-switch" or "light-control").Select(one => one.RuleId + ":" + one.Subject).ToArray();

    internal static Dwelling House(string switches)
    {
        DeviceBox receptacle = new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        DwellingBuilder house = new("stairs");
        house.Add(new Storey("low")).Add(new Storey("high").WithAboveBelow(CaseFile.Inches("105")));
        RoomBuilder hall = house.Room("hall", RoomKind.Hall, "low");
        hall.Wall("stair", CaseFile.Inches("170"));
        WallBuilder end = hall.Wall("end", CaseFile.Inches("120"));
        end.Add(receptacle.WithId("R1").WithAt(CaseFile.Inches("80")));
        hall.AddOverhead(Light("L1"));
        RoomBuilder landing = house.Room("landing", RoomKind.Hall, "high");
        WallBuilder side = landing.Wall("side", CaseFile.Inches("140"));
        side.Add(receptacle.WithId("R2").WithAt(CaseFile.Inches("100")));
        landing.AddOverhead(Light("U1")).AddOverhead(Light("U2"));
        int count = 0;
        foreach (string[] one in switches.Split(' ').Select(one => one.Split(':', '>')))
        {
            (one[0] == "low" ? end : side).Add(new DeviceBox("s" + count, BoxPurpose.Switch)
                .WithDevices(new Items<DeviceKind>(one[1].Split('+').Select(device => new DeviceKind(device))))
                .WithControls(new Items<string>(one[2].Split(',', StringSplitOptions.RemoveEmptyEntries)))
                .WithAt(CaseFile.Inches("24") + (CaseFile.Inches("20") * count++)).WithHeight(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor)));
        }

        return house.Build().WithFlights(new[] { Stair });
    }

    private static DeviceBox Light(string id) => new DeviceBox(id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire });
}
