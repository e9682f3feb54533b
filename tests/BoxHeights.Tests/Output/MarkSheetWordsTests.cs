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

    // The stud on 64 in would stand in the doorway, 7-1/2 in from the box: nobody hooks a tape on it. The one on 48 in does stand.
    [Fact]
    public void Stud_BesideADoorway_IsOneThatStands()
    {
        Room room = Houses.Room("hall", Switch("s", "48 in to top above subfloor", 40).WithAt(Houses.Inches(56, 1, 2)));
        room = room.WithWalls(room.Walls.Select(wall => wall.WithStuds(new StudLayout { Spacing = CaseFile.Inches("16"), Known = StudKnowledge.Declared })
            .WithOpenings(wall.Boxes.Count == 0 ? default : new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("92")) })));
        Assert.Equal("7-3/4 in right of stud 3", Assert.Single(Sheets.For(Houses.Of(room), RuleSet.Empty).Rows).Stud);
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
}
