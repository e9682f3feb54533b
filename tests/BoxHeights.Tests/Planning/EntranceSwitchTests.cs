using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Each entrance that lacks a switch gets one, and a closet's goes outside, beside its door. Worked by hand from the order that <see cref="SwitchSide"/> cites: common practice, no source.</summary>
public sealed class EntranceSwitchTests
{
    private static readonly RoughInPlanner Planner = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    // Jack and king take 3 in beside the rough opening, and half of a box is 1-1/8 in.
    private static readonly Distance FromOpening = In(3 + 1.125m);

    private static Opening Door(string id, decimal left, WallEnd hinge, DoorSwing swing) =>
        new Opening(id, OpeningKind.Door, In(left), In(left + 32)).WithLeaf(In(30)).WithHinge(hinge).WithSwing(swing).WithCasing(In(2.25m)).WithReveal(In(0.1875m));

    private static DeviceBox Switch(string id, decimal? at, params DeviceKind[] devices) => new DeviceBox(id, BoxPurpose.Switch)
        .WithDevices(devices.Length == 0 ? new[] { DeviceKind.Switch } : devices).WithAt(at is { } place ? In(place) : null).WithHeight(BoxHeight.Parse("48 in to top above subfloor"));

    /// <summary>A bedroom with a way in on its south wall, and one more on its east wall; a closet behind the west wall, whose door's latch is on its right seen from the bedroom.</summary>
    private static Dwelling House(bool isDescribed, params (string Wall, DeviceBox Box)[] boxes)
    {
        Opening closet = Door("closet-door", 60, WallEnd.Left, DoorSwing.Into);
        Room bed = new Room("bed", RoomKind.Bedroom, "first").WithWalls(new[]
        {
            new Wall("north", In(160)),
            new Wall("east", In(140)).WithOpenings(new[] { Door("bath-door", 80, WallEnd.Right, DoorSwing.Away) }),
            new Wall("south", In(160)).WithOpenings(new[] { Door("way", 20, WallEnd.Left, DoorSwing.Away) }),
            new Wall("west", In(140)).WithOpenings(new[] { closet }),
        });
        bed = bed.WithWalls(bed.Walls.Select(wall => boxes.Where(one => one.Wall == wall.Id).Aggregate(wall, (on, one) => on.WithBoxes(on.Boxes.With(one.Box)))));
        Wall front = new Wall("front", In(140)).WithOpenings(new[] { closet.WithId("back").WithLeft(In(140 - 92)).WithRight(In(140 - 60)) });
        Room behind = new Room("closet", RoomKind.Closet, "first").WithWalls(new[] { isDescribed ? front.WithBackOf("bed/west") : front, new Wall("right", In(24)), new Wall("rear", In(140)), new Wall("left", In(24)) });
        return new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { bed, behind });
    }

    private static string[] Switches(RoomPlan plan) =>
        [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch).Select(placed => placed.Address + " " + placed.Box.At + " " + placed.Box.Devices).Order(StringComparer.Ordinal)];

    private static string At(string wall, Distance at, string device) => wall + " " + at + " " + device;

    [Fact]
    public void Plan_WithoutAnySwitch_HasOneAtEachEntrance_AndTheClosetsOnTheRoomsSide()
    {
        RoomPlan plan = Planner.Plan(House(true));
        Assert.Equal(
            new[]
            {
                At("bed/east", In(80) - FromOpening, "three-way-switch"), At("bed/south", In(52) + FromOpening, "three-way-switch"), At("bed/west", In(92) + FromOpening, "switch"),
            },
            Switches(plan));
        Assert.Contains(plan.Reasons, one => one.Address == "bed/west" && one.Reason.Contains("closet", StringComparison.Ordinal) && one.Reason.Contains("beside the latch", StringComparison.Ordinal));
        Assert.Equal("closet/ceiling", Assert.Single(plan.Reasons, one => one.Address.StartsWith("closet/", StringComparison.Ordinal)).Address);
        Assert.Empty(Planner.Plan(plan.Dwelling).Reasons);
    }

    // One light from three places takes a three-way switch at either end of the run of wires and a four-way one between.
    [Fact]
    public void Plan_ThreeEntrances_HaveOneFourWaySwitchBetweenTwoThreeWayOnes()
    {
        Wall Opened(string id) => new Wall(id, In(140)).WithOpenings(new[] { new Opening(id + "-way", OpeningKind.Cased, In(50), In(86)) });
        Room hall = new Room("hall", RoomKind.Hall, "first").WithWalls(new[] { Opened("north"), Opened("east"), Opened("south"), new Wall("west", In(140)) });
        RoomPlan plan = Planner.Plan(new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { hall }));
        Assert.Equal(
            ["four-way-switch", "three-way-switch", "three-way-switch"],
            plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch).Select(placed => placed.Box.Devices.ToString()).Order(StringComparer.Ordinal));
    }

    // Nobody comes into a hall from a bedroom or a bath without having walked through it: one light doesn't get a switch for each of their doors.
    [Theory]
    [InlineData(true, "switch")]
    [InlineData(false, "three-way-switch three-way-switch")]
    public void Plan_HallWithThreePrivateRooms_HasSwitchesAtTheWaysInAlone(bool hasWayIn, string expected)
    {
        Wall north = new Wall("north", In(300)).WithOpenings(new[] { 20, 120, 220 }.Select(left => Door("door-" + left, left, WallEnd.Left, DoorSwing.Away)).ToArray());
        Wall south = new Wall("south", In(300)).WithOpenings(hasWayIn ? new[] { new Opening("way", OpeningKind.Cased, In(100), In(160)) } : []);
        Room hall = new Room("hall", RoomKind.Hall, "first").WithWalls(new[] { north, new Wall("east", In(60)), south, new Wall("west", In(60)) });
        Room Behind(string id, RoomKind kind, int from) => new Room(id, kind, "first")
            .WithWalls(new[] { new Wall("north", In(100)), new Wall("east", In(140)), new Wall("south", In(100)).WithBackOf("hall/north").WithBackOffset(In(from - 200)), new Wall("west", In(140)) });
        Dwelling house = new Dwelling("house").WithStoreys(new[] { new Storey("first") })
            .WithRooms(new[] { hall, Behind("bed-1", RoomKind.Bedroom, 0), Behind("bed-2", RoomKind.Bedroom, 100), Behind("bath", RoomKind.Bathroom, 200) });
        string[] switches = Switches(Planner.Plan(house));
        Assert.Equal(expected, string.Join(" ", switches.Where(one => one.StartsWith("hall/", StringComparison.Ordinal)).Select(one => one.Split(' ')[^1])));
    }

    // From the bedroom alone its closet's door is no entrance: two ways in, two switches.
    [Fact]
    public void Plan_OfTheRoomAlone_TakesAClosetsDoorForNoEntrance() => Assert.Equal(2, Switches(Planner.Plan(House(true), "bed")).Length);

    [Fact]
    public void Plan_WhereOneEntranceHasItsSwitch_AddsTheOther()
    {
        RoomPlan plan = Planner.Plan(House(true, ("south", Switch("own", 58))), "bed");
        Assert.Equal(new[] { At("bed/east", In(80) - FromOpening, "three-way-switch"), At("bed/south", In(58), "switch") }, Switches(plan));
    }

    // 24 in from the rough opening is within reach of it, a step more isn't: the way ends at 52 in, and its latch side's place is 56-1/8 in.
    [Theory]
    [InlineData(80.125, 1)]
    [InlineData(80.375, 2)]
    public void Switch_FurtherAwayThanAStep_ServesNoEntrance(double at, int onTheSouthWall)
    {
        RoomPlan plan = Planner.Plan(House(true, ("south", Switch("own", (decimal)at))), "bed");
        Assert.Equal(onTheSouthWall, Switches(plan).Count(one => one.StartsWith("bed/south", StringComparison.Ordinal)));
    }

    // Round the corner: seen from inside the east wall ends where the south wall begins, 20 in before the way, and the switch is 3 in before that corner.
    [Fact]
    public void Switch_JustRoundTheCorner_ServesTheEntrance() =>
        Assert.DoesNotContain(Switches(Planner.Plan(House(true, ("east", Switch("own", 137))), "bed")), one => one.StartsWith("bed/south", StringComparison.Ordinal));

    [Fact]
    public void Closet_WhoseSwitchIsThere_GetsNone()
    {
        RoomPlan plan = Planner.Plan(House(true, ("west", Switch("own", 97))), "closet");
        Assert.DoesNotContain(plan.Reasons, one => one.Id.Contains("switch", StringComparison.Ordinal));
    }

    // One switch between the bedroom's way in and its closet's door, within reach of both, is the bedroom's: the closet's light lacks its own. Two in a box are one for each.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0)]
    public void Closet_BesideAWayIn_SharesABoxButNotASwitch(int switches, int planned)
    {
        Opening closet = Door("closet-door", 60, WallEnd.Left, DoorSwing.Into);
        Opening way = Door("way", 110, WallEnd.Right, DoorSwing.Away);
        DeviceBox box = Switch("own", 101, [.. Enumerable.Repeat(DeviceKind.Switch, switches)]).WithGangs(switches);
        Room bed = new Room("bed", RoomKind.Bedroom, "first").WithWalls(new[]
        {
            new Wall("north", In(160)), new Wall("east", In(160)), new Wall("south", In(160)), new Wall("west", In(160)).WithOpenings(new[] { closet, way }).WithBoxes(new[] { box }),
        });
        Room behind = new Room("closet", RoomKind.Closet, "first").WithWalls(new[] { new Wall("front", In(60)).WithBackOf("bed/west").WithBackOffset(In(-50)), new Wall("right", In(24)), new Wall("rear", In(60)), new Wall("left", In(24)) });
        RoomPlan plan = Planner.Plan(new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { bed, behind }));
        Assert.Equal(planned, plan.Reasons.Count(one => one.Address == "bed/west" && one.Reason.Contains("closet", StringComparison.Ordinal)));
    }

    // A door may end where its wall ends; one that goes on beyond it is a mistake of the drawing and gets nothing.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    public void Door_ThatEndsWithItsWall_GetsItsSwitch(int ticks, int switches)
    {
        Opening door = Door("way", 108, WallEnd.Right, DoorSwing.Away);
        Room room = new Room("den", RoomKind.Office, "first").WithWalls(new[] { new Wall("south", In(140)).WithOpenings(new[] { door.WithRight(In(140) + Distance.FromTicks(ticks)) }), new Wall("east", In(100)), new Wall("north", In(140)), new Wall("west", In(100)) });
        Assert.Equal(switches, Switches(Planner.Plan(new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room }))).Length);
    }

    [Fact]
    public void Closet_WhoseOtherSideIsNotDescribed_IsNoted_WithWhatIsMissing()
    {
        RoomPlan plan = Planner.Plan(House(false), "closet");
        Assert.Empty(Switches(plan));
        Assert.Contains(plan.Notes, note => note.StartsWith("closet/front/back: ", StringComparison.Ordinal) && note.Contains("backOf", StringComparison.Ordinal));
        Assert.Contains("\n? closet/front/back: ", plan.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Switch_WhosePlaceIsNotStated_IsNoted_AndNoneIsPlanned()
    {
        RoomPlan plan = Planner.Plan(House(true, ("south", Switch("own", null))), "bed");
        Assert.Single(Switches(plan));
        Assert.Contains(plan.Notes, note => note.StartsWith("bed: a switch is described", StringComparison.Ordinal));
    }
}
