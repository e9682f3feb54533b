using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using Fractions;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Framing;

public sealed class HungBoardsTests
{
    private static readonly Fraction Plate = new(3, 2);

    [Fact]
    public void TryBoardWall_OfUsualStuds_IsThePublishedHeight()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("board-walls.csv"))
        {
            Fraction plates = CaseFile.Number(row["sole plates"]) + CaseFile.Number(row["top plates"]);
            Fraction rough = CaseFile.Number(row["stud"]) + (plates * Plate);
            Assert.Equal(CaseFile.Number(row["rough"]), rough);
            Assert.Equal(row["rough mm"], decimal.Round((rough * CaseFile.Number("25.4")).ToDecimal(), 1).ToString("0.0", CultureInfo.InvariantCulture));

            Check(row["under 1/2"], rough, "1/2", null);
            Check(row["under 5/8"], rough, "5/8", null);
            Check(row["under 3/4 strapping and 1/2"], rough, "1/2", "3/4");
            Check(row["under two layers of 5/8"], rough, "1-1/4", null);
        }

        static void Check(string published, Fraction rough, string board, string? strapping)
        {
            Fraction expected = rough - CaseFile.Number(board) - CaseFile.Number(strapping ?? "0");
            Assert.Equal(CaseFile.Number(published), expected);
            Ceiling ceiling = new() { Framing = CaseFile.Inches(rough), Board = CaseFile.Inches(board), Strapping = strapping is null ? null : CaseFile.Inches(strapping) };
            Assert.True(HungBoards.TryBoardWall(ceiling, out DistanceRange wall));
            Assert.Equal(DistanceRange.Exactly(CaseFile.Inches(expected)), wall);
        }
    }

    [Fact]
    public void Seams_UnderUsualCeilings_AreThePublishedOnes()
    {
        int wrong = 0;
        foreach (Dictionary<string, string> row in CaseFile.Table("seams.csv"))
        {
            Fraction wall = CaseFile.Number(row["rough"]) - CaseFile.Number(row["pack"]);
            Fraction[] courses = row["courses"].Split(' ').Select(CaseFile.Number).ToArray();
            List<Fraction> undersides = [];
            foreach (Fraction course in courses)
            {
                undersides.Add((undersides.Count == 0 ? wall : undersides[^1]) - course);
            }

            Assert.Equal(row["seams"].Split(' ').Select(CaseFile.Number), undersides.SkipLast(1));
            Assert.Equal(CaseFile.Number(row["leftover"]), undersides[^1]);
            if (row["published"].Length > 0)
            {
                wrong++;
                Assert.NotEqual(CaseFile.Number(row["published"]), undersides[^1]);
                Assert.NotEmpty(row["reason"]);
            }

            HungBoards hung = HungBoards.Under(new BoardLayout { Widths = courses.Select(CaseFile.Inches).ToArray() }, CaseFile.Inches(wall));
            Assert.Equal(undersides.SkipLast(1).Select(seam => DistanceRange.Exactly(CaseFile.Inches(seam))), hung.Seams);
            Assert.Equal(DistanceRange.Exactly(CaseFile.Inches(undersides[^1])), hung.Leftover);
        }

        Assert.Equal(2, wrong);
    }

    [Fact]
    public void Seams_AboveFinishedFloors_AreThePublishedOnes()
    {
        string[] floors = ["5/16", "1/2", "3/4", "1", "1-1/4"];
        foreach (Dictionary<string, string> row in CaseFile.Table("seams-above-floor.csv"))
        {
            Assert.True(HungBoards.TryBoardWall(new Ceiling { Framing = CaseFile.Inches(row["rough"]), Board = CaseFile.Inches(row["ceiling"]) }, out DistanceRange wall));
            HungBoards hung = HungBoards.Under(new BoardLayout { Widths = new[] { CaseFile.Inches(row["board"]), CaseFile.Inches(row["board"]) } }, wall);
            Assert.Equal(CaseFile.Inches(row["seam"]), hung.Seams[0].From);
            foreach (string floor in floors)
            {
                Fraction expected = CaseFile.Number(row["rough"]) - CaseFile.Number(row["ceiling"]) - CaseFile.Number(row["board"]) - CaseFile.Number(floor);
                Assert.Equal(CaseFile.Number(row[floor]), expected);
                BoxHeight seam = BoxHeight.ToTop(hung.Seams[0].From, Datum.Subfloor).From(Datum.FinishedFloor, FloorBuildup.Of(new FloorLayer("floor", CaseFile.Inches(floor))));
                Assert.Equal(CaseFile.Inches(expected), seam.Value);
            }
        }
    }

    [Fact]
    public void Seams_RoughHeightMeasuredToAQuarter_AreAsUncertain()
    {
        Distance quarter = CaseFile.Inches("1/4");
        Distance rough = CaseFile.Inches("97-1/8");
        Assert.True(HungBoards.TryBoardWall(new Ceiling { Framing = new DistanceRange(rough - quarter, rough + quarter), Board = CaseFile.Inches("5/8") }, out DistanceRange wall));
        HungBoards hung = HungBoards.Under(new BoardLayout { Widths = new[] { CaseFile.Inches("48"), CaseFile.Inches("48") } }, wall);
        Assert.Equal(new DistanceRange(CaseFile.Inches("48-1/4"), CaseFile.Inches("48-3/4")), hung.Seams[0]);
    }

    [Fact]
    public void Seams_HungFromTheFloor_StandOnTheFloorGap()
    {
        Distance board = CaseFile.Inches("48");
        HungBoards hung = HungBoards.Under(new BoardLayout { From = BoardOrigin.Bottom, Widths = new[] { board, board }, FloorGap = CaseFile.Inches("1/2") }, CaseFile.Inches("97"));
        Assert.Equal(new[] { DistanceRange.Exactly(CaseFile.Inches("48-1/2")) }, hung.Seams);
        Assert.Equal(DistanceRange.Exactly(CaseFile.Inches("1/2")), hung.Leftover);
    }

    // 48 and 48 in a room of 9 ft: a strip of 12-1/2 in at the floor, with a seam. Up to 1 in is a gap; so is more, if it is stated.
    [Theory]
    [InlineData("48 48", "108-1/2", null, "60-1/2 12-1/2")]
    [InlineData("48 48", "97", null, "49")]
    [InlineData("48 48", "97-1/128", null, "49-1/128 1-1/128")]
    [InlineData("48 48", "98", "2", "50")]
    [InlineData("48 48", "98-1/128", "2", "50-1/128 2-1/128")]
    [InlineData("48 48", "97-1/128", "1/2", "49-1/128 1-1/128")]
    [InlineData("48", "96-1/2", null, "48-1/2")]
    [InlineData("54 54", "96-1/2", null, "42-1/2")]
    public void Seams_CoursesThatEndShortOfTheFloor_HaveOneMore(string courses, string wall, string? gap, string seams)
    {
        BoardLayout layout = new BoardLayout().WithWidths(courses.Split(' ').Select(CaseFile.Inches).ToArray()).WithFloorGap(gap is null ? null : CaseFile.Inches(gap));
        Assert.Equal(seams.Split(' ').Select(seam => DistanceRange.Exactly(CaseFile.Inches(seam))), HungBoards.Under(layout, CaseFile.Inches(wall)).Seams);
    }

    // Hung from the floor the strip is at the ceiling; without a stated gap the boards stand 0 to 1 in up; without a ceiling there is no more than what is hung.
    [Theory]
    [InlineData("1/2", "97-1/2", "48-1/2")]
    [InlineData("1/2", "97-65/128", "48-1/2 96-1/2")]
    [InlineData("1/2", null, "48-1/2 96-1/2")]
    [InlineData(null, "97", "48-49")]
    [InlineData(null, "108-1/2", "48-49 96-97")]
    public void Seams_HungFromTheFloor_HaveOneMoreUnderTheCeiling(string? gap, string? wall, string seams)
    {
        BoardLayout layout = new BoardLayout().WithFrom(BoardOrigin.Bottom).WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") }).WithFloorGap(gap is null ? null : CaseFile.Inches(gap));
        DistanceRange[] expected = seams.Split(' ').Select(seam => seam.StartsWith("48-49", StringComparison.Ordinal) || seam.StartsWith("96-97", StringComparison.Ordinal)
            ? new DistanceRange(CaseFile.Inches(seam[..2]), CaseFile.Inches(seam[3..])) : DistanceRange.Exactly(CaseFile.Inches(seam))).ToArray();
        Assert.Equal(expected, HungBoards.Under(layout, wall is null ? null : DistanceRange.Exactly(CaseFile.Inches(wall))).Seams);
    }

    // Sheets are 48 or 54 in wide. Up to 97 in two of 48 do, up to 109 in two of 54, or two of 48 and a strip at the floor, in the middle or at the ceiling; above that
    // a strip comes with either. First and further seams under a wall of a height, from the subfloor. Common practice, no source.
    [Theory]
    [InlineData("96-1/2", "48-1/2")]
    [InlineData("97", "49")]
    [InlineData("97-1/128", "43-1/128|49-1/128 1-1/128|49-1/128 37-1/128|85-1/128 37-1/128")]
    [InlineData("108", "54|60 12|60 48|96 48")]
    [InlineData("109", "55|61 13|61 49|97 49")]
    [InlineData("109-1/128", "61-1/128 13-1/128|61-1/128 37-1/128|55-1/128 1-1/128|55-1/128 43-1/128|55-1/128 7-1/128")]
    [InlineData("120", "72 24|72 48|66 12|66 54|66 18")]
    public void Common_OfAWall_AreTheUsualWaysToHangIt(string wall, string ways)
    {
        string[] found = HungBoards.Common(DistanceRange.Exactly(CaseFile.Inches(wall)), UsualMeasures.Generic).Select(hung => string.Join(" ", hung.Seams.Select(seam => seam.From.ToString("R").Replace(" in", "", StringComparison.Ordinal)))).ToArray();
        Assert.Equal(ways.Split('|'), found);
    }

    [Fact]
    public void Seams_BoardsOnEnd_AreNone()
    {
        Distance board = CaseFile.Inches("48");
        Assert.Empty(HungBoards.Under(new BoardLayout { Hung = BoardDirection.Vertical, Widths = new[] { board, board, board } }, CaseFile.Inches("96")).Seams);
    }

    [Fact]
    public void TryBoardWall_FramingOrBoardNotStated_IsFalse()
    {
        Assert.False(HungBoards.TryBoardWall(new Ceiling { Board = CaseFile.Inches("1/2") }, out _));
        Assert.False(HungBoards.TryBoardWall(new Ceiling { Framing = CaseFile.Inches("97") }, out _));
        Assert.Throws<ArgumentNullException>(() => HungBoards.TryBoardWall(null!, out _));
        Assert.Throws<ArgumentNullException>(() => HungBoards.Under(null!, CaseFile.Inches("97")));
    }

    [Fact]
    public void Leftover_AnyCourses_IsWhatTheyDontCover()
    {
        Gen<(int Wall, int[] Courses)> rooms =
            from wall in Gen.Choose(600, 1300)
            from courses in Gen.Choose(80, 480).NonEmptyListOf()
            select (wall, courses.Take(6).ToArray());
        Prop.ForAll(Arb.From(rooms), room =>
        {
            HungBoards hung = HungBoards.Under(new BoardLayout { Widths = room.Courses.Select(Eighths).ToArray() }, Eighths(room.Wall));
            return hung.Leftover == DistanceRange.Exactly(Eighths(room.Wall - room.Courses.Sum())) && hung.Seams.Count == room.Courses.Length - (room.Wall - room.Courses.Sum() > 8 ? 0 : 1)
                && Enumerable.Range(0, hung.Seams.Count).All(i => hung.Seams[i].From == Eighths(room.Wall - room.Courses.Take(i + 1).Sum()));
        }).Check(Tries.Always(100));

        static Distance Eighths(int eighths) => Distance.FromTicks(eighths * 254_000L);
    }
}
