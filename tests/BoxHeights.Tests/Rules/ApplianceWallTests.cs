using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>An appliance's receptacle is at the appliance's own wall, a dishwasher's beside it, where a hand gets to it. Common practice, no source.</summary>
public sealed class ApplianceWallTests
{
    // The machine stands at 40 to 64 in.
    [Theory]
    [InlineData("dishwasher", "dishwasher", "dishwasher-place", 52, true)]
    [InlineData("dishwasher", "dishwasher", "dishwasher-place", 64, false)]
    [InlineData("dishwasher", "dishwasher", "dishwasher-place", 39, false)]
    [InlineData("dishwasher", "dishwasher", "dishwasher-place", 113, true)]
    [InlineData("dryer", "dryer", "dryer-place", 52, false)]
    [InlineData("dryer", "dryer", "dryer-place", 89, true)]
    [InlineData("laundry", "washer", "laundry-place", 52, false)]
    [InlineData("refrigerator", "refrigerator", "refrigerator-place", 70, true)]
    public void Receptacle_OfAnAppliance_IsWhereItIsReached(string purpose, string fixture, string row, int at, bool isNoted)
    {
        Assert.Equal(isNoted, Notes(purpose, fixture, row, at, "north") == 1);

        // On the wall across the room wherever it is there; and where the room has no such thing nothing is asked.
        Assert.Equal(1, Notes(purpose, fixture, row, at, "south"));
        Assert.Equal(0, Notes(purpose, "bed", row, at, "south"));
    }

    // A sink isn't a fixture: it is in a counter.
    [Theory]
    [InlineData("north", 52, 0)]
    [InlineData("north", 77, 1)]
    [InlineData("south", 52, 1)]
    public void Receptacle_OfADisposal_IsUnderItsSink(string wall, int at, int notes) => Assert.Equal(notes, Notes("sink-base", "bed", "sink-base-place", at, wall));

    // What goes beside a bed may be on the wall round the corner.
    [Fact]
    public void Receptacle_BesideABed_MayBeOnAnotherWall() => Assert.Equal(0, Notes("bedside", "bed", "bedside-place", 20, "south"));

    private static int Notes(string purpose, string fixture, string row, int at, string wall)
    {
        DeviceBox box = new DeviceBox("B", new BoxPurpose(purpose)).WithAt(In(at)).WithHeight(BoxHeight.ToCenter(In(18), Datum.Subfloor));
        Counter counter = new Counter("top", CounterKind.Kitchen, In(0), In(120)).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, In(40), In(64)) });
        Wall Of(string id) => new Wall(id, In(144)).WithCounters(id == "north" ? new[] { counter } : Items<Counter>.None).WithBoxes(id == wall ? new[] { box } : Items<DeviceBox>.None);
        return new LayoutEvaluator(new RuleSet([RuleSets.RoughInPractice.Row(row)!])).Evaluate(new Dwelling("House").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
        {
            new Room("kitchen", RoomKind.Kitchen, "first").WithWalls(new[] { Of("north"), Of("south") })
                .WithFixtures(new[] { new Fixture("machine", new FixtureKind(fixture)).WithWall("north").WithLeft(In(40)).WithRight(In(64)) }),
        })).Findings.Count;
    }
}
