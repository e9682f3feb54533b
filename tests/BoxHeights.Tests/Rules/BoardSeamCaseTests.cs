using System;
using System.Linq;
using System.Text.Json;
using BoxHeights.Tests.Cases;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Rules;

public sealed class BoardSeamCaseTests
{
    [Fact]
    public void BoardSeam_OfTheWorkedCases_SaysWhatTheySay()
    {
        int cases = 0;
        foreach (JsonElement row in CaseFile.Lines("box-and-seam.jsonl"))
        {
            cases++;
            string id = Text(row, "id");
            Fraction Number(string name) => CaseFile.Number(Text(row, name));
            Fraction[] courses = row.GetProperty("courses").EnumerateArray().Select(course => new Fraction(course.GetInt32())).ToArray();

            // The second road: edges and seams in fractions above the subfloor.
            Fraction tall = Number("boxH");
            Fraction edge = Number("value") + (Text(row, "datum") == "finished floor" ? Number("floor") : Fraction.Zero);
            Fraction bottom = edge - (Text(row, "edge") switch { "top" => tall, "center" => tall / new Fraction(2), _ => Fraction.Zero });
            Fraction top = bottom + tall;
            Assert.Equal(Number("bottom"), bottom);
            Assert.Equal(Number("center"), bottom + (tall / new Fraction(2)));
            Assert.Equal(Number("top"), top);
            Fraction wall = Number("rough") - Number("ceiling");
            Fraction[] seams = Enumerable.Range(1, courses.Length - 1).Select(count => wall - courses.Take(count).Aggregate((a, b) => a + b)).ToArray();
            Assert.Equal(Number("boardWall"), wall);
            Assert.Equal(row.GetProperty("seams").EnumerateArray().Select(seam => CaseFile.Number(seam.GetString()!)), seams);
            Assert.Contains(Number("nearestSeam"), seams);
            bool straddles = seams.Any(seam => bottom < seam && seam < top);
            Fraction amount = straddles
                ? seams.Where(seam => bottom < seam && seam < top).Max(seam => Min(top - seam, seam - bottom))
                : seams.Min(seam => Max(seam - top, bottom - seam));
            Assert.Equal(Number("amount"), amount);
            Assert.Equal(straddles, Text(row, "state") == "straddles");

            BoxHeight height = BoxHeight.To(
                Text(row, "edge") switch { "top" => Edge.Top, "center" => Edge.Center, _ => Edge.Bottom },
                CaseFile.Inches(Number("value")),
                Text(row, "datum") == "finished floor" ? Datum.FinishedFloor : Datum.Subfloor);
            BoxSize size = new(CaseFile.Inches("2-1/4"), CaseFile.Inches(tall));
            FloorBuildup floor = OneBox.Floor(CaseFile.Inches(Number("floor")));
            Assert.Equal(CaseFile.Inches(bottom), height.AtEdge(Edge.Bottom, size).From(Datum.Subfloor, floor).Value);
            Assert.Equal(CaseFile.Inches(bottom + (tall / new Fraction(2))), height.AtEdge(Edge.Center, size).From(Datum.Subfloor, floor).Value);
            Assert.Equal(CaseFile.Inches(top), height.AtEdge(Edge.Top, size).From(Datum.Subfloor, floor).Value);

            OneBox box = OnBoards(CaseFile.Inches(Number("rough")), CaseFile.Inches(Number("ceiling")), courses) with { Room = room => room.WithFloor(floor) };
            box = box with { Box = box.Box.WithSize(size).WithHeight(height) };
            Check check = box.Check()!.Value;
            Assert.True((straddles ? Verdict.Fails : Verdict.Passes) == check.Verdict, id);
            Assert.Equal(CaseFile.Inches(straddles ? -amount : amount), check.Margin.AsDistance());
            Evaluation evaluation = box.Evaluate();
            Assert.Equal(straddles ? 1 : 0, evaluation.Findings.Count);
            if (straddles)
            {
                Assert.Equal(amount < new Fraction(1, 2) ? Severity.Note : Severity.Advice, evaluation.Findings[0].Severity);
            }
        }

        Assert.Equal(9, cases);
    }

    // The case of an as-built seam 48-1/2 in give or take 1/4 in: a box clear by 1/2 in never straddles, one clear by 1/4 in touches at most.
    [Theory]
    [InlineData("48", "1/4", "1/4", Verdict.Passes)]
    [InlineData("48-1/4", "1/4", "0", Verdict.Passes)]
    [InlineData("48-3/8", "1/4", "-1/8", Verdict.Unknown)]
    [InlineData("48-7/8", "1/4", "-5/8", Verdict.Fails)]
    public void BoardSeam_CeilingMeasuredToAQuarter_AllowsForIt(string top, string give, string margin, Verdict expected)
    {
        Distance rough = CaseFile.Inches("97-1/8");
        OneBox box = OnBoards(new DistanceRange(rough - CaseFile.Inches(give), rough + CaseFile.Inches(give)), CaseFile.Inches("5/8"), [new(48), new(48)]);
        box = box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-5/8"))) };
        Check check = box.At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(CaseFile.Inches(margin), check.Margin.AsDistance());
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.Ceiling : MissingFacts.None, check.Needs);
    }

    [Theory]
    [InlineData("48-1/2", 0, Verdict.Passes)]
    [InlineData("48-1/2", 1, Verdict.Fails)]
    [InlineData("52-1/8", -1, Verdict.Fails)]
    [InlineData("52-1/8", 0, Verdict.Passes)]
    public void BoardSeam_OneTickOffTheSeam_Decides(string top, int ticks, Verdict expected)
    {
        OneBox box = OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [new(48), new(48)]);
        box = box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-5/8"))) };
        Assert.Equal(expected, box.At(BoxHeight.ToTop(CaseFile.Inches(top) + Distance.FromTicks(ticks), Datum.Subfloor)).Verdict());
    }

    // A seam on end lies on a stud: a box on that stud lies beside it, one between studs may lie across it.
    [Theory]
    [InlineData(MountingMethod.Stud, "48", Verdict.Passes)]
    [InlineData(MountingMethod.Bracket, "48", Verdict.Fails)]
    [InlineData(MountingMethod.Bracket, "49-1/8", Verdict.Passes)]
    [InlineData(MountingMethod.Bracket, "46-7/8", Verdict.Passes)]
    [InlineData(MountingMethod.Bracket, "49", Verdict.Fails)]
    public void BoardSeam_BoardsOnEnd_ConcernsBoxesBetweenStuds(MountingMethod how, string at, Verdict expected)
    {
        OneBox box = OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [new(48), new(48), new(48)], BoardDirection.Vertical);
        box = box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-5/8"))).WithMounting(new Mounting(how)).WithAt(CaseFile.Inches(at)) };
        Assert.Equal(expected, box.At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor)).Verdict());
    }

    [Fact]
    public void BoardSeam_BoardsOnEndAndBoxOfUnknownSize_CannotDecide()
    {
        OneBox box = OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [new(48), new(48), new(48)], BoardDirection.Vertical);
        box = box with { Box = box.Box.WithKind(new BoxKind("home-made")).WithMounting(new Mounting(MountingMethod.Bracket)).WithAt(CaseFile.Inches("48")) };
        Check check = box.At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor)).Check()!.Value;
        Assert.Equal(Verdict.Unknown, check.Verdict);
        Assert.Equal(MissingFacts.BoxSize, check.Needs);
    }

    // Which way boards hang isn't said: 48-1/2 in is a seam of the usual two sheets under a wall of 97-1/8 in.
    [Theory]
    [InlineData("97-1/8", "48", Verdict.Passes)]
    [InlineData("97-1/8", "49", Verdict.Fails)]
    [InlineData("109-1/8", "49", Verdict.Passes)]
    [InlineData("109-1/8", "13", Verdict.Passes)]
    public void BoardSeam_BoardsNotStated_FailsOnlyWhereEveryCommonWayDoes(string rough, string top, Verdict expected)
    {
        OneBox box = new()
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam"),
            Storey = new Storey("ground") { Ceiling = new Ceiling { Framing = CaseFile.Inches(rough), Board = CaseFile.Inches("5/8") } },
        };
        Assert.Equal(expected, box.At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)).Verdict());
    }

    // 109-1/8 less 5/8 in: sheets of 48 and 48 end 12-1/2 in above the floor, and a strip fills that. A box of 3-3/4 in just under, across and just over its seam.
    [Theory]
    [InlineData("48 48", "12-1/2", Verdict.Passes)]
    [InlineData("48 48", "12-65/128", Verdict.Fails)]
    [InlineData("48 48", "16-31/128", Verdict.Fails)]
    [InlineData("48 48", "16-1/4", Verdict.Passes)]
    [InlineData("48 48 12", "16-31/128", Verdict.Fails)]
    [InlineData("54 54", "16-31/128", Verdict.Passes)]
    [InlineData("48", "70", Verdict.Passes)]
    [InlineData("48", "61", Verdict.Fails)]
    [InlineData("48", "48", Verdict.Unknown)]
    [InlineData("54", "48", Verdict.Unknown)]
    [InlineData("54 1", "48", Verdict.Passes)]
    public void BoardSeam_CoursesThatDoNotReachTheFloor_LeaveAStripOrAnUnknown(string courses, string top, Verdict expected)
    {
        OneBox box = Exactly(OnBoards(CaseFile.Inches("109-1/8"), CaseFile.Inches("5/8"), courses.Split(' ').Select(CaseFile.Number).ToArray()));
        Check check = box.At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.Boards : MissingFacts.None, check.Needs);
    }

    // A layout that tells only a thickness says nothing of seams: as if none were told, 48-1/2 in is one of the two usual sheets.
    [Theory]
    [InlineData("48-65/128", Verdict.Fails)]
    [InlineData("48-1/2", Verdict.Passes)]
    public void BoardSeam_NoWidthsStated_IsAsIfNothingWere(string top, Verdict expected)
    {
        OneBox box = Exactly(OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [])).At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor));
        Assert.Equal(expected, box.Verdict());
    }

    // Upright sheets of 48 in go on to the other end: a box of 2-1/4 in on a bar, by its center. Of sheets of unknown width nobody can say.
    [Theory]
    [InlineData("48", "94-7/8", Verdict.Passes)]
    [InlineData("48", "94-113/128", Verdict.Fails)]
    [InlineData("48", "97-1/8", Verdict.Passes)]
    [InlineData("48 24", "71", Verdict.Fails)]
    [InlineData("48 24", "97", Verdict.Fails)]
    [InlineData("48 24", "84", Verdict.Passes)]
    [InlineData("", "84", null)]
    public void BoardSeam_UprightSheets_GoOnToTheOtherEnd(string widths, string at, Verdict? expected)
    {
        OneBox box = Exactly(OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), widths.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(CaseFile.Number).ToArray(), BoardDirection.Vertical));
        box = box.At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor));
        box = box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Bar)).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))).WithAt(CaseFile.Inches(at)) };
        Assert.Equal(expected, box.Check()?.Verdict);
        Assert.Equal(expected is null, box.Evaluate().NotJudged.Any(line => line.StartsWith("board-seam: how wide the upright sheets are isn't stated", StringComparison.Ordinal)));
    }

    // Hung from the floor by a gap that nobody states, up to 1 in: the seam of the first sheet is anywhere from 48 to 49 in.
    [Theory]
    [InlineData("48", Verdict.Passes)]
    [InlineData("48-1/128", Verdict.Unknown)]
    [InlineData("52-95/128", Verdict.Unknown)]
    [InlineData("52-3/4", Verdict.Passes)]
    public void BoardSeam_FromTheFloorWithoutAGap_IsUnknownWhereTheGapWouldTell(string top, Verdict expected)
    {
        OneBox box = Exactly(OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [48, 48]));
        Check check = (box with { Storey = box.Storey.WithBoards(box.Storey.Boards!.WithFrom(BoardOrigin.Bottom)) }).At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.Boards : MissingFacts.None, check.Needs);
    }

    // One ceiling over floors of two levels: in a room that is 7 in lower the seam at 48-1/2 in is at 55-1/2 in above its own subfloor, 2 in higher at 46-1/2 in. A ceiling of
    // the room's own goes with its floor, unless it says otherwise; so does a storey's that says so.
    [Theory]
    [InlineData("-7", "storey", null, "55-1/2")]
    [InlineData("2", "storey", null, "46-1/2")]
    [InlineData("-7", "room", null, "48-1/2")]
    [InlineData("-7", "storey", CeilingOrigin.RoomSubfloor, "48-1/2")]
    [InlineData("-7", "room", CeilingOrigin.StoreySubfloor, "55-1/2")]
    public void BoardSeam_SunkenOrRaisedRoom_HangsFromTheCeilingOverIt(string offset, string whose, CeilingOrigin? from, string seam)
    {
        OneBox box = Exactly(OnBoards(CaseFile.Inches("97-1/8"), CaseFile.Inches("5/8"), [48, 60]));
        Ceiling ceiling = box.Storey.Ceiling!.WithFrom(from);
        box = box with
        {
            Storey = box.Storey.WithCeiling(whose == "storey" ? ceiling : new Ceiling().WithFraming(CaseFile.Inches("120"))).WithLevelLine(new Level(CaseFile.Inches("48"), Datum.Subfloor)),
            Room = room => room.WithSubfloorOffset(CaseFile.Inches(offset)).WithCeiling(whose == "room" ? ceiling : null),
        };
        Distance at = CaseFile.Inches(seam);
        foreach (Distance above in new[] { Distance.Zero, CaseFile.Inches(offset) })
        {
            // Once from its own subfloor, once from the storey's level line, which stays where it is.
            BoxHeight Top(long ticks) => above == Distance.Zero ? BoxHeight.ToTop(at + Distance.FromTicks(ticks), Datum.Subfloor)
                : BoxHeight.ToTop(at + above - CaseFile.Inches("48") + Distance.FromTicks(ticks), Datum.LevelLine);
            Assert.Equal(Verdict.Passes, box.At(Top(0)).Verdict());
            Assert.Equal(Verdict.Fails, box.At(Top(1)).Verdict());
        }
    }

    [Fact]
    public void NotChecked_NoCeilingStated_SaysSo()
    {
        OneBox box = new OneBox { Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam") }.At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor));
        Assert.Null(box.Check());
        Assert.Contains(box.Evaluate().NotJudged, line => line.StartsWith("board-seam", StringComparison.Ordinal) && line.Contains(OneBox.WallAddress, StringComparison.Ordinal));
    }

    /// <summary>A box of 2-1/4 × 3-3/4 in and no other.</summary>
    private static OneBox Exactly(OneBox box) => box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))) };

    private static OneBox OnBoards(DistanceRange rough, Distance ceiling, Fraction[] courses, BoardDirection hung = BoardDirection.Horizontal) => new()
    {
        Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam"),
        Storey = new Storey("ground")
        {
            Ceiling = new Ceiling { Framing = rough, Board = ceiling },
            Boards = new BoardLayout { Widths = courses.Select(CaseFile.Inches).ToArray(), Hung = hung },
        },
    };

    private static string Text(JsonElement row, string name) => row.GetProperty(name).GetString()!;

    private static Fraction Min(Fraction a, Fraction b) => a < b ? a : b;

    private static Fraction Max(Fraction a, Fraction b) => a > b ? a : b;

    // Hung from the floor the seams are where they are, whatever the wall does above: 48 in on a gap of 1/2 in. Common practice, no source.
    [Theory]
    [InlineData(BoardOrigin.Bottom, "48-1/2", Verdict.Passes)]
    [InlineData(BoardOrigin.Bottom, "48-9/16", Verdict.Fails)]
    [InlineData(BoardOrigin.Top, "48-9/16", null)]
    public void BoardSeam_UnderASlopedTop_IsJudgedWhereTheBoardStartsAtTheFloor(BoardOrigin from, string top, Verdict? expected)
    {
        Distance board = CaseFile.Inches("48");
        OneBox box = new()
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam"),
            Wall = wall => wall.WithTop(new WallTopPoint[] { new(Distance.Zero, CaseFile.Inches("84")), new(CaseFile.Inches("144"), CaseFile.Inches("120")) })
                .WithBoards(new BoardLayout { From = from, Widths = new[] { board, board }, FloorGap = CaseFile.Inches("1/2") }),
        };
        OneBox at = box.At(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor));
        Assert.Equal(expected, at.Check()?.Verdict);
        Assert.Equal(expected is null, at.Evaluate().NotJudged.Any(line => line.StartsWith("board-seam: the wall doesn't end at a level ceiling", StringComparison.Ordinal)));
    }
}
