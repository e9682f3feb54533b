using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Limits that other countries' rows need, against a look at single points: how far from a corner, between a hob and its hood, more than and less than, and at most so many in a room.</summary>
public sealed class LocalLimitTests
{
    private const int Wide = 4000;
    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);
    private static readonly Citation House = new("Invented wiring rules");
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static readonly CoveringKind Hood = new("hood");

    [Fact]
    public void KeepClear_OfCorners_IsThatOfThePoint()
    {
        KeepClear row = new("corner", "350 mm or more from a corner", Severity.Violation, House, WallPieces.InsideCorners) { Least = Mm(350), Scope = RuleScope.Walls };
        foreach (Distance at in new[] { Mm(100), Mm(349), Mm(350) - Tick, Mm(350), Mm(2000), Mm(Wide - 350), Mm(Wide - 350) + Tick, Mm(Wide - 100) })
        {
            Assert.Equal(at >= Mm(350) && Mm(Wide) - at >= Mm(350), Meets(row, Box(at, Mm(700))));
        }
    }

    // Over a hob from its own top: up to the hood's bottom or 700 mm, whichever is lower.
    [Fact]
    public void Zone_BetweenAHobAndItsHood_IsThatOfThePoint()
    {
        HashSet<bool> seen = [];
        Zone row = new("hob", "outside the space between a hob and its hood", Severity.Violation, House, new RoomAnchor { Interruptions = new[] { InterruptionKind.Cooktop } }, Distance.Zero)
        {
            Bottom = new Level(Distance.Zero, Datum.Countertop),
            Top = new Level(Mm(700), Datum.Countertop),
            EndsBelow = new[] { Hood },
            Scope = RuleScope.Walls,
        };
        Prop.ForAll(Seeds, seed =>
        {
            Random random = new(seed);
            int top = random.Next(800, 1000);
            int left = random.Next(1000, 1500);
            int right = left + random.Next(500, 900);
            int? hood = random.Next(3) == 0 ? null : top + random.Next(500, 900);
            int end = Math.Min(top + 700, hood ?? int.MaxValue);
            int at = random.Next(2) == 0 ? random.Next(80, Wide - 80) : (random.Next(2) == 0 ? left : right) + random.Next(-1, 2);
            int height = random.Next(2) == 0 ? random.Next(300, 2300) : (random.Next(2) == 0 ? top : end) + random.Next(-1, 2);
            Counter counter = new Counter("counter", CounterKind.Kitchen, Mm(200), Mm(3800)).WithTop(new Level(Mm(top), Datum.FinishedFloor)).WithDepth(Mm(600))
                .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Cooktop, Mm(left), Mm(right)).WithBehind(Distance.Zero) });
            Wall north = new Wall("north", Mm(Wide)).WithCounters(new[] { counter }).WithBoxes(new[] { Box(Mm(at), Mm(height)) })
                .WithCoverings(hood is { } low ? new[] { new Covering("hood", Hood, Mm(left), Mm(right)).WithBottom(new Level(Mm(low), Datum.FinishedFloor)) } : []);
            bool said = Meets(row, north);
            bool looked = !(at > left && at < right && height > top && height < end);
            seen.Add(said);
            Assert.True(said == looked, at + " along, " + height + " up, hob " + left + " to " + right + " at " + top + ", hood " + hood);
        }).Check(Tries.Config(1000));
        Assert.Equal(2, seen.Count);
    }

    // The same row of a box in the ceiling, 2.4 m up, over a hob whose top is at 900 mm: it is outside a zone that ends below, begins above, or has a hood over it.
    [Theory]
    [InlineData(null, null, false, false)]
    [InlineData(null, 1400, false, true)]
    [InlineData(null, 1600, false, false)]
    [InlineData(1400, null, false, false)]
    [InlineData(1600, null, false, true)]
    [InlineData(null, 1600, true, true)]
    public void Zone_OfACeiling_IsThatOfThePoint(int? bottom, int? top, bool hood, bool expected)
    {
        Zone row = new("hob", "outside the space over a hob", Severity.Violation, House, new RoomAnchor { Interruptions = new[] { InterruptionKind.Cooktop } }, Distance.Zero)
        {
            Bottom = bottom is { } low ? new Level(Mm(low), Datum.Countertop) : null,
            Top = top is { } high ? new Level(Mm(high), Datum.Countertop) : null,
            EndsBelow = new[] { Hood },
        };
        Counter counter = new Counter("counter", CounterKind.Kitchen, Mm(200), Mm(3800)).WithTop(new Level(Mm(900), Datum.FinishedFloor)).WithDepth(Mm(600))
            .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Cooktop, Mm(1000), Mm(1600)).WithBehind(Distance.Zero) });
        Wall north = new Wall("north", Mm(Wide)).WithCounters(new[] { counter })
            .WithCoverings(hood ? new[] { new Covering("hood", Hood, Mm(1000), Mm(1600)).WithBottom(new Level(Mm(1700), Datum.FinishedFloor)) } : []);
        DeviceBox light = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithPlan(new PlanPoint(Mm(1300), Mm(300)));
        Storey ground = new Storey("ground").WithCeiling(new Ceiling().WithFraming(Mm(2415)).WithBoard(Mm(15)).WithStrapping(Distance.Zero));
        Assert.Equal(expected, Evaluate(row, north, ground, light).Findings.Count == 0);
        Assert.True(Evaluate(row with { Scope = RuleScope.Walls }, north, ground, light).IsClean);
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void HeightBand_MoreThanAndLessThan_LeaveTheLimitItselfOut(bool low, bool high)
    {
        HeightBand row = new("band", "between", Severity.Violation, House, Datum.FinishedFloor) { Low = Mm(400), High = Mm(1000), LowIsStrict = low, HighIsStrict = high, Scope = RuleScope.Walls };
        Assert.Equal(!low, Meets(row, Box(Mm(2000), Mm(400))));
        Assert.True(Meets(row, Box(Mm(2000), Mm(400) + Tick)));
        Assert.Equal(!high, Meets(row, Box(Mm(2000), Mm(1000))));
        Assert.True(Meets(row, Box(Mm(2000), Mm(1000) - Tick)));
        Assert.Equal((low ? "more than" : "at least") + " 400 mm", row.Numbers.Substring("center ".Length, low ? 16 : 15));
    }

    // Of the boxes of a room that miss the band two may.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(3, 3)]
    [InlineData(4, 4)]
    public void LetsOffInARoom_IsForSoManyAndNoMore(int low, int found)
    {
        HeightBand row = new("band", "400 mm or more", Severity.Violation, House, Datum.FinishedFloor) { Low = Mm(400), LetsOffInARoom = 2, Scope = RuleScope.Walls };
        DeviceBox[] boxes = Enumerable.Range(0, 5).Select(i => Box(Mm(500 + (500 * i)), Mm(i < low ? 200 : 600)).WithId("b" + i)).ToArray();
        Assert.Equal(found, Evaluate(row, new Wall("north", Mm(Wide)).WithBoxes(boxes)).Findings.Count);
    }

    // One for the first 10 m² of the floor, one more for each 4 m² or part: 4 by 4 m are 16 m², 4 by 3 m are 12 m², 4 by 2.5 m are 10 m². At most four.
    [Theory]
    [InlineData(4000, 3)]
    [InlineData(3000, 2)]
    [InlineData(2501, 2)]
    [InlineData(2500, 1)]
    public void RequiredOutlet_ByTheFloor_AsksForEachPart(int deep, int needed)
    {
        RequiredOutlet row = new("sockets", "there for each 4 m² of floor", Severity.Violation, House, new CountedOutlet("socket", new[] { DeviceKind.DuplexReceptacle }), new RoomSubject())
        {
            Count = new() { First = Quantity.Area(Mm(1000), Mm(10000)), Each = Quantity.Area(Mm(1000), Mm(4000)), AtMost = 4 },
        };
        for (int count = 0; count < 7; count++)
        {
            DeviceBox[] boxes = Enumerable.Range(0, count).Select(i => Box(Mm(500 + (450 * i)), Mm(600)).WithId("b" + i)).ToArray();
            Evaluation said = new LayoutEvaluator(new RuleSet([row]), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true))
                .Evaluate(new SquareRoom { Kind = RoomKind.Bedroom, Wide = Mm(Wide), Deep = Mm(deep), North = boxes }.House());
            Assert.Equal(count < needed || count > 4, said.Findings.Count == 1);
        }
    }

    // Four are the most, and four there are; what the fifth holds isn't stated.
    [Fact]
    public void RequiredOutlet_WithOneThatMayBeTooMany_IsUnknownAndCountsIt()
    {
        CountedOutlet sockets = new("socket", new[] { DeviceKind.DuplexReceptacle }) { UnstatedMayBeOne = true };
        RequiredOutlet row = new("sockets", "there up to four times", Severity.Violation, House, sockets, new RoomSubject()) { Count = OutletCount.One with { AtMost = 4 } };
        DeviceBox[] boxes = Enumerable.Range(0, 5).Select(i => Box(Mm(500 + (450 * i)), Mm(600)).WithId("b" + i)).ToArray();
        boxes[4] = boxes[4].WithDevices(default(Items<DeviceKind>));
        Finding finding = Assert.Single(new LayoutEvaluator(new RuleSet([row])).Evaluate(new SquareRoom { Kind = RoomKind.Bedroom, Wide = Mm(Wide), North = boxes }.House()).Findings);
        Assert.Equal((Verdict.Unknown, Quantity.Of(5), MissingFacts.Devices), (finding.Verdict, finding.Measured, finding.Needs));
        boxes[4] = boxes[3].WithId("b4").WithAt(Mm(2400));
        finding = Assert.Single(new LayoutEvaluator(new RuleSet([row])).Evaluate(new SquareRoom { Kind = RoomKind.Bedroom, Wide = Mm(Wide), North = boxes }.House()).Findings);
        Assert.Equal((Verdict.Fails, Quantity.Of(5), MissingFacts.None), (finding.Verdict, finding.Measured, finding.Needs));
    }

    private static DeviceBox Box(Distance at, Distance height) => SquareRoom.Box("duplex-receptacle", "general", at, height);

    private static bool Meets(PlacementRule row, DeviceBox box) => Meets(row, new Wall("north", Mm(Wide)).WithBoxes(new[] { box }));

    private static bool Meets(PlacementRule row, Wall north) => Evaluate(row, north).Findings.Count == 0;

    private static Evaluation Evaluate(PlacementRule row, Wall north, Storey? storey = null, params DeviceBox[] overhead)
    {
        Room room = new Room("room", RoomKind.Kitchen, "ground").WithFloor(OneBox.Floor(Distance.Zero))
            .WithWalls(new[] { north, new Wall("east", Mm(3000)), new Wall("south", Mm(Wide)), new Wall("west", Mm(3000)) }).WithOverhead(overhead);
        return new LayoutEvaluator(new RuleSet([row])).Evaluate(new Dwelling("case").WithStoreys(new[] { storey ?? SquareRoom.Storey }).WithRooms(new[] { room }));
    }
}
