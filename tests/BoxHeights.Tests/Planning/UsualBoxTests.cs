using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What a house gets by custom: places worked by hand from the ranch's drawing. Common practice, no source.</summary>
public sealed class UsualBoxTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoomPlan Ranch = new RoughInPlanner(Rules).Plan(RanchHouse.Bare);

    private static PlacedBox Of(string rule) => Ranch.Dwelling.FindBox(Assert.Single(Ranch.Reasons, one => one.RuleId == rule).Id)!;

    // On the hall's one wall that no window warms, off its doors, 5 ft up (a maker's instructions ask for about that).
    [Fact]
    public void Thermostat_IsOnAnInnerWallOfTheHall_OffItsDoors()
    {
        PlacedBox box = Of("usual-thermostat");
        Assert.Equal("hall/north", box.Address);
        Assert.Equal("60 in to center above subfloor", box.Box.Height.ToString());

        // Doors of laundry, bath and the third bedroom, from the hall's left end at 267-1/2 in on the drawing, with 2-7/16 in of trim.
        Assert.All(new[] { (296, 328), (400, 430), (500, 532) }, door => Assert.False(box.Box.At > In(door.Item1 - 267.5m - 4) && box.Box.At < In(door.Item2 - 267.5m + 4)));
    }

    // The wall that the sun warms is the longest: it goes on the next, and in a room that has only such walls on none.
    [Theory]
    [InlineData(false, "hall/east")]
    [InlineData(true, null)]
    public void Thermostat_WhereTheLongestWallIsOutside_IsOnAnother(bool allOutside, string? on)
    {
        DwellingBuilder house = new("sunny");
        house.Add(new Storey("first"));
        RoomBuilder hall = house.Room("hall", RoomKind.Hall, "first");
        foreach ((string id, decimal length, bool outside) in new[] { ("north", 200m, true), ("east", 90m, allOutside), ("south", 200m, true), ("west", 90m, true) })
        {
            hall.Wall(id, In(length)).With(wall => wall.WithExterior(outside));
        }

        RoomPlan plan = new RoughInPlanner(Rules).Plan(house.Build());
        Assert.Equal(on, plan.Reasons.Where(one => one.RuleId == "usual-thermostat").Select(one => plan.Dwelling.FindBox(one.Id)!.Address).SingleOrDefault());
    }

    [Fact]
    public void Chime_IsOneInTheHouse_HighInTheHall() => Assert.Equal(("hall/north", "80 in to center above subfloor"), (Of("usual-chime").Address, Of("usual-chime").Box.Height.ToString()));

    // Its hinges are on the left seen from the foyer, so that the latch is on the left seen from outside: left of 281 in, which is 527 in from the face's left end.
    [Fact]
    public void DoorbellButton_IsBesideTheLatchOfTheFrontDoor()
    {
        PlacedBox box = Of("usual-doorbell");
        Assert.Equal("front/wall", box.Address);
        Assert.InRange(In(527) - box.Box.At!.Value, In(3), In(8));
    }

    // A bell is for who comes in by the front door: not for one that is no way into the house, nor for one to the garden.
    [Theory]
    [InlineData("door", true, 1)]
    [InlineData("door", false, 0)]
    [InlineData("sliding-door", true, 0)]
    public void DoorbellButton_IsForADoorThatIsAWayIn(string kind, bool isEntrance, int bells)
    {
        Opening door = new Opening("front", new OpeningKind(kind), In(60), In(96)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithEntrance(isEntrance ? EntranceSide.Inside : null);
        SquareRoom foyer = new() { Kind = RoomKind.Foyer, NorthOpenings = [door], NorthIsBackOf = "street/face" };
        Dwelling house = foyer.House().WithOutside(new[] { new OutsideFace("street").WithWalls(new[] { new Wall("face", In(144)) }) });
        Assert.Equal(bells, new RoughInPlanner(RuleSets.RoughInPractice).Plan(house).Reasons.Count(one => one.RuleId == "usual-doorbell"));
    }

    // An outside face that isn't said to be behind the hall's wall may be anywhere: whoever reads the plan is told why there is no bell.
    [Fact]
    public void DoorbellButton_WhereNothingSaysWhatIsBehindTheFrontDoor_IsToldAsNotPlanned()
    {
        Opening door = new Opening("front", OpeningKind.Door, In(60), In(96)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithEntrance(EntranceSide.Inside);
        Dwelling house = new SquareRoom { Kind = RoomKind.Foyer, NorthOpenings = [door] }.House().WithOutside(new[] { new OutsideFace("street").WithWalls(new[] { new Wall("face", In(144)) }) });
        RoomPlan plan = new RoughInPlanner(RuleSets.RoughInPractice).Plan(house);
        Assert.Contains(plan.Notes, note => note.Contains("no doorbell box is planned: no outside face is said to be behind front", StringComparison.Ordinal));
    }

    // A deck 12 in above the ground, and the custom of 12 in above what one stands on: the place that is offered is 18 in above the ground, too low by 6 in, and 24 in does.
    [Fact]
    public void Deck_WhoseReceptacleIsOfferedTooLow_GetsItHigher()
    {
        Wall face = new Wall("face", In(300)).WithOpenings(new[] { new Opening("door", OpeningKind.Door, In(120), In(156)).WithHead(Level.Parse("82 in above subfloor")) });
        Platform deck = new Platform("deck", PlatformKind.Deck, In(60), In(240)).WithGap(In(1)).WithSurface(Level.Parse("-4 in above subfloor"));
        Dwelling house = new DwellingBuilder("case").Add(new Storey("ground").WithGradeBelowSubfloor(In(16))).Add(new OutsideFace("yard").WithWalls(new[] { face }).WithPlatforms(new[] { deck })).Build();
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house);
        Assert.Empty(plan.Obstacles);
        DeviceBox box = Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Exterior).Box;
        Assert.InRange(box.At!.Value, In(60), In(240));
        DistanceRange center = Assert.Single(new LayoutEvaluator(Rules).Evaluate(plan.Dwelling).Face("yard").Walls[0].Boxes, one => one.Id == box.Id).Center!.Value;
        Assert.InRange(center.From, In(8), In(74));
        Assert.InRange(center.To, In(8), In(74));
    }

    // The vehicle door runs from 24 in to 216 in of a wall of 240-1/2 in; ten feet in from it is in the middle of 120.
    [Fact]
    public void DoorOpener_IsInTheCeilingBehindTheMiddleOfTheDoor()
    {
        PlacedBox box = Of("usual-door-opener");
        Assert.Equal(("garage/ceiling", new PlanPoint(In(120), In(264 - 120))), (box.Address, box.Box.Plan));
    }

    [Theory]
    [InlineData("usual-thermostat")]
    [InlineData("usual-chime")]
    [InlineData("usual-doorbell")]
    [InlineData("usual-door-opener")]
    public void Custom_ThatIsntInTheSet_IsntPlanned(string row) =>
        Assert.DoesNotContain(new RoughInPlanner(Rules.Without(row)).Plan(RanchHouse.Bare).Reasons, one => one.RuleId == row);

    // Where one is there already, wherever in the house, it is the one.
    [Fact]
    public void Thermostat_ThatIsThere_IsTheOne()
    {
        DeviceBox own = new DeviceBox("own", BoxPurpose.Thermostat).WithDevices(new[] { DeviceKind.Thermostat }).WithAt(In(60)).WithHeight(BoxHeight.Parse("60 in to center above subfloor"));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RanchHouse.Bare.WithBox(new PlacedBox("living/east", own)));
        Assert.DoesNotContain(plan.Reasons, one => one.RuleId == "usual-thermostat");
    }

    // Behind the screen, under the sink for disposal and dishwasher, over the range for a hood or a microwave oven, over the basin.
    [Theory]
    [InlineData("television-place", "living/west", 50, 105)]
    [InlineData("sink-base-place", "kitchen/north", 58, 112)]
    [InlineData("hood-place", "kitchen/north", 140, 170)]
    [InlineData("vanity-light-place", "bath/west", 121, 127)]
    public void Thing_ThatIsDescribed_GetsItsBoxUnasked(string row, string wall, int from, int to)
    {
        PlacedBox box = Of(row);
        Assert.Equal(wall, box.Address);
        Assert.InRange(box.Box.At!.Value, In(from), In(to));
        Assert.Empty(Ranch.Obstacles);
    }

    // International Residential Code R315, from memory: a garage that opens into the house asks for one outside the bedrooms, which the smoke alarm's box holds too.
    [Fact]
    public void AttachedGarage_AsksForACarbonMonoxideAlarm()
    {
        Assert.Equal("smoke-co-alarm", Of("bedroom-hall-co-alarm").Box.Devices.ToString());
        Dwelling without = RanchHouse.Bare.WithRooms(RanchHouse.Bare.Rooms.Where(room => room.Id != "garage").ToArray());
        Assert.DoesNotContain(new RoughInPlanner(Rules).Plan(without).Reasons, one => one.RuleId == "bedroom-hall-co-alarm");
    }

    // NEC 210.52(C): 21 sq ft of island ask for one outlet and one more for what is over 9 sq ft in 2020; in 2023 one is the owner's choice, or provision for it.
    [Theory]
    [InlineData(NecEdition.Nec2017, 1)]
    [InlineData(NecEdition.Nec2020, 2)]
    [InlineData(NecEdition.Nec2023, 1)]
    public void Island_GetsItsOutlets(NecEdition edition, int expected)
    {
        RuleSet rules = RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice;
        RoomPlan plan = new RoughInPlanner(rules).Plan(RanchHouse.Bare);
        PlacedBox[] boxes = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Address == "kitchen/floor")];
        Assert.Equal(expected, boxes.Length);
        Assert.All(boxes, placed => Assert.True(placed.Box.Plan is { } at && at.Right >= In(66) && at.Right <= In(150) && at.Into >= In(84) && at.Into <= In(120)));
        Assert.DoesNotContain(new LayoutEvaluator(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(plan.Dwelling).Findings, finding => finding.RuleId.StartsWith("island", StringComparison.Ordinal));
    }

    // The condenser stands before 60 to 96 in of the back wall, seen from the house's other end: nobody plugs in behind it.
    [Fact]
    public void OutdoorUnit_HasItsReceptacleBesideIt()
    {
        PlacedBox box = Of("outdoor-unit-receptacle");
        Assert.Equal("back/wall", box.Address);
        Assert.True(box.Box.At < In(60) || box.Box.At > In(96), box.Box.At.ToString());
    }

    // NEC 210.52(B)(3), from memory: two circuits at least serve a kitchen's counters; the first box on each protects the rest of it (common practice).
    [Fact]
    public void Counters_AreSharedByTwoCircuits_EachWithOneBoxThatProtects()
    {
        PlacedBox[] boxes = [.. Ranch.Dwelling.PlacedBoxes().Where(placed => placed.Address.StartsWith("kitchen/", StringComparison.Ordinal) && placed.Box.Purpose == BoxPurpose.Counter)];
        string[] of = [.. boxes.Select(placed => Ranch.Reasons.Single(one => one.Id == placed.Box.Id).Reason)];
        foreach (string circuit in new[] { "on circuit 1 of 2", "on circuit 2 of 2" })
        {
            PlacedBox[] own = [.. boxes.Where((_, i) => of[i].Contains(circuit, StringComparison.Ordinal))];
            Assert.Single(own, placed => placed.Box.Devices.ToString() == "gfci-receptacle");
            Assert.InRange(own.Length, boxes.Length / 2, (boxes.Length + 1) / 2);
        }

        Assert.DoesNotContain(new RoughInPlanner(Rules.Without("counter-circuits")).Plan(RanchHouse.Bare, "kitchen").Reasons, one => one.Reason.Contains("circuit", StringComparison.Ordinal));
    }

    public static TheoryData<string> Wirings => new(CaseFile.Table("usual-wiring.csv").Select(row => row["row"]));

    // Every planned box of one such device has those cables, where it is in such a room; the disposal's switch has those of its circuit, as ApplianceSwitchTests say.
    [Theory]
    [MemberData(nameof(Wirings))]
    public void Cables_OfPlannedBoxes_AreTheUsualOnes(string wiring)
    {
        Dictionary<string, string> row = CaseFile.Table("usual-wiring.csv").Single(one => one["row"] == wiring);
        PlacedBox[] boxes = [.. Ranch.Dwelling.PlacedBoxes().Where(placed => !placed.Box.Controls.Contains("kitchen-sink-base") && placed.Box.Devices.ToString() == row["device"] && placed.Box.Purpose == new BoxPurpose(row["purpose"])
            && (row["room"].Length == 0 || Ranch.Dwelling.Rooms.Any(room => placed.Address.StartsWith(room.Id + "/", StringComparison.Ordinal) && room.Kind == new RoomKind(row["room"]))))];
        Assert.NotEmpty(boxes);
        Assert.All(boxes, placed => Assert.Equal(row["cables"], string.Join(" ", placed.Box.Cables)));
    }

    // Whatever a receptacle for 125 V is for, some cables enter it, so that its box is never of no size.
    [Fact]
    public void Cables_OfReceptacles_AreUsualForEveryPurpose()
    {
        BoxPurpose[] others = [BoxPurpose.Switch, BoxPurpose.BedSwitch, BoxPurpose.Range, BoxPurpose.Dryer, BoxPurpose.Alarm, BoxPurpose.Doorbell, BoxPurpose.DoorbellChime, BoxPurpose.Thermostat];
        BoxPurpose[] lights = [BoxPurpose.Light, BoxPurpose.VanityLight, BoxPurpose.BedLight, BoxPurpose.StairLight];
        BoxPurpose[] receptacles = [.. BoxPurpose.Known.Except(others).Except(lights)];
        Assert.NotEmpty(receptacles);
        Assert.DoesNotContain(receptacles, purpose => !RuleSets.RoughInPractice.Rows.OfType<UsualWiring>().Any(row => row.Rooms.Count == 0 && row.Devices.Contains(DeviceKind.DuplexReceptacle) && row.Purposes.Contains(purpose)));
    }

    // What hangs from a box outdoors or over a basin has a round canopy: four inches across, and no device's yoke. Common practice, no source.
    [Fact]
    public void Light_OnAWall_IsOnARoundBox()
    {
        DeviceBox[] lights = [.. Ranch.Dwelling.PlacedBoxes().Where(placed => !placed.Address.EndsWith("/ceiling", StringComparison.Ordinal)).Select(placed => placed.Box).Where(box => box.Devices.Contains(DeviceKind.Luminaire))];
        Assert.Contains(lights, box => box.Purpose == BoxPurpose.VanityLight);
        Assert.Contains(lights, box => box.Purpose == BoxPurpose.Light);
        Assert.All(lights, box => Assert.Equal(BoxKind.Octagon, box.Kind));
    }

    [Fact]
    public void Switch_SaysWhatItIsFor() =>
        Assert.All(Ranch.Reasons.Where(one => Ranch.Dwelling.FindBox(one.Id)!.Box.Purpose == BoxPurpose.Switch), one => Assert.EndsWith("for " + Ranch.Dwelling.FindBox(one.Id)!.Box.Controls, one.Reason.Replace(" (" + one.RuleId + ")", ""), StringComparison.Ordinal));
}
