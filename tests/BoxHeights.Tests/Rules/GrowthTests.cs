using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Planning;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What grows with a dwelling grows no faster than it: counted in bytes, which are the same on every machine. Times are in the benchmarks.</summary>
public sealed class GrowthTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    public void Evaluate_TenTimesTheRooms_AllocatesAtMostTwelveTimesTheBytes(int seed)
    {
        Dwelling house = OrdinaryHouses.Make(seed, 8);
        long one = Allocated(house);
        long ten = Allocated(Copies(house, 10));
        Assert.InRange(ten, 8 * one, 12 * one);
    }

    [Fact]
    public void Evaluate_TenTimesTheBoxesOnAWall_AllocatesAtMostTwelveTimesTheBytes()
    {
        long one = Allocated(Wall(100));
        Assert.InRange(Allocated(Wall(1000)), 6 * one, 12 * one);
    }

    // What stands along one wall: doors, counters, and what interrupts a counter, none of them with a box that serves it.
    [Theory]
    [InlineData("doors")]
    [InlineData("counters")]
    [InlineData("interruptions")]
    [InlineData("windows")]
    public void Evaluate_TenTimesWhatStandsAlongAWall_AllocatesAtMostTwelveTimesTheBytes(string what)
    {
        long one = Allocated(Along(what, 30));
        Assert.InRange(Allocated(Along(what, 300)), one, 12 * one);
    }

    // A receptacle more, and away again: what looks at no such box isn't judged again, however many there are. The list of all boxes is made anew for it, 8 bytes a box.
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    public void AddAndRemove_InTenTimesTheRooms_AllocateNoMore(int seed)
    {
        Dwelling house = OrdinaryHouses.Make(seed, 8);
        long one = Changes(Evaluator.Open(Copies(house, 1)));
        Assert.InRange(Changes(Evaluator.Open(Copies(house, 10))), 1, one * 2);

        static long Changes(LayoutSession session)
        {
            PlacedBox some = session.ToDwelling().PlacedBoxes().First(placed => placed.Box is { Purpose: var purpose, Height: not null, At: not null } && purpose == BoxPurpose.General);
            Change();
            long before = GC.GetAllocatedBytesForCurrentThread();
            for (int i = 0; i < 40; i++)
            {
                Change();
            }

            return GC.GetAllocatedBytesForCurrentThread() - before;

            void Change()
            {
                session.Add(some.Address, some.Box.WithId("one more"));
                session.Remove("one more");
            }
        }
    }

    // What each run of a wall lacks is added in one round, and tried by judging that run alone: with the whole wall judged for each, ten times as many took a hundred times the bytes.
    [Theory]
    [InlineData("doors")]
    [InlineData("counters")]
    [InlineData("interruptions")]
    public void Mend_TenTimesTheLacksOfARoom_AllocatesAtMostTwelveTimesTheBytes(string what)
    {
        long few = Allocated(Evaluator.Evaluate(Along(what, 30)));
        Assert.InRange(Allocated(Evaluator.Evaluate(Along(what, 300))), 6 * few, 12 * few);

        static long Allocated(Evaluation evaluation)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            evaluation.Mend();
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    // A box that is tried for one run is judged by that run alone: what it is found to mend, and to bring, a dwelling evaluated with it says too.
    [Fact]
    public void Remedies_OfRoomsWithManyLacks_MendTheirsAndBringNothingElse()
    {
        int tried = 0;
        foreach (Dwelling house in Enumerable.Range(1, 60).Select(seed => RandomRooms.Make(seed * 65537)).Append(Along("doors", 6)))
        {
            Evaluation before = Evaluator.Evaluate(house);
            (string, string)[] known = [.. before.Findings.Select(finding => (finding.RuleId, finding.Subject))];
            foreach (Cause cause in before.Causes)
            {
                foreach (AddBox remedy in cause.Remedies.OfType<AddBox>())
                {
                    (string, string)[] found = [.. Evaluator.Evaluate(remedy.ApplyTo(house)).Findings.Select(finding => (finding.RuleId, finding.Subject))];
                    Assert.DoesNotContain((cause.RuleId, cause.Subjects[0]), found);
                    Assert.DoesNotContain(found.Except(known), one => !remedy.Brings.Contains(one.Item1));
                    tried++;
                }
            }
        }

        Assert.InRange(tried, 50, 10_000);
    }

    // A row that looks at what it doesn't ask the engine for makes every remedy that adds a box judge the whole dwelling.
    [Fact]
    public void Rows_OfAllSets_LookAtTheirOwnBoxesOnly() => Assert.True(new CompiledRules(DwellingGen.Rules + RuleSets.CanadaDwelling).LooksAtOwnBoxesOnly);

    // Boxes alike: what the rules state of them is stated once.
    [Fact]
    public void Evaluate_ManyBoxesAlikeThatPass_AllocatesAtMost1700BytesForEach() =>
        Assert.InRange((Allocated(Wall(1000)) - Allocated(Wall(500))) / 500, 1, 1700);

    // Two boxes of a long wall overlap, far from its ends, among hundreds that don't: compared with those near it alone, each is still compared with the other.
    [Theory]
    [InlineData(15)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(400)]
    public void Overlap_AmongManyBoxes_IsFoundOnceAndNoOther(int boxes)
    {
        Dwelling house = Wall(boxes);
        PlacedBox middle = house.PlacedBoxes()[boxes / 2];
        Distance beside = middle.Box.At!.Value + Distance.FromInches(2);
        Evaluation evaluation = Evaluator.Evaluate(house.WithBox(new(middle.Address, middle.Box.WithId("zz").WithAt(beside))));
        Finding finding = Assert.Single(evaluation.Findings, one => one.Message.Contains("in the way of", StringComparison.Ordinal));
        Assert.Equal("zz", finding.Subject);
        Assert.Contains(middle.Box.Id, finding.Message, StringComparison.Ordinal);
    }

    private static long Allocated(Dwelling house)
    {
        // The first evaluations fill what is kept for ever.
        Evaluator.Evaluate(house);
        Evaluator.Evaluate(house);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Evaluator.Evaluate(house);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static Dwelling Wall(int boxes)
    {
        Wall wall = new Wall("w", Distance.FromInches(boxes * 60)).WithBoxes(Enumerable.Range(0, boxes).Select(i => new DeviceBox("b" + i, BoxPurpose.General)
            .WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(Distance.FromInches((i * 60) + 30)).WithHeight(BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor))).ToArray());
        return new Dwelling("long").WithStoreys(new[] { new Storey("s") }).WithRooms(new[] { new Room("r", RoomKind.Bedroom, "s").WithWalls(new[] { wall }) });
    }

    private static Dwelling Along(string what, int count)
    {
        Wall wall = new("w", Distance.FromInches(count * 60));
        Opening[] Openings(OpeningKind kind) => [.. Enumerable.Range(0, count).Select(i => new Opening("o" + i, kind, Inches(i, 20), Inches(i, 52)))];
        CounterInterruption[] sinks = [.. Enumerable.Range(0, count).Select(i => new CounterInterruption(InterruptionKind.Sink, Inches(i, 20), Inches(i, 40)))];
        Level top = new(Distance.FromInches(36), Datum.Subfloor);
        wall = what switch
        {
            "doors" => wall.WithOpenings(Openings(OpeningKind.Door)),
            "windows" => wall.WithOpenings(Openings(OpeningKind.Window)),
            "counters" => wall.WithCounters(Enumerable.Range(0, count).Select(i => new Counter("c" + i, CounterKind.Kitchen, Inches(i, 0), Inches(i, 50)).WithTop(top)).ToArray()),
            _ => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, wall.Length).WithTop(top).WithInterruptions(sinks) }),
        };
        return new Dwelling("long").WithStoreys(new[] { new Storey("s") }).WithRooms(new[] { new Room("r", RoomKind.Kitchen, "s").WithWalls(new[] { wall }) });

        static Distance Inches(int nth, int more) => Distance.FromInches((nth * 60) + more);
    }

    private static Dwelling Copies(Dwelling house, int count) => house.WithRooms(Enumerable.Range(0, count).SelectMany(copy => house.Rooms.Select(room => Named(room, "c" + copy + "-"))).ToArray());

    private static Room Named(Room room, string prefix)
    {
        return room.WithId(prefix + room.Id).WithOverhead(Boxes(room.Overhead)).WithInFloor(Boxes(room.InFloor))
            .WithWalls(room.Walls.Select(wall => wall.WithBoxes(Boxes(wall.Boxes)).WithBackOf(null)));

        Items<DeviceBox> Boxes(Items<DeviceBox> boxes) => boxes.Select(box => box.WithId(prefix + box.Id));
    }
}
