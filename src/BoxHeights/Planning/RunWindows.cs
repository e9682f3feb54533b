using System;

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
    private readonly bool lastResortCosts;

    // For the places that a range begins with: the last place of the shortest such range.
    private readonly int[] mustHave;
    private readonly int lastCovering;
    private int last;

    /// <param name="places">The places, at least one.</param>
    /// <param name="aim">What is aimed at.</param>
    public RunWindows(RunPlaces places, RunAim aim)
    {
        this.places = places;
        reach = aim.Reach;
        limit = aim.Limit;
        lastResortCosts = aim.LastResortCosts;
        mustHave = new int[places.Count];
        for (int i = 0; i < mustHave.Length; i++)
        {
            mustHave[i] = places.IsFixed[i] ? i : int.MaxValue;
            last = places.IsFixed[i] ? i : last;
        }

        Covering = Coverage();
        First = FirstCovering();
        lastCovering = LastCovering();
        last = Math.Max(last, lastCovering);
    }

    /// <summary>The furthest next place as coverage alone has it.</summary>
    public int[] Covering { get; }

    /// <summary>The furthest first place as coverage alone has it.</summary>
    public int First { get; }

    /// <summary>Some place of these has to be in the plan.</summary>
    public void Require((int First, int End) range)
    {
        mustHave[range.First] = Math.Min(mustHave[range.First], range.End - 1);
        last = Math.Max(last, range.First);
    }

    /// <summary>Whether a plan may go from one place right to another, as coverage alone has it; −1 and the count of places are the ends of the run.</summary>
    public bool Skips(int from, int to) => from < 0
        ? to < places.Count && to <= First
        : to == places.Count ? from >= lastCovering : to <= Covering[from];

    public PathSteps Steps()
    {
        int count = places.Count;
        int[] furthest = new int[count];
        int nearest = count - 1;
        for (int i = count - 1; i >= 0; i--)
        {
            furthest[i] = Math.Min(Covering[i], nearest);
            nearest = Math.Min(nearest, mustHave[i]);
        }

        // One box more weighs more than any number of blocks, a last resort more than any number of boxes.
        long box = count + 1L;
        long[] weight = new long[count];
        bool isOfOneWeight = true;
        for (int i = 0; i < count; i++)
        {
            weight[i] = box + places.Rank[i] switch
            {
                CandidateRank.Good => 0,
                CandidateRank.LastResort when lastResortCosts => box * box,
                _ => 1,
            };
            isOfOneWeight &= weight[i] == weight[0];
        }

        return new(places.At, weight, furthest, Math.Min(First, nearest), last, places.Length, isOfOneWeight);
    }

    private int[] Coverage()
    {
        long[] at = places.At;
        int[] furthest = new int[at.Length];
        int near = 0, far = 0;
        for (int i = 0; i < at.Length; i++)
        {
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

            near = Math.Max(near, i + 1 < at.Length ? i + 1 : i);
        }

        return furthest;
    }

    private int FirstCovering()
    {
        long within = places.At[0] <= reach ? reach : limit;
        int first = 0;
        while (first + 1 < places.Count && places.At[first + 1] <= within)
        {
            first++;
        }

        return first;
    }

    private int LastCovering()
    {
        int found = places.Count - 1;
        long within = places.Length - places.At[found] <= reach ? reach : limit;
        while (found > 0 && places.Length - places.At[found - 1] <= within)
        {
            found--;
        }

        return found;
    }
}
