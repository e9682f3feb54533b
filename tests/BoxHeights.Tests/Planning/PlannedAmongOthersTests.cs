using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Plans of rooms in which boxes hang already, at a height of their own.</summary>
public sealed class PlannedAmongOthersTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    // NEC 210.52(4): above 5 ft 6 in none counts as required, so that the walls lack all; three boxes at 70 in make the level that new ones, of which four are needed, can't be on. Lower ones count, and the
    // wall behind the door lacks its own, which is level with them.
    [Theory]
    [InlineData("70", false, 4, null)]
    [InlineData("70", true, 4, null)]
    [InlineData("60", true, 1, "60")]
    [InlineData("24", false, 1, "24")]
    public void Plan_OfARequiredOutlet_IsOnTheirLevelOrSaysThatItCantBe(string center, bool pinned, int least, string? planned)
    {
        Dwelling house = Bedroom(box => box.WithPinned(pinned), "general", center);
        Assert.Contains(Evaluator.Evaluate(house).Findings, finding => finding is { RuleId: "wall-outlets", IsViolation: true });
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house, "bed");
        Assert.DoesNotContain(Evaluator.Evaluate(plan.Dwelling).Findings, finding => finding.RuleId == "wall-outlets" || (finding.IsViolation && plan.Reasons.Any(box => box.Id == finding.Subject)));
        Assert.InRange(plan.Reasons.Count(box => box.RuleId == "wall-outlets"), least, 4);
        Assert.Equal(planned is null ? 1 : 0, plan.Obstacles.Where(line => line.Contains("uniform-level", StringComparison.Ordinal)).Count);
        Assert.All(plan.Dwelling.PlacedBoxes().Where(placed => plan.Reasons.Any(box => box.Id == placed.Box.Id && box.RuleId == "wall-outlets")), placed =>
            Assert.Equal(planned is null ? BoxHeight.Parse("16 in to top above subfloor") : BoxHeight.ToCenter(In(planned), Datum.Subfloor), placed.Box.Height));
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

    // Whatever is usual: new receptacles are level with the old ones in their room, wherever those count, NEC 210.52(4), and nothing is found of them.
    [Theory]
    [InlineData("24", false, "24")]
    [InlineData("24", true, "24")]
    [InlineData("60", false, "60")]
    [InlineData("12-1/8", false, "12-1/8")]
    [InlineData("70", false, null)]
    [InlineData("70", true, null)]
    public void Plan_BesideOldBoxes_IsLevelWithThemWhereTheyCount(string center, bool isUntouched, string? planned)
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(Bedroom(box => isUntouched ? box.WithUntouched(true) : box.WithExisting(true), "general", center), "bed");
        PlacedBox[] added = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.General && plan.Reasons.Any(box => box.Id == placed.Box.Id))];
        Assert.NotEmpty(added);
        Assert.All(added, placed => Assert.Equal(planned is null ? BoxHeight.Parse("16 in to top above subfloor") : BoxHeight.ToCenter(In(planned), Datum.Subfloor), placed.Box.Height));
        Assert.DoesNotContain(Evaluator.Evaluate(plan.Dwelling).Findings, finding => plan.Reasons.Any(box => box.Id == finding.Subject) || finding.RuleId == "wall-outlets");
        Assert.DoesNotContain(plan.Obstacles, line => line.Contains("level", StringComparison.Ordinal));
    }

    // Old ones hang at 7 in, two new ones at 18 in to the center: what is planned is level with those.
    [Fact]
    public void Plan_BesideOldAndNewBoxes_IsLevelWithTheNewOnes()
    {
        DeviceBox New(string id, int at) => new DeviceBox(id, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse("18 in to center above subfloor"));
        Dwelling house = Bedroom(box => box.WithExisting(true), "general", "7").WithBox(new("bed/west", New("n1", 30))).WithBox(new("bed/west", New("n2", 100)));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house, "bed");
        PlacedBox[] added = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.General && plan.Reasons.Any(box => box.Id == placed.Box.Id))];
        Assert.NotEmpty(added);
        Assert.All(added, placed => Assert.Equal(BoxHeight.Parse("18 in to center above subfloor"), placed.Box.Height));
    }

    // One room has switches at 46 in to the top, as they were measured; the storey's new ones are level with them, in the hall that is planned as in the old room.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Plan_OfAStoreyWithOldSwitches_IsLevelWithThem(bool areMeasured)
    {
        DeviceBox old = new DeviceBox("old", BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(In("100")).WithHeight(BoxHeight.Parse((areMeasured ? 48 : 46) + " in to top above subfloor")).WithExisting(true)
            .WithMeasured(areMeasured ? new MeasuredHeight(BoxHeight.Parse("45-15/16 in to top above subfloor")) : null);
        RoomPlan plan = new RoughInPlanner(Rules).Plan(Hall(old));
        Assert.Equal(["46 in to top above subfloor"], plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch && placed.Box.Id != "old").Select(placed => placed.Box.Height.ToString()!).Distinct());
        Assert.DoesNotContain(Evaluator.Evaluate(plan.Dwelling).Findings, finding => plan.Reasons.Any(box => box.Id == finding.Subject));
    }

    // What is new in the storey leads what was there, but in the old room.
    [Fact]
    public void Plan_OfAStoreyWithOldAndNewSwitches_IsLevelWithTheNewOnes()
    {
        DeviceBox Switch(string id, string at, int top) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(In(at)).WithHeight(BoxHeight.Parse(top + " in to top above subfloor"));
        Dwelling house = Hall(Switch("old", "100", 46).WithExisting(true)).WithBox(new("hall/north", Switch("new", "150", 50)));
        PlacedBox[] planned = [.. new RoughInPlanner(Rules).Plan(house).Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch && placed.Box.Id is not ("old" or "new"))];
        Assert.Contains(planned, placed => placed.Address.StartsWith("hall/", StringComparison.Ordinal));
        Assert.All(planned, placed => Assert.Equal((placed.Address.StartsWith("hall/", StringComparison.Ordinal) ? 50 : 46) + " in to top above subfloor", placed.Box.Height.ToString()));
    }

    /// <summary>A hall with two doors, and a study with one, in which a box stands on the north wall.</summary>
    private static Dwelling Hall(DeviceBox inStudy)
    {
        DwellingBuilder house = new DwellingBuilder("hall").Add(new Storey("first"));
        Opening Door(string id) => new Opening(id, OpeningKind.Door, In("10"), In("42")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);
        RoomBuilder hall = house.Room("hall", RoomKind.Hall, "first");
        hall.Wall("north", In("200")).Add(Door("d1"));
        hall.Wall("east", In("60"));
        hall.Wall("south", In("200")).Add(Door("d2"));
        hall.Wall("west", In("60"));
        RoomBuilder study = house.Room("study", RoomKind.Office, "first");
        study.Wall("north", In("140")).Add(inStudy);
        study.Wall("east", In("120")).Add(Door("d3"));
        study.Wall("south", In("140"));
        study.Wall("west", In("120"));
        return house.Build();
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
