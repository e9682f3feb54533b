using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>Sets made from sets.</content>
public readonly partial record struct DistanceSet
{
    /// <summary>The distances in either set.</summary>
    /// <param name="other">The other set.</param>
    public DistanceSet Union(DistanceSet other)
    {
        if (count == 0 || other.count == 0)
        {
            return count == 0 ? other : this;
        }

        if (IsWithinOneOf(other))
        {
            return other;
        }

        if (other.IsWithinOneOf(this))
        {
            return this;
        }

        Gatherer gathered = default;
        int mine = 0, theirs = 0;
        while (mine < count || theirs < other.count)
        {
            if (theirs == other.count || (mine < count && LowTicks(mine) <= other.LowTicks(theirs)))
            {
                gathered.Append(LowTicks(mine), HighTicks(mine));
                mine++;
            }
            else
            {
                gathered.Append(other.LowTicks(theirs), other.HighTicks(theirs));
                theirs++;
            }
        }

        return gathered.ToSet();
    }

    /// <summary>The distances in any of several ranges. Put together one by one, many would cost the square of their number.</summary>
    /// <param name="ranges">The ranges; they are sorted.</param>
    internal static DistanceSet UnionOf(List<DistanceRange> ranges)
    {
        SortByFrom(ranges);
        Gatherer gathered = default;
        foreach (DistanceRange range in ranges)
        {
            gathered.Append(range.From.Ticks, range.To.Ticks);
        }

        return gathered.ToSet();
    }

    /// <summary>The distances that are inside none of several ranges; their ends are outside.</summary>
    /// <param name="ranges">The ranges; they are sorted.</param>
    internal static DistanceSet OutsideOf(List<DistanceRange> ranges)
    {
        SortByFrom(ranges);
        Gatherer gathered = default;
        long at = Lowest;
        foreach (DistanceRange range in ranges)
        {
            if (range.From < range.To)
            {
                gathered.Append(at, range.From.Ticks);
                at = Math.Max(at, range.To.Ticks);
            }
        }

        gathered.Append(at, Highest);
        return gathered.ToSet();
    }

    private static void SortByFrom(List<DistanceRange> ranges)
    {
        if (ranges.Count > 1)
        {
            ranges.Sort(static (one, other) => one.From.CompareTo(other.From));
        }
    }

    /// <summary>The distances in both sets.</summary>
    /// <param name="other">The other set.</param>
    public DistanceSet Intersect(DistanceSet other)
    {
        // Bands and bounds, which most sets are, have one stretch each.
        if (count == 1 && other.count == 1)
        {
            long from = Math.Max(low0, other.low0);
            long to = Math.Min(high0, other.high0);
            return from > to ? default : new(from, to);
        }

        if (count == 0 || other.count == 0)
        {
            return default;
        }

        if (IsWithinOneOf(other))
        {
            return this;
        }

        if (other.IsWithinOneOf(this))
        {
            return other;
        }

        Gatherer gathered = default;
        int mine = 0, theirs = 0;
        while (mine < count && theirs < other.count)
        {
            long high = HighTicks(mine), otherHigh = other.HighTicks(theirs);
            gathered.Append(Math.Max(LowTicks(mine), other.LowTicks(theirs)), Math.Min(high, otherHigh));
            if (high < otherHigh)
            {
                mine++;
            }
            else
            {
                theirs++;
            }
        }

        return gathered.ToSet();
    }

    /// <summary>Whether it lies within another's only stretch: then neither their union nor what they share is made anew.</summary>
    private bool IsWithinOneOf(in DistanceSet other) => other.count == 1 && other.low0 <= low0 && HighTicks(count - 1) <= other.high0;

    /// <summary>The distances that are not in the set; beside a stretch they begin one tick (12.5 nm) from its end.</summary>
    public DistanceSet Complement()
    {
        Gatherer gathered = default;
        long next = Lowest;
        for (int i = 0; i < count; i++)
        {
            if (LowTicks(i) != Lowest)
            {
                gathered.Append(next, LowTicks(i) - 1);
            }

            if (HighTicks(i) == Highest)
            {
                return gathered.ToSet();
            }

            next = HighTicks(i) + 1;
        }

        gathered.Append(next, Highest);
        return gathered.ToSet();
    }

    /// <summary>The distances at least a margin inside their stretch; an end without bound stays.</summary>
    /// <param name="margin">Zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    /// <exception cref="OverflowException">A moved end is beyond the scale.</exception>
    public DistanceSet Shrink(Distance margin) => margin < Distance.Zero
        ? throw new ArgumentOutOfRangeException(nameof(margin), margin, "A margin is zero or more.")
        : MoveEnds(margin.Ticks, checked(-margin.Ticks));

    /// <summary>The set with its limits rounded inward to what a tape shows: a lower limit up, an upper one down, so that whatever is marked within it is allowed. An end without bound stays.</summary>
    /// <param name="step">More than zero, such as 1/8 in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    /// <exception cref="OverflowException">A rounded end is beyond the scale.</exception>
    public DistanceSet RoundInward(Distance step)
    {
        Gatherer gathered = default;
        for (int i = 0; i < count; i++)
        {
            long low = LowTicks(i), high = HighTicks(i);
            gathered.Append(low == Lowest ? low : Distance.FromTicks(low).RoundUp(step).Ticks, high == Highest ? high : Distance.FromTicks(high).RoundDown(step).Ticks);
        }

        return gathered.ToSet();
    }

    /// <summary>Every distance moved by the same shift.</summary>
    /// <param name="shift">What is added to each distance.</param>
    /// <exception cref="OverflowException">A moved end is beyond the scale.</exception>
    public DistanceSet Shift(Distance shift) => MoveEnds(shift.Ticks, shift.Ticks);

    /// <summary>The distances that are in the set moved by every shift of a range: what is allowed whatever the shift turns out to be.</summary>
    /// <param name="shifts">The shifts that may be.</param>
    /// <exception cref="OverflowException">A moved end is beyond the scale.</exception>
    public DistanceSet ErodeShift(DistanceRange shifts) => MoveEnds(shifts.To.Ticks, shifts.From.Ticks);

    /// <summary>The distances that are in the set moved by some shift of a range: what is allowed for some of the shifts.</summary>
    /// <param name="shifts">The shifts that may be.</param>
    /// <exception cref="OverflowException">A moved end is beyond the scale.</exception>
    public DistanceSet DilateShift(DistanceRange shifts) => MoveEnds(shifts.From.Ticks, shifts.To.Ticks);

    private DistanceSet MoveEnds(long lowBy, long highBy)
    {
        Gatherer gathered = default;
        for (int i = 0; i < count; i++)
        {
            long low = LowTicks(i), high = HighTicks(i);
            gathered.Append(low == Lowest ? low : checked(low + lowBy), high == Highest ? high : checked(high + highBy));
        }

        return gathered.ToSet();
    }

    /// <summary>Takes stretches in order of their low ends and joins those that touch.</summary>
    private struct Gatherer
    {
        private int count;
        private long low0, high0, low1, high1;
        private long[]? more;
        private long low, high;
        private bool open;

        internal void Append(long nextLow, long nextHigh)
        {
            if (nextLow > nextHigh)
            {
                return;
            }

            if (open && (high == Highest || nextLow <= high + 1))
            {
                high = Math.Max(high, nextHigh);
                return;
            }

            Close();
            low = nextLow;
            high = nextHigh;
            open = true;
        }

        internal DistanceSet ToSet()
        {
            Close();
            if (count > Inline && more!.Length != 2 * (count - Inline))
            {
                Array.Resize(ref more, 2 * (count - Inline));
            }

            return new(count, low0, high0, low1, high1, more);
        }

        private void Close()
        {
            if (!open)
            {
                return;
            }

            switch (count)
            {
                case 0:
                    (low0, high0) = (low, high);
                    break;
                case 1:
                    (low1, high1) = (low, high);
                    break;
                default:
                    int at = 2 * (count - Inline);
                    if (more is null || more.Length == at)
                    {
                        Array.Resize(ref more, Math.Max(8, 2 * at));
                    }

                    (more[at], more[at + 1]) = (low, high);
                    break;
            }

            count++;
            open = false;
        }
    }
}
