using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What the switches at a flight go to: the light at its foot, from both floors (NEC 210.70(A)(2), from memory; which light is common practice, no source).</summary>
public sealed class FlightLightTests
{
    private static readonly RuleSet Rules = new(
    [
        RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).Row("stair-switches"),
        .. RuleSets.RoughInPractice.Rows.Where(row => row.Id is "entrance-switches" or "switch-height" or "room-for-boxes"),
    ]);

    // Two halls at the foot, one of them lit, and one at the head. Which of the halls has the flight isn't described: each of the planned switches goes to the light.
    [Theory]
    [InlineData("dark")]
    [InlineData("lit")]
    public void SwitchesAtAFlight_GoToTheLightAtItsFoot(string first)
    {
        DeviceBox light = new DeviceBox("lamp", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithPlan(new PlanPoint(Distance.FromInches(40), Distance.FromInches(40)));
        Room Hall(string id, string storey) => new Room(id, RoomKind.Hall, storey).WithOverhead(id == "lit" ? new[] { light } : default(Items<DeviceBox>))
            .WithWalls(new[] { "north", "east", "south", "west" }.Select(wall => new Wall(wall, Distance.FromInches(120))).ToArray())
            .WithInFloor(id == "landing" ? new[] { new DeviceBox("outlet", BoxPurpose.General).WithDevices(new[] { DeviceKind.FloorReceptacle }).WithPlan(new PlanPoint(Distance.FromInches(20), Distance.FromInches(20))) } : default(Items<DeviceBox>));
        Dwelling house = new Dwelling("case").WithStoreys(new[] { new Storey("low"), new Storey("high").WithAboveBelow(Distance.FromInches(105)) })
            .WithRooms(new[] { Hall(first, "low"), Hall(first == "lit" ? "dark" : "lit", "low"), Hall("landing", "high") })
            .WithFlights(new[] { new StairFlight("main", "low", "high", 14) });
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house);
        DeviceBox[] switches = [.. plan.Dwelling.PlacedBoxes().Select(placed => placed.Box).Where(box => box.Purpose == BoxPurpose.Switch)];
        Assert.True(switches.Length == 2, plan.ToText());
        Assert.All(switches, box => Assert.Equal("lamp", Assert.Single(box.Controls)));
    }
}
