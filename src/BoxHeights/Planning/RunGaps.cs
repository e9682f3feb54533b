using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What lies between the boxes of a plan, and at the ends of its run.</summary>
internal sealed class RunGaps
{
    private readonly RunToPlan run;
    private readonly List<(long Left, long Right, bool AtStart, bool AtEnd)> gaps = [];

    public RunGaps(RunToPlan run, PlannedPosition[] positions)
    {
        this.run = run;
        long from = run.Line.From.Ticks, to = run.Line.To.Ticks;
        bool isLoop = run.IsLoop && positions.Length > 0;
        for (int i = isLoop ? 1 : 0; i <= positions.Length; i++)
        {
            bool atStart = i == 0, atEnd = i == positions.Length && !isLoop;
            long left = atStart ? from : positions[i - 1].At.Ticks;
            long right = i < positions.Length ? positions[i].At.Ticks : atEnd ? to : positions[0].At.Ticks + to - from;
            gaps.Add((left, right, atStart, atEnd));
        }
    }

    public Items<Distance> All => new(gaps.ConvertAll(gap => Distance.FromTicks(gap.Right - gap.Left)));

    /// <summary>One at an end counts double.</summary>
    public Distance Largest
    {
        get
        {
            long largest = 0;
            foreach ((long left, long right, bool atStart, bool atEnd) in gaps)
            {
                largest = Math.Max(largest, (atStart || atEnd ? 2 : 1) * (right - left));
            }

            return Distance.FromTicks(largest);
        }
    }

    /// <summary>The stretches further than a reach from every box.</summary>
    public List<DistanceRange> Beyond(long reach)
    {
        List<DistanceRange> found = [];
        long from = run.Line.From.Ticks, to = run.Line.To.Ticks;
        foreach ((long left, long right, bool atStart, bool atEnd) in gaps)
        {
            long first = atStart ? left : left + reach;
            long last = atEnd ? right : right - reach;
            if (first >= last)
            {
                continue;
            }

            // Past the end of a loop is at its start again.
            if (first < to)
            {
                Add(first, Math.Min(last, to));
            }

            if (last > to)
            {
                Add(Math.Max(first, to) - to + from, last - to + from);
            }
        }

        return found;

        void Add(long first, long last) => found.Add(new(Distance.FromTicks(first), Distance.FromTicks(last)));
    }
}
