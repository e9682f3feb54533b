using System;
using System.Linq;
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

    // Boxes alike: what the rules state of them is stated once.
    [Fact]
    public void Evaluate_ManyBoxesAlikeThatPass_AllocatesAtMost1600BytesForEach() =>
        Assert.InRange((Allocated(Wall(1000)) - Allocated(Wall(500))) / 500, 1, 1600);

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

    private static Dwelling Copies(Dwelling house, int count) => house.WithRooms(Enumerable.Range(0, count).SelectMany(copy => house.Rooms.Select(room => Named(room, "c" + copy + "-"))).ToArray());

    private static Room Named(Room room, string prefix)
    {
        return room.WithId(prefix + room.Id).WithOverhead(Boxes(room.Overhead)).WithInFloor(Boxes(room.InFloor))
            .WithWalls(room.Walls.Select(wall => wall.WithBoxes(Boxes(wall.Boxes)).WithBackOf(null)));

        Items<DeviceBox> Boxes(Items<DeviceBox> boxes) => boxes.Select(box => box.WithId(prefix + box.Id));
    }
}
