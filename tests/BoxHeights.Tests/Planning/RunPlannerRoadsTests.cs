using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Plans against all subsets, against a plain dynamic program, and what holds of every plan.</summary>
public sealed class RunPlannerRoadsTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Plan_SmallRandomRuns_IsTheBestOfAllSubsets(bool codeMinimum)
    {
        int ties = 0, holes = 0, sizes = 0;
        for (int seed = 0; seed < Tries.Of(1500); seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(seed), 11);
            RunPlan plan = sketch.Plan(codeMinimum);
            long[]? best = new RunOracle(sketch, codeMinimum).BestOfAll(out int equals);
            Assert.True(RunSketch.UnitsOf(plan).SequenceEqual(best ?? []), seed + ": " + string.Join(" ", RunSketch.UnitsOf(plan)) + " against " + string.Join(" ", best ?? []));
            ties += equals > 1 ? 1 : 0;
            holes += plan.Obstacles.Count > 0 ? 1 : 0;
            sizes += plan.Positions.Count;
        }

        // The draw has what the test is about.
        Assert.InRange(ties, Tries.Of(1500) / 75, 1000);
        Assert.InRange(holes, Tries.Of(1500) / 15, 1000);
        Assert.InRange(sizes, Tries.Of(1500) * 2, 12_000);
    }

    [Fact]
    public void Plan_TwentyPlaces_IsTheBestOfAllSubsets()
    {
        int tried = 0;
        for (int seed = 7000; tried < 4; seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(seed), 24);
            if (sketch.Places.Length is 19 or 20)
            {
                Assert.Equal(new RunOracle(sketch).BestOfAll(out _), RunSketch.UnitsOf(sketch.Plan()));
                tried++;
            }
        }
    }

    [Theory]
    [InlineData(20, 300)]
    [InlineData(200, 30)]
    [InlineData(2000, 2)]
    public void Plan_StudFaces_AgreesWithThePlainDynamicProgram(int count, int runs)
    {
        for (int seed = 0; seed < Tries.Of(runs); seed++)
        {
            RunSketch sketch = RunSketch.Studs(new Random(count + seed), count, blockedPercent: 15 + (seed % 3 * 30));
            Assert.Equal(LayeredRoad.Best(sketch), RunSketch.UnitsOf(sketch.Plan()));
        }
    }

    [Fact]
    public void Plan_DensePlaces_AgreesWithThePlainDynamicProgram()
    {
        for (int seed = 0; seed < Tries.Of(20); seed++)
        {
            Random draw = new(seed);
            long length = draw.Next(300, 3000);
            RunSketch sketch = new(length, [.. Enumerable.Range(0, (int)length + 1).Where(_ => draw.Next(5) != 0).Select(at => ((long)at, CandidateRank.Good))], [], [], [], 288, 264, null);
            Assert.Equal(LayeredRoad.Best(sketch), RunSketch.UnitsOf(sketch.Plan()));
        }
    }

    [Fact]
    public void Plan_Mirrored_IsAsGoodAndTheSameWhereOnlyOneIsBest()
    {
        int unique = 0;
        for (int seed = 0; seed < Tries.Of(600); seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(100_000 + seed), 10);
            RunOracle oracle = new(sketch);
            long[]? best = oracle.BestOfAll(out int ties);
            if (best is null)
            {
                continue;
            }

            long[] mirrored = [.. RunSketch.UnitsOf(sketch.Mirrored().Plan()).Select(at => sketch.Length - at).Order()];
            Assert.True(oracle.IsGood(mirrored));
            Assert.Equal(oracle.Cost(best), oracle.Cost(mirrored));
            if (ties == 1)
            {
                Assert.Equal(best, mirrored);
                unique++;
            }
        }

        Assert.InRange(unique, Tries.Of(200), 600);
    }

    [Fact]
    public void Plan_AnyOrderOfCandidates_IsTheSame()
    {
        for (int seed = 0; seed < Tries.Of(200); seed++)
        {
            Random draw = new(seed);
            RunSketch sketch = RunSketch.Random(draw, 40);
            RunToPlan run = sketch.Run();
            RunCandidate[] shuffled = [.. run.Candidates, .. run.Candidates];
            draw.Shuffle(shuffled);
            RunPlan again = new RunPlanner(sketch.Options).Plan(run with { Candidates = shuffled });
            RunPlan plan = sketch.Plan();
            Assert.Equal(plan.Positions, again.Positions);
            Assert.Equal(plan.Obstacles.Select(one => one.Uncovered), again.Obstacles.Select(one => one.Uncovered));
        }
    }

    [Fact]
    public void Plan_CoversWhateverAllPlacesTogetherDo()
    {
        // Point by point, with every candidate set: what is then uncovered no plan can cover.
        int uncovered = 0, tight = 0;
        for (int seed = 0; seed < Tries.Of(800); seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(seed), 12);
            RunPlan plan = sketch.Plan();
            long[] chosen = RunSketch.UnitsOf(plan);

            // Half units: the middle of a gap can lie on one.
            for (long half = 0; half <= 2 * sketch.Length; half++)
            {
                Distance point = Distance.FromTicks(half * RunSketch.Unit / 2);
                long nearest = chosen.Select(at => Math.Abs((2 * at) - half)).DefaultIfEmpty(long.MaxValue).Min();
                long atBest = sketch.Places.Select(at => Math.Abs((2 * at) - half)).DefaultIfEmpty(long.MaxValue).Min();
                bool isBare = plan.Obstacles.Any(one => one.Uncovered.Contains(point));
                bool isTight = plan.WithoutSlack.Any(one => one.Contains(point));
                Assert.Equal(atBest > 2 * sketch.Limit, nearest > 2 * sketch.Limit);
                Assert.True(nearest <= 2 * sketch.Limit || isBare);
                Assert.True(nearest >= 2 * sketch.Limit || !isBare);
                Assert.True(nearest <= 2 * sketch.Reach || isTight);
                Assert.True(nearest >= 2 * sketch.Reach || !isTight);
                uncovered += isBare ? 1 : 0;
                tight += isTight ? 1 : 0;
            }

            bool slackCanBeHad = Enumerable.Range(0, (int)(2 * sketch.Length) + 1).All(half => sketch.Places.Any(at => Math.Abs((2 * at) - half) <= 2 * sketch.Reach));
            Assert.Equal(slackCanBeHad, plan.HasSlack());
            Assert.Equal(sketch.Length * RunSketch.Unit, plan.Gaps(sketch.Run()).Sum(gap => gap.Ticks));
        }

        Assert.InRange(uncovered, Tries.Of(1000), 100_000);
        Assert.InRange(tight, Tries.Of(1000), 100_000);
    }

    [Fact]
    public void Reasons_NoBoxIsThereForNothing()
    {
        int faces = 0, wishes = 0;
        for (int seed = 0; seed < 800; seed++)
        {
            RunSketch sketch = RunSketch.Random(new Random(seed), 12);
            RunOracle oracle = new(sketch), coverageOnly = new(sketch with { FaceLength = null, Wishes = [], Fixed = [], Candidates = [.. sketch.Candidates, .. sketch.Fixed.Select(at => (at, CandidateRank.Good))] });
            RunPlan plan = sketch.Plan();
            long[] chosen = RunSketch.UnitsOf(plan);
            for (int i = 0; i < chosen.Length; i++)
            {
                long[] without = [.. chosen.Where((_, j) => j != i)];
                PositionReason reason = plan.Positions[i].Reason;
                Assert.Equal(sketch.Fixed.Contains(chosen[i]), plan.Positions[i].IsFixed);
                Assert.True(reason == PositionReason.Stays || !oracle.IsGood(without));
                Assert.True(reason != PositionReason.Coverage || !coverageOnly.IsGood(without));
                Assert.True(reason != PositionReason.Face || coverageOnly.IsGood(without));
                Assert.True(reason != PositionReason.Wished || sketch.Wishes.Any(wish => wish.From <= chosen[i] && chosen[i] <= wish.To && !without.Any(at => wish.From <= at && at <= wish.To)));
                faces += reason == PositionReason.Face ? 1 : 0;
                wishes += reason == PositionReason.Wished ? 1 : 0;
            }
        }

        Assert.InRange(faces, 50, 2000);
        Assert.InRange(wishes, 50, 2000);
    }
}
