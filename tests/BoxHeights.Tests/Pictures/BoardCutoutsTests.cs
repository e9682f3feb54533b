using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Pictures;

public sealed class BoardCutoutsTests
{
    private static readonly BoxSize Size = new(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"));

    // 97-1/8 in less 5/8 in of ceiling board is 96-1/2 in: sheets of 48 in hang from there, so that the seam is at 48-1/2 in, 2 in under the top of the box.
    [Fact]
    public void Courses_OfTwoSheets_ShareABoxOnTheirSeam()
    {
        BoardCutouts cutouts = BoardCutouts.For(Evaluated("50-1/2 in to top above subfloor", true), OneBox.WallAddress);
        Assert.Equal(["0 in to 48-1/2 in", "48-1/2 in to 96-1/2 in"], cutouts.Boards.Select(board => board.Bottom + " to " + board.Top));
        Assert.Contains("the-box: 70-7/8 in, 73-1/8 in, 46-3/4 in, 48-1/2 in", Text(cutouts.ToSvg(0)), StringComparison.Ordinal);
        Assert.Contains("the-box: 70-7/8 in, 73-1/8 in, 0 in, 2 in", Text(cutouts.ToSvg(1)), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => cutouts.ToSvg(2));
    }

    [Fact]
    public void Cutouts_ReadFromThePicture_AreTheBoxesBodies()
    {
        Evaluation evaluation = Evaluated("16 in to bottom above subfloor", true);
        SvgReader svg = new(BoardCutouts.For(evaluation, OneBox.WallAddress).ToSvg(0));
        decimal scale = svg.Data("scale") / 1000m;
        System.Xml.Linq.XElement hole = Assert.Single(svg.Of("box", OneBox.Id, "cutout"));
        long Read(string name) => SvgReader.Thousandths(hole.Attribute(name)!.Value);
        Assert.InRange(CaseFile.Inches("70-7/8").Ticks - ((Read("x") - svg.Data("left")) * scale), -scale, scale);
        Assert.InRange(CaseFile.Inches("16").Ticks - ((svg.Data("subfloor") - Read("y") - Read("height")) * scale), -scale, scale);
        Assert.Empty(svg.Clashes());
    }

    // The usual nail-on box is 2-1/4 in by 3-3/4 in, more or less: from the edge that it is set by, and said so. Common practice, no source.
    [Fact]
    public void Cutouts_OfABoxOfNoStatedSize_AreUsualOnes()
    {
        BoardCutout cut = Assert.Single(BoardCutouts.For(Evaluated("16 in to bottom above subfloor", false), OneBox.WallAddress).On(0));
        Assert.Equal((CaseFile.Inches("70-7/8"), CaseFile.Inches("73-1/8"), CaseFile.Inches("16"), CaseFile.Inches("19-3/4"), true), (cut.Left, cut.Right, cut.Bottom, cut.Top, cut.IsUsualSize));
        BoardCutout top = Assert.Single(BoardCutouts.For(Evaluated("16 in to top above subfloor", false), OneBox.WallAddress).On(0));
        Assert.Equal((CaseFile.Inches("12-1/4"), CaseFile.Inches("16")), (top.Bottom, top.Top));
    }

    [Fact]
    public void Cutouts_OfABoxWhosePlaceIsNotKnown_AreNotYet()
    {
        BoardCutouts cutouts = BoardCutouts.For(Evaluated("16 in to bottom above finished floor", true), OneBox.WallAddress);
        Assert.Equal([OneBox.Id], cutouts.NotYet);
        Assert.Contains("Not yet: the-box", Text(cutouts.ToSvg(0)), StringComparison.Ordinal);
    }

    // Sheets of 48 in from the right of a wall of 144 in end at 48 and 96 in; the box at 94 to 98 in is cut out of two.
    [Fact]
    public void Boards_ThatStandUpright_AreCutWhereTheyMeet()
    {
        OneBox of = new OneBox
        {
            Storey = new Storey("ground").WithBoards(new BoardLayout().WithHung(BoardDirection.Vertical).WithFrom(BoardOrigin.Right).WithWidths(new[] { CaseFile.Inches("48") })).WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8"))),
        }.At(BoxHeight.Parse("16 in to bottom above subfloor"));
        of = of with { Box = of.Box.WithSize(new BoxSize(CaseFile.Inches("4"), CaseFile.Inches("4"))).WithAt(CaseFile.Inches("96")) };
        BoardCutouts cutouts = BoardCutouts.For(of.Evaluate(), OneBox.WallAddress);
        Assert.Equal(["0 in to 48 in", "48 in to 96 in", "96 in to 144 in"], cutouts.Boards.Select(board => board.Left + " to " + board.Right));
        Assert.Equal((CaseFile.Inches("46"), CaseFile.Inches("48"), true), (cutouts.On(1)[0].Left, cutouts.On(1)[0].Right, cutouts.On(1)[0].IsSplit));
        Assert.Equal((CaseFile.Inches("0"), CaseFile.Inches("2")), (cutouts.On(2)[0].Left, cutouts.On(2)[0].Right));
        CutoutList list = CutoutList.For(of.Evaluate());
        Assert.Equal((3, 2), (list.Boards, list.Rows.Count));
        Assert.Contains("| wall | 2 of 3 from the left | the-box | 46 in to 48 in | 16 in to 20 in | across a seam: cut both boards |", list.ToMarkdown(), StringComparison.Ordinal);
    }

    // Two courses of 48 in hang from the ceiling at 96-1/2 in; the first of them is butted at 96 in, the second, under it, at 72 in, within the box at 70-7/8 to 73-1/8 in.
    [Fact]
    public void Courses_WhoseButtJointsAreStated_AreSheets()
    {
        BoardLayout boards = new BoardLayout().WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") })
            .WithButtJoints(new[] { new ButtJoint(1, CaseFile.Inches("96")), new ButtJoint(2, CaseFile.Inches("72")), new ButtJoint(2, CaseFile.Inches("400")) });
        OneBox of = new OneBox
        {
            Storey = new Storey("ground").WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8"))),
            Wall = wall => wall.WithBoards(boards),
        }.At(BoxHeight.Parse("16 in to bottom above subfloor"));
        Evaluation evaluation = (of with { Box = of.Box.WithSize(Size) }).Evaluate();
        BoardCutouts cutouts = BoardCutouts.For(evaluation, OneBox.WallAddress);
        Assert.Equal(["0 in to 72 in", "72 in to 144 in", "0 in to 96 in", "96 in to 144 in"], cutouts.Boards.Select(board => board.Left + " to " + board.Right));
        Assert.Equal(["0 in", "0 in", "48-1/2 in", "48-1/2 in"], cutouts.Boards.Select(board => board.Bottom!.Value.From.ToString()));
        string list = CutoutList.For(evaluation).ToMarkdown();
        Assert.Contains("| wall | 1 of 2 from below, sheet 1 of 2 | the-box | 70-7/8 in to 72 in | 16 in to 19-3/4 in | across a seam: cut both boards |", list, StringComparison.Ordinal);
        Assert.Contains("| wall | 1 of 2 from below, sheet 2 of 2 | the-box | 0 in to 1-1/8 in | 16 in to 19-3/4 in | across a seam: cut both boards |", list, StringComparison.Ordinal);
        SvgReader svg = new(WallElevation.For(evaluation, OneBox.WallAddress).ToSvg());
        Assert.Equal(2, svg.All.Count(one => (string?)one.Attribute("class") == "bh-joint"));

        // Of a storey's layout they are of no wall.
        Assert.Equal(2, BoardCutouts.For((of with { Wall = wall => wall, Storey = of.Storey.WithBoards(boards) }).Evaluate(), OneBox.WallAddress).Boards.Count);
    }

    // Board of a stated thickness and no more: nobody knows where one ends, so that none is counted.
    [Fact]
    public void List_WhereItIsNotSaidHowBoardIsHung_TellsTheWholeWall()
    {
        OneBox of = new OneBox
        {
            Storey = new Storey("ground").WithBoards(new BoardLayout().WithThickness(CaseFile.Inches("1/2"))).WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8"))),
            Wall = wall => wall.WithOpenings(new Opening("window", OpeningKind.Window, CaseFile.Inches("10"), CaseFile.Inches("40")).WithSill(Level.Parse("30 in above subfloor")).WithHead(Level.Parse("80 in above subfloor")))
                .WithBoxes(new DeviceBox("left", BoxPurpose.General).WithAt(CaseFile.Inches("5")).WithHeight(BoxHeight.Parse("16 in to bottom above subfloor"))),
        }.At(BoxHeight.Parse("16 in to bottom above subfloor"));
        CutoutList list = CutoutList.For(of.Evaluate());
        Assert.Equal(0, list.Boards);
        Assert.Equal(["left", "window", OneBox.Id], list.Rows.Select(row => row.Id));
        Assert.Contains("| wall | whole wall | the-box | 70-7/8 in to 73-1/8 in | 16 in to 19-3/4 in |", list.ToMarkdown(), StringComparison.Ordinal);
        Assert.Contains("No box states its size", list.ToMarkdown(), StringComparison.Ordinal);
        Assert.DoesNotContain("usual size |", list.ToMarkdown(), StringComparison.Ordinal);
    }

    // Hung from the top of a wall that rises from 84 to 120 in, two sheets of 48 in have their seam nobody knows where: what the report can't judge no paper tells for certain.
    [Theory]
    [InlineData(BoardOrigin.Top, "whole wall")]
    [InlineData(BoardOrigin.Bottom, "1 of 3 from below")]
    public void Courses_UnderASlopedTop_AreToldWhereTheyStartAtTheFloor(BoardOrigin from, string board)
    {
        Distance sheet = CaseFile.Inches("48");
        Evaluation evaluation = (new OneBox
        {
            Wall = wall => wall.WithTop(new WallTopPoint[] { new(Distance.Zero, CaseFile.Inches("84")), new(CaseFile.Inches("144"), CaseFile.Inches("120")) })
                .WithBoards(new BoardLayout { From = from, Widths = new[] { sheet, sheet }, FloorGap = Distance.Zero }),
        }.At(BoxHeight.Parse("16 in to bottom above subfloor"))).Evaluate();
        string svg = WallElevation.For(evaluation, OneBox.WallAddress).ToSvg();
        Assert.Equal(from == BoardOrigin.Bottom, new SvgReader(svg).All.Any(one => (string?)one.Attribute("class") == "bh-seam"));
        Assert.Equal(CaseFile.Inches("120"), BoardCutouts.For(evaluation, OneBox.WallAddress).Boards.Max(sheet => sheet.Top!.Value.From));
        string list = CutoutList.For(evaluation).ToMarkdown();
        Assert.Contains("| " + board + " | ", list, StringComparison.Ordinal);
        Assert.Equal(from == BoardOrigin.Top, list.Contains("begins at a top that isn't level", StringComparison.Ordinal));
    }

    // A gable's half: 36 in up at the left end, 108 in at the right one of 144 in: it rises 1/2 in an inch. Upright sheets of 48 in from the left reach 60, 84 and 108 in up, 24 in
    // lower at their left edges. Worked out by hand.
    [Fact]
    public void Boards_ThatStandUprightUnderASlope_AreCutByIt()
    {
        OneBox of = Sloped(new BoardLayout().WithHung(BoardDirection.Vertical).WithFrom(BoardOrigin.Left).WithWidths(new[] { CaseFile.Inches("48") }), (0, 36), (144, 108));
        BoardCutouts cutouts = BoardCutouts.For(of.Evaluate(), OneBox.WallAddress);
        Assert.Equal(["0 in to 60 in", "0 in to 84 in", "0 in to 108 in"], cutouts.Boards.Select(board => board.Bottom + " to " + board.Top));
        Assert.Equal(["along 48 in, up 60 in", "along 96 in, up 84 in"], cutouts.SlopeOn(1).Select(point => point.ToString()));
        Assert.Contains("Cut to the slope: 60 in up at 0 in, 84 in up at 48 in.", Text(cutouts.ToSvg(1)), StringComparison.Ordinal);
        Assert.Contains("- room/wall, 1 of 3 from the left: 36 in up at 0 in, 60 in up at 48 in", CutoutList.For(of.Evaluate()).ToMarkdown(), StringComparison.Ordinal);
        string corners = Assert.Single(new SvgReader(cutouts.ToSvg(0)).Of("course", "1", "board")).Attribute("d")!.Value;
        Assert.Equal(4, corners.Count(one => one is 'M' or 'L'));
    }

    // Level at 96 in to 48 in along, from there down 1 in an inch to the floor at the right end: the first sheet stays whole, of the third there is the half that is under 48 in.
    // Courses of 48 in from the floor: the lower one is whole to 96 in along, the upper one ends where the slope comes down to its lower edge.
    [Theory]
    [InlineData(BoardDirection.Vertical, "0 in to 48 in up 0 in to 96 in | 48 in to 96 in up 0 in to 96 in | 96 in to 144 in up 0 in to 48 in", "0 | 2 | 2")]
    [InlineData(BoardDirection.Horizontal, "0 in to 144 in up 0 in to 48 in | 0 in to 96 in up 48 in to 96 in", "3 | 3")]
    public void Boards_UnderATopThatBreaks_ReachAsFarAsTheWall(BoardDirection hung, string boards, string corners)
    {
        OneBox of = Sloped(new BoardLayout().WithHung(hung).WithFrom(hung == BoardDirection.Vertical ? BoardOrigin.Left : BoardOrigin.Bottom).WithFloorGap(Distance.Zero)
            .WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") }), (48, 96), (144, 0));
        BoardCutouts cutouts = BoardCutouts.For(of.Evaluate(), OneBox.WallAddress);
        Assert.Equal(boards, string.Join(" | ", cutouts.Boards.Select(board => board.Left + " to " + board.Right + " up " + board.Bottom + " to " + board.Top)));
        Assert.Equal(corners, string.Join(" | ", Enumerable.Range(0, cutouts.Boards.Count).Select(board => cutouts.SlopeOn(board).Count)));
    }

    // A roof's two sides: 48 in up at both ends, 108 in in the middle: the sheet over the ridge has a corner there, and a wall's whole board of which nothing is said has it, too.
    [Fact]
    public void Boards_UnderARidge_HaveACornerThere()
    {
        (int, int)[] roof = [(0, 48), (72, 108), (144, 48)];
        BoardCutouts cutouts = BoardCutouts.For(Sloped(new BoardLayout().WithHung(BoardDirection.Vertical).WithFrom(BoardOrigin.Left).WithWidths(new[] { CaseFile.Inches("48") }), roof).Evaluate(), OneBox.WallAddress);
        Assert.Equal(["along 48 in, up 88 in", "along 72 in, up 108 in", "along 96 in, up 88 in"], cutouts.SlopeOn(1).Select(point => point.ToString()));
        BoardCutouts whole = BoardCutouts.For(Sloped(new BoardLayout().WithWidths(new[] { CaseFile.Inches("48") }), roof).Evaluate(), OneBox.WallAddress);
        Assert.Equal(["along 0 in, up 48 in", "along 72 in, up 108 in", "along 144 in, up 48 in"], whole.SlopeOn(0).Select(point => point.ToString()));
    }

    private static OneBox Sloped(BoardLayout boards, params (int Along, int Up)[] top) => new OneBox
    {
        Wall = wall => wall.WithBoards(boards).WithTop(top.Select(point => new WallTopPoint(CaseFile.Inches(point.Along.ToString(System.Globalization.CultureInfo.InvariantCulture)), CaseFile.Inches(point.Up.ToString(System.Globalization.CultureInfo.InvariantCulture)))).ToArray()),
    }.At(BoxHeight.Parse("16 in to top above subfloor"));

    [Fact]
    public void Courses_WhereNothingIsSaidOfTheBoard_AreNone() => Assert.Empty(BoardCutouts.For(new OneBox().Evaluate(), OneBox.WallAddress).Boards);

    private static string Text(string svg) => string.Join(" ", new SvgReader(svg).Texts().Select(text => text.Text));

    private static Evaluation Evaluated(string height, bool sized)
    {
        OneBox of = new()
        {
            Storey = new Storey("ground").WithBoards(new BoardLayout().WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") })).WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8"))),
        };
        OneBox placed = of.At(BoxHeight.Parse(height));
        return (placed with { Box = sized ? placed.Box.WithSize(Size) : placed.Box }).Evaluate();
    }
}
