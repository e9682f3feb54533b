using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Planning;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>How a room is drawn doesn't change what is found of it: its corners a little off square, its walls in pieces, begun at another wall, or in a mirror.</summary>
public sealed class DrawnRoomTests
{
    private static readonly LayoutEvaluator Evaluator = new(
        RuleSets.OfAHouse,
        EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    // Half a degree is the tolerance. What is found is the same to the word, since a room squared up is the same room.
    [Fact]
    public void Findings_OfARoomDrawnOffSquare_AreThoseOfTheSquareOne() => Prop.ForAll(RandomRooms.Seeds, seed =>
    {
        Dwelling house = RandomRooms.Make(seed);
        string[] square = Found(house);
        Random random = new(seed);
        Assert.Equal(square, Found(Turned(house, (_, turn) => turn + (((decimal)random.NextDouble() - 0.5m) * 1m))));
        Assert.Equal(square, Found(Turned(house, (_, turn) => turn + 0.00000000001m)));
        Assert.Equal(square, Found(Turned(house, (i, turn) => i == 0 ? turn + 0.37m : i == 1 ? turn - 0.37m : turn)));
        Assert.Equal(square, Found(Turned(house, (_, turn) => turn > 0m ? turn - 360m : turn)));
    }).Check(Tries.Config(100));

    // A drawing's points, turned by 0.37 degrees, snapped to its grid of 1/8 in and read back: no turn is 90 to the last digit.
    [Fact]
    public void Findings_OfADrawingTurnedRound_AreThoseOfTheUpright()
    {
        int drawn = 0;
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            Dwelling house = RandomRooms.Make(seed);
            Dwelling turned = house.WithRooms(house.Rooms.Select(room => room.WithWalls(new Items<Wall>(AsDrawn(room, 0.37)))));
            drawn += house.Equals(turned) ? 0 : 1;
            Assert.Equal(Found(house), Found(turned));
        }).Check(Tries.Config(100));

        // Some small rooms come back from the grid as they were.
        Assert.True(drawn > Tries.Of(100) / 2, drawn + " rooms were drawn otherwise");
    }

    // The same places in pieces: a cut where nothing is, and the wall goes straight on.
    [Fact]
    public void WallSpaces_OfWallsInPieces_AreThoseOfTheWhole() => Prop.ForAll(Rooms(), room =>
    {
        (string[] whole, string[] pieces) = room;
        string[] expected = Lacking("bedroom", whole);
        Assert.Equal(expected, Lacking("bedroom", pieces));
        Assert.Equal(expected, Lacking("bedroom", [.. pieces.Skip(1), pieces[0]]));
    }).Check(Tries.Always(60));

    // Hinges 10 in from where a wall is cut, a leaf of 30 in: 20 in beyond the cut are hidden, as they would be without it.
    [Theory]
    [InlineData("81", true)]
    [InlineData("79", false)]
    public void Leaf_AcrossACut_HidesTheRestOfItsWidth(string at, bool isHidden)
    {
        Opening door = new Opening("d", OpeningKind.Door, In("9"), In("41")).WithLeaf(In("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        DeviceBox box = new DeviceBox("s", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(In(at)).WithHeight(BoxHeight.ToTop(In("48"), Datum.Subfloor));
        Room room = new Room("room", RoomKind.Bedroom, "ground").WithWalls(new[] { new Wall("one", In("100")).WithTurnDegrees(0m).WithBoxes(new[] { box }), new Wall("two", In("100")).WithOpenings(new[] { door }) });
        Dwelling house = new Dwelling("case").WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { room });
        Assert.Equal(isHidden, new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).Findings.Any(finding => finding.RuleId == "behind-open-door"));
    }

    // A trapezoid that closes as it is drawn is no rectangle, though each corner is nearly square: over 20 ft half a degree is 2 in.
    [Fact]
    public void Plan_OfARoomThatClosesOnlyAsDrawn_IsAsDrawn()
    {
        Room room = new Room("room", RoomKind.Bedroom, "ground").WithWalls(new[]
        {
            new Wall("n", In("240")).WithTurnDegrees(90.5m), new Wall("e", Distance.FromInchesRounded(240.0091)).WithTurnDegrees(89.5m),
            new Wall("s", Distance.FromInchesRounded(237.9056)).WithTurnDegrees(90m), new Wall("w", In("240")),
        });
        Assert.True(new WallPlan(room).Closes);
        Assert.False(new WallPlan(room.WithWalls(room.Walls.Select(wall => wall.WithTurnDegrees(90m)))).Closes);
        Assert.True(new WallPlan(room.WithWalls(room.Walls.Select(wall => wall.WithTurnDegrees(90m).WithLength(In("240"))))).Closes);
    }

    private static Dwelling Turned(Dwelling house, Func<int, decimal, decimal> turn) =>
        house.WithRooms(house.Rooms.Select(room => room.WithWalls(new Items<Wall>(room.Walls.Select((wall, i) => wall.WithTurnDegrees(turn(i, wall.TurnDegrees)))))));

    private static IEnumerable<Wall> AsDrawn(Room room, double by)
    {
        List<double> headings = [];
        double x = 0, y = 0, degrees = by;
        foreach (Wall wall in room.Walls)
        {
            double endX = Math.Round((x + ((double)wall.Length.Ticks * Math.Cos(degrees * Math.PI / 180))) / 254_000) * 254_000;
            double endY = Math.Round((y + ((double)wall.Length.Ticks * Math.Sin(degrees * Math.PI / 180))) / 254_000) * 254_000;
            headings.Add(Math.Atan2(endY - y, endX - x) * 180 / Math.PI);
            (x, y, degrees) = (endX, endY, degrees + (double)wall.TurnDegrees);
        }

        return room.Walls.Select((wall, i) => wall.WithTurnDegrees((decimal)Math.IEEERemainder(headings[(i + 1) % headings.Count] - headings[i], 360)));
    }

    private static string[] Found(Dwelling house) => Evaluator.Evaluate(house).Findings.Select(finding => finding.ToString()).ToArray();

    private static string[] Lacking(string kind, string[] walls) =>
        Evaluator.Evaluate(RoomSketch.House(kind, walls)).Findings.Where(finding => finding.RuleId == "wall-outlets").Select(finding => finding.Verdict + " " + finding.Measured).Order().ToArray();

    /// <summary>A rectangle of whole inches, with a door, windows and boxes, and the same with each wall in two pieces.</summary>
    private static Arbitrary<(string[] Whole, string[] Pieces)> Rooms() => Arb.From(
        from wide in Gen.Choose(120, 400)
        from deep in Gen.Choose(110, 300)
        from door in Gen.Choose(0, 60)
        from cuts in Gen.Choose(2, 9).ArrayOf(4)
        from boxes in Gen.Choose(1, 99).ArrayOf(6)
        select Sketch([wide, deep, wide, deep], door, cuts, boxes));

    private static (string[] Whole, string[] Pieces) Sketch(int[] lengths, int door, int[] cuts, int[] boxes)
    {
        List<string> whole = [];
        List<string> pieces = [];
        for (int wall = 0; wall < 4; wall++)
        {
            int length = lengths[wall];
            int cut = Math.Max(wall == 0 ? door + 34 : 4, length * cuts[wall] / 10);
            int[] at = boxes.Where((_, i) => i % 4 == wall).Select(part => length * part / 100).Where(one => one > 2 && one < length - 2 && Math.Abs(one - cut) > 2).ToArray();
            string front = wall == 0 ? " door:" + door + ":" + (door + 32) : "";
            whole.Add(length + front + string.Concat(at.Select(one => " box:" + one)));
            pieces.Add(cut + " turn:0" + front + string.Concat(at.Where(one => one < cut).Select(one => " box:" + one)));
            pieces.Add((length - cut) + string.Concat(at.Where(one => one > cut).Select(one => " box:" + (one - cut))));
        }

        return ([.. whole], [.. pieces]);
    }
}
