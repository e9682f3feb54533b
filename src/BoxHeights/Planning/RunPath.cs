using System;

namespace BoxHeights;

/// <summary>Places in order along a line from 0, and what a way along them may be.</summary>
/// <param name="At">The places.</param>
/// <param name="Weight">What each costs: more than zero.</param>
/// <param name="Furthest">The furthest place that may be next after each: at least the next one, and never left of that of the place before.</param>
/// <param name="First">The furthest place that may be the first.</param>
/// <param name="Last">The nearest place that may be the last.</param>
/// <param name="Length">The length of the line.</param>
internal sealed record RunSteps(long[] At, long[] Weight, int[] Furthest, int First, int Last, long Length);

/// <summary>What a way along places costs; less is better, from the first that differs.</summary>
/// <param name="Weight">The sum of the places' weights.</param>
/// <param name="Largest">The largest gap; one at an end of the line counts double.</param>
/// <param name="Squares">The sum of squared gaps; one at an end counts twice.</param>
internal readonly record struct RunCost(long Weight, long Largest, SquareSum Squares)
{
    public int CompareTo(RunCost other) =>
        Weight != other.Weight ? Weight.CompareTo(other.Weight)
        : Largest != other.Largest ? Largest.CompareTo(other.Largest)
        : Squares < other.Squares ? -1 : other.Squares < Squares ? 1 : 0;
}

/// <summary>The cheapest way along places, and of ways that cost the same the one whose first place that differs is furthest left.</summary>
/// <remarks>
/// <para>Weights first: the least before a place is a minimum over a window that only moves right. On a cheapest way a place that has paid so much is followed by one
/// that asks as much of others before it, so that places go in stages by what is paid.</para>
/// <para>A sum under a maximum can't be had in one pass: so the largest gap next, for every place from there on, and last the squares of ways that keep to it. For
/// both a place's best follower never lies left of the best of a place further left in its stage, which makes the passes linear or nearly so.</para>
/// </remarks>
internal sealed class RunPath
{
    private readonly RunSteps steps;
    private readonly long[] at;
    private readonly int[] furthest;

    // Paid for everything before a place on the cheapest way to it, and for the place too; the places sorted by either.
    private readonly long[] before;
    private readonly long[] paid;
    private readonly int[] columns;
    private readonly int[] rows;

    // From a place on: the largest gap, where its followers begin in the columns, the squares, and the next place: 0 as long as nobody asked, less where none is next.
    private readonly long[] worst;
    private readonly int[] followers;
    private readonly SquareSum[] squares;
    private readonly int[] next;

    // Of a stage, by where its followers begin: the rightmost place that was asked, and the best follower of it.
    private readonly int[] asked;
    private readonly int[] bestOfAsked;
    private readonly long weight;
    private readonly long largest = long.MaxValue;

    private RunPath(RunSteps steps)
    {
        (this.steps, at, furthest) = (steps, steps.At, steps.Furthest);
        int count = at.Length;
        (before, paid, worst, followers) = (new long[count], new long[count], new long[count], new int[count]);
        (squares, next, asked, bestOfAsked) = (new SquareSum[count], new int[count], new int[count + 1], new int[count + 1]);
        weight = LeastWeight();
        columns = SortedBy(before);
        rows = SortedBy(paid);
        LargestGaps();
        for (int c = 0; c < count && before[columns[c]] == 0; c++)
        {
            largest = Math.Min(largest, Math.Max(2 * at[columns[c]], worst[columns[c]]));
        }
    }

    /// <summary>The indices of the places chosen, from left to right.</summary>
    /// <param name="steps">The places, at least one.</param>
    /// <param name="cost">What they cost.</param>
    public static int[] Choose(RunSteps steps, out RunCost cost)
    {
        RunPath path = new(steps);
        SquareSum least = SquareSum.Most;
        int place = -1, many = 0;
        for (int c = 0; c < path.at.Length && path.before[path.columns[c]] == 0; c++)
        {
            int first = path.columns[c];
            if (2 * path.at[first] <= path.largest && path.worst[first] <= path.largest
                && SquareSum.TwiceOf(path.at[first]) + path.SquaresFrom(first) is var sum && sum < least)
            {
                (least, place) = (sum, first);
            }
        }

        int[] chosen = new int[path.at.Length];
        for (; place >= 0; place = path.next[place])
        {
            chosen[many++] = place;
        }

        Array.Resize(ref chosen, many);
        cost = new(path.weight, path.largest, least);
        return chosen;
    }

    private long LeastWeight()
    {
        // Fields in locals here and below: the compiler can't know that they don't change in a loop.
        long[] before = this.before, paid = this.paid, weight = steps.Weight;
        int[] furthest = this.furthest, queue = new int[before.Length];
        long least = long.MaxValue;
        int head = 0, tail = 0, first = steps.First, last = steps.Last;
        for (int i = 0; i < before.Length; i++)
        {
            if (i > first)
            {
                while (furthest[queue[head]] < i)
                {
                    head++;
                }

                before[i] = paid[queue[head]];
            }

            paid[i] = before[i] + weight[i];
            least = i >= last ? Math.Min(least, paid[i]) : least;
            while (tail > head && paid[i] <= paid[queue[tail - 1]])
            {
                tail--;
            }

            queue[tail++] = i;
        }

        return least;
    }

    // By insertion: they are nearly in order.
    private static int[] SortedBy(long[] key)
    {
        int[] places = new int[key.Length];
        for (int i = 0; i < places.Length; i++)
        {
            int to = i;
            for (; to > 0 && key[places[to - 1]] > key[i]; to--)
            {
                places[to] = places[to - 1];
            }

            places[to] = i;
        }

        return places;
    }

    private void LargestGaps()
    {
        long[] at = this.at, before = this.before, paid = this.paid, worst = this.worst;
        int[] columns = this.columns, rows = this.rows, furthest = this.furthest, followers = this.followers;
        int start = columns.Length, last = steps.Last;
        long all = weight, length = steps.Length;
        for (int end = rows.Length, first; end > 0; end = first)
        {
            long cost = paid[rows[end - 1]];
            for (first = end - 1; first > 0 && paid[rows[first - 1]] == cost;)
            {
                first--;
            }

            // What has paid all is followed by none.
            while (start > 0 && cost < all && before[columns[start - 1]] >= cost)
            {
                start--;
            }

            int best = start, stop = start;
            while (stop < columns.Length && before[columns[stop]] == cost)
            {
                stop++;
            }

            for (int r = first; r < end; r++)
            {
                int row = rows[r], reach = furthest[row];
                long from = at[row], least = cost == all && row >= last ? 2 * (length - from) : long.MaxValue;
                while (best < stop && (columns[best] <= row || worst[columns[best]] == long.MaxValue))
                {
                    best++;
                }

                for (int c = best; c < stop && columns[c] <= reach; c++)
                {
                    long gap = at[columns[c]] - from;
                    if (gap >= least)
                    {
                        break;
                    }

                    gap = Math.Max(gap, worst[columns[c]]);
                    best = gap < least ? c : best;
                    least = Math.Min(gap, least);
                }

                worst[row] = least;
                followers[row] = start;
            }
        }
    }

    private SquareSum SquaresFrom(int place)
    {
        if (next[place] != 0)
        {
            return squares[place];
        }

        long from = at[place], most = Math.Min(largest, at[furthest[place]] - from);
        SquareSum least = paid[place] == weight ? SquareSum.TwiceOf(steps.Length - from) : SquareSum.Most;
        int best = -1, start = followers[place], bestAt = place > asked[start] ? Math.Max(start, bestOfAsked[start]) : start;
        for (int c = bestAt; c < columns.Length && before[columns[c]] == paid[place] && at[columns[c]] - from <= most; c++)
        {
            int column = columns[c];
            if (column > place && worst[column] <= largest && SquareSum.Of(at[column] - from) + SquaresFrom(column) is var sum && sum < least)
            {
                (least, best, bestAt) = (sum, column, c);
            }
        }

        if (place >= asked[start])
        {
            (asked[start], bestOfAsked[start]) = (place, bestAt);
        }

        (squares[place], next[place]) = (least, best);
        return least;
    }
}
