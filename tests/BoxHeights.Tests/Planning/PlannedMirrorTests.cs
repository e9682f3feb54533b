using System.Linq;
using BoxHeights.Tests.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>A room seen in a mirror gets the mirrored plan, box by box: what ties goes to a side that the room itself decides, and the room in the mirror decides for the other.</summary>
public sealed class PlannedMirrorTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly RoughInPlanner Planner = new(Rules, RoughInOptions.Default.WithExtras(new[] { BoxPurpose.Bedside, BoxPurpose.Television, BoxPurpose.WindowTop }));
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    [Fact]
    public void Plan_InTheMirror_IsTheMirroredPlan() => Prop.ForAll(RandomRooms.Seeds, seed =>
    {
        // A flight of stairs climbs one way.
        if (RandomRooms.KindOf(seed) != RoomKind.Stair)
        {
            Dwelling here = Planner.Plan(RandomRooms.Make(seed)).Dwelling;
            Dwelling there = Planner.Plan(Mirror.Of(RandomRooms.Make(seed))).Dwelling;
            string[] boxes = PlanMirror.Boxes(here, false);
            string[] mirrored = PlanMirror.Boxes(there, true);
            Assert.True(boxes.SequenceEqual(mirrored), "seed " + seed + ": " + string.Join("; ", boxes.Except(mirrored)) + " are in the mirror " + string.Join("; ", mirrored.Except(boxes)));
            Assert.Equal(PlanMirror.Counts(here), PlanMirror.Counts(there));
            Assert.Equal(PlanMirror.Runs(Evaluator, here), PlanMirror.Runs(Evaluator, there));
        }
    }).Check(Tries.Config(400));

    /// <summary>Nothing in it stands in the middle of anything, so that nothing ties.</summary>
    private static Dwelling Lopsided => new Dwelling("lopsided").WithStoreys(new[] { new Storey("first").WithStuds(new StudLayout().WithSpacing(In(16)).WithFirstFace(In(15.25m)).WithKnown(StudKnowledge.Declared)) })
        .WithRooms(new[]
        {
            new Room("room", RoomKind.Bedroom, "first").WithFloor(FloorBuildup.Of(new FloorLayer("wood", In(0.75m)))).WithWalls(new[]
            {
                new Wall("north", In(161)),
                new Wall("east", In(131)).WithOpenings(new[] { Door("bath", 70, 102, WallEnd.Right, DoorSwing.Away) }),
                new Wall("south", In(161)).WithOpenings(new[] { Door("way", 21, 53, WallEnd.Left, DoorSwing.Into) }),
                new Wall("west", In(131)).WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, In(37), In(51)) }),
            }).WithFixtures(new[] { new Fixture("bed", FixtureKind.Bed).WithWall("north").WithLeft(In(43)).WithRight(In(103)).WithDepth(In(80)) }),
        });

    [Fact]
    public void Plan_WhereNothingTies_IsMirroredBoxByBox()
    {
        Dwelling here = Planner.Plan(Lopsided).Dwelling;
        string[] boxes = PlanMirror.Boxes(here, false);
        Assert.Equal(boxes, PlanMirror.Boxes(Planner.Plan(Mirror.Of(Lopsided)).Dwelling, true));
        Assert.True(boxes.Length >= 8, "two switches, two boxes beside the bed and four along the walls at least");
    }

    // A way in the middle of its wall has as much wall on either side: the switch goes to the one, in the mirror to the other.
    [Fact]
    public void Switch_BesideAWayInTheMiddle_IsOnOneSide_InTheMirrorOnTheOther()
    {
        Opening way = new Opening("way", OpeningKind.Cased, In(60), In(96)).WithCasing(In(2.25m)).WithReveal(In(0.1875m));
        Dwelling house = Lopsided.WithRooms(Lopsided.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "south" ? wall.WithLength(In(156)).WithOpenings(new[] { way }) : wall))));
        Distance[] at = [.. new[] { house, Mirror.Of(house) }.Select(one => Planner.Plan(one).Dwelling.PlacedBoxes().Single(placed => placed.Address == "room/south" && placed.Box.Purpose == BoxPurpose.Switch).Box.At!.Value)];
        Assert.Equal([In(60 - 3 - 1.125m), In(96 + 3 + 1.125m)], at.Order());
    }

    private static Opening Door(string id, decimal left, decimal right, WallEnd hinge, DoorSwing swing) =>
        new Opening(id, OpeningKind.Door, In(left), In(right)).WithLeaf(In(right - left - 2)).WithHinge(hinge).WithSwing(swing).WithCasing(In(2.25m)).WithReveal(In(0.1875m));
}
