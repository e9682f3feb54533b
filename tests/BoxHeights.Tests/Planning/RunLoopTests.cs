using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Runs whose end meets their start, against all subsets.</summary>
public sealed class RunLoopTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Plan_SmallRandomLoops_IsTheBestOfAllSubsets(bool codeMinimum)
    {
        int many = 0, faces = 0;
        for (int seed = 0; seed < 1000; seed++)
        {
            RunSketch sketch = Closed(RunSketch.Random(new Random(500_000 + seed), 10));
            RunPlan plan = Plan(sketch, codeMinimum);
            long[]? best = Best(sketch, codeMinimum);
            Assert.True(RunSketch.UnitsOf(plan).SequenceEqual(best ?? []), seed + ": " + string.Join(" ", RunSketch.UnitsOf(plan)) + " against " + string.Join(" ", best ?? []));
            many += plan.Positions.Count > 2 ? 1 : 0;
            faces += plan.Positions.Count(one => one.Reason == PositionReason.Face);
        }

        Assert.InRange(many, 200, 1000);
        Assert.True(codeMinimum ? faces == 0 : faces > 10, faces + " boxes for a face");
    }

    [Fact]
    public void Plan_LoopCutElsewhere_IsAsGoodAndCoversAsMuch()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            RunSketch sketch = Closed(RunSketch.Random(new Random(seed), 14)) with { Faces = [], Wishes = [] };
            long turn = seed % sketch.Length;
            RunSketch turned = sketch with { Candidates = [.. sketch.Candidates.Select(one => ((one.At + turn) % sketch.Length, one.Rank))], Fixed = [.. sketch.Fixed.Select(at => (at + turn) % sketch.Length)] };
            RunPlan one = Plan(sketch, false), other = Plan(turned, false);
            Assert.Equal(one.Positions.Count, other.Positions.Count);
            Assert.Equal(one.LargestGap(Round(sketch)), other.LargestGap(Round(turned)));
            Assert.Equal(one.HasSlack(), other.HasSlack());
            Assert.Equal(Length(one.WithoutSlack), Length(other.WithoutSlack));
            Assert.Equal(Length(one.Obstacles.Select(bare => bare.Uncovered)), Length(other.Obstacles.Select(bare => bare.Uncovered)));
        }

        static long Length(IEnumerable<DistanceRange> stretches) => stretches.Sum(one => one.Width.Ticks);
    }

    [Fact]
    public void Plan_RoundARoomWithoutADoor_HasNoEnds()
    {
        // 10 by 10 ft with a place every foot: 480 in round, at most 132 in apart: four boxes 10 ft apart, from the leftmost corner on.
        RunToPlan run = new RunToPlan(new(Distance.Zero, Distance.FromInches(480m))) with { IsLoop = true, Candidates = new(Enumerable.Range(0, 41).Select(foot => new RunCandidate(Distance.FromInches(12m * foot)))) };
        RunPlan plan = new RunPlanner(RunAims.Walls).Plan(run);
        Assert.Equal([0m, 120m, 240m, 360m], plan.Positions.Select(one => one.At.Ticks / 2_032_000m));
        Assert.Equal(Enumerable.Repeat(Distance.FromInches(120m), 4), plan.Gaps(run));
        Assert.Equal(Distance.FromInches(120m), plan.LargestGap(run));
        Assert.True(plan.HasSlack());
    }

    // 40 ft round with places from 10 to 30 ft alone: 66 in beyond the last and before the first nothing is served, across the end of the line wherever that is counted from.
    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    public void WithoutSlack_AcrossTheEndOfALoop_IsInItsTwoParts(int from)
    {
        Distance At(decimal inches) => Distance.FromInches(from + inches);
        RunToPlan run = new RunToPlan(new(At(0), At(480))) with { IsLoop = true, Candidates = new(Enumerable.Range(10, 21).Select(foot => new RunCandidate(At(12m * foot)))) };
        RunPlan plan = new RunPlanner(RunAims.Walls).Plan(run);
        Assert.Equal((At(120), At(360)), (plan.Positions[0].At, plan.Positions[^1].At));
        Assert.Equal([new(At(360 + 66), At(480)), new(At(0), At(120 - 66))], plan.WithoutSlack);
        Assert.Equal([new(At(360 + 72), At(480)), new(At(0), At(120 - 72))], plan.Obstacles.Select(bare => bare.Uncovered));
    }

    private static RunPlan Plan(RunSketch sketch, bool codeMinimum) => new RunPlanner(sketch.Options with { CodeMinimum = codeMinimum }).Plan(Round(sketch));

    private static RunToPlan Round(RunSketch sketch) => sketch.Run() with { IsLoop = true };

    // The end is the start.
    private static RunSketch Closed(RunSketch sketch) => sketch with
    {
        Candidates = [.. sketch.Candidates.Select(one => (one.At % sketch.Length, one.Rank)).Order()],
        Fixed = [.. sketch.Fixed.Select(at => at % sketch.Length).Order()],
    };

    private static long[]? Best(RunSketch closed, bool codeMinimum)
    {
        // Places are read off anew: the sketch's own list was made before the end became the start.
        long[] places = [.. closed.Fixed.Concat(closed.Candidates.Select(one => one.At)).Distinct().Order()];
        long length = closed.Length, reach = codeMinimum ? closed.Limit : closed.Reach;
        (long From, long To)[] wanted = codeMinimum ? [] :
        [
            .. closed.Wishes.Where(wish => places.Any(at => In(at, wish))),
            .. closed.Faces.Where(face => face.To - face.From >= closed.FaceLength && places.Any(at => In(at, face) && closed.RankAt(at) != CandidateRank.LastResort)),
        ];
        return Enumerable.Range(1, (1 << places.Length) - 1)
            .Select(subset => places.Where((_, i) => (subset >> i & 1) != 0).ToArray())
            .Where(plan => closed.Fixed.All(plan.Contains) && wanted.All(range => plan.Any(at => In(at, range))) && Pairs(plan).All(pair => IsNext(pair.From, pair.To)))
            .OrderBy(Cost)
            .ThenBy(plan => string.Join(" ", plan.Select(at => at.ToString("D8", null))), StringComparer.Ordinal)
            .FirstOrDefault();

        IEnumerable<(long From, long To)> Pairs(long[] plan) => plan.Zip(plan.Skip(1).Append(plan[0] + length), (from, to) => (from, to));

        bool IsNext(long from, long to)
        {
            long[] between = [.. places.Concat(places.Select(at => at + length)).Where(at => from <= at && at <= to)];
            return to - from <= 2 * reach || between.Length == 2 || (to - from <= 2 * closed.Limit && between.Zip(between.Skip(1)).Any(pair => pair.Second - pair.First > 2 * reach));
        }

        (int, int, int, long, long) Cost(long[] plan)
        {
            CandidateRank?[] ranks = [.. plan.Select(closed.RankAt)];
            long[] gaps = [.. Pairs(plan).Select(pair => pair.To - pair.From)];
            return (
                codeMinimum ? 0 : ranks.Count(rank => rank == CandidateRank.LastResort),
                plan.Length,
                ranks.Count(rank => rank == CandidateRank.Fair || (codeMinimum && rank == CandidateRank.LastResort)),
                gaps.Max(),
                gaps.Sum(gap => gap * gap));
        }
    }

    private static bool In(long at, (long From, long To) range) => range.From <= at && at <= range.To;
}
