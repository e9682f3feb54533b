using System;

namespace BoxHeights;

/// <summary>The distances that something allows: any number of stretches, ends included, on the grid of 12.5 nm.</summary>
/// <remarks>
/// <para><c>default</c> is the empty set. Stretches are held from low to high, apart from each other by at least one missing tick, so that
/// sets with the same members are equal. Up to two stretches take no memory of their own.</para>
/// <para><see cref="Distance.MinValue"/> and <see cref="Distance.MaxValue"/> as an end mean no bound on that side; shifting and shrinking leave them.</para>
/// </remarks>
public readonly partial record struct DistanceSet
{
    // Bands and keep-outs have one or two, and a set is copied far more often than it is made.
    private const int Inline = 2;
    private const long Lowest = long.MinValue;
    private const long Highest = long.MaxValue;

    private readonly int count;
    private readonly long low0, high0, low1, high1;

    // The stretches after the second, low and high in turn.
    private readonly long[]? more;

    private DistanceSet(long low, long high)
        : this(1, low, high, 0, 0, null)
    {
    }

    private DistanceSet(int count, long low0, long high0, long low1, long high1, long[]? more)
    {
        this.count = count;
        this.low0 = low0;
        this.high0 = high0;
        this.low1 = low1;
        this.high1 = high1;
        this.more = more;
    }

    /// <summary>No distance.</summary>
    public static DistanceSet Empty => default;

    /// <summary>Every distance.</summary>
    public static DistanceSet All => new(Lowest, Highest);

    /// <summary>Whether no distance is in the set.</summary>
    public bool IsEmpty => count == 0;

    /// <summary>Whether every distance is in the set.</summary>
    public bool IsAll => count == 1 && low0 == Lowest && high0 == Highest;

    /// <summary>How many separate stretches there are.</summary>
    public int Count => count;

    /// <summary>A stretch, counted from 0 at the lowest.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such stretch.</exception>
    public DistanceRange this[int index] => (uint)index < (uint)count
        ? new(Distance.FromTicks(LowTicks(index)), Distance.FromTicks(HighTicks(index)))
        : throw new ArgumentOutOfRangeException(nameof(index), index, "The set has " + count + " stretches.");

    /// <summary>The distances in either set.</summary>
    public static DistanceSet operator |(DistanceSet left, DistanceSet right) => left.Union(right);

    /// <summary>The distances in both sets.</summary>
    public static DistanceSet operator &(DistanceSet left, DistanceSet right) => left.Intersect(right);

    /// <summary>The distances from one to another, both included; empty if the first is above the second.</summary>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The higher end.</param>
    public static DistanceSet Between(Distance low, Distance high) => BetweenTicks(low.Ticks, high.Ticks);

    /// <summary>A distance and all above it.</summary>
    /// <param name="low">The lowest distance of the set.</param>
    public static DistanceSet AtLeast(Distance low) => new(low.Ticks, Highest);

    /// <summary>A distance and all below it.</summary>
    /// <param name="high">The highest distance of the set.</param>
    public static DistanceSet AtMost(Distance high) => new(Lowest, high.Ticks);

    /// <summary>The distances not strictly between two others: touching either is allowed. Everything if the first isn't below the second.</summary>
    /// <param name="low">The low end of what is kept out.</param>
    /// <param name="high">The high end of what is kept out.</param>
    public static DistanceSet Outside(Distance low, Distance high) => AtMost(low) | AtLeast(high);

    /// <summary>One distance alone.</summary>
    /// <param name="distance">The only member.</param>
    public static DistanceSet Single(Distance distance) => new(distance.Ticks, distance.Ticks);

    /// <summary>Whether a distance is in the set.</summary>
    /// <param name="distance">The distance asked about.</param>
    public bool Contains(Distance distance) => ContainsTicks(distance.Ticks, distance.Ticks);

    /// <summary>Whether every distance of a range is in the set.</summary>
    /// <param name="range">The range asked about.</param>
    public bool ContainsRange(DistanceRange range) => ContainsTicks(range.From.Ticks, range.To.Ticks);

    /// <summary>Whether some distance of a range is in the set.</summary>
    /// <param name="range">The range asked about.</param>
    public bool Overlaps(DistanceRange range) => OverlapsTicks(range.From.Ticks, range.To.Ticks);

    /// <summary>How far a distance is inside the set, up to the nearest end of its stretch (0 on the end), or, as a negative distance, how far from the nearest member.</summary>
    /// <param name="distance">The distance asked about.</param>
    /// <returns><see cref="Distance.MaxValue"/> inside a set without bounds, <see cref="Distance.MinValue"/> for the empty set.</returns>
    public Distance Margin(Distance distance) => Distance.FromTicks(MarginTicks(distance.Ticks));

    /// <summary>Finds the member nearest to a distance; of two equally near, the lower.</summary>
    /// <param name="distance">The distance to start from; it is its own nearest when it is a member.</param>
    /// <param name="nearest">The member found, or zero.</param>
    /// <returns>False if the set is empty.</returns>
    public bool TryNearest(Distance distance, out Distance nearest)
    {
        bool found = TryNearestTicks(distance.Ticks, 1, out long ticks);
        nearest = Distance.FromTicks(ticks);
        return found;
    }

    /// <summary>Finds the member nearest to a distance among the multiples of a step; of two equally near, the lower.</summary>
    /// <param name="distance">The distance to start from.</param>
    /// <param name="step">More than zero, such as 1/8 in.</param>
    /// <param name="nearest">The member found, or zero.</param>
    /// <returns>False if no multiple of the step is in the set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    public bool TryNearestSnapped(Distance distance, Distance step, out Distance nearest)
    {
        if (step <= Distance.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "A step is more than zero.");
        }

        bool found = TryNearestTicks(distance.Ticks, step.Ticks, out long ticks);
        nearest = Distance.FromTicks(ticks);
        return found;
    }

    /// <inheritdoc/>
    public bool Equals(DistanceSet other)
    {
        if (count != other.count)
        {
            return false;
        }

        for (int i = 0; i < count; i++)
        {
            if (LowTicks(i) != other.LowTicks(i) || HighTicks(i) != other.HighTicks(i))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = count;
        for (int i = 0; i < count; i++)
        {
            hash = unchecked((((hash * 31) + LowTicks(i).GetHashCode()) * 31) + HighTicks(i).GetHashCode());
        }

        return hash;
    }

    internal static DistanceSet BetweenTicks(long low, long high) => low > high ? default : new(low, high);

    internal long LowTicks(int index) => index switch
    {
        0 => low0,
        1 => low1,
        _ => more![2 * (index - Inline)],
    };

    internal long HighTicks(int index) => index switch
    {
        0 => high0,
        1 => high1,
        _ => more![(2 * (index - Inline)) + 1],
    };

    internal bool ContainsTicks(long from, long to)
    {
        for (int i = 0; i < count; i++)
        {
            if (to <= HighTicks(i))
            {
                return from >= LowTicks(i);
            }
        }

        return false;
    }

    internal bool OverlapsTicks(long from, long to)
    {
        for (int i = 0; i < count; i++)
        {
            if (from <= HighTicks(i))
            {
                return to >= LowTicks(i);
            }
        }

        return false;
    }

    internal long MarginTicks(long ticks)
    {
        long outside = Highest;
        for (int i = 0; i < count; i++)
        {
            long low = LowTicks(i), high = HighTicks(i);
            if (ticks < low)
            {
                return -Math.Min(outside, Gap(ticks, low));
            }

            if (ticks <= high)
            {
                return Math.Min(low == Lowest ? Highest : Gap(low, ticks), high == Highest ? Highest : Gap(ticks, high));
            }

            outside = Gap(high, ticks);
        }

        return count == 0 ? Lowest : -outside;
    }

    internal bool TryNearestTicks(long ticks, long step, out long nearest)
    {
        bool found = false;
        ulong best = 0;
        nearest = 0;
        for (int i = 0; i < count; i++)
        {
            long low = LowTicks(i), high = HighTicks(i);
            long inside = Math.Min(Math.Max(ticks, low), high);
            long above = Grid.Above(inside, step);

            // Compared by what is left to the ends, so that nothing overflows beside the end of the scale.
            if ((ulong)above <= Span(low, inside))
            {
                Offer(inside - above, ref nearest);
            }

            if (above != 0 && (ulong)(step - above) <= Span(inside, high))
            {
                Offer(inside + (step - above), ref nearest);
            }
        }

        return found;

        void Offer(long candidate, ref long kept)
        {
            ulong distance = candidate < ticks ? Span(candidate, ticks) : Span(ticks, candidate);
            if (!found || distance < best)
            {
                found = true;
                best = distance;
                kept = candidate;
            }
        }
    }

    // From low to high, which can be more than a long holds.
    private static ulong Span(long low, long high) => unchecked((ulong)high - (ulong)low);

    private static long Gap(long low, long high) => (long)Math.Min(Span(low, high), Highest);
}
