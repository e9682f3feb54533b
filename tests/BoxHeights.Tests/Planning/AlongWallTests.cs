using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Receptacles along a bare wall: no point further than 6 ft from one, NEC 210.52(A)(1), each nailed to a stud.</summary>
public class AlongWallTests
{
    private static readonly RoughInPlanner Planner = new(RuleSets.OfAHouse);

    // A box 2-1/4 in wide against either side of a stud 1-1/2 in thick, whichever stud it is.
    [Theory]
    [InlineData(60)]
    [InlineData(30)]
    public void AlongWall_WithOneStud_NailsItThere(int face)
    {
        Distance at = Assert.Single(Planner.AlongWall(In(96), new StudLayout().WithFaces(new[] { In(face) })));
        Assert.Contains(at, new[] { In(face - 1.125m), In(face + 1.5m + 1.125m) });
    }

    // Studs every 16 in from 15-1/4 in on; whatever the length, the fewest that reach every point with the six inches that custom keeps in hand.
    [Fact]
    public void AlongWall_OfAnyLength_LeavesNoPointFurtherThanItsReach()
    {
        Distance reach = In(66);
        for (int length = 48; length <= 480; length += 7)
        {
            Distance[] at = [.. Planner.AlongWall(In(length), new StudLayout().WithSpacing(In(16)))];
            Assert.NotEmpty(at);
            Assert.True(at[0] <= reach && In(length) - at[^1] <= reach, length + " in: an end is further off");
            Assert.All(at.Zip(at.Skip(1)), two => Assert.True(two.Second - two.First <= reach * 2, length + " in: " + two));
            Assert.All(at, one => Assert.Contains((one - In(15.25m)).Ticks - (In(16) * (int)Math.Round((decimal)(one - In(16)).Ticks / In(16).Ticks)).Ticks, new[] { In(-1.125m).Ticks, In(2.625m).Ticks }));
            Assert.InRange(at.Length, (int)Math.Ceiling(length / 144m), (int)Math.Ceiling(length / 132m) + 1);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void AlongWall_OfNoLength_NamesTheLength(int length) =>
        Assert.Equal("length", Assert.Throws<ArgumentOutOfRangeException>(() => Planner.AlongWall(In(length), new StudLayout().WithSpacing(In(16)))).ParamName);

    [Fact]
    public void AlongWall_WhereNoRowAsks_Throws() =>
        Assert.Throws<InvalidOperationException>(() => new RoughInPlanner(RuleSets.Ada2010).AlongWall(In(96), new StudLayout().WithSpacing(In(16))));
}
