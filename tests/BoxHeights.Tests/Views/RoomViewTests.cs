using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Views;

public sealed class RoomViewTests
{
    [Fact]
    public void Walls_OfARectangle_RunRoundIt()
    {
        RoomView room = Evaluate(wall => wall, room => room);
        Assert.Equal(["(0 in, 0 in) to (120 in, 0 in)", "(120 in, 0 in) to (120 in, 96 in)", "(120 in, 96 in) to (0 in, 96 in)", "(0 in, 96 in) to (0 in, 0 in)"], room.Walls.Select(wall => wall.Start + " to " + wall.End));
        Assert.Equal("room/east", room.Walls[1].Address);
        Assert.True(room.GoesRound);
        Assert.True(room.IsCeilingInherited);
        Assert.Equal(CaseFile.Inches("96-1/2"), room.FinishedCeiling!.Value.From);
    }

    // On the east wall along runs into the room from the first wall's right end; the room lies to its right, toward smaller x.
    [Fact]
    public void Parts_OfASideWall_AreInPlan()
    {
        RoomView room = Evaluate(
            wall => wall
                .WithOpenings(new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("10"), CaseFile.Inches("42")).WithLeaf(CaseFile.Inches("30")).WithHinge(WallEnd.Right).WithSwing(DoorSwing.Into) })
                .WithCounters(new[] { new Counter("deep", CounterKind.Kitchen, CaseFile.Inches("50"), CaseFile.Inches("80")).WithDepth(CaseFile.Inches("25")), new Counter("unknown", CounterKind.Kitchen, CaseFile.Inches("80"), CaseFile.Inches("96")) })
                .WithBoxes(new[] { new DeviceBox("r1", BoxPurpose.General).WithAt(CaseFile.Inches("60")).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) }),
            room => room
                .WithFixtures(new[] { new Fixture("free", FixtureKind.Table).WithPlan(new[] { At("20", "20"), At("50", "40") }), new Fixture("bed", FixtureKind.Bed).WithWall("east").WithLeft(CaseFile.Inches("0")).WithRight(CaseFile.Inches("8")).WithDepth(CaseFile.Inches("12")) })
                .WithFreestanding(new[] { new Freestanding("rail", FreestandingKind.Railing).WithLine(new[] { At("0", "50"), At("30", "50") }) })
                .WithOverhead(new[] { new DeviceBox("light", BoxPurpose.Light).WithPlan(At("60", "48")) })
                .WithInFloor(new[] { new DeviceBox("floor", BoxPurpose.General).WithPlan(At("30", "30")) }));
        PlanOpening door = Assert.Single(room.Openings);
        Assert.Equal("(120 in, 10 in) to (120 in, 42 in)", door.Start + " to " + door.End);
        PlanSwing swing = Assert.Single(door.Swings);
        Assert.Equal("(120 in, 41 in), (120 in, 11 in), (90 in, 41 in)", swing.Hinge + ", " + swing.Closed + ", " + swing.Open);
        Assert.Equal(
            [
                "room/east/deep: (120 in, 50 in), (120 in, 80 in), (95 in, 80 in), (95 in, 50 in)", "room/east/unknown: (120 in, 80 in), (120 in, 96 in) open",
                "room/free: (20 in, 20 in), (50 in, 20 in), (50 in, 40 in), (20 in, 40 in)", "room/bed: (120 in, 0 in), (120 in, 8 in), (108 in, 8 in), (108 in, 0 in)", "room/rail: (0 in, 50 in), (30 in, 50 in) open",
            ],
            room.Shapes.Select(shape => shape.Address + ": " + shape.Corners + (shape.IsClosed ? "" : " open")));
        Assert.Equal(At("120", "60"), Assert.Single(room.WallBoxes).Plan);
        Assert.Equal(At("60", "48"), Assert.Single(room.Overhead).Plan);
        Assert.Equal(BoxSurface.Ceiling, room.Overhead[0].Surface);
        Assert.Equal(At("30", "30"), Assert.Single(room.InFloor).Plan);
    }

    // Rules take the rectangle round whatever corners are given, and before the wall: the picture shows what was judged.
    [Fact]
    public void Fixture_OfAnyCorners_IsTheRectangleRoundThem()
    {
        Fixture tub = new Fixture("tub", FixtureKind.Tub).WithPlan(new[] { At("0", "60"), At("30", "60"), At("30", "0"), At("0", "0") });
        foreach (Fixture one in new[] { tub, tub.WithPlan(new[] { At("30", "0"), At("0", "60") }), tub.WithWall("east").WithLeft(CaseFile.Inches("1")).WithRight(CaseFile.Inches("9")) })
        {
            PlanShape shape = Assert.Single(Evaluate(wall => wall, room => room.WithFixtures(new[] { one })).Shapes);
            Assert.Equal([At("0", "0"), At("30", "0"), At("30", "60"), At("0", "60")], shape.Corners);
            Assert.True(shape.IsClosed);
        }
    }

    [Fact]
    public void Findings_OfARoom_AreThoseOfAllItHolds()
    {
        Evaluation evaluation = new LayoutEvaluator(RuleSets.Ada2010 + RuleSets.RoughInPractice).Evaluate(House(
            wall => wall.WithBoxes(new[]
            {
                new DeviceBox("s1", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(CaseFile.Inches("60")).WithHeight(BoxHeight.Parse("60 in to center above finished floor")),
                new DeviceBox("r1", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("5 in to center above finished floor")),
            }),
            room => room));
        Assert.NotEmpty(evaluation.Room("room").Findings);
        Assert.Equal(evaluation.For("room").Count, evaluation.Room("room").Findings.Count);
        Assert.Equal(evaluation.Room("room").Findings.Select(place => place.Number).Order(), evaluation.Room("room").Findings.Select(place => place.Number));
    }

    private static PlanPoint At(string right, string into) => new(CaseFile.Inches(right), CaseFile.Inches(into));

    private static RoomView Evaluate(System.Func<Wall, Wall> east, System.Func<Room, Room> with) => new LayoutEvaluator(RuleSet.Empty).Evaluate(House(east, with)).Room("room");

    private static Dwelling House(System.Func<Wall, Wall> east, System.Func<Room, Room> with)
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("ground").WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8"))));
        RoomBuilder room = house.Room("room", RoomKind.Kitchen, "ground").With(with);
        room.Wall("north", CaseFile.Inches("120"));
        room.Wall("east", CaseFile.Inches("96")).With(east);
        room.Wall("south", CaseFile.Inches("120"));
        room.Wall("west", CaseFile.Inches("96"));
        return house.Build();
    }
}
