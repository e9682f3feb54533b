using System;
using System.Linq;
using BoxHeights.Tests.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Plans of rooms and houses without boxes, judged by the same rules that anybody's boxes are.</summary>
public sealed class RoughInPlannerTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoughInPlanner Planner = new(Rules);
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    /// <summary>An ordinary house as it was drawn, without boxes.</summary>
    private static Dwelling Bare(int seed, int rooms)
    {
        Dwelling house = OrdinaryHouses.Drawn(seed, rooms);
        return house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithBoxes(Items<DeviceBox>.None))).WithOverhead(Items<DeviceBox>.None)))
            .WithOutside(Items<OutsideFace>.None);
    }

    [Fact]
    public void Plan_OfOrdinaryHouses_EvaluatesWithoutViolationOrUnknown() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
    {
        RoomPlan plan = Planner.Plan(Bare(one.Seed, one.Rooms));
        string what = "seed " + one.Seed + " " + one.Rooms + ": ";
        Finding[] left = Evaluator.Evaluate(plan.Dwelling).Findings.Where(finding => finding.Severity > Severity.Note || finding.Verdict == Verdict.Unknown).ToArray();
        Assert.True(left.Length == 0, what + string.Join("\n", left.Select(finding => finding.RuleId + ": " + finding.Message)));

        // Under a slope there may be no height for a switch.
        string[] sloped = plan.Dwelling.Rooms.Where(room => room.Walls.Any(wall => wall.Top.Count > 0)).Select(room => room.Id + "/").ToArray();
        Assert.True(plan.Obstacles.All(obstacle => sloped.Any(room => obstacle.StartsWith(room, StringComparison.Ordinal))), what + plan.ToText());
        Assert.Equal(plan.Reasons.Count, plan.Dwelling.PlacedBoxes().Count);
    }).Check(Tries.Config(300));

    // A storey whose first room judges no seam, and whose second has one at 48 in: the stick of both comes down.
    [Theory]
    [InlineData(82, 8)]
    [InlineData(114, 8)]
    public void Plan_WhereALaterRoomForbidsTheHeight_TakesTheWholeStickDown(int seed, int rooms)
    {
        RoomPlan plan = Planner.Plan(Bare(seed, rooms));
        Assert.Empty(plan.Obstacles);
        Assert.DoesNotContain(Evaluator.Evaluate(plan.Dwelling).Findings, finding => finding.Severity > Severity.Note || finding.Verdict == Verdict.Unknown);
    }

    // Furring of 1-1/2 in with 1/2 in of board takes no box of 2-3/4 in: the receptacle that a basement has to have goes to another wall, or nowhere.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Plan_OfAFurredBasement_SetsNoUsualBoxInTheFurring(int furred)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Basement }.House();
        int wall = 0;
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(one => wall++ < furred ? one.WithCavity(In(1.5m)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) : one))));
        RoomPlan plan = Planner.Plan(house);
        Assert.Equal(furred < 4, plan.Dwelling.PlacedBoxes().Any(placed => placed.Box.Purpose == BoxPurpose.Basement));
        Assert.DoesNotContain(plan.Dwelling.PlacedBoxes(), placed => placed.Address == SquareRoom.Id + "/north" && placed.Box.Purpose == BoxPurpose.Basement);

        // Without a door there is no place for the switch of its light: that it says too.
        Assert.Equal(furred < 4, plan.Obstacles.All(obstacle => obstacle.Contains("switch", System.StringComparison.Ordinal)));
    }

    // What reach documents ask is firmer than where boxes are usually set: 16 in to the top is too low for them.
    [Fact]
    public void Plan_UnderAReachDocument_SetsReceptaclesWithinReach()
    {
        RuleSet reach = Rules + RuleSets.FairHousing;
        RoomPlan plan = new RoughInPlanner(reach).Plan(Bedroom(), "bed");
        Assert.Empty(plan.Obstacles);
        Assert.DoesNotContain(new LayoutEvaluator(reach).Evaluate(plan.Dwelling).Findings, finding => finding.Severity > Severity.Note);
    }

    [Fact]
    public void Plan_TwiceOfTheSame_IsTheSame() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
        Planner.Plan(Bare(one.Seed, one.Rooms)).Dwelling.Equals(Planner.Plan(Bare(one.Seed, one.Rooms)).Dwelling)).Check(Tries.Config(10));

    [Fact]
    public void Plan_OfAPlan_AddsNothing() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
        Planner.Plan(Planner.Plan(Bare(one.Seed, one.Rooms)).Dwelling).Reasons.Count == 0).Check(Tries.Config(10));

    /// <summary>A bedroom 12 ft by 14 ft with a door at the left of its south wall, a window and a bed.</summary>
    private static Dwelling Bedroom(Func<Room, Room>? change = null)
    {
        DwellingBuilder house = new("Bedroom");
        house.Add(new Storey("main").WithCeiling(new Ceiling().WithFraming(Distance.Parse("97-1/8 in")).WithBoard(Distance.Parse("1/2 in"))));
        RoomBuilder room = house.Room("bed", RoomKind.Bedroom, "main").With(one => (change ?? (same => same))(one.WithFloor(FloorBuildup.Of(new FloorLayer("wood", Distance.Parse("3/4 in"))))
            .WithFixtures(new[] { new Fixture("queen", FixtureKind.Bed).WithWall("north").WithLeft(In(54)).WithRight(In(114)).WithDepth(In(80)) })));
        room.Wall("north", In(168));
        room.Wall("east", In(144)).Add(new Opening("window", OpeningKind.Window, In(48), In(96)).WithSill(Level.Parse("36 in above subfloor")).WithHead(Level.Parse("82-1/2 in above subfloor")));
        room.Wall("south", In(168)).Add(new Opening("door", OpeningKind.Door, In(12), In(44)).WithLeaf(In(30)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithCasing(In(2.25m)).WithReveal(Distance.Parse("3/16 in")));
        room.Wall("west", In(144));
        return house.Build();
    }

    // Worked by hand: the wall space is 592 in round from the door's right side to its left. With 66 in of reach and one box to each wall of 6 ft or more, five boxes do.
    [Fact]
    public void Plan_OfABedroom_HasASwitchAtTheLatch_ReceptaclesWithSlack_LightAndAlarm()
    {
        RoomPlan plan = Planner.Plan(Bedroom(), "bed");
        Assert.Empty(plan.Obstacles);
        ILookup<BoxPurpose, PlacedBox> boxes = plan.Dwelling.PlacedBoxes().ToLookup(placed => placed.Box.Purpose);
        PlacedBox latch = Assert.Single(boxes[BoxPurpose.Switch]);
        Assert.Equal("bed/south", latch.Address);
        Assert.True(latch.Box.At > In(44), "the latch is away from the hinges");
        Assert.Equal("48 in to top above subfloor", latch.Box.Height.ToString());
        Assert.Equal(5, boxes[BoxPurpose.General].Count());
        Assert.All(boxes[BoxPurpose.General], placed => Assert.Equal("16 in to top above subfloor", placed.Box.Height.ToString()));
        Assert.Equal(4, boxes[BoxPurpose.General].Select(placed => placed.Address).Distinct().Count());
        Assert.Equal("bed/ceiling", Assert.Single(boxes[BoxPurpose.Light]).Address);
        Assert.Equal("bed/ceiling", Assert.Single(boxes[BoxPurpose.Alarm]).Address);
    }

    [Fact]
    public void Plan_AtCodeMinimum_HasNoBoxToSpare()
    {
        int usual = Planner.Plan(Bedroom(), "bed").Reasons.Count;
        RoomPlan least = new RoughInPlanner(Rules, RoughInOptions.Default.WithCodeMinimum(true)).Plan(Bedroom(), "bed");
        Assert.True(least.Reasons.Count <= usual);

        // 592 in of wall at 144 in to a box.
        Assert.Equal(5, least.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.General));
        Assert.DoesNotContain(Evaluator.Evaluate(least.Dwelling).Findings, finding => finding.Severity == Severity.Violation);
    }

    [Fact]
    public void Plan_WithExtras_HasABoxOnEitherSideOfTheBed()
    {
        RoomPlan plan = new RoughInPlanner(Rules, RoughInOptions.Default.WithExtras(new[] { BoxPurpose.Bedside })).Plan(Bedroom(), "bed");
        Distance[] beside = plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Bedside).Select(placed => placed.Box.At!.Value).Order().ToArray();
        Assert.Equal(2, beside.Length);
        Assert.InRange(In(54) - beside[0], In(2), In(30));
        Assert.InRange(beside[1] - In(114), In(2), In(30));
    }

    [Fact]
    public void Plan_BoxesThatAreThere_StayAndCount()
    {
        DeviceBox own = new DeviceBox("own", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(In(20)).WithHeight(BoxHeight.Parse("16 in to top above subfloor")).WithPinned(true);
        Dwelling house = Bedroom(room => room).WithBox(new PlacedBox("bed/west", own));
        RoomPlan plan = Planner.Plan(house, "bed");
        Assert.Equal(own, plan.Dwelling.FindBox("own")!.Box);
        Assert.DoesNotContain(plan.Reasons, box => box.Id == "own");
        Assert.All(plan.Reasons, box => Assert.NotEqual("", box.Reason));
        Assert.Empty(plan.Obstacles);
    }

    // 4 ft of wall that a tall cabinet covers, but for a foot beside the door: nothing fits there.
    [Fact]
    public void Plan_WhereNoBoxFits_NamesTheStretch_AndPlansTheRest()
    {
        Dwelling house = Bedroom().WithRooms(Bedroom().Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "north"
            ? wall.WithCoverings(new[] { new Covering("glass", CoveringKind.Mirror, In(0), In(168)).WithBottom(Level.Parse("0 in above finished floor")).WithTop(Level.Parse("90 in above finished floor")) })
            : wall))));
        RoomPlan plan = Planner.Plan(house, "bed");
        Assert.Contains(plan.Obstacles, obstacle => obstacle.StartsWith("bed from door ", StringComparison.Ordinal) && obstacle.Contains("north", StringComparison.Ordinal));
        Assert.Contains(plan.Reasons, box => box.Address == "bed/south");
        Assert.Contains(plan.Reasons, box => box.Address == "bed/ceiling");
    }

    [Fact]
    public void Plan_WrongGeometry_IsAnObstacle_AndTheRestIsPlanned()
    {
        Dwelling house = Bedroom();
        house = house.WithRooms(new Items<Room>(house.Rooms.Append(new Room("bad", RoomKind.Bedroom, "main").WithWalls(new[] { new Wall("w", In(100)).WithOpenings(new[] { new Opening("d", OpeningKind.Door, In(40), In(30)) }) }))));
        RoomPlan plan = Planner.Plan(house);
        Assert.Contains(plan.Obstacles, obstacle => obstacle.Contains("bad/w/d", StringComparison.Ordinal) && obstacle.Contains("40 in", StringComparison.Ordinal));
        Assert.Contains(plan.Reasons, box => box.Address == "bed/north");
    }

    [Fact]
    public void Plan_NoSuchRoom_SaysWhichThereAre() =>
        Assert.Contains("\"attic\"; there are: bed", Assert.Throws<ArgumentException>(() => Planner.Plan(Bedroom(), "attic")).Message, StringComparison.Ordinal);
}
