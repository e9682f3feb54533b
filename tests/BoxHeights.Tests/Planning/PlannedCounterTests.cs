using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Counters get as few boxes as serve them, off their ends, and one that protects those it feeds. Worked by hand from the drawings of two kitchens.</summary>
public sealed class PlannedCounterTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    private static PlacedBox[] Counters(RoomPlan plan) => [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Address == "kitchen/north" && placed.Box.Purpose == BoxPurpose.Counter).OrderBy(placed => placed.Box.At)];

    // NEC 210.52(C)(1): 24 in of reach. 38 to 70 in, 100 to 140 in and 170 to 182 in of counter, between refrigerator, sink and range: one box each, the second on a block, since no stud is within reach of both its ends.
    [Fact]
    public void Counter_ThatOneBoxServes_GetsOne()
    {
        PlacedBox[] boxes = Counters(new RoughInPlanner(Rules).Plan(RanchHouse.Bare));
        Assert.Equal(3, boxes.Length);
        foreach ((decimal from, decimal to, int box) in new[] { (38m, 70m, 0), (100m, 140m, 1), (170m, 182m, 2) })
        {
            Assert.InRange(boxes[box].Box.At!.Value, Distance.FromInches(Math.Max(from, to - 24)), Distance.FromInches(Math.Min(to, from + 24)));
        }

        Assert.Equal([MountingMethod.Stud, MountingMethod.Blocking, MountingMethod.Stud], boxes.Select(placed => placed.Box.Mounting!.How));
    }

    // NEC 210.52(B)(3): no fewer than two circuits for small appliances serve the counters; 210.8(A) asks for protection, which one device gives all that it feeds. The ranch has three
    // boxes on its wall and one on the island: two circuits, each from an end inward.
    [Fact]
    public void Counters_OfAKitchen_AreOnTwoCircuits_EachProtectedByItsFirst()
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RanchHouse.Bare);
        PlacedBox[] boxes = Counters(plan);
        Assert.Equal(["gfci-receptacle", "duplex-receptacle", "gfci-receptacle"], boxes.Select(placed => placed.Box.Devices.ToString()));
        PlacedBox island = Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Address == "kitchen/floor");
        Assert.Equal("duplex-receptacle", island.Box.Devices.ToString());
        string Reason(PlacedBox placed) => plan.Reasons.Single(one => one.Id == placed.Box.Id).Reason;
        Assert.EndsWith(", on circuit 1 of 2 (counter-outlets)", Reason(boxes[0]), StringComparison.Ordinal);
        Assert.Contains("on circuit 1 of 2, fed through " + boxes[0].Box.Id, Reason(boxes[1]), StringComparison.Ordinal);
        Assert.EndsWith(", on circuit 2 of 2 (counter-outlets)", Reason(boxes[2]), StringComparison.Ordinal);
        Assert.Contains("on circuit 2 of 2, fed through " + boxes[2].Box.Id, Reason(island), StringComparison.Ordinal);
    }

    // A box that is there may be on either circuit, and what it protects isn't described: then each new one protects itself.
    [Fact]
    public void Counters_BesideOneThatIsThere_ProtectThemselves()
    {
        DeviceBox there = new DeviceBox("there", BoxPurpose.Counter).WithDevices(DeviceKind.DuplexReceptacle).WithAt(Distance.FromInches(50)).WithHeight(BoxHeight.Parse("48 in to top above subfloor"));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RanchHouse.Bare.WithBox(new PlacedBox("kitchen/north", there)));
        Assert.All(Counters(plan).Where(placed => placed.Box.Id != "there"), placed => Assert.Equal("gfci-receptacle", placed.Box.Devices.ToString()));
    }

    // In the corner of two counters hardly anything is plugged in (common practice, no source): a box more is set instead. Round the corner, 12 ft along one wall and what is before the range
    // along the other, no two are more than twice the 24 in of NEC 210.52(C)(1) apart.
    [Theory]
    [InlineData(40, 40)]
    [InlineData(60, 20)]
    [InlineData(20, 50)]
    [InlineData(50, 30)]
    public void Counters_RoundACorner_HaveNoBoxInIt(int sink, int range)
    {
        Distance In(decimal inches) => Distance.FromInches(inches);
        Counter Run(string id, decimal from, decimal to, CounterInterruption part) =>
            new Counter(id, CounterKind.Kitchen, In(from), In(to)).WithDepth(In(25.5m)).WithTop(new Level(In(36), Datum.FinishedFloor)).WithInterruptions(part);
        decimal before = 25.5m + range;
        DwellingBuilder house = new("case");
        house.Add(new Storey("main").WithStuds(new StudLayout().WithSpacing(In(16)).WithKnown(StudKnowledge.Declared)));
        RoomBuilder kitchen = house.Room("kitchen", RoomKind.Kitchen, "main");
        kitchen.Wall("north", In(144)).With(wall => wall.WithCounters(Run("long", 0, 144, new(InterruptionKind.Sink, In(sink), In(sink + 33)))));
        kitchen.Wall("east", In(120)).With(wall => wall.WithCounters(Run("short", 25.5m, 120, new(InterruptionKind.Range, In(before), In(before + 30)))));
        kitchen.Wall("south", In(144));
        kitchen.Wall("west", In(120));
        RoomPlan plan = new RoughInPlanner(Rules, RoughInOptions.Default.WithSwitches(false)).Plan(house.Build());
        Distance[] at = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Counter)
            .Select(placed => placed.Address == "kitchen/east" ? In(144) + placed.Box.At!.Value : placed.Box.At!.Value).Order()];
        Assert.All(at, one => Assert.True((one - In(144)).Abs() >= In(8), one + " along the two walls"));
        Distance[] corner = [.. at.Where(one => one > In(sink + 33) && one < In(144 + before))];
        Assert.InRange(corner[0], In(sink + 33), In(sink + 33 + 24));
        Assert.InRange(corner[^1], In(144 + before - 24), In(144 + before));
        Assert.All(corner.Zip(corner.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, Distance.Zero, In(48)));
    }

    // One wall that is described in two parts: 40 in of counter, 20 on either, are within the 24 in of NEC 210.52(C)(1) of one box by the joint, which is no corner. Of two walls at an angle nobody wants it there.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(90, 2)]
    public void Counter_AlongTwoWallsInLine_HasItsBoxBesideTheJoint(int turn, int boxes)
    {
        Distance In(decimal inches) => Distance.FromInches(inches);
        Counter Run(string id, int from, int to) => new Counter(id, CounterKind.Kitchen, In(from), In(to)).WithDepth(In(25.5m)).WithTop(new Level(In(36), Datum.FinishedFloor));
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("main").WithStuds(new StudLayout().WithSpacing(In(16)).WithKnown(StudKnowledge.Declared)));
        RoomBuilder kitchen = house.Room("kitchen", RoomKind.Kitchen, "main");
        kitchen.Wall("first", In(80)).With(wall => wall.WithTurnDegrees(turn).WithCounters(Run("one", 60, 80)));
        kitchen.Wall("second", In(80)).With(wall => wall.WithCounters(Run("two", 0, 20)));
        foreach ((string id, int length) in turn == 0 ? new[] { ("east", 100), ("south", 160), ("west", 100) } : [("south", 80), ("west", 80)])
        {
            kitchen.Wall(id, In(length));
        }

        RoomPlan plan = new RoughInPlanner(Rules, RoughInOptions.Default.WithSwitches(false)).Plan(house.Build());
        Assert.Equal(boxes, plan.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Counter));
    }

    // 2.35 to 3.78 m of counter take two, and with that the kitchen has its two circuits.
    [Fact]
    public void Counter_ThatTakesTwo_HasBothCircuits()
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RowHouse.Bare);
        PlacedBox[] boxes = Counters(plan);
        Assert.Equal(["gfci-receptacle", "gfci-receptacle"], boxes.Select(placed => placed.Box.Devices.ToString()));
        Assert.Equal([1, 2], boxes.Select(placed => plan.Reasons.Single(one => one.Id == placed.Box.Id).Reason.Contains("circuit 1 of 2", StringComparison.Ordinal) ? 1 : 2));
    }

    // NEC 210.52(B)(1): the circuits of 20 A serve the walls of a kitchen too, so that 12 AWG feeds them; common practice: 6 AWG to a range of 50 A, 10 AWG to a dryer of 30 A.
    [Fact]
    public void Boxes_OfAKitchenAndItsAppliances_HaveTheCablesOfTheirCircuits()
    {
        DeviceBox[] boxes = [.. new RoughInPlanner(Rules).Plan(RanchHouse.Bare).Dwelling.PlacedBoxes().Where(placed => placed.Address.StartsWith("kitchen/", StringComparison.Ordinal) || placed.Address.StartsWith("laundry/", StringComparison.Ordinal)).Select(placed => placed.Box)];
        Assert.All(boxes.Where(box => box.Devices.Contains(DeviceKind.DuplexReceptacle) || box.Devices.Contains(DeviceKind.GfciReceptacle)), box => Assert.StartsWith("12-2, 12-2", box.Cables.ToString(), StringComparison.Ordinal));
        Assert.Equal("6-3", Assert.Single(boxes, box => box.Purpose == BoxPurpose.Range).Cables.ToString());
        Assert.Equal("10-3", Assert.Single(boxes, box => box.Purpose == BoxPurpose.Dryer).Cables.ToString());
        Assert.All(boxes.Where(box => box.Cables.Count > 0), box => Assert.NotNull(box.Volume));
    }

    // NEC 2020 210.52(C)(2), (3): an outlet of an island may be up to 12 in below its top, in the side of its base. The ranch's is 84 by 36 in at 66 to 150 and 84 to 120 in: the south side
    // faces the open room, 60 in from any wall and more, the north side the counters. From 2023 on below the top none counts, and it is set into the top.
    [Theory]
    [InlineData(NecEdition.Nec2020, "120", "30 in to center above finished floor")]
    [InlineData(NecEdition.Nec2023, "102", "36 in to center above finished floor")]
    public void Box_OfAnIsland_IsInItsSideOrSetIntoItsTop(NecEdition edition, string into, string height)
    {
        RuleSet rules = RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice;
        PlacedBox[] boxes = [.. new RoughInPlanner(rules).Plan(RanchHouse.Bare, "kitchen").Dwelling.PlacedBoxes().Where(placed => placed.Address == "kitchen/floor")];
        Assert.NotEmpty(boxes);
        Assert.All(boxes, placed => Assert.Equal((Cases.CaseFile.Inches(into), height), (placed.Box.Plan!.Value.Into, placed.Box.Height.ToString())));
    }
}
