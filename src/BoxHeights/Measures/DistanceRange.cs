using System;

namespace BoxHeights;

/// <summary>A distance that is known to lie between two ends, both included: "floor 0 in to 1-1/4 in".</summary>
/// <remarks><c>default</c> is exactly zero. A distance converts by itself to the range that holds only it.</remarks>
public readonly partial record struct DistanceRange : IFormattable
{
    /// <summary>A range between two ends.</summary>
    /// <param name="from">The lower end.</param>
    /// <param name="to">The higher end, or the same.</param>
    /// <exception cref="ArgumentException"><paramref name="from"/> is above <paramref name="to"/>.</exception>
    public DistanceRange(Distance from, Distance to)
    {
        if (from > to)
        {
            throw new ArgumentException(FormattableString.Invariant($"A range goes from the lower end to the higher: {from} is above {to}."), nameof(from));
        }

        From = from;
        To = to;
    }

    /// <summary>The lower end.</summary>
    public Distance From { get; }

    /// <summary>The higher end.</summary>
    public Distance To { get; }

    /// <summary>Whether only one distance is in the range.</summary>
    public bool IsExact => From == To;

    /// <summary>The higher end minus the lower.</summary>
    /// <exception cref="OverflowException">The width is beyond the scale.</exception>
    public Distance Width => To - From;

    /// <summary>All sums of a distance in the left range and one in the right.</summary>
    /// <exception cref="OverflowException">An end is beyond the scale.</exception>
    public static DistanceRange operator +(DistanceRange left, DistanceRange right) => new(left.From + right.From, left.To + right.To);

    /// <summary>All differences of a distance in the left range and one in the right, each free of the other.</summary>
    /// <exception cref="OverflowException">An end is beyond the scale.</exception>
    public static DistanceRange operator -(DistanceRange left, DistanceRange right) => new(left.From - right.To, left.To - right.From);

    /// <summary>The range with the other sign; its ends change places.</summary>
    /// <exception cref="OverflowException">An end is <see cref="Distance.MinValue"/>.</exception>
    public static DistanceRange operator -(DistanceRange value) => new(-value.To, -value.From);

    /// <summary>The range that holds only this distance.</summary>
    public static implicit operator DistanceRange(Distance exact) => Exactly(exact);

    /// <summary>The range that holds only this distance.</summary>
    /// <param name="exact">The distance.</param>
    public static DistanceRange Exactly(Distance exact) => new(exact, exact);

    /// <summary>All sums with a distance in the other range, for callers without operators.</summary>
    /// <exception cref="OverflowException">An end is beyond the scale.</exception>
    public DistanceRange Add(DistanceRange other) => this + other;

    /// <summary>All differences with a distance in the other range, for callers without operators.</summary>
    /// <exception cref="OverflowException">An end is beyond the scale.</exception>
    public DistanceRange Subtract(DistanceRange other) => this - other;

    /// <summary>The range with the other sign, for callers without operators.</summary>
    /// <exception cref="OverflowException">An end is <see cref="Distance.MinValue"/>.</exception>
    public DistanceRange Negate() => -this;

    /// <summary>Whether a distance is in the range, ends included.</summary>
    public bool Contains(Distance distance) => From <= distance && distance <= To;

    /// <summary>Whether all of another range is in this one.</summary>
    public bool Contains(DistanceRange other) => From <= other.From && other.To <= To;

    /// <summary>Whether a distance is in both ranges; a shared end is enough.</summary>
    public bool Overlaps(DistanceRange other) => From <= other.To && other.From <= To;
}
