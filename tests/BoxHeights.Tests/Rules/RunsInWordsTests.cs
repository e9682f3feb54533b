using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Runs that lack an outlet are told by corners and doors, in the order in which one sees them from within the room: left to right.</summary>
public sealed class RunsInWordsTests
{
    private static readonly LayoutEvaluator Walls = new(SpacingCaseTests.Only("us", "wall-outlets", 2023));

    [Theory]
    [InlineData("room, all round", "120", "120", "120", "120")]
    [InlineData("room/w0 from door o1 to the right corner", "120 door:0:40", "120 open", "120 open", "120 open")]
    [InlineData("room/w0", "120", "120 open", "120 open", "120 open")]
    [InlineData("room from the left corner on w0, round the corner, to the right corner on w1", "120", "120", "120 open", "120 open")]
    [InlineData("room from door o1 on w0, round 2 corners, to door o2 on w2", "120 door:0:40", "120", "120 door:80:120", "120 open")]
    [InlineData("room from the left corner on w0 to the right corner on w1", "120 turn:0", "120", "120 open", "240 open", "120 open")]
    public void Message_OfARunWithoutAnOutlet_BeginsWithItsEnds(string ends, params string[] walls)
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", walls)).Findings);
        Assert.StartsWith(ends + ": no outlet that counts on its ", finding.Message, System.StringComparison.Ordinal);

        // The name stays an address: it is what programs go by.
        Assert.StartsWith("room/w0 ", finding.Subject, System.StringComparison.Ordinal);
    }
}
