using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Output;

/// <summary>What a sheet of marks says beside its numbers.</summary>
public sealed class MarkSheetWordsTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;

    // 60 in is over the 48 in of 308.2.1 and 308.3.1: a violation. The other misses no document.
    [Fact]
    public void Hold_OfABoxWithAnOpenViolation_NamesItsFinding()
    {
        Dwelling house = Houses.Of(Houses.Room("hall", Switch("good", "46 in to center above subfloor", 40), Switch("bad", "60 in to center above subfloor", 80))
            .WithFloor(Houses.Floor(Houses.Inches(0, 3, 4))));
        Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(house);
        int number = evaluation.Causes.TakeWhile(cause => !cause.Findings.Any(finding => finding.Subject == "bad" && finding.IsViolation)).Count() + 1;
        MarkSheet sheet = Sheets.For(house, Rules);
        Assert.Equal(["", "stop: see " + number], sheet.Rows.Select(row => row.Stop));
        Assert.Contains("\n" + number + ". VIOLATION  bad ", evaluation.ToText(), StringComparison.Ordinal);
        string[] header = sheet.ToCsv().Split("\r\n")[0].Split(',');
        Assert.Equal("mark", header[Array.IndexOf(header, "stop") + 1]);
        Assert.Contains("| stop: see " + number + " |", sheet.ForRoom("hall").ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void Note_OfWhatWasRounded_SaysFromWhere()
    {
        Dwelling house = Houses.Of(Houses.Room("hall", Switch("s", "47-15/16 in to top above subfloor", 40).WithAt(Houses.Inches(103, 7, 8))));
        MarkRow row = Assert.Single(Sheets.For(house, RuleSets.RoughInPractice).Rows);
        Assert.Equal((Houses.Inches(103, 3, 4), Houses.Inches(47, 7, 8)), (row.FromLeftCorner, row.Mark!.Value.Value));
        Assert.Equal("along rounded from 103-7/8 in, height rounded from 47-15/16 in", row.Note);
        Assert.Equal("along rounded from 103-7/8 in, strong", Assert.Single(Sheets.For(house, RuleSets.RoughInPractice, MarkOptions.Default.WithStrongAndShy(true)).Rows).Note);
    }

    // A box that is said to be on a stud which somebody has seen is where that stud is.
    [Fact]
    public void FromLeftCorner_OfABoxOnAKnownStud_IsNotRounded()
    {
        DeviceBox box = Switch("s", "48 in to top above subfloor", 40).WithAt(Houses.Inches(33, 7, 8)).WithMounting(new Mounting(MountingMethod.Stud).WithStud(2).WithSide(StudSide.Right));
        Room room = Houses.Room("hall", box);
        room = room.WithWalls(room.Walls.Select(wall => wall.WithStuds(new StudLayout { Spacing = CaseFile.Inches("16"), Known = StudKnowledge.Declared })));
        Assert.Equal(Houses.Inches(33, 7, 8), Assert.Single(Sheets.For(Houses.Of(room), RuleSets.RoughInPractice).Rows).FromLeftCorner);
    }

    // The stud on 64 in would stand in the doorway: nobody hooks a tape on it. Jack and king take 60 in down to 57 in.
    [Fact]
    public void Stud_BesideADoorway_IsOneThatStands()
    {
        Room room = Houses.Room("hall", Switch("s", "48 in to top above subfloor", 40).WithAt(Houses.Inches(56, 1, 2)));
        room = room.WithWalls(room.Walls.Select(wall => wall.WithStuds(new StudLayout { Spacing = CaseFile.Inches("16"), Known = StudKnowledge.Declared })
            .WithOpenings(wall.Boxes.Count == 0 ? default : new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("92")) })));
        Assert.Equal("1/2 in left of the king at door", Assert.Single(Sheets.For(Houses.Of(room), RuleSet.Empty).Rows).Stud);
    }

    [Fact]
    public void ToMarkdown_SaysWhichSideIsLeft() =>
        Assert.Contains("left as you face the wall", Sheets.For(Houses.Of(), RuleSets.RoughInPractice).ToMarkdown(), StringComparison.Ordinal);

    private static DeviceBox Switch(string id, string height, int at) => Houses.Box(id, height, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(Houses.Inches(at));

    // The violation of the first test, mended: it is marked where it ends, and says how it was.
    [Fact]
    public void Mark_OfABoxThatTheReportMends_IsWhereItEnds()
    {
        Dwelling house = Houses.Of(Houses.Room("hall", Switch("good", "46 in to center above subfloor", 40), Switch("bad", "60 in to center above subfloor", 80))
            .WithFloor(Houses.Floor(Houses.Inches(0, 3, 4))));
        Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(house);
        MarkSheet sheet = MarkSheet.For(evaluation);
        MarkRow bad = sheet.Rows[1];
        Assert.Equal("", bad.Stop);
        Assert.StartsWith("was 60 in to center above subfloor, see ", bad.Note, StringComparison.Ordinal);
        Assert.True(bad.Mark!.Value.Value < Houses.Inches(49, 0, 1));
        Assert.True(new LayoutEvaluator(Rules).Evaluate(sheet.ToDwelling()).IsClean);
        Assert.Equal(sheet.Rows.Select(row => row.Mark!.Value.Value).Distinct().Order(), StoryPole.For(evaluation).Rows.Select(mark => mark.Mark.Value).Order());
    }

    // A wall of 144 in with studs on 16 in and a door from 60 to 94 in: kings take 57 to 58-1/2 and 95-1/2 to 97 in. The stud on 96 in gives way to the king, so that nobody comes to the one on 112 in by counting.
    [Theory]
    [InlineData("33-7/8", "stud 2, right side")]
    [InlineData("55-7/8", "king, left of door")]
    [InlineData("98-1/8", "king, right of door")]
    [InlineData("113-7/8", "layout mark 112 in, right side")]
    [InlineData("105", "6-1/4 in left of layout mark 112 in")]
    [InlineData("2-5/8", "left corner stud")]
    [InlineData("42", "5-1/4 in left of stud 3")]
    public void Stud_OfABox_IsNamedAsOneSeesIt(string at, string name)
    {
        Room room = Houses.Room("hall", Switch("s", "48 in to top above subfloor", 40).WithAt(CaseFile.Inches(at)).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))));
        room = room.WithWalls(room.Walls.Select(wall => wall.WithStuds(new StudLayout { Spacing = CaseFile.Inches("16"), Known = StudKnowledge.Declared })
            .WithOpenings(new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("94")) })));
        Assert.Equal(name, Assert.Single(Sheets.For(Houses.Of(room), RuleSet.Empty).Rows).Stud);
    }

    // A tape shows 34 in; the box is nailed to the right side of the stud that ends at 32-3/4 in, so that its center is at 33-7/8 in: that is marked, and nothing is said of rounding.
    [Fact]
    public void FromLeftCorner_OfABoxAlmostAtAStud_IsAtTheStud()
    {
        Room room = Houses.Room("hall", Switch("s", "48 in to top above subfloor", 34).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))));
        room = room.WithWalls(room.Walls.Select(wall => wall.WithStuds(new StudLayout { Spacing = CaseFile.Inches("16"), Known = StudKnowledge.Declared })));
        MarkRow row = Assert.Single(Sheets.For(Houses.Of(room), RuleSet.Empty).Rows);
        Assert.Equal((CaseFile.Inches("33-7/8"), "stud 2, right side", ""), (row.FromLeftCorner!.Value, row.Stud, row.Note));
    }

    // 15 risers to 109 in with floors of 3/4 in on both storeys rise 109/15 in each: the fourth tread is 29-1/15 in over the finished floor, the landing's foot at 3/4 in. 40 in along is over the second tread.
    [Fact]
    public void Stud_AlongAStair_NamesTheTread()
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("ground"));
        house.Add(new Storey("upper").WithAboveBelow(CaseFile.Inches("108")));
        house.Room("hall", RoomKind.Hall, "ground").With(room => room.WithFloor(Houses.Floor(Houses.Inches(0, 3, 4)))).Wall("stair", CaseFile.Inches("200")).Add(Switch("light", "30 in to center above subfloor", 45));
        house.Room("landing", RoomKind.Hall, "upper").With(room => room.WithFloor(Houses.Floor(Houses.Inches(0, 3, 4))));
        Dwelling dwelling = house.Build().WithFlights(new[] { new StairFlight("main", "ground", "upper", 15).WithTread(CaseFile.Inches("10")).WithWall("hall/stair").WithFirstNosing(CaseFile.Inches("30")).WithClimbs(WallEnd.Right) });
        Assert.StartsWith("tread 2, ", Assert.Single(Sheets.For(dwelling, RuleSet.Empty).Rows).Stud, StringComparison.Ordinal);
    }

    [Fact]
    public void Boxes_SetAlreadyAndOverhead_AreListed()
    {
        Room room = Houses.Room("hall", Switch("old", "48 in to top above subfloor", 40).WithExisting(true), Switch("set", "48 in to top above subfloor", 80).Measured("47-7/8 in to top above subfloor"))
            .WithOverhead(new[] { new DeviceBox("light", BoxPurpose.Light).WithPlan(new PlanPoint(CaseFile.Inches("60"), CaseFile.Inches("40"))) });
        room = room.WithWalls(new[] { room.Walls[0], new Wall("east", CaseFile.Inches("100")), new Wall("south", CaseFile.Inches("144")), new Wall("west", CaseFile.Inches("100")) });
        MarkSheet sheet = Sheets.For(Houses.Of(room), RuleSet.Empty);
        Assert.Empty(sheet.Rows);
        Assert.Equal(["old: was there before", "set: set, and measured 47-7/8 in to top above subfloor"], sheet.SetAlready.Select(box => box.ToString()));

        // 40 in from the first wall; 60 in from the wall at its left end, 84 in from the other.
        Assert.Contains("| light | light | 40 in from north | 60 in from west |", sheet.ToMarkdown(), StringComparison.Ordinal);
        CeilingPlan plan = CeilingPlan.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(Houses.Of(room)));
        Assert.Equal(["50 in from hall/north", "72 in from hall/east"], plan.MiddleOf("hall").Select(tape => tape.ToString()));
        Assert.Empty(plan.LinesIn("hall", 2));
    }

    // Over a room 100 in deep two even lines are 25 and 75 in from the first wall; with joists along it at 12, 28, 44, 60, 76 and 92 in their bays' middles are 20 and 68 in. A box 40 in from the wall is 4 in off the joist at 44.
    [Fact]
    public void LinesIn_ARoomWhoseJoistsAreKnown_FallBetweenThem()
    {
        Room room = Houses.Room("hall").WithJoists(new JoistLayout(CaseFile.Inches("16")).WithFirst(CaseFile.Inches("12")))
            .WithOverhead(new[] { new DeviceBox("light", BoxPurpose.Light).WithPlan(new PlanPoint(CaseFile.Inches("60"), CaseFile.Inches("40"))) });
        room = room.WithWalls(new[] { room.Walls[0], new Wall("east", CaseFile.Inches("100")), new Wall("south", CaseFile.Inches("144")), new Wall("west", CaseFile.Inches("100")) });
        CeilingPlan plan = CeilingPlan.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(Houses.Of(room)));
        Assert.Equal(["25 in, between joists at 20 in", "75 in, between joists at 68 in"], plan.LinesIn("hall", 2).Select(line => line.ToString()));
        Assert.Equal(CaseFile.Inches("4"), Assert.Single(plan.Rows).FromJoist);
        Assert.Contains("| 2 lines | 25 in, 75 in from north | between joists: 20 in, 68 in |", plan.ToMarkdown(), StringComparison.Ordinal);
        CeilingPlan away = CeilingPlan.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(Houses.Of(room.WithJoists(room.Joists!.WithRuns(JoistRun.Away)))));
        Assert.Equal(["36 in, between joists at 36 in", "108 in, between joists at 116 in"], away.LinesIn("hall", 2).Select(line => line.ToString()));
        Assert.Equal(CaseFile.Inches("0"), Assert.Single(away.Rows).FromJoist);
    }
}
