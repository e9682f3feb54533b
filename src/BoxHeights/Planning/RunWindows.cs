using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>
/// What a plan has to keep to, said as windows: how far right of each place the next one may be. Coverage is a window by itself; a box that stays, a wish and a face that
/// gets a box are each a range of places that may not be skipped.
/// </summary>
internal sealed class RunWindows
{
    private readonly RunPlaces places;
    private readonly long reach;
    private readonly long limit;
    private readonly int[] covering;
    private readonly int firstCovering;
    private readonly int lastCovering;

    // The first place of each range that may not be skipped, and the last place that may follow what is left of it.
    private readonly int[] mustHave;

    /// <param name="places">The places, at least one.</param>
    /// <param name="reach">How far any point shall be from a place, where that can be had.</param>
    /// <param name="limit">How far it may be where it can't; at least as much, and at most twice.</param>
    /// <param name="required">Of each of these ranges some place has to be in the plan.</param>
    public RunWindows(RunPlaces places, long reach, long limit, List<(int First, int End)> required)
    {
        (this.places, this.reach, this.limit) = (places, reach, limit);
        covering = Coverage();
        firstCovering = CoveringFromEnd(i => i, place => place);
        lastCovering = CoveringFromEnd(i => places.Count - 1 - i, place => places.Length - place);
        mustHave = new int[places.At.Length];
        for (int i = 0; i < mustHave.Length; i++)
        {
            mustHave[i] = places.Rank[i] == CandidateRank.Stays ? i : int.MaxValue;
        }

        foreach ((int first, int end) in required)
        {
            for (int round = 0; round < mustHave.Length; round += places.Count)
            {
                mustHave[first + round] = Math.Min(mustHave[first + round], end - 1 + round);
            }
        }
    }

    /// <summary>The furthest place that coverage lets follow the first one.</summary>
    public int Covering => covering[0];

    /// <summary>Whether coverage lets a plan go from one place right to another; of a line, −1 and the count of places are its ends, of a loop those of the other times round.</summary>
    public bool Skips(int from, int to) =>
        covering.Length > places.Count ? from < 0 ? to + places.Count <= covering[from + places.Count] : to <= covering[from]
        : from < 0 ? to < places.Count && to <= firstCovering
        : to == places.Count ? from >= lastCovering : to <= covering[from];

    /// <summary>The way along a line.</summary>
    /// <param name="weights">What a place of each rank costs, from a box that stays on.</param>
    public RunSteps Along(long[] weights)
    {
        int[] furthest = Furthest(out int first);
        int last = mustHave.Length - 1;
        while (last > lastCovering && mustHave[last] == int.MaxValue)
        {
            last--;
        }

        long[] weight = new long[furthest.Length];
        for (int i = 0; i < weight.Length; i++)
        {
            weight[i] = weights[1 + (int)places.Rank[i]];
        }

        return new(places.At, weight, furthest, Math.Min(first, firstCovering), last, places.Length);
    }

    /// <summary>The way round a loop, from one place to the same.</summary>
    /// <param name="from">The place.</param>
    /// <param name="weights">What a place of each rank costs, from a box that stays on.</param>
    public RunSteps Round(int from, long[] weights)
    {
        int[] furthest = Furthest(out _);
        int count = places.Count;
        RunSteps steps = new(new long[count + 1], new long[count + 1], new int[count + 1], 0, count, places.Length);
        for (int i = 0; i <= count; i++)
        {
            steps.At[i] = places.At[from + i] - places.At[from];
            steps.Weight[i] = weights[1 + (int)places.Rank[from + i]];
            steps.Furthest[i] = Math.Min(furthest[from + i] - from, count);
        }

        return steps;
    }

    private int[] Furthest(out int first)
    {
        int[] furthest = new int[covering.Length];
        first = furthest.Length - 1;
        for (int i = furthest.Length - 1; i >= 0; i--)
        {
            furthest[i] = Math.Min(covering[i], first);
            first = Math.Min(first, mustHave[i]);
        }

        return furthest;
    }

    private int[] Coverage()
    {
        long[] at = places.At;
        int[] furthest = new int[at.Length];
        int near = 0, far = 0;
        for (int i = 0; i < at.Length; i++)
        {
            near = Math.Max(near, i);
            while (near + 1 < at.Length && at[near + 1] - at[i] <= 2 * reach)
            {
                near++;
            }

            // Across a hole that no place narrows, up to the limit; and if the hole itself is wider, from its one edge to the other.
            furthest[i] = near;
            if (near + 1 < at.Length && at[near + 1] - at[near] > 2 * reach)
            {
                far = Math.Max(far, near);
                while (far + 1 < at.Length && at[far + 1] - at[i] <= 2 * limit)
                {
                    far++;
                }

                furthest[i] = near == i ? Math.Max(far, i + 1) : far;
            }
        }

        return furthest;
    }

    private int CoveringFromEnd(Func<int, int> place, Func<long, long> away)
    {
        long within = away(places.At[place(0)]) <= reach ? reach : limit;
        int found = 0;
        while (found + 1 < places.Count && away(places.At[place(found + 1)]) <= within)
        {
            found++;
        }

        return place(found);
    }
}
