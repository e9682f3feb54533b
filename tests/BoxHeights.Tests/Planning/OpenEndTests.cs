using System;
using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>
/// Where a room's walls don't go once round, what follows beyond an open end isn't described: the rule of NEC 210.52(A) is judged as if an outlet stood right there, and the
/// plan doesn't end the wall where the description does. Worked by hand: 66 in of planned reach from each box, 132 in from box to box.
/// </summary>
public sealed class OpenEndTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    private static RoomPlan Plan(params string[] walls) => new RoughInPlanner(Rules).Plan(RoomSketch.House("living-room", walls), "room");

    private static Distance[] Boxes(RoomPlan plan) => [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.General).Select(placed => placed.Box.At!.Value).Order()];

    // 200 in between two ends that go on: one box between 68 in and 132 in leaves 132 in at most to either side. As a wall that ends there it would take two.
    [Fact]
    public void Wall_ThatGoesOnAtBothEnds_GetsOneBox_AndItIsNoted()
    {
        RoomPlan plan = Plan("200");
        Distance at = Assert.Single(Boxes(plan));
        Assert.InRange(at, Distance.FromInches(68), Distance.FromInches(132));
        Assert.Contains(plan.Notes, note => note.StartsWith("room: its walls don't go once round it", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Obstacles, obstacle => obstacle.Contains("wall-outlets", StringComparison.Ordinal));
    }

    // The same length between a door and another: 2 boxes, 72 in at most from each end.
    [Fact]
    public void Wall_ThatEndsAtDoors_GetsTwo()
    {
        Distance[] at = Boxes(Plan("280 door:8:40 door:240:272", "100", "280", "100"));
        Distance[] between = [.. at.Where(one => one > Distance.FromInches(40) && one < Distance.FromInches(240))];
        Assert.True(between.Length >= 2, string.Join(", ", at));
    }

    // Only the loose ends may go on, each as if an outlet stood there: 132 in between them lack nothing with slack, 180 in want one box.
    [Theory]
    [InlineData("44", 0)]
    [InlineData("60", 1)]
    public void ShortWalls_WhoseEndsMayGoOn_GetNoMoreThanTheirMiddleLacks(string length, int boxes) =>
        Assert.Equal(boxes, Boxes(Plan(length, length + " turn:-90", length)).Length);

    [Fact]
    public void Room_ThatCloses_IsNotNoted() => Assert.DoesNotContain(Plan("120 door:20:52", "120", "120", "120").Notes, note => note.Contains("once round", StringComparison.Ordinal));
}
