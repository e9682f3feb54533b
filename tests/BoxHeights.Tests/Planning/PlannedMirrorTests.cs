using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>
/// A room seen in a mirror gets the mirrored plan, sides swapped. Where several plans are equal in everything that is aimed at, the leftmost is taken as seen from inside,
/// so that the mirror takes the mirror image of another: then both have the same boxes at the same heights, and serve their runs as well. Where the leftmost of two equal places
/// for a switch, a thermostat or a chime leaves a run other places to choose from, a room may get a receptacle more or less in the mirror: rarely, and never more than one.
/// </summary>
public sealed class PlannedMirrorTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice;
    private static readonly RoughInPlanner Planner = new(Rules, RoughInOptions.Default.WithExtras(new[] { BoxPurpose.Bedside, BoxPurpose.Television, BoxPurpose.WindowTop }));
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    [Fact]
    public void Plan_InTheMirror_IsTheMirroredPlan_OrOneThatServesAsWell_ButInOneRoomOfFifty()
    {
        int exactly = 0;
        int all = 0;
        List<string> otherwise = [];
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            // A flight of stairs climbs one way.
            if (RandomRooms.KindOf(seed) == RoomKind.Stair)
            {
                return;
            }

            Dwelling here = Planner.Plan(RandomRooms.Make(seed)).Dwelling;
            Dwelling there = Planner.Plan(Mirror.Of(RandomRooms.Make(seed))).Dwelling;
            all++;
            exactly += PlanMirror.Boxes(here, false).SequenceEqual(PlanMirror.Boxes(there, true)) ? 1 : 0;
            string[] runs = PlanMirror.Runs(Evaluator, here);
            string[] mirrored = PlanMirror.Runs(Evaluator, there);
            bool same = PlanMirror.Counts(here).SequenceEqual(PlanMirror.Counts(there)) && runs.Length == mirrored.Length && runs.Zip(mirrored).All(pair => ServesAsWell(pair.First, pair.Second));
            if (!same)
            {
                otherwise.Add("seed " + seed);
                Assert.True(Math.Abs(here.PlacedBoxes().Count - there.PlacedBoxes().Count) <= 1, "seed " + seed + ": more than a box more or less in the mirror");
            }
        }).Check(Tries.Config(400));
        Assert.True(otherwise.Count * 50 <= all, string.Join(", ", otherwise) + " of " + all + " are planned otherwise in the mirror");
        Assert.True(exactly * 2 > all, exactly + " of " + all + " are mirrored exactly: that many ties aren't chance");
    }

    /// <summary>As many outlets, and none further: and as evenly, but for the hundredth part that a switch on the other side of its stud leaves them.</summary>
    private static bool ServesAsWell(string run, string other)
    {
        (string served, string even) = (run[..run.LastIndexOf(' ')], run[(run.LastIndexOf(' ') + 1)..]);
        decimal squares = decimal.Parse(even, CultureInfo.InvariantCulture);
        return served == other[..other.LastIndexOf(' ')] && Math.Abs(squares - decimal.Parse(other[(other.LastIndexOf(' ') + 1)..], CultureInfo.InvariantCulture)) <= squares / 100m;
    }

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

    // A way in the middle of its wall has as much wall on either side: the switch goes to its left, in the mirror too.
    [Fact]
    public void Switch_BesideAWayInTheMiddle_IsOnItsLeft_InTheMirrorToo()
    {
        Opening way = new Opening("way", OpeningKind.Cased, In(60), In(96)).WithCasing(In(2.25m)).WithReveal(In(0.1875m));
        Dwelling house = Lopsided.WithRooms(Lopsided.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "south" ? wall.WithLength(In(156)).WithOpenings(new[] { way }) : wall))));
        foreach (Dwelling one in new[] { house, Mirror.Of(house) })
        {
            DeviceBox box = Planner.Plan(one).Dwelling.PlacedBoxes().Single(placed => placed.Address == "room/south" && placed.Box.Purpose == BoxPurpose.Switch).Box;
            Assert.Equal(In(60 - 3 - 1.125m), box.At);
        }
    }

    private static Opening Door(string id, decimal left, decimal right, WallEnd hinge, DoorSwing swing) =>
        new Opening(id, OpeningKind.Door, In(left), In(right)).WithLeaf(In(right - left - 2)).WithHinge(hinge).WithSwing(swing).WithCasing(In(2.25m)).WithReveal(In(0.1875m));

    private static Distance In(decimal inches) => Distance.FromInches(inches);
}
