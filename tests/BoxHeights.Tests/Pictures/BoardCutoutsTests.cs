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
        Assert.Equal(["0 in to 48-1/2 in", "48-1/2 in to 96-1/2 in"], cutouts.Courses.Select(course => course.ToString()));
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

    [Fact]
    public void Cutouts_OfABoxOfNoExactSize_AreNotDrawn()
    {
        string text = Text(BoardCutouts.For(Evaluated("16 in to bottom above subfloor", false), OneBox.WallAddress).ToSvg(0));
        Assert.Contains("Not yet: the-box", text, StringComparison.Ordinal);
        Assert.DoesNotContain("the-box: 70", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Courses_WhereNothingIsSaidOfTheBoard_AreNone() => Assert.Empty(BoardCutouts.For(new OneBox().Evaluate(), OneBox.WallAddress).Courses);

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
