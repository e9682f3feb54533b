using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Where nobody has said how the board will be hung: only what every common way would cut in two is worth a word.</summary>
public sealed class UnstatedBoardTests
{
    // Rough height and ceiling board, and a box 3-3/4 in tall by its center. Seams of the common ways, worked out by hand (rough − ceiling − courses):
    //   97-1/8, 5/8:  48-1/2
    //  109-1/8, 1/2:  54-5/8 | 60-5/8 & 12-5/8 | 60-5/8 & 48-5/8 | 96-5/8 & 48-5/8
    //  121-1/8, 1/2:  72-5/8 & 24-5/8 | 72-5/8 & 48-5/8 | 66-5/8 & 12-5/8 | 66-5/8 & 54-5/8 | 66-5/8 & 18-5/8
    [Theory]
    [InlineData("97-1/8", "5/8", "48-1/2", true)]
    [InlineData("97-1/8", "5/8", "46-11/16", true)]
    [InlineData("97-1/8", "5/8", "46-5/8", false)]
    [InlineData("97-1/8", "5/8", "50-3/8", false)]
    [InlineData("109-1/8", "1/2", "54-5/8", false)]
    [InlineData("109-1/8", "1/2", "60-5/8", false)]
    [InlineData("109-1/8", "1/2", "48-5/8", false)]
    [InlineData("109-1/8", "1/2", "12-5/8", false)]
    [InlineData("121-1/8", "1/2", "72-5/8", false)]
    [InlineData("121-1/8", "1/2", "66-5/8", false)]
    public void BoardSeam_WhereNoWayOfHangingIsStated_SpeaksOnlyOfWhatEachWouldCut(string rough, string ceiling, string center, bool found) =>
        Assert.Equal(found, Straddles(rough, ceiling, center, "3-3/4", null));

    // Under 9 ft a way with 54s and one with a strip in the middle have seams 54-5/8 and 48-5/8 or 60-5/8: a box so tall that it meets all is cut by each.
    [Theory]
    [InlineData("12-1/8", true)]
    [InlineData("12", false)]
    public void BoardSeam_OfABoxTallEnoughForEveryWay_IsFound(string tall, bool found) => Assert.Equal(found, Straddles("109-1/8", "1/2", "54-5/8", tall, null));

    [Theory]
    [InlineData("54,54", true)]
    [InlineData("48,48,12", false)]
    public void BoardSeam_OnceTheWayOfHangingIsStated_FollowsIt(string courses, bool found) => Assert.Equal(found, Straddles("109-1/8", "1/2", "54-5/8", "3-3/4", courses));

    [Fact]
    public void BoardSeam_WithoutACeiling_IsNotCheckedAndSaysSo()
    {
        Evaluation evaluation = new OneBox { Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam") }.At(BoxHeight.ToCenter(CaseFile.Inches("48-1/2"), Datum.Subfloor)).Evaluate();
        Assert.True(evaluation.IsClean);
        Assert.Contains(evaluation.NotJudged, what => what.StartsWith("board-seam", System.StringComparison.Ordinal) && what.Contains(OneBox.WallAddress, System.StringComparison.Ordinal));
    }

    private static bool Straddles(string rough, string ceiling, string center, string tall, string? courses)
    {
        OneBox box = new OneBox
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam"),
            Storey = new Storey("ground").WithCeiling(new Ceiling().WithFraming(CaseFile.Inches(rough)).WithBoard(CaseFile.Inches(ceiling)))
                .WithBoards(courses is null ? null : new BoardLayout().WithWidths(courses.Split(',').Select(CaseFile.Inches).ToArray())),
        }.At(BoxHeight.ToCenter(CaseFile.Inches(center), Datum.Subfloor));
        Verdict verdict = (box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches(tall))) }).Verdict();
        Assert.NotEqual(Verdict.Unknown, verdict);
        return verdict == Verdict.Fails;
    }
}
