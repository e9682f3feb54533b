#if !NETSTANDARD_ASSET
using System;
using System.Linq;
using Google.OrTools.Sat;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>
/// The number of boxes against a constraint solver (Google.OrTools, CP-SAT), which is told of coverage piece by piece of the line and knows nothing of neighbors.
/// </summary>
public sealed class SolverRoadTests
{
    [Theory]
    [InlineData(20, 30)]
    [InlineData(200, 6)]
    [InlineData(2000, 1)]
    public void Count_StudFaces_IsTheSolversLeast(int count, int runs)
    {
        int solved = 0;
        for (int seed = 0; seed < runs; seed++)
        {
            RunSketch sketch = RunSketch.Studs(new Random(count + seed), count);
            RunPlan plan = sketch.Plan();
            Assert.True(plan.HasSlack());
            Assert.Equal(Least(sketch), (0, plan.Positions.Count));
            solved++;
        }

        Assert.Equal(runs, solved);
    }

    [Fact]
    public void Count_RandomRuns_IsTheSolversLeast()
    {
        int solved = 0;
        for (int seed = 0; solved < 60; seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(300_000 + seed), 40);
            RunPlan plan = sketch.Plan();
            if (!plan.HasSlack())
            {
                continue;
            }

            int lastResorts = RunSketch.UnitsOf(plan).Count(at => sketch.RankAt(at) == CandidateRank.LastResort);
            Assert.Equal(Least(sketch), (lastResorts, plan.Positions.Count));
            solved++;
        }
    }

    // The fewest last resorts, then the fewest boxes.
    private static (int LastResorts, int Boxes) Least(RunSketch sketch)
    {
        CpModel model = new();
        long[] at = sketch.Places;
        BoolVar[] used = [.. at.Select(place => model.NewBoolVar("at " + place))];

        // Twice the units: between two neighboring ends of what places cover, the same places cover every point.
        long[] ends = [.. at.SelectMany(place => new[] { 2 * (place - sketch.Reach), 2 * (place + sketch.Reach) }).Append(0).Append(2 * sketch.Length).Where(end => end >= 0 && end <= 2 * sketch.Length).Distinct().Order()];
        foreach ((long left, long right) in ends.Zip(ends.Skip(1)))
        {
            model.AddBoolOr(Which(place => Math.Abs((2 * place) - ((left + right) / 2)) <= 2 * sketch.Reach));
        }

        foreach (long stays in sketch.Fixed)
        {
            model.AddBoolOr(Which(place => place == stays));
        }

        foreach ((long from, long to) in sketch.Wishes.Where(wish => Which(place => wish.From <= place && place <= wish.To).Length > 0))
        {
            model.AddBoolOr(Which(place => from <= place && place <= to));
        }

        foreach ((long from, long to) in sketch.Faces.Where(face => face.To - face.From >= sketch.FaceLength))
        {
            if (at.Any(place => from <= place && place <= to && sketch.RankAt(place) != CandidateRank.LastResort))
            {
                model.AddBoolOr(Which(place => from <= place && place <= to));
            }
        }

        model.Minimize(LinearExpr.WeightedSum(used, at.Select(place => sketch.RankAt(place) == CandidateRank.LastResort ? at.Length + 2L : 1L)));
        CpSolver solver = new() { StringParameters = "num_workers:1,linearization_level:2" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        long[] chosen = [.. at.Where((_, i) => solver.BooleanValue(used[i]))];
        return (chosen.Count(place => sketch.RankAt(place) == CandidateRank.LastResort), chosen.Length);

        ILiteral[] Which(Func<long, bool> holds) => [.. used.Where((_, i) => holds(at[i]))];
    }
}
#endif
