using System;

namespace BoxHeights;

/// <summary>The places on plans whose weights add up to the least, in stages by what has been paid.</summary>
/// <remarks>
/// The cost of everything before a place and after it are minima over sliding windows. Places that have paid f are followed by those that ask f of others before
/// them; all of the former lie left of all of the latter, else a plan that skips from the one to what follows the other would be cheaper. The line's left end makes
/// the first stage, having paid nothing; the places of the last have paid all and are followed by none.
/// </remarks>
internal sealed class PathStages
{
    // Paid for everything before a place on the cheapest way to it, and for the place too.
    private readonly long[] before;
    private readonly long[] paid;

    public PathStages(PathSteps steps)
    {
        before = new long[steps.At.Length];
        paid = new long[steps.At.Length];
        int[] live = LivePlaces(steps);
        Rows = steps.IsOfOneWeight ? live : SortedBy(paid, (int[])live.Clone());
        Columns = steps.IsOfOneWeight ? live : SortedBy(before, live);
        RowEnd = new int[live.Length + 1];
        ColumnEnd = new int[live.Length + 1];
        Count = Stages();
    }

    /// <summary>The places as the last ones chosen, stage by stage, within a stage from left to right.</summary>
    public int[] Rows { get; }

    /// <summary>The places as the next ones, stage by stage, within a stage from left to right.</summary>
    public int[] Columns { get; }

    /// <summary>Where each stage ends in the rows.</summary>
    public int[] RowEnd { get; }

    /// <summary>Where each stage ends in the columns.</summary>
    public int[] ColumnEnd { get; }

    /// <summary>How many stages there are.</summary>
    public int Count { get; }

    private int[] LivePlaces(PathSteps steps)
    {
        long[] weight = steps.Weight;
        int count = weight.Length;
        int[] live = new int[count];
        long[] after = new long[count];
        if (steps.IsOfOneWeight)
        {
            PayByLeaps(steps, after);
        }
        else
        {
            PayByWindows(steps, after, live);
        }

        long least = after[0];
        for (int i = 1; i <= steps.First; i++)
        {
            least = Math.Min(least, after[i]);
        }

        int many = 0;
        for (int i = 0; i < count; i++)
        {
            live[many] = i;
            many += before[i] + after[i] == least ? 1 : 0;
        }

        Array.Resize(ref live, many);
        return live;
    }

    /// <summary>Where all places weigh the same, the fewest before a place are as many as the longest leaps that lead to it, and so from the other end.</summary>
    private void PayByLeaps(PathSteps steps, long[] after)
    {
        int[] furthest = steps.Furthest;
        int count = furthest.Length;
        long weight = steps.Weight[0];
        int end = steps.First;
        long cost = 0;
        for (int i = 0; i < count; cost += weight)
        {
            int last = end;
            for (; i <= last; i++)
            {
                before[i] = cost;
                paid[i] = cost + weight;
            }

            end = i < count ? furthest[last] : end;
        }

        int start = steps.Last;
        cost = weight;
        for (int i = count - 1; i >= 0; cost += weight)
        {
            int first = start;
            for (; i >= first; i--)
            {
                after[i] = cost;
            }

            while (start > 0 && furthest[start - 1] >= first)
            {
                start--;
            }
        }
    }

    private void PayByWindows(PathSteps steps, long[] after, int[] queue)
    {
        long[] weight = steps.Weight, before = this.before, paid = this.paid;
        int[] furthest = steps.Furthest;
        int count = weight.Length;
        int head = 0, tail = 0;
        for (int i = 0; i < count; i++)
        {
            if (i > steps.First)
            {
                while (furthest[queue[head]] < i)
                {
                    head++;
                }

                before[i] = paid[queue[head]];
            }

            paid[i] = before[i] + weight[i];
            while (tail > head && paid[i] <= paid[queue[tail - 1]])
            {
                tail--;
            }

            queue[tail++] = i;
        }

        head = tail = 0;
        for (int i = count - 1; i >= 0; i--)
        {
            if (i < steps.Last)
            {
                while (queue[head] > furthest[i])
                {
                    head++;
                }

                after[i] = after[queue[head]];
            }

            after[i] += weight[i];
            while (tail > head && after[i] <= after[queue[tail - 1]])
            {
                tail--;
            }

            queue[tail++] = i;
        }
    }

    // By insertion: they are nearly in order.
    private static int[] SortedBy(long[] key, int[] places)
    {
        for (int i = 1; i < places.Length; i++)
        {
            int place = places[i];
            int to = i;
            for (; to > 0 && key[places[to - 1]] > key[place]; to--)
            {
                places[to] = places[to - 1];
            }

            places[to] = place;
        }

        return places;
    }

    private int Stages()
    {
        int stage = 0, row = 0, column = 0;
        do
        {
            long cost = stage == 0 ? 0 : paid[Rows[row]];
            while (row < Rows.Length && paid[Rows[row]] == cost)
            {
                row++;
            }

            while (column < Columns.Length && before[Columns[column]] == cost)
            {
                column++;
            }

            RowEnd[stage] = row;
            ColumnEnd[stage] = column;
            stage++;
        }
        while (row < Rows.Length);
        return stage;
    }
}
