using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Plans of rooms in which boxes hang already, at a height of their own.</summary>
public sealed class PlannedAmongOthersTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    // NEC 210.52(4): above 5 ft 6 in none counts as required, so that the walls lack all; three boxes at 70 in make the level that new ones, of which four are needed, can't be on. Lower ones count, and the
    // wall behind the door lacks its own.
    [Theory]
    [InlineData("70", false, 4)]
    [InlineData("70", true, 4)]
    [InlineData("60", true, 1)]
    [InlineData("24", false, 1)]
    public void Plan_WhereOnlyTheirLevelIsAgainstARequiredOutlet_PlansItAndSaysSo(string center, bool pinned, int least)
    {
        Dwelling house = Bedroom(box => box.WithPinned(pinned), "general", center);
        Assert.Contains(Evaluator.Evaluate(house).Findings, finding => finding is { RuleId: "wall-outlets", IsViolation: true });
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house, "bed");
        Assert.DoesNotContain(Evaluator.Evaluate(plan.Dwelling).Findings, finding => finding.RuleId == "wall-outlets" || (finding.IsViolation && plan.Reasons.Any(box => box.Id == finding.Subject)));
        Assert.InRange(plan.Reasons.Count(box => box.RuleId == "wall-outlets"), least, 4);
        Assert.Single(plan.Obstacles, line => line.Contains("uniform-level", StringComparison.Ordinal));
    }

    // A switch hangs 60 in to the top beside one door. A second beside the other, where such are usually set, makes two heights for two switches, of which the lower is the level.
    [Fact]
    public void Plan_WhereOnlyTheLevelIsAgainstASwitch_PlansItAndSaysSo()
    {
        DwellingBuilder house = new DwellingBuilder("hall").Add(new Storey("first"));
        RoomBuilder room = house.Room("hall", RoomKind.Hall, "first");
        Opening Door(string id) => new Opening(id, OpeningKind.Door, In("10"), In("42")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);
        room.Wall("north", In("200")).Add(Door("d1"));
        room.Wall("east", In("60"));
        room.Wall("south", In("200")).Add(Door("d2"));
        room.Wall("west", In("60"));
        Dwelling bare = house.Build();
        DeviceBox first = new DeviceBox("S", BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(In("47")).WithHeight(BoxHeight.Parse("60 in to top above subfloor")).WithPinned(true);
        RoomPlan plan = new RoughInPlanner(Rules).Plan(bare.WithBox(new("hall/north", first)));
        Assert.Equal(
            new RoughInPlanner(Rules).Plan(bare).Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Switch),
            plan.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Switch));
        Assert.Single(plan.Obstacles, line => line.Contains("uniform-level", StringComparison.Ordinal));
    }

    /// <summary>A bedroom with two boxes on its north wall and one on its east wall, and a door at the left end of its south wall.</summary>
    private static Dwelling Bedroom(Func<DeviceBox, DeviceBox> how, string purpose, string center)
    {
        DeviceBox Box(string id, int at) => how(new DeviceBox(id, new BoxPurpose(purpose)).WithDevices(DeviceKind.DuplexReceptacle).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.ToCenter(In(center), Datum.Subfloor)));
        DwellingBuilder house = new DwellingBuilder("old").Add(new Storey("first"));
        RoomBuilder room = house.Room("bed", RoomKind.Bedroom, "first");
        room.Wall("north", In("150")).Add(Box("old-1", 20)).Add(Box("old-2", 120));
        room.Wall("east", In("130")).Add(Box("old-3", 60));
        room.Wall("south", In("150")).Add(new Opening("door", OpeningKind.Door, In("10"), In("42")));
        room.Wall("west", In("130"));
        return house.Build();
    }

    private static Distance In(string inches) => Distance.Parse(inches + " in");
}
