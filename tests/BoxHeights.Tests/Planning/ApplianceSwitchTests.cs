using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

public sealed class ApplianceSwitchTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    // Common practice, no source: half of the receptacle under the sink is switched for the disposal, by a switch over the counter beside the sink; the other half stays hot for the dishwasher.
    // NEC Table 314.16(B): six 12 AWG at 2.25, a device at twice that and the grounds at 2.25 are 20.25 in³ with the cable for the switch, so that a box of 18 doesn't do.
    [Fact]
    public void Disposal_UnderASink_IsSwitchedOverTheCounter()
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RanchHouse.Bare);
        Assert.Empty(plan.Notes);
        Dwelling planned = plan.Dwelling;
        PlacedBox[] kitchen = [.. planned.PlacedBoxes().Where(placed => placed.Address == "kitchen/north")];
        DeviceBox outlet = Assert.Single(kitchen, placed => placed.Box.Purpose == BoxPurpose.SinkBase).Box;
        Assert.Equal((SwitchedPart.Half, "12-2, 12-2, 12-2", "20.3 in3"), (outlet.Switched!.Value, outlet.Cables.ToString(), outlet.Volume.ToString()));
        DeviceBox switched = Assert.Single(kitchen, placed => placed.Box.Controls.Contains(outlet.Id)).Box;
        Assert.Equal("disposal-switch", Assert.Single(plan.Reasons, one => one.Id == switched.Id).RuleId);
        Assert.Equal("switch", switched.Devices.ToString());
        Assert.Equal("12-2, 12-2", switched.Cables.ToString());

        // The sink is at 70 to 100 in, the disposal at 76 to 86 in.
        Assert.InRange(switched.At!.Value, Distance.FromInches(76 - 36), Distance.FromInches(86 + 36));
        Assert.Equal("48 in to top above subfloor", switched.Height.ToString());
        Assert.Empty(new LayoutEvaluator(Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(planned).Findings);
    }

    [Fact]
    public void Sink_WithoutADisposal_HasNoSwitch()
    {
        Dwelling bare = RanchHouse.Bare;
        bare = bare.WithRooms(bare.Rooms.Select(room => room.WithFixtures(new Items<Fixture>(room.Fixtures.Where(fixture => fixture.Kind != FixtureKind.Disposal)))));
        PlacedBox[] kitchen = [.. new RoughInPlanner(Rules).Plan(bare).Dwelling.PlacedBoxes().Where(placed => placed.Address == "kitchen/north")];
        DeviceBox outlet = Assert.Single(kitchen, placed => placed.Box.Purpose == BoxPurpose.SinkBase).Box;
        Assert.Null(outlet.Switched);
        Assert.DoesNotContain(kitchen, placed => placed.Box.Controls.Contains(outlet.Id));
    }

    // No place within reach: nothing is switched, and the plan says so.
    [Fact]
    public void Disposal_WithoutAPlaceForItsSwitch_IsTold()
    {
        Dwelling bare = RanchHouse.Bare;
        bare = bare.WithRooms(bare.Rooms.Select(room => room.Id == "kitchen" ? room.WithWalls(room.Walls.Select(wall => wall.Id == "north"
            ? wall.WithCoverings(new[] { new Covering("glass", CoveringKind.Mirror, Distance.FromInches(38), Distance.FromInches(182)).WithBottom(Level.Parse("36 in above finished floor")).WithTop(Level.Parse("90 in above finished floor")) }) : wall)) : room));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(bare, "kitchen");
        Assert.Contains(plan.Notes, note => note.StartsWith("kitchen/grinds: no place for its switch", System.StringComparison.Ordinal));
        Assert.All(plan.Dwelling.PlacedBoxes(), placed => Assert.Null(placed.Box.Switched));
    }
}
