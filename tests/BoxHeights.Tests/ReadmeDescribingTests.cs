using System;
using System.Linq;
using Xunit;
using static BoxHeights.Shorthand;

namespace BoxHeights.Tests;

/// <summary>"How to describe it" in the README: each snippet is the code between two markers here, and what it describes is judged as its text says.</summary>
public sealed class ReadmeDescribingTests
{
    private static readonly LayoutEvaluator Evaluator = new(
        RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    private readonly DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("first").WithCeiling(new Ceiling().WithFraming(In(97.125m)).WithBoard(In(0.5m))));

    [Fact]
    public void Snippets_AreTheCodeThatRunsHere()
    {
        string code = Repository.Read("tests", "BoxHeights.Tests", "ReadmeDescribingTests.cs");
        string[] here = code.Split("// <describe>\n").Skip(1).Select(part => string.Join("\n", part.Split("        // </describe>")[0].TrimEnd().Split('\n').Select(line => line.Length > 8 ? line[8..] : line)) + "\n").ToArray();
        string[] there = Repository.Read("README.md").Split("```c#\n").Skip(1).Select(part => part.Split("```")[0]).ToArray();
        Assert.Equal(9, there.Length);
        Assert.Equal(here, there);
        Assert.All(there, snippet => Assert.True(snippet.Split('\n').Length <= 12, snippet));
    }

    [Fact]
    public void OpenSide_ClosesTheRoomAndEndsTheWall()
    {
        // <describe>
        RoomBuilder kitchen = house.Room("kitchen", RoomKind.Kitchen, "first");
        kitchen.Wall("north", In(144));
        kitchen.Wall("east", In(120));
        kitchen.Wall("south", In(144));
        kitchen.Wall("west", In(54)).With(wall => wall.WithTurnDegrees(0));
        kitchen.Wall("to-dining", In(66)).With(wall => wall.WithOpen(true));
        // </describe>
        Assert.Equal(["kitchen/north 0 in to kitchen/west 54 in"], Lacking("wall-outlets"));
    }

    [Fact]
    public void SlidingDoor_LeavesItsFixedPanelToTheWall()
    {
        // <describe>
        RoomBuilder den = house.Room("den", RoomKind.FamilyRoom, "first");
        den.Wall("south", In(192)).Add(new Opening("slider", OpeningKind.SlidingDoor, In(48), In(144)).WithLeaf(In(48)).WithPocketOn(WallEnd.Right));
        // </describe>
        Assert.Equal(["den/south 96 in to 192 in"], Lacking("wall-outlets"));
    }

    [Fact]
    public void FloorWindow_IsWallForOneDocumentAndNoneForAnother()
    {
        // <describe>
        RoomBuilder bedroom = house.Room("bedroom", RoomKind.Bedroom, "first");
        bedroom.Wall("west", In(300)).Add(new Opening("glass", OpeningKind.Window, In(40), In(160)).WithSill(new Level(Distance.Zero, Datum.FinishedFloor)));
        // </describe>
        Assert.Equal(["bedroom/west 0 in to 300 in"], Lacking("wall-outlets"));
        Assert.Equal(["bedroom/west 160 in to 300 in"], new LayoutEvaluator(RuleSets.CanadaDwelling, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(house.Build()).Findings.Where(finding => finding.Space is not null && finding.Subject.Contains(" in to ", StringComparison.Ordinal)).Select(finding => finding.Subject));
    }

    [Fact]
    public void CornerSink_WithTopLeftBehindIt_LeavesTheCounterWhole()
    {
        // <describe>
        RoomBuilder kitchen = house.Room("kitchen", RoomKind.Kitchen, "first");
        Counter counter = new Counter("top", CounterKind.Kitchen, In(0), In(120)).WithDepth(In(25.5m)).WithTop(new Level(In(36), Datum.FinishedFloor));
        CounterInterruption sink = new CounterInterruption(InterruptionKind.Sink, In(90), In(120)).WithBehind(In(20));
        kitchen.Wall("north", In(120)).Add(counter.WithInterruptions(sink));
        kitchen.Wall("east", In(120)).Add(counter.WithInterruptions(sink.WithLeft(In(0)).WithRight(In(30))));
        // </describe>
        Assert.Equal(["kitchen/north 0 in to kitchen/east 120 in"], Lacking("counter-outlets"));
    }

    [Fact]
    public void Island_AndPeninsula_HaveTheirBoxesInTheFloorList()
    {
        // <describe>
        RoomOutline walls = house.Room("kitchen", RoomKind.Kitchen, "first").With(room => room.WithFreestanding(new[]
        {
            new Freestanding("island", FreestandingKind.Island).WithTop(new Level(In(36), Datum.FinishedFloor)).WithCorners(At(80, 70), At(140, 70), At(140, 100), At(80, 100)),
            new Freestanding("bar", FreestandingKind.Peninsula).WithTop(new Level(In(36), Datum.FinishedFloor)).WithCorners(At(0, 120), At(50, 120), At(50, 150), At(0, 150)),
        })).AddInFloor(new DeviceBox("K1", BoxPurpose.Counter).WithDevices(DeviceKind.DuplexReceptacle).WithSurface(BoxSurface.Cabinet)
            .WithPlan(At(82, 100)).WithHeight(BoxHeight.ToCenter(In(30), Datum.FinishedFloor))).Outline(At(0, 0), At(200, 0), At(200, 200), At(0, 200));
        // </describe>
        Assert.Equal("w1 w2 w3 w4", string.Join(" ", walls.Walls.Select(wall => wall.Id)));
        Assert.Empty(Faults());

        // The edition of 2017 asks for one at each island: K1 is it.
        Dwelling built = house.Build();
        Assert.False(Lacks(built));
        Assert.True(Lacks(built.WithRooms(built.Rooms.Select(room => room.WithInFloor(Items<DeviceBox>.None)))));

        static bool Lacks(Dwelling house) => new LayoutEvaluator(RuleSets.UnitedStatesOutlets(NecEdition.Nec2017), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(house)
            .Findings.Any(finding => finding.Verdict == Verdict.Fails && finding.Subject.Contains("island", StringComparison.Ordinal));
    }

    [Fact]
    public void SharedWall_IsOneForAllThatIsOnEitherSide()
    {
        // <describe>
        WallBuilder hall = house.Room("hall", RoomKind.Hall, "first").Wall("north", In(144));
        house.Room("bath", RoomKind.Bathroom, "first").Wall("south", In(60)).With(wall => wall.WithBackOf("hall/north").WithBackOffset(-In(84)));
        house.Room("closet", RoomKind.Closet, "first").Wall("south", In(70)).With(wall => wall.WithBackOf("hall/north").WithBackOffset(In(0)));
        // </describe>
        _ = hall.Add(new Opening("door", OpeningKind.Door, In(14), In(48)));
        Assert.Empty(Faults());
        Dwelling built = house.Build();
        Wall bath = built.Rooms[1].Walls[0];
        Assert.Empty(Faults(built, bath.WithOpenings(new Opening("door", OpeningKind.Door, In(12), In(46)))));
        Assert.Equal(["bath/south/door"], Faults(built, bath.WithOpenings(new Opening("door", OpeningKind.Door, In(20), In(54)))));
    }

    [Fact]
    public void SunkenRoom_HasALineOfItsOwn()
    {
        // <describe>
        DeviceBox receptacle = new DeviceBox("R1", BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(In(40)).WithHeight(Height("16 in to top above subfloor"));
        house.Room("study", RoomKind.Office, "first").Wall("north", In(90)).Add(receptacle);
        house.Room("den", RoomKind.FamilyRoom, "first").With(room => room.WithSubfloorOffset(-In(7))).Wall("north", In(90)).Add(receptacle.WithId("R2"));
        // </describe>
        Assert.DoesNotContain(Evaluator.Evaluate(house.Build()).Findings, finding => finding.Fault is not null || finding.RuleId == "uniform-level");
    }

    [Fact]
    public void Bow_IsChords()
    {
        // <describe>
        PlanPoint[] bow = RoomOutline.Arc(At(140, 150), At(90, 170), At(40, 150), In(0.25m)).ToArray();
        RoomBuilder living = house.Room("living", RoomKind.LivingRoom, "first");
        RoomOutline outline = living.Outline(new[] { At(0, 0), At(180, 0), At(180, 150) }.Concat(bow).Concat(new[] { At(0, 150) }).ToArray());
        living.FindWall("w1").Add(new DeviceBox("R1", BoxPurpose.General).WithAt(In(60)).WithHeight(Height("16 in to top above subfloor")));
        // </describe>
        Assert.InRange(outline.SquareFeet, 187.5m, 198m);
        Assert.Empty(Faults());
    }

    [Fact]
    public void Untouched_IsNoPartOfTheWork_ButForWhatIsNewInIt()
    {
        // <describe>
        RoomBuilder old = house.Room("old", RoomKind.Bedroom, "first").With(room => room.WithUntouched(true));
        DeviceBox box = new DeviceBox("S1", BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(In(40)).WithHeight(Height("85 in to top above subfloor"));
        DeviceBox added = box.WithId("S2").WithAt(In(80)).WithHeight(Height("48 in to top above subfloor")).WithUntouched(false);
        old.Wall("north", In(144)).Add(box).Add(added);
        // </describe>
        Evaluation evaluation = Evaluator.Evaluate(house.Build());
        Assert.Empty(evaluation.Findings);
        Assert.Contains(evaluation.Judgements, one => one.Subject == "S2" && one.RuleId == "switch-reach");
        Assert.Contains("nothing is asked of it: old.", evaluation.ToText(), StringComparison.Ordinal);
        _ = old.With(room => room.WithUntouched(false));
        Assert.Contains(Evaluator.Evaluate(house.Build()).Findings, finding => finding.Subject == "S1" && finding.RuleId == "switch-reach");
    }

    private static string[] Faults(Dwelling house, Wall bath) => Evaluator.Evaluate(house.WithRooms(house.Rooms.Select(room => room.Id == "bath" ? room.WithWalls(bath) : room)))
        .Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Subject).ToArray();

    private string[] Faults() => Evaluator.Evaluate(house.Build()).Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Message).ToArray();

    private string[] Lacking(string rule)
    {
        Assert.Empty(Faults());
        return Evaluator.Evaluate(house.Build()).Findings.Where(finding => finding.RuleId == rule).Select(finding => finding.Subject).ToArray();
    }

    // Tests have an In of their own, which the README hasn't.
    private static Distance In(decimal inches) => Shorthand.In(inches);
}
