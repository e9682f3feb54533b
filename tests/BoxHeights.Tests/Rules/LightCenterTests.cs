using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>One light in a rectangular room belongs in its middle, a light over a basin over the basin's. Common practice, no source: 1 in and 3 in off are passed over; more than 6 in off a room's middle is meant otherwise.</summary>
public sealed class LightCenterTests
{
    // The room is 144 by 120 in: its middle is at 72 and 60 in.
    [Theory]
    [InlineData("73 in", "60 in", 0, false)]
    [InlineData("73 in", "60 in", 1, true)]
    [InlineData("71 in", "60 in", 0, false)]
    [InlineData("71 in", "60 in", -1, true)]
    [InlineData("72 in", "63 in", 0, true)]
    [InlineData("78 in", "60 in", 0, true)]
    [InlineData("78 in", "60 in", 1, false)]
    [InlineData("100 in", "63 in", 0, true)]
    [InlineData("100 in", "30 in", 0, false)]
    public void Light_NearlyInTheMiddle_IsNotedAndSetThere(string right, string into, int ticks, bool isNoted)
    {
        PlanPoint at = new(Distance.Parse(right) + Distance.FromTicks(ticks), Distance.Parse(into));
        Evaluation evaluation = Of("room-light-center").Evaluate(Room(RoomKind.Bedroom, at));
        Assert.Equal(isNoted, evaluation.Findings.Count == 1);
        if (isNoted)
        {
            MoveInPlan move = Assert.IsType<MoveInPlan>(Assert.Single(evaluation.Findings[0].Remedies));
            Assert.True(Of("room-light-center").Evaluate(move.ApplyTo(evaluation.Dwelling)).IsClean);
            Assert.Contains("in plan", evaluation.Mend().ToText(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Light_OfSeveralOrInAnotherShape_IsNoMatter()
    {
        PlanPoint off = new(In(75), In(60));
        Dwelling room = Room(RoomKind.Bedroom, off);
        Assert.Single(Of("room-light-center").Evaluate(room).Findings);
        Assert.Empty(Of("room-light-center").Evaluate(Room(RoomKind.Kitchen, off)).Findings);
        Assert.Empty(Of("room-light-center").Evaluate(Room(RoomKind.Bedroom, off, new PlanPoint(In(30), In(30)))).Findings);
        Assert.DoesNotContain(
            Of("room-light-center").Evaluate(room.WithRooms(room.Rooms.Select(one => one.WithWalls(one.Walls.Select(wall => wall.WithTurnDegrees(0)))))).Findings,
            finding => finding.RuleId == "room-light-center");
        Assert.Empty(Of("room-light-center").Evaluate(room.WithRooms(room.Rooms.Select(one => one.WithUntouched(true)))).Findings);
    }

    // Basins at 20 to 40 and 60 to 80 in, a mirror over both: 30, 70 and 50 in are middles, 3 in off is passed over.
    [Theory]
    [InlineData("30 in", 0, false)]
    [InlineData("33 in", 0, false)]
    [InlineData("33 in", 1, true)]
    [InlineData("27 in", -1, true)]
    [InlineData("50 in", 0, false)]
    [InlineData("46 in", 0, true)]
    [InlineData("68 in", 0, false)]
    [InlineData("12 in", 0, false)]
    public void Light_OverABasin_IsOverItsMiddleOrBetweenTwo(string at, int ticks, bool isNoted)
    {
        Counter vanity = new Counter("vanity", CounterKind.Bath, In(10), In(90)).WithInterruptions(new[]
        {
            new CounterInterruption(InterruptionKind.Basin, In(20), In(40)), new CounterInterruption(InterruptionKind.Basin, In(60), In(80)),
        });
        Wall wall = new Wall("north", In(120)).WithCounters(new[] { vanity })
            .WithCoverings(new[] { new Covering("mirror", CoveringKind.Mirror, In(16), In(84)) })
            .WithBoxes(new[] { new DeviceBox("V", BoxPurpose.VanityLight).WithAt(Distance.Parse(at) + Distance.FromTicks(ticks)).WithHeight(BoxHeight.ToCenter(In(80), Datum.Subfloor)) });
        Evaluation evaluation = Of("vanity-light-center").Evaluate(House(new Room("bath", RoomKind.Bathroom, "first").WithWalls(new[] { wall })));
        Assert.Equal(isNoted, evaluation.Findings.Count == 1);
        Assert.All(evaluation.Findings, finding => Assert.Equal(Severity.Note, finding.Severity));
    }

    private static LayoutEvaluator Of(string row) => new(new RuleSet([RuleSets.RoughInPractice.Row(row)!]));

    private static Dwelling Room(RoomKind kind, params PlanPoint[] lights) => House(new Room("room", kind, "first")
        .WithWalls(new[] { new Wall("north", In(144)), new Wall("east", In(120)), new Wall("south", In(144)), new Wall("west", In(120)) })
        .WithOverhead(lights.Select((at, i) => new DeviceBox("C" + i, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithPlan(at)).ToArray()));

    private static Dwelling House(Room room) => new Dwelling("House").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room });
}
