using System;

namespace BoxHeights;

/// <summary>
/// Chooses among places in order along a line, so that the sum of their weights is least, then the largest gap, then the sum of squared gaps,
/// then so that the first place in which plans differ is furthest left. A gap at an end of the line counts double, and twice its square.
/// </summary>
/// <remarks>
/// <para>Every wish for coverage is said in one form: from a place the next may be at most as far as its <c>furthest</c>, which never moves back along the line.
/// That gives the passes below their shape. Largest gap and squares need two passes: a sum under a maximum can't be had in one.</para>
/// <para>Cheapest plans are those of <see cref="PathStages"/>: stage by stage, each of some places ("rows") is followed by one of others ("columns"), all further right.</para>
/// <para>Largest gap: within a stage, of two that follow, the nearer one is better unless the farther has a smaller gap yet to come. What remains falls from left to
/// right, while the gap rises: the best is where they cross, and that moves right with the place before.</para>
/// <para>Squares: a square of a difference is convex, so the best follower never moves left as the place before moves right: the middle one is found first, then
/// either side within what it leaves.</para>
/// <para>With n places it takes time n log n at worst, about n as studs stand (see benchmarks/RESULTS.md); mixed ranks add a sort that is quick where they are few.</para>
/// </remarks>
internal sealed class EvenPath
{
    private readonly PathSteps steps;
    private readonly long[] at;
    private readonly int[] furthest;

    // The places on cheapest plans: see PathStages.
    private readonly int[] rows;
    private readonly int[] columns;
    private readonly int[] rowEnd;
    private readonly int[] columnEnd;
    private readonly int stages;

    // The largest gap from a place on, and whether it is on a plan whose largest gap is least.
    private readonly long[] worst;
    private readonly bool[] alive;

    // The squares from a place on, and the next place.
    private readonly SquareSum[] squares;
    private readonly int[] next;

    // Of one stage: the rows and columns that are worth a look, and how many of the columns a row reaches, less one.
    private readonly int[] liveRows;
    private readonly int[] liveColumns;
    private readonly int[] reached;

    private EvenPath(PathSteps steps)
    {
        this.steps = steps;
        at = steps.At;
        furthest = steps.Furthest;
        PathStages cheapest = new(steps);
        rows = cheapest.Rows;
        columns = cheapest.Columns;
        rowEnd = cheapest.RowEnd;
        columnEnd = cheapest.ColumnEnd;
        stages = cheapest.Count;
        int count = at.Length;
        worst = new long[count];
        alive = new bool[count];
        squares = new SquareSum[count];
        next = new int[count];
        liveRows = new int[rows.Length + 1];
        liveColumns = new int[rows.Length + 1];
        reached = new int[rows.Length];
    }

    /// <summary>The indices of the places chosen, from left to right.</summary>
    public static int[] Choose(PathSteps steps)
    {
        EvenPath path = new(steps);
        long largest = path.LargestGap();
        path.KeepAlive(largest);
        return path.Evenest(largest);
    }

    private long LargestGap()
    {
        // Fields of this object in locals here and below: the compiler can't know that they don't change in a loop.
        long[] at = this.at, worst = this.worst;
        int[] rows = this.rows, columns = this.columns, furthest = this.furthest;
        for (int r = rowEnd[stages - 2]; r < rows.Length; r++)
        {
            worst[rows[r]] = 2 * (steps.Length - at[rows[r]]);
        }

        int[] kept = liveColumns;
        for (int stage = stages - 2; stage > 0; stage--)
        {
            int count = 0;
            long least = long.MaxValue;
            for (int c = columnEnd[stage - 1]; c < columnEnd[stage]; c++)
            {
                kept[count] = columns[c];
                count += worst[columns[c]] < least ? 1 : 0;
                least = Math.Min(least, worst[columns[c]]);
            }

            int crossing = 0, end = 0;
            for (int r = rowEnd[stage - 1]; r < rowEnd[stage]; r++)
            {
                int row = rows[r], most = furthest[row];
                long from = at[row];
                while (end + 1 < count && kept[end + 1] <= most)
                {
                    end++;
                }

                while (crossing < end && at[kept[crossing]] - from < worst[kept[crossing]])
                {
                    crossing++;
                }

                long best = Math.Max(at[kept[crossing]] - from, worst[kept[crossing]]);
                worst[row] = crossing == 0 ? best : Math.Min(best, Math.Max(at[kept[crossing - 1]] - from, worst[kept[crossing - 1]]));
            }
        }

        long largest = long.MaxValue;
        for (int c = 0; c < columnEnd[0]; c++)
        {
            largest = Math.Min(largest, Math.Max(2 * at[columns[c]], worst[columns[c]]));
        }

        return largest;
    }

    private void KeepAlive(long largest)
    {
        long[] at = this.at, worst = this.worst;
        int[] rows = this.rows, columns = this.columns;
        bool[] alive = this.alive;
        for (int stage = 0; stage < stages - 1; stage++)
        {
            // The rightmost row reaches every column that any of them does.
            int firstRow = stage == 0 ? 0 : rowEnd[stage - 1];
            int last = rowEnd[stage] - 1;
            while (last >= firstRow && !alive[rows[last]])
            {
                last--;
            }

            int rightmost = last < firstRow ? -1 : rows[last];

            for (int c = stage == 0 ? 0 : columnEnd[stage - 1]; c < columnEnd[stage]; c++)
            {
                int column = columns[c];
                alive[column] = worst[column] <= largest && (stage == 0
                    ? 2 * at[column] <= largest
                    : rightmost >= 0 && column <= furthest[rightmost] && at[column] - at[rightmost] <= largest);
            }
        }
    }

    private int[] Evenest(long largest)
    {
        for (int r = rowEnd[stages - 2]; r < rows.Length; r++)
        {
            squares[rows[r]] = SquareSum.TwiceOf(steps.Length - at[rows[r]]);
            next[rows[r]] = -1;
        }

        for (int stage = stages - 2; stage > 0; stage--)
        {
            int columnCount = Gather(columns, columnEnd[stage - 1], columnEnd[stage], liveColumns);
            int rowCount = Gather(rows, rowEnd[stage - 1], rowEnd[stage], liveRows);
            int end = 0;
            for (int r = 0; r < rowCount; r++)
            {
                int row = liveRows[r];
                while (end + 1 < columnCount && liveColumns[end + 1] <= furthest[row] && at[liveColumns[end + 1]] - at[row] <= largest)
                {
                    end++;
                }

                reached[r] = end;
            }

            Follow(0, rowCount - 1, 0, columnCount - 1);
        }

        SquareSum least = SquareSum.Most;
        int chosen = -1;
        for (int c = 0; c < columnEnd[0]; c++)
        {
            if (alive[columns[c]] && SquareSum.TwiceOf(at[columns[c]]) + squares[columns[c]] is var sum && sum < least)
            {
                least = sum;
                chosen = columns[c];
            }
        }

        int many = 0;
        for (int place = chosen; place >= 0; place = next[place])
        {
            reached[many++] = place;
        }

        int[] path = new int[many];
        Array.Copy(reached, path, many);
        return path;
    }

    private int Gather(int[] places, int from, int to, int[] gathered)
    {
        // Written whether it stays or not, since which are alive can't be foreseen and a jump mistaken costs more than a number written.
        bool[] alive = this.alive;
        int count = 0;
        for (int i = from; i < to; i++)
        {
            gathered[count] = places[i];
            count += alive[places[i]] ? 1 : 0;
        }

        return count;
    }

    // Finds the follower of each row; the leftmost, where several are as good.
    private void Follow(int firstRow, int lastRow, int firstColumn, int lastColumn)
    {
        long[] at = this.at;
        int[] columns = liveColumns;
        SquareSum[] squares = this.squares;
        while (firstRow <= lastRow)
        {
            int middle = (firstRow + lastRow) >> 1;
            int row = liveRows[middle];
            long from = at[row];
            SquareSum least = SquareSum.Most;
            int best = firstColumn;
            int last = Math.Min(lastColumn, reached[middle]);
            for (int c = firstColumn; c <= last; c++)
            {
                int column = columns[c];
                SquareSum sum = SquareSum.Of(at[column] - from) + squares[column];
                if (sum < least)
                {
                    least = sum;
                    best = c;
                }
            }

            squares[row] = least;
            next[row] = columns[best];
            if (firstRow < middle)
            {
                Follow(firstRow, middle - 1, firstColumn, best);
            }

            firstRow = middle + 1;
            firstColumn = best;
        }
    }
}
