using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Planning;

/// <summary>A run in whole units, from which the library's description is made, and seeded random ones.</summary>
internal sealed record RunSketch(long Length, (long At, CandidateRank Rank)[] Candidates, long[] Fixed, (long From, long To)[] Wishes, (long From, long To)[] Faces, long Limit, long Reach, long? FaceLength)
{
    /// <summary>A quarter of an inch, so that sketches are readable; plans know only ticks.</summary>
    public const long Unit = 508_000;

    public long[] Places { get; } = [.. Fixed.Concat(Candidates.Select(one => one.At)).Distinct().Order()];

    public RunPlannerOptions Options => new(Ticks(Limit)) { Reach = Ticks(Reach), FaceLength = FaceLength is { } length ? Ticks(length) : null };

    public RunPlan Plan(bool codeMinimum = false) => new RunPlanner(Options with { CodeMinimum = codeMinimum }).Plan(Run());

    public RunToPlan Run() => new(Range(0, Length))
    {
        Candidates = new(Candidates.Select(one => new RunCandidate(Ticks(one.At), one.Rank))),
        Fixed = new(Fixed.Select(Ticks)),
        Wishes = new(Wishes.Select(one => Range(one.From, one.To))),
        Faces = new(Faces.Select(one => Range(one.From, one.To))),
    };

    /// <summary>The run seen from its other end.</summary>
    public RunSketch Mirrored() => new(
        Length,
        [.. Candidates.Select(one => (Length - one.At, one.Rank)).Reverse()],
        [.. Fixed.Select(at => Length - at).Reverse()],
        [.. Wishes.Select(Turned).Reverse()],
        [.. Faces.Select(Turned).Reverse()],
        Limit,
        Reach,
        FaceLength);

    /// <summary>The best rank offered at a place; null where a box stays.</summary>
    public CandidateRank? RankAt(long at) => Fixed.Contains(at) ? null : Candidates.Where(one => one.At == at).Min(one => one.Rank);

    public static long[] UnitsOf(RunPlan plan) => [.. plan.Positions.Select(one => one.At.Ticks / Unit)];

    /// <summary>A run with everything that a plan has to mind, of a length that many boxes can hold, sometimes with holes too wide to cover.</summary>
    public static RunSketch Random(Random draw, int most, bool ranks = true)
    {
        long limit = draw.Next(6, 30);
        long reach = limit - draw.Next(0, (int)(limit / 2) + 1);
        long length = Math.Max(2, limit * draw.Next(1, 14) / 2);
        int spread = draw.Next(1, 4);
        (long, CandidateRank)[] candidates = [.. Enumerable.Range(0, draw.Next(0, most - 2))
            .Select(_ => draw.NextInt64(0, length + 1) / spread * spread)
            .Order()
            .Select(at => (at, ranks && draw.Next(4) == 0 ? (CandidateRank)draw.Next(3) : CandidateRank.Good))];
        long[] stays = draw.Next(2) == 0 ? [] : [.. Enumerable.Range(0, draw.Next(1, 3)).Select(_ => draw.NextInt64(0, length + 1)).Order()];
        List<long> corners = [0, .. Enumerable.Range(0, draw.Next(0, 6)).Select(_ => draw.NextInt64(0, length + 1)).Order(), length];
        (long, long)[] wishes = [.. Enumerable.Range(0, Math.Max(0, draw.Next(-2, 3))).Select(_ => draw.NextInt64(0, length + 1)).Select(from => (from, Math.Min(length, from + draw.NextInt64(0, limit))))];
        return new(
            length,
            candidates,
            stays,
            wishes,
            [.. corners.Zip(corners.Skip(1)).Where(pair => pair.First < pair.Second)],
            limit,
            reach,
            draw.Next(3) == 0 ? null : draw.NextInt64(1, 1 + (limit / 2)));
    }

    /// <summary>Box centers 1-7/8 in either side of studs 16 in on center, some of them blocked; in sixteenths of an inch.</summary>
    public static RunSketch Studs(Random draw, int count, int blockedPercent = 15)
    {
        List<(long, CandidateRank)> candidates = [];
        long stud = 256;
        for (; candidates.Count < count; stud += 256)
        {
            foreach (long at in new[] { stud - 30, stud + 30 })
            {
                if (draw.Next(100) >= blockedPercent)
                {
                    candidates.Add((at, CandidateRank.Good));
                }
            }
        }

        return new(stud, [.. candidates.Take(count)], [], [], [(0, stud)], 72 * 16, 66 * 16, null);
    }

    private (long, long) Turned((long From, long To) range) => (Length - range.To, Length - range.From);

    private static Distance Ticks(long units) => Distance.FromTicks(units * Unit);

    private static DistanceRange Range(long from, long to) => new(Ticks(from), Ticks(to));
}
