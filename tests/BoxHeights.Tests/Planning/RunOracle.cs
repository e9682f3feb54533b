using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;

namespace BoxHeights.Tests.Planning;

/// <summary>What makes a plan good, from its definition: no windows, stages or passes.</summary>
internal sealed class RunOracle(RunSketch sketch, bool codeMinimum = false)
{
    private readonly long reach = codeMinimum ? sketch.Limit : sketch.Reach;
    private readonly (long From, long To)[] wanted = codeMinimum ? [] :
    [
        .. sketch.Wishes.Where(wish => sketch.Places.Any(at => In(at, wish))),
        .. sketch.Faces.Where(face => face.To - face.From >= sketch.FaceLength && sketch.Places.Any(at => In(at, face) && sketch.RankAt(at) != CandidateRank.LastResort)),
    ];

    /// <summary>Whether a plan keeps to all that comes before cost.</summary>
    public bool IsGood(IReadOnlyList<long> plan) =>
        plan.Count > 0 && IsStart(plan[0]) && IsEnd(plan[^1])
        && Enumerable.Range(1, plan.Count - 1).All(i => IsNext(plan[i - 1], plan[i]))
        && sketch.Fixed.All(plan.Contains)
        && wanted.All(range => plan.Any(at => In(at, range)));

    /// <summary>Last resorts, boxes, places that aren't good, largest gap, squares: less is better, from the first that differs.</summary>
    public (int, int, int, long, long) Cost(IReadOnlyList<long> plan)
    {
        CandidateRank?[] ranks = [.. plan.Select(sketch.RankAt)];
        long[] gaps = [.. plan.Zip(plan.Skip(1), (a, b) => b - a)];
        long start = plan[0], end = sketch.Length - plan[^1];
        return (
            codeMinimum ? 0 : ranks.Count(rank => rank == CandidateRank.LastResort),
            plan.Count,
            ranks.Count(rank => rank == CandidateRank.Fair || (codeMinimum && rank == CandidateRank.LastResort)),
            gaps.Append(2 * start).Append(2 * end).Max(),
            gaps.Sum(gap => gap * gap) + (2 * start * start) + (2 * end * end));
    }

    /// <summary>The best of all subsets; null where there is no place at all.</summary>
    /// <param name="ties">How many are equal in everything but which is further left.</param>
    public long[]? BestOfAll(out int ties)
    {
        long[]? best = null;
        (int, int, int, long, long) least = default;
        ties = 0;
        List<long> plan = [];
        bool[] starts = [.. sketch.Places.Select(IsStart)];
        bool[] ends = [.. sketch.Places.Select(IsEnd)];
        bool[][] nexts = [.. sketch.Places.Select(from => sketch.Places.Select(to => to > from && IsNext(from, to)).ToArray())];
        for (int subset = 1; subset < 1 << sketch.Places.Length; subset++)
        {
            // What its ends and neighbors already tell against is most of them, and is told without a list.
            if (!starts[BitOperations.TrailingZeroCount(subset)] || !ends[BitOperations.Log2((uint)subset)] || !AreNexts(subset, nexts))
            {
                continue;
            }

            plan.Clear();
            for (int i = 0; i < sketch.Places.Length; i++)
            {
                if ((subset >> i & 1) != 0)
                {
                    plan.Add(sketch.Places[i]);
                }
            }

            if (!IsGood(plan))
            {
                continue;
            }

            (int, int, int, long, long) cost = Cost(plan);
            int order = best is null ? -1 : cost.CompareTo(least);
            ties = order < 0 ? 1 : order == 0 ? ties + 1 : ties;
            if (order < 0 || (order == 0 && IsFurtherLeft(plan, best!)))
            {
                best = [.. plan];
                least = cost;
            }
        }

        return best;
    }

    private static bool AreNexts(int subset, bool[][] nexts)
    {
        for (int from = BitOperations.TrailingZeroCount(subset), rest = subset & (subset - 1); rest != 0; rest &= rest - 1)
        {
            int to = BitOperations.TrailingZeroCount(rest);
            if (!nexts[from][to])
            {
                return false;
            }

            from = to;
        }

        return true;
    }

    public bool IsStart(long at) => Reaches(at, sketch.Places[0]);

    public bool IsEnd(long at) => Reaches(sketch.Length - at, sketch.Length - sketch.Places[^1]);

    /// <summary>Near enough; or as near as the limit across a hole between neighboring places; or across nothing but a hole.</summary>
    public bool IsNext(long from, long to)
    {
        if (to - from <= 2 * reach)
        {
            return true;
        }

        (int first, int last) = (Array.BinarySearch(sketch.Places, from), Array.BinarySearch(sketch.Places, to));
        return last - first == 1 || (to - from <= 2 * sketch.Limit && Enumerable.Range(first, last - first).Any(i => sketch.Places[i + 1] - sketch.Places[i] > 2 * reach));
    }

    private bool Reaches(long away, long nearest) => away <= reach || away == nearest || (nearest > reach && away <= sketch.Limit);

    private static bool In(long at, (long From, long To) range) => range.From <= at && at <= range.To;

    private static bool IsFurtherLeft(List<long> plan, long[] other)
    {
        int differs = Enumerable.Range(0, plan.Count).FirstOrDefault(i => plan[i] != other[i], -1);
        return differs >= 0 && plan[differs] < other[differs];
    }
}
