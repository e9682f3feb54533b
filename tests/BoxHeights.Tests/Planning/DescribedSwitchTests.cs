using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Plans of rooms whose lights a described switch is said to control: what is said stays, and nothing is planned that doesn't go with it.</summary>
public sealed class DescribedSwitchTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    // A room with two doors far apart, two lights, and one switch beside the first door or away from both: what it holds, what it controls; then what is planned for the lights, and whether the plan says why nothing is.
    [Theory]
    [InlineData("47", "switch", "A,B", "", true)]
    [InlineData("100", "switch", "A,B", "", true)]
    [InlineData("47", "three-way-switch", "A,B", "three-way-switch:A,B", false)]
    [InlineData("100", "three-way-switch", "A,B", "three-way-switch:A,B four-way-switch:A,B", false)]
    [InlineData("47", "switch", "A", "switch:B", false)]
    public void Plan_OfLightsThatADescribedSwitchControls_GoesWithIt(string at, string device, string controls, string planned, bool isSaid)
    {
        Dwelling house = Hall(new DeviceBox("S", BoxPurpose.Switch).WithDevices(new DeviceKind(device)).WithControls(new Items<string>(controls.Split(','))).WithAt(In(at)).WithHeight(BoxHeight.Parse("48 in to top above subfloor")));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house);
        string[] added = plan.Dwelling.PlacedBoxes().Where(placed => plan.Reasons.Any(reason => reason.Id == placed.Box.Id) && placed.Box.Controls.Count > 0)
            .Select(placed => placed.Box.Devices + ":" + string.Join(",", placed.Box.Controls)).Distinct().ToArray();
        Assert.Equal(planned.Split(' ', StringSplitOptions.RemoveEmptyEntries), added);
        Assert.Equal(isSaid, plan.Notes.Where(note => note.StartsWith("hall: S switches its lights, as described, so that no other place is planned at the entrance", StringComparison.Ordinal)).Count > 0);

        // Every light has its switch, and those of several places go together.
        Assert.DoesNotContain(new LayoutEvaluator(Rules).Evaluate(plan.Dwelling).Findings, finding => finding.RuleId is "control-ways" or "light-has-switch" or "light-control" or "switch-serves" or "three-way-mates");
    }

    // Of which nothing is said but where it is: it counts as one of two places, and the plan says what it has to hold for that.
    [Theory]
    [InlineData("switch", true)]
    [InlineData("three-way-switch", false)]
    public void Plan_BesideASwitchOfWhichNothingIsSaid_SaysWhatItHasToBe(string device, bool isSaid)
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(Hall(new DeviceBox("S", BoxPurpose.Switch).WithDevices(new DeviceKind(device)).WithAt(In("47")).WithHeight(BoxHeight.Parse("48 in to top above subfloor"))));
        Assert.Contains(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Id != "S" && placed.Box.Devices.Contains(DeviceKind.ThreeWaySwitch));
        Assert.Equal(isSaid, plan.Notes.Contains("hall: its lights are planned to be switched from S too, for which a three-way-switch has to be there"));
    }

    private static Dwelling Hall(DeviceBox described)
    {
        DwellingBuilder house = new DwellingBuilder("hall").Add(new Storey("first"));
        RoomBuilder room = house.Room("hall", RoomKind.Hall, "first");
        Opening Door(string id) => new Opening(id, OpeningKind.Door, In("10"), In("42")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);
        room.Wall("north", In("240")).Add(Door("d1")).Add(described);
        room.Wall("east", In("60"));
        room.Wall("south", In("240")).Add(Door("d2"));
        room.Wall("west", In("60"));
        DeviceBox light = new DeviceBox("A", BoxPurpose.Light).WithDevices(DeviceKind.Luminaire).WithPlan(new(In("60"), In("30")));
        room.AddOverhead(light).AddOverhead(light.WithId("B").WithPlan(new(In("180"), In("30"))));
        return house.Build();
    }

    private static Distance In(string inches) => Distance.Parse(inches + " in");
}
