using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>A run that begins further along is planned like one that begins at zero: a straight part of walls that go round corners does.</summary>
public class RunMovedTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(300)]
    public void Plan_OfARunThatBeginsFurtherAlong_IsTheSamePlan(int moved)
    {
        Distance by = Distance.FromInches(moved, 0, 1);
        Distance In(int inches) => by + Distance.FromInches(inches, 0, 1);
        RunToPlan run = new(new(In(0), In(240)))
        {
            Faces = new[] { new DistanceRange(In(0), In(240)) },
            Wishes = new[] { new DistanceRange(In(40), In(50)), new DistanceRange(In(180), In(195)) },
            Candidates = Enumerable.Range(0, 15).Select(nth => new RunCandidate(In(15 + (16 * nth)))).ToArray(),
        };
        RunPlan plan = new RunPlanner(RunAims.Walls).Plan(run);
        Assert.Empty(plan.Obstacles);

        // Worked by hand: 47 in is the one place of the first wish, 191 that of the second.
        Assert.Equal([In(47), In(191)], plan.Positions.Where(position => position.Reason == PositionReason.Wished).Select(position => position.At));
        Assert.All(plan.Positions, position => Assert.Contains(position.At - by, Enumerable.Range(0, 15).Select(nth => Distance.FromInches(15 + (16 * nth), 0, 1))));
    }
}
