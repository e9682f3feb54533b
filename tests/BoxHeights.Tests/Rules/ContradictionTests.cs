using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Two statements of a description that can't both be true are a fault, with both in its words; where they may both be, nothing is said.</summary>
public sealed class ContradictionTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    // An opening from 20 to 54 in, 34 in wide.
    [Theory]
    [InlineData("door", "34", 0, null)]
    [InlineData("door", "34", 1, "its leaf is ")]
    [InlineData("pocket-door", "36", 0, "its leaf is 36 in wide, but the opening is 34 in")]
    [InlineData("double-door", "17", 0, null)]
    [InlineData("double-door", "17", 1, "each of its two leaves is ")]
    [InlineData("barn-door", "40", 0, null)]
    public void Leaf_WiderThanItsOpening_IsNamed(string kind, string leaf, int ticks, string? expected) =>
        AssertSays(expected, Of(wall => wall.WithOpenings(new[] { Opening(kind).WithLeaf(In(leaf) + Distance.FromTicks(ticks)) })), "room/n/o");

    [Theory]
    [InlineData("subfloor", "40", "subfloor", "80", null)]
    [InlineData("subfloor", "80", "subfloor", "80", "its sill, 80 in above subfloor, isn't below its head, 80 in above subfloor")]
    [InlineData("finished floor", "40", "subfloor", "41", null)]
    [InlineData("finished floor", "40", "subfloor", "40-3/4", "isn't below its head")]
    [InlineData("grade", "90", "subfloor", "80", null)]
    [InlineData("subfloor", "40", "subfloor", "97-1/8", null)]
    [InlineData("subfloor", "40", "subfloor", "97-1/4", "its head is at 97-1/4 in above the subfloor, but the ceiling framing is at 97-1/8 in")]
    public void Opening_WhoseEdgesCantBe_IsNamed(string sillFrom, string sill, string headFrom, string head, string? expected) =>
        AssertSays(expected, Of(wall => wall.WithOpenings(new[] { Opening("window").WithSill(Level(sill, sillFrom)).WithHead(Level(head, headFrom)) })), "room/n/o");

    [Fact]
    public void Covering_AndFinish_UpsideDown_AreNamed()
    {
        AssertSays("its bottom, 84 in above subfloor, isn't below its top, 54 in above subfloor", Of(wall => wall.WithCoverings(new[]
        {
            new Covering("o", CoveringKind.WallCabinet, In("20"), In("50")).WithBottom(Level("84", "subfloor")).WithTop(Level("54", "subfloor")),
        })), "room/n/o");
        AssertSays("isn't below its top", Of(wall => wall.WithFinishes(new[] { new Finish("o", FinishKind.Tile, In("20"), In("50")).WithBottom(Level("48", "subfloor")).WithTop(Level("48", "subfloor")) })), "room/n/o");
    }

    // A tape is read to 1/8 in; a ledge over a worktop is no overlap.
    [Theory]
    [InlineData("60", "36", "36", null)]
    [InlineData("59-7/8", "36", "36", null)]
    [InlineData("59-3/4", "36", "36", "it overlaps the counter \"b\": 0 in to 60 in and 59-3/4 in to 100 in")]
    [InlineData("30", "36", "42", null)]
    [InlineData("30", "36", "", "it overlaps the counter \"b\"")]
    public void Counters_InOnePlace_AreNamed(string left, string top, string other, string? expected)
    {
        Counter Top(Counter counter, string height) => height.Length == 0 ? counter : counter.WithTop(Level(height, "subfloor"));
        AssertSays(expected, Of(wall => wall.WithCounters(new[] { Top(new Counter("a", CounterKind.Kitchen, In("0"), In("60")), top), Top(new Counter("b", CounterKind.Kitchen, In(left), In("100")), other) })), "room/n/a");
    }

    [Theory]
    [InlineData("60", "90", null)]
    [InlineData("60", "100-1/8", null)]
    [InlineData("70", "100-1/4", "its sink runs from 70 in to 100-1/4 in along the wall, but the counter runs from 10 in to 100 in")]
    [InlineData("9", "30", "its sink runs from 9 in")]
    public void Sink_BeyondItsCounter_IsNamed(string left, string right, string? expected) => AssertSays(expected, Of(wall => wall.WithCounters(new[]
    {
        new Counter("a", CounterKind.Kitchen, In("10"), In("100")).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, In(left), In(right)) }),
    })), "room/n/a");

    [Theory]
    [InlineData("97-1/4", null)]
    [InlineData("97-1/8", "it lies 97-1/8 in above the subfloor below, but the ceiling framing there is at 97-1/8 in")]
    public void Storey_UnderTheCeilingBelow_IsNamed(string above, string? expected)
    {
        Dwelling dwelling = Of(wall => wall);
        AssertSays(expected, dwelling.WithStoreys(dwelling.Storeys.With(new Storey("second").WithAboveBelow(In(above)))), "second");
    }

    [Theory]
    [InlineData("130", null)]
    [InlineData("131", null)]
    [InlineData("131-1/8", "14 risers with treads of 10 in don't make a run of 131-1/8 in")]
    public void Flight_WhoseTreadsDontMakeItsRun_IsNamed(string run, string? expected) =>
        AssertSays(expected, Of(wall => wall).WithFlights(new[] { new StairFlight("stairs", "first", "first", 14).WithTread(In("10")).WithRun(In(run)) }), "stairs");

    // The door runs from 20 to 54 in of 144: on the other face of equal length from 90 to 124.
    [Theory]
    [InlineData("door", "90", "124", null)]
    [InlineData("door", "91", "125", null)]
    [InlineData("door", "91-1/16", "124", "it and \"p\" of the other face, bath/x, lie in each other's way: seen from here they run from 20 in to 54 in and from 20 in to 52-15/16 in")]
    [InlineData("door", "110", "140", "lie in each other's way")]
    [InlineData("window", "90", "124", "it is a door, but \"p\" of the other face, bath/x, is a window")]
    [InlineData("door", "20", "54", null)]
    public void Faces_WhoseOpeningsDiffer_AreNamed(string kind, string left, string right, string? expected)
    {
        Dwelling both = Back(wall => wall.WithOpenings(new[] { Opening("door") }), wall => wall.WithOpenings(new[] { new Opening("p", new OpeningKind(kind), In(left), In(right)) }));
        AssertSays(expected, both, "room/n/o", atLeast: true);

        // It is the same whichever face names the other, or both do.
        Dwelling twice = both.WithRooms(both.Rooms.Select(room => room.Id == "bath" ? room.WithWalls(room.Walls.Select(wall => wall.WithBackOf("room/n"))) : room));
        Assert.Equal(expected is null, Faults(twice).Length == 0);
        Assert.Equal(Faults(both).Length, Faults(twice).Length);
    }

    // One face whose openings aren't described leaves the other's alone; so does a stretch that they don't share.
    [Fact]
    public void Faces_OfWhichLessIsSaid_AreSilent()
    {
        Assert.Empty(Faults(Back(wall => wall.WithOpenings(new[] { Opening("door") }), wall => wall)));
        Assert.Empty(Faults(Back(wall => wall.WithOpenings(new[] { Opening("door") }), wall => wall.WithLength(In("60")).WithOpenings(new[] { new Opening("p", OpeningKind.Door, In("10"), In("44")) }))));
        Assert.Empty(Faults(Back(wall => wall.WithBackOffset(In("70")).WithOpenings(new[] { Opening("door") }), wall => wall.WithLength(In("60")).WithOpenings(new[] { new Opening("p", OpeningKind.Door, In("10"), In("44")) }))));
    }

    [Theory]
    [InlineData(DoorSwing.Into, DoorSwing.Away, WallEnd.Left, WallEnd.Right, null)]
    [InlineData(DoorSwing.Into, DoorSwing.Into, WallEnd.Left, WallEnd.Right, "it swings into the room on either side: so says \"p\"")]
    [InlineData(DoorSwing.Away, DoorSwing.Away, WallEnd.Left, WallEnd.Right, "it swings away from the room on either side: so says \"p\"")]
    [InlineData(DoorSwing.Into, DoorSwing.Away, WallEnd.Left, WallEnd.Left, "its hinges are on the same hand as those of \"p\"")]
    public void Faces_WhoseDoorSwingsTwoWays_AreNamed(DoorSwing swing, DoorSwing other, WallEnd hinge, WallEnd otherHinge, string? expected) => AssertSays(expected, Back(
        wall => wall.WithOpenings(new[] { Opening("door").WithSwing(swing).WithHinge(hinge) }),
        wall => wall.WithOpenings(new[] { new Opening("p", OpeningKind.Door, In("90"), In("124")).WithSwing(other).WithHinge(otherHinge) })), "room/n/o");

    // The other face is 60 in long: its right end lies at the offset, so it shares something from more than -60 to less than 144.
    [Theory]
    [InlineData("100", null)]
    [InlineData("143", null)]
    [InlineData("144", "with a backOffset of 144 in this face, 144 in long, and bath/x, 60 in long, share no stretch of wall")]
    [InlineData("-59", null)]
    [InlineData("-60", "share no stretch of wall")]
    public void BackOffset_BeyondTheWall_IsNamed(string offset, string? expected) =>
        AssertSays(expected, Back(wall => wall.WithBackOffset(offset[0] == '-' ? -In(offset[1..]) : In(offset)), wall => wall.WithLength(In("60"))), "room/n");

    // Said from both faces: 40 in from one of 144 in is 40 + 60 - 144 = -44 in from the other of 60.
    [Theory]
    [InlineData("44", null)]
    [InlineData("45", null)]
    [InlineData("46", "its backOffset of -46 in is one of 38 in from room/n, which says 40 in")]
    public void BackOffset_SaidTwoWays_IsNamed(string left, string? expected) =>
        AssertSays(expected, Back(wall => wall.WithBackOffset(In("40")), wall => wall.WithLength(In("60")).WithBackOf("room/n").WithBackOffset(-In(left))), "bath/x");

    [Fact]
    public void BackOf_ItsOwnWall_IsNamed() => AssertSays("backOf names this wall itself", Of(wall => wall.WithBackOf("room/n")), "room/n");

    // A wall of 144 in with a bath of 60 and a closet of 70 behind it, side by side; then both behind one stretch, which only rooms of two storeys can be.
    [Fact]
    public void BackOf_OneWallBehindSeveralRooms_IsNoneUnlessTheyShareAStretch()
    {
        Dwelling Behind(string offset, string storey) => Of(wall => wall).WithRooms(Of(wall => wall).Rooms
            .With(new Room("bath", RoomKind.Bathroom, "first").WithWalls(new[] { new Wall("x", In("60")).WithBackOf("room/n").WithBackOffset(-In("84")) }))
            .With(new Room("closet", RoomKind.Closet, storey).WithWalls(new[] { new Wall("x", In("70")).WithBackOf("room/n").WithBackOffset(-In(offset)) })));
        Dwelling both = Behind("0", "first");
        Assert.Empty(Faults(both));
        AssertSays("bath/x and closet/x are both said to be behind one stretch of it, from 20 in to 60 in", Behind("54", "first"), "room/n");
        Assert.Empty(Faults(Behind("54", "second").WithStoreys(both.Storeys.With(new Storey("second")))));
    }

    private static Opening Opening(string kind) => new("o", new OpeningKind(kind), In("20"), In("54"));

    private static Level Level(string height, string from) => new(In(height), from == "grade" ? Datum.Grade : from == "subfloor" ? Datum.Subfloor : Datum.FinishedFloor);

    private static Dwelling Of(Func<Wall, Wall> change) => new Dwelling("case")
        .WithStoreys(new[] { new Storey("first").WithCeiling(new Ceiling().WithFraming(In("97-1/8")).WithBoard(In("1/2"))) })
        .WithRooms(new[] { new Room("room", RoomKind.Bedroom, "first").WithFloor(OneBox.Floor(In("3/4"))).WithWalls(new[] { change(new Wall("n", In("144"))) }) });

    private static Dwelling Back(Func<Wall, Wall> front, Func<Wall, Wall> back)
    {
        Dwelling house = Of(wall => front(wall.WithBackOf("bath/x")));
        return house.WithRooms(house.Rooms.With(new Room("bath", RoomKind.Bathroom, "first").WithWalls(new[] { back(new Wall("x", In("144"))) })));
    }

    private static LayoutFault[] Faults(Dwelling house) => [.. Evaluator.Evaluate(house).Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Fault!)];

    private static void AssertSays(string? expected, Dwelling house, string subject, bool atLeast = false)
    {
        LayoutFault[] found = Faults(house);
        if (expected is null)
        {
            Assert.Empty(found);
            return;
        }

        LayoutFault fault = atLeast ? found.First(one => one.Subject == subject) : Assert.Single(found);
        Assert.Equal((LayoutFaultKind.Contradiction, subject), (fault.Kind, fault.Subject));
        Assert.Contains(expected, fault.Message, StringComparison.Ordinal);
    }
}
