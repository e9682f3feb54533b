using System;

namespace BoxHeights;

/// <summary>An exact quotient of two whole numbers, reduced: a share, a slope, a scale.</summary>
/// <remarks><c>default</c> is 0. The denominator is always more than zero.</remarks>
public readonly partial record struct Ratio : IComparable<Ratio>, IComparable
{
    private readonly long numerator;

    // One less than the denominator, so that default is 0/1.
    private readonly long denominatorLessOne;

    /// <summary>The reduced quotient of two whole numbers.</summary>
    /// <param name="numerator">Any whole number.</param>
    /// <param name="denominator">Any whole number but 0; a negative one changes both signs.</param>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is 0.</exception>
    /// <exception cref="OverflowException">A reduced part is above 9,223,372,036,854,775,807.</exception>
    public Ratio(long numerator, long denominator = 1)
    {
        if (denominator == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "A denominator is not 0.");
        }

        ulong top = Grid.Magnitude(numerator);
        ulong bottom = Grid.Magnitude(denominator);
        ulong divisor = Grid.CommonDivisor(top, bottom);
        long reduced = checked((long)(top / divisor));
        this.numerator = (numerator < 0) == (denominator < 0) ? reduced : -reduced;
        denominatorLessOne = checked((long)(bottom / divisor)) - 1;
    }

    /// <summary>Nothing.</summary>
    public static Ratio Zero => default;

    /// <summary>The number above the line, with the sign.</summary>
    public long Numerator => numerator;

    /// <summary>The number below the line: 1 or more.</summary>
    public long Denominator => denominatorLessOne + 1;

    /// <summary>Whether the left ratio is lower.</summary>
    public static bool operator <(Ratio left, Ratio right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left ratio is higher.</summary>
    public static bool operator >(Ratio left, Ratio right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left ratio is lower or equal.</summary>
    public static bool operator <=(Ratio left, Ratio right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left ratio is higher or equal.</summary>
    public static bool operator >=(Ratio left, Ratio right) => left.CompareTo(right) >= 0;

    /// <summary>This share of a distance: 1/2 of 48 in is 24 in.</summary>
    /// <param name="distance">Any distance.</param>
    /// <exception cref="ArgumentException">The share is between two ticks of 12.5 nm.</exception>
    /// <exception cref="OverflowException">The share is beyond the scale.</exception>
    public Distance Of(Distance distance)
    {
        // Reduced, so the denominator must divide the ticks alone.
        if (distance.Ticks % Denominator != 0)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{this} of {distance} is between two steps of the grid ({Distance.TicksPerInch:N0} to 1 in)."), nameof(distance));
        }

        return Distance.FromTicks(checked(distance.Ticks / Denominator * numerator));
    }

    /// <inheritdoc/>
    public int CompareTo(Ratio other)
    {
        if ((numerator < 0) != (other.numerator < 0))
        {
            return numerator < 0 ? -1 : 1;
        }

        (ulong high, ulong low) = Multiply(Grid.Magnitude(numerator), (ulong)other.Denominator);
        (ulong otherHigh, ulong otherLow) = Multiply(Grid.Magnitude(other.numerator), (ulong)Denominator);
        int order = high == otherHigh ? low.CompareTo(otherLow) : high.CompareTo(otherHigh);
        return numerator < 0 ? -order : order;
    }

    /// <summary>Compares with another ratio; every ratio is higher than null.</summary>
    /// <exception cref="ArgumentException">The other object is not a ratio.</exception>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Ratio other => CompareTo(other),
        _ => throw new ArgumentException("A ratio compares only with a ratio.", nameof(obj)),
    };

    // All 128 bits of a product, for the targets that have no wider integer.
    private static (ulong High, ulong Low) Multiply(ulong a, ulong b)
    {
        ulong aLow = (uint)a, aHigh = a >> 32, bLow = (uint)b, bHigh = b >> 32;
        ulong low = aLow * bLow;
        ulong middle = (aHigh * bLow) + (low >> 32);
        ulong other = (aLow * bHigh) + (uint)middle;
        return ((aHigh * bHigh) + (middle >> 32) + (other >> 32), (other << 32) | (uint)low);
    }
}
