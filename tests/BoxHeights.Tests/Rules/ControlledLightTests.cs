using System;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Lights and the switches that control them. That a room has a light that a switch controls is NEC 210.70(A)(1); the rest is common practice, no source.</summary>
public sealed class ControlledLightTests
{
    private static readonly Rule[] Rows =
    [
        .. RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).Rows.Where(row => row.Id == "light-control"),
        .. RuleSets.RoughInPractice.Rows.Where(row => row.Id is "light-has-switch" or "switch-serves" or "control-ways"),
    ];

    private static readonly LayoutEvaluator Control = new(new RuleSet(Rows));

    // Each switch: its devices, then what it controls. The kitchen has lights k1 and k2, the bath b1.
    [Theory]
    [InlineData("", "")]
    [InlineData("switch>", "")]
    [InlineData("switch>k1,k2 switch>b1", "")]
    [InlineData("switch>k1,k2", "light-control:bath")]
    [InlineData("switch>k1 switch>b1", "light-has-switch:k2")]
    [InlineData("switch>b1", "light-control:kitchen")]
    [InlineData("switch>k1,k2,b1 switch>", "switch-serves:s1")]
    [InlineData("switch>k1,k2,b1 dimmer>", "switch-serves:s1")]
    [InlineData("switch>k1,k2 switch>b1 switch>b1", "control-ways:b1")]
    [InlineData("switch>k1,k2 three-way-switch>b1", "control-ways:b1")]
    [InlineData("switch>k1,k2 three-way-switch>b1 three-way-switch>b1", "")]
    [InlineData("switch>k1,k2 three-way-switch>b1 four-way-switch>b1", "control-ways:b1")]
    [InlineData("switch>k1,k2 three-way-switch>b1 three-way-switch>b1 three-way-switch>b1", "control-ways:b1")]
    [InlineData("switch>k1,k2 three-way-switch>b1 four-way-switch>b1 three-way-switch>b1", "")]
    [InlineData("switch>k1,k2 three-way-switch>b1 four-way-switch>b1 four-way-switch>b1 three-way-switch>b1", "")]
    [InlineData("switch+three-way-switch>k1,k2,b1 three-way-switch>b1", "")]
    [InlineData("switch>k1,k2 dimmer>b1 dimmer>b1", "")]
    public void Controls_ThatDontGoTogether_AreFound(string switches, string expected)
    {
        Evaluation evaluation = Control.Evaluate(House(switches));
        Assert.Equal(expected, string.Join(" ", evaluation.Findings.Select(finding => finding.RuleId + ":" + finding.Subject).Order(StringComparer.Ordinal)));
        Assert.All(evaluation.Findings, finding => Assert.Equal(finding.RuleId == "light-control" ? Severity.Violation : Severity.Advice, finding.Severity));
    }

    // What to do is said by the boxes' ids: two places take three-way switches, each place between them a four-way one; no box that is added mends these.
    [Theory]
    [InlineData("switch>k1,k2 switch>b1 switch>b1", "take three-way switches in s1 and s2")]
    [InlineData("switch>k1,k2 three-way-switch>b1 three-way-switch>b1 three-way-switch>b1", "of s1 and s2 and s3, take three-way switches in two, those at the ends, and four-way switches in the others")]
    [InlineData("switch>k1,k2 three-way-switch>b1", "take a switch that needs no mate in s1, or let its mate control b1 too")]
    [InlineData("switch>k1 switch>b1", "let a switch control k2, or add a switch that does")]
    [InlineData("switch>k1,k2,b1 switch>", "say what s1 controls, or leave it out")]
    [InlineData("switch>k1,k2", "let a switch control one of them, or add a switch that does")]
    public void Remedy_OfControlsThatDontGoTogether_SaysWhatToDo(string switches, string toDo) =>
        Assert.Equal(toDo, Assert.IsType<NoneFound>(Assert.Single(Assert.Single(Control.Evaluate(House(switches)).Findings).Remedies)).Text);

    [Fact]
    public void Controls_OfNoSwitch_LeaveOpenWhatADocumentAsksAndSayNothingOfHabits()
    {
        Evaluation evaluation = Control.Evaluate(House("switch>"));
        string told = Assert.Single(evaluation.NotJudged, line => line.Contains("which light a switch controls isn't described", StringComparison.Ordinal));
        Assert.StartsWith("light-control:", told, StringComparison.Ordinal);
    }

    // A switch in the kitchen that says nothing may be the kitchen's; the bath has none that could be.
    [Fact]
    public void Controls_OfOneSwitchOfTheRoomUntold_LeaveOpenWhatThatRoomHas()
    {
        Evaluation evaluation = Control.Evaluate(House("switch>b1 switch>"));
        Assert.DoesNotContain(evaluation.Findings, finding => finding.RuleId == "light-control");
        Assert.Contains(evaluation.NotJudged, line => line.StartsWith("light-control:", StringComparison.Ordinal) && line.Contains("kitchen", StringComparison.Ordinal));
    }

    [Fact]
    public void Controls_OfExistingWork_ArentAsked()
    {
        Dwelling house = House("switch>k1 switch>").WithBoxes(box => box.Id == "k1" ? box : box.WithExisting(true));
        Assert.Empty(Control.Evaluate(house).Findings);
    }

    [Fact]
    public void Controls_OfABoxThatIsntThere_AreAFault()
    {
        LayoutFault fault = Assert.Single(Control.Evaluate(House("switch>k1,k2,b1,attic")).Findings, finding => finding.Fault is not null).Fault!;
        Assert.Equal((LayoutFaultKind.UnknownReference, "s0"), (fault.Kind, fault.Subject));
        Assert.Contains("attic", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Controls_AreIds()
    {
        DeviceBox box = new("s", BoxPurpose.Switch);
        Assert.Throws<ArgumentException>(() => box.WithControls(new[] { "kitchen/k1" }));
        Assert.Throws<ArgumentException>(() => box.WithControls(new[] { "" }));
    }

    private static Dwelling House(string switches)
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("main"));
        RoomBuilder kitchen = house.Room("kitchen", RoomKind.Kitchen, "main");
        kitchen.AddOverhead(Light("k1")).AddOverhead(Light("k2"));
        WallBuilder wall = kitchen.Wall("north", Distance.FromFeet(20));
        house.Room("bath", RoomKind.Bathroom, "main").AddOverhead(Light("b1"));
        int count = 0;
        foreach (string[] one in switches.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(one => one.Split('>')))
        {
            wall.Add(new DeviceBox("s" + count, BoxPurpose.Switch)
                .WithDevices(new Items<DeviceKind>(one[0].Split('+').Select(device => new DeviceKind(device))))
                .WithControls(new Items<string>(one[1].Split(',', StringSplitOptions.RemoveEmptyEntries)))
                .WithAt(Distance.FromInches(20 * (count + 1))).WithHeight(BoxHeight.ToTop(Distance.FromInches(48), Datum.Subfloor)));
            count++;
        }

        return house.Build();
    }

    private static DeviceBox Light(string id) => new DeviceBox(id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire });
}
