using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Lights are planned with what switches them: from every way in, from open sides and from both ends of a flight. Common practice, no source; three- and four-way switches as any wiring book draws them.</summary>
public sealed class PlannedLightsTests
{
    // An attic isn't lit unasked: a switch at its door would be for nothing, and the plan says so.
    [Fact]
    public void Plan_OfARoomThatNothingLights_SaysThatItGetsNoSwitch()
    {
        Tests.Rules.SquareRoom Room(RoomKind kind) => new() { Kind = kind, SouthOpenings = [new("door", OpeningKind.Cased, Distance.FromInches(20), Distance.FromInches(52))] };
        RoomPlan plan = new RoughInPlanner(RuleSets.RoughInPractice).Plan(Room(RoomKind.Bedroom).House(Room(RoomKind.Attic).Build().WithId("attic")));
        Assert.Equal("square/south", Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Switch).Address);
        Assert.StartsWith("attic: no light is planned for a switch", Assert.Single(plan.Notes, note => note.Contains("no light", System.StringComparison.Ordinal)), System.StringComparison.Ordinal);
    }

    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoomPlan Ranch = new RoughInPlanner(Rules).Plan(RanchHouse.Bare);

    private static IEnumerable<DeviceBox> Switching(RoomPlan plan, string light) => plan.Dwelling.PlacedBoxes().Select(placed => placed.Box).Where(box => box.Controls.Contains(light));

    // The second road: one light after another, from what is in the boxes.
    [Fact]
    public void Plan_OfAHouse_SwitchesEveryLight_FromOnePlaceOrByASetThatGoesTogether()
    {
        PlacedBox[] lights = [.. Ranch.Dwelling.PlacedBoxes().Where(placed => placed.Box.Devices.Contains(DeviceKind.Luminaire))];
        Assert.True(lights.Length >= 12, "a light in each room and one at either entrance");
        foreach (PlacedBox light in lights)
        {
            DeviceBox[] from = [.. Switching(Ranch, light.Box.Id)];
            int threeWay = from.Count(box => box.Devices.Contains(DeviceKind.ThreeWaySwitch));
            int fourWay = from.Count(box => box.Devices.Contains(DeviceKind.FourWaySwitch));
            Assert.True(from.Length == 1 ? from[0].Devices.Contains(DeviceKind.Switch) : threeWay == 2 && fourWay == from.Length - 2, light + ": " + string.Join("; ", from.Select(box => box.Devices.ToString())));
        }

        Assert.All(Ranch.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch), placed => Assert.NotEmpty(placed.Box.Controls));
        Assert.Empty(Ranch.Obstacles);
    }

    // The kitchen is entered from the patio, from the garage and from the living room that it is open to; its light isn't switched at the pantry's door.
    [Fact]
    public void Plan_OfAKitchenThatIsOpenToARoom_SwitchesItFromThereToo()
    {
        Assert.Equal(3, Switching(Ranch, "kitchen-light").Count());
        Assert.Contains(Ranch.Reasons, one => one.Address == "kitchen/east" && one.Reason.Contains("open side", StringComparison.Ordinal));
        Assert.Equal("pantry-light", Assert.Single(Switching(Ranch, "pantry-light")).Controls.ToString());
    }

    // With basins 18 in wide a stud every 16 in doesn't always hold a box within 3 in of the middle: then it goes on blocking over the basin, and not to the stud beside it.
    [Theory]
    [InlineData(45, true)]
    [InlineData(49, true)]
    [InlineData(52, false)]
    public void Plan_OfABasin_PutsItsLightOverTheMiddle(int left, bool isBlocked)
    {
        Fixture basin = new Fixture("basin", FixtureKind.Basin).WithWall("north").WithLeft(Distance.FromInches(left)).WithRight(Distance.FromInches(left + 18));
        Dwelling bare = new Tests.Rules.SquareRoom { Fixtures = [basin] }.House();
        StudLayout studs = new StudLayout().WithSpacing(Distance.FromInches(16)).WithKnown(StudKnowledge.Declared);
        RoomPlan plan = new RoughInPlanner(Rules).Plan(bare.WithStoreys(bare.Storeys.Select(storey => storey.WithStuds(studs))));
        DeviceBox light = Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.VanityLight).Box;
        Assert.True((light.At!.Value - Distance.FromInches(left + 9)).Abs() <= Distance.FromInches(3), light.At + " over a basin whose middle is at " + (left + 9) + " in");
        Assert.Equal(isBlocked ? MountingMethod.Blocking : MountingMethod.Stud, light.Mounting!.How);
    }

    // No document asks for one in a foyer or a pantry. In a closet it is one that is listed for storage space, wherever the shelves are.
    [Theory]
    [InlineData("foyer", "usual-light", null)]
    [InlineData("pantry", "usual-light", null)]
    [InlineData("closet", "usual-closet-light", LuminaireBuild.ForStorage)]
    public void Plan_OfARoomThatNoDocumentHasLit_LightsItByCustom(string room, string row, LuminaireBuild? build)
    {
        Assert.Equal(row, Assert.Single(Ranch.Reasons, one => one.Address == room + "/ceiling").RuleId);
        PlacedBox light = Assert.Single(Ranch.Dwelling.PlacedBoxes(), placed => placed.Address == room + "/ceiling" && placed.Box.Purpose == BoxPurpose.Light);
        Assert.Equal(build, light.Box.Luminaire);
    }

    // A light outside is switched from inside, in the box at its door: no box of its own beside the other.
    [Theory]
    [InlineData("front-light", "foyer")]
    [InlineData("back-light", "kitchen")]
    public void Plan_OfALightOutside_IsSwitchedInsideItsDoor(string light, string room)
    {
        DeviceBox box = Assert.Single(Switching(Ranch, light));
        Assert.StartsWith(room + "-", box.Id, StringComparison.Ordinal);
        Assert.Equal(2, box.Devices.Count);
    }

    // Told on the bedroom's face or the hall's: the door is in both walls.
    [Theory]
    [InlineData("bed-3")]
    [InlineData("bath")]
    [InlineData("laundry")]
    public void Plan_OfARoomWhoseDoorIsToldOnItsOtherFace_HasASwitch(string room)
    {
        Assert.DoesNotContain(RanchHouse.Bare.Rooms.Single(one => one.Id == room).Walls, wall => wall.Openings.Any(opening => opening.Kind == OpeningKind.Door));
        Assert.Single(Ranch.Dwelling.PlacedBoxes(), placed => placed.Address.StartsWith(room + "/", StringComparison.Ordinal) && placed.Box.Purpose == BoxPurpose.Switch);
    }

    // The hall is 26 ft long: its ways in are at its west end, and the last bedroom's door 20 ft from them.
    [Fact]
    public void Plan_OfALongHall_SwitchesItsLightAtBothEnds()
    {
        Distance[] at = [.. Ranch.Dwelling.PlacedBoxes().Where(placed => placed.Box.Controls.Contains("hall-light")).Select(placed => placed.Address == "hall/north" ? placed.Box.At!.Value : Distance.FromInches(312) - placed.Box.At!.Value)];
        Assert.Equal(2, at.Length);
        Assert.True((at[0] - at[1]).Abs() > Distance.FromFeet(15));
    }
}
