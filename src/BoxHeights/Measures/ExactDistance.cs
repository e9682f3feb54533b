using System;
using System.Numerics;

namespace BoxHeights;

/// <summary>A length that may lie between two ticks of the grid: an exact quotient, such as a third of 32 in, or a slope's height at some place.</summary>
/// <remarks>
/// Stairs need it: a rise of 105 in over 16 risers, treads of 10-2/3 in. It is rounded to a <see cref="Distance"/> once, at the mark.
/// Sums, differences and comparisons are exact. <c>default</c> is zero. A distance converts by itself to the same length.
/// </remarks>
public readonly partial record struct ExactDistance : IComparable<ExactDistance>
{
    // In ticks, reduced. One less than the denominator is kept, so that default is 0/1.
    private readonly BigInteger numerator;
    private readonly BigInteger denominatorLessOne;

    /// <summary>One of so many equal parts of a distance.</summary>
    /// <param name="whole">The distance that is shared out.</param>
    /// <param name="parts">How many parts; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="parts"/> is below 1.</exception>
    public ExactDistance(Distance whole, int parts)
        : this(whole.Ticks, parts < 1 ? throw new ArgumentOutOfRangeException(nameof(parts), parts, "A distance is shared out in 1 part or more.") : (BigInteger)parts)
    {
    }

    private ExactDistance(BigInteger numerator, BigInteger denominator)
    {
        BigInteger divisor = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        this.numerator = numerator / divisor;
        denominatorLessOne = (denominator / divisor) - 1;
    }

    /// <summary>Nothing.</summary>
    public static ExactDistance Zero => default;

    /// <summary>Whether it is a whole number of ticks, so that rounding changes nothing.</summary>
    public bool IsOnGrid => denominatorLessOne.IsZero;

    private BigInteger Denominator => denominatorLessOne + 1;

    /// <summary>The same length.</summary>
    public static implicit operator ExactDistance(Distance distance) => new(distance.Ticks, BigInteger.One);

    /// <summary>The sum.</summary>
    public static ExactDistance operator +(ExactDistance left, ExactDistance right) =>
        new((left.numerator * right.Denominator) + (right.numerator * left.Denominator), left.Denominator * right.Denominator);

    /// <summary>The difference.</summary>
    public static ExactDistance operator -(ExactDistance left, ExactDistance right) => left + (-right);

    /// <summary>The length with the other sign.</summary>
    public static ExactDistance operator -(ExactDistance value) => new(-value.numerator, value.Denominator);

    /// <summary>So many times the length.</summary>
    public static ExactDistance operator *(ExactDistance value, Ratio times) => new(value.numerator * times.Numerator, value.Denominator * times.Denominator);

    /// <summary>Whether the left length is less.</summary>
    public static bool operator <(ExactDistance left, ExactDistance right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left length is more.</summary>
    public static bool operator >(ExactDistance left, ExactDistance right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left length is less or the same.</summary>
    public static bool operator <=(ExactDistance left, ExactDistance right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left length is more or the same.</summary>
    public static bool operator >=(ExactDistance left, ExactDistance right) => left.CompareTo(right) >= 0;

    /// <summary>The same length, for callers without conversions.</summary>
    /// <param name="distance">The distance.</param>
    public static ExactDistance FromDistance(Distance distance) => distance;

    /// <summary>The sum, for callers without operators.</summary>
    /// <param name="other">What is added.</param>
    public ExactDistance Add(ExactDistance other) => this + other;

    /// <summary>The difference, for callers without operators.</summary>
    /// <param name="other">What is taken away.</param>
    public ExactDistance Subtract(ExactDistance other) => this - other;

    /// <summary>The length with the other sign, for callers without operators.</summary>
    public ExactDistance Negate() => -this;

    /// <summary>So many times the length, for callers without operators.</summary>
    /// <param name="times">How many times.</param>
    public ExactDistance Multiply(Ratio times) => this * times;

    /// <summary>The length without its sign.</summary>
    public ExactDistance Abs() => numerator.Sign < 0 ? -this : this;

    /// <summary>How many times another length this is.</summary>
    /// <param name="other">The other length; not zero.</param>
    /// <exception cref="DivideByZeroException">The other length is zero.</exception>
    /// <exception cref="OverflowException">A reduced part of the quotient is above 9,223,372,036,854,775,807.</exception>
    public Ratio RatioTo(ExactDistance other)
    {
        ExactDistance quotient = other.numerator.IsZero ? throw new DivideByZeroException() : new(numerator * other.Denominator, Denominator * other.numerator);
        return new((long)quotient.numerator, (long)quotient.Denominator);
    }

    /// <summary>The largest distance of the grid that isn't more.</summary>
    /// <exception cref="OverflowException">It is beyond the scale.</exception>
    public Distance RoundDown()
    {
        BigInteger below = BigInteger.DivRem(numerator, Denominator, out BigInteger rest);
        return Distance.FromTicks((long)(rest.Sign < 0 ? below - 1 : below));
    }

    /// <summary>The least distance of the grid that isn't less.</summary>
    /// <exception cref="OverflowException">It is beyond the scale.</exception>
    public Distance RoundUp() => -(-this).RoundDown();

    /// <summary>The nearest distance of the grid; of two equally near, the one farther from zero, so that a mirror changes nothing.</summary>
    /// <exception cref="OverflowException">It is beyond the scale.</exception>
    public Distance RoundNearest()
    {
        ExactDistance size = Abs();
        BigInteger nearest = ((2 * size.numerator) + size.Denominator) / (2 * size.Denominator);
        return Distance.FromTicks((long)(numerator.Sign < 0 ? -nearest : nearest));
    }

    /// <inheritdoc/>
    public int CompareTo(ExactDistance other) => (numerator * other.Denominator).CompareTo(other.numerator * Denominator);
}
