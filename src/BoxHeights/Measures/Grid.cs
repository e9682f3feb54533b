using System;

namespace BoxHeights;

/// <summary>Puts numbers on a grid of whole ticks, exactly or not at all.</summary>
internal static class Grid
{
    // No grid here has more than ten factors of two or of five in its unit, so a number with more decimals than that is never on it.
    private const int MostDecimals = 10;

    /// <summary>A decimal count of units as ticks; false if it is between two ticks or too large, then with the nearest tick (0 if too large).</summary>
    internal static bool TryScale(decimal value, long perUnit, out long ticks, out bool tooLarge)
    {
        decimal whole = decimal.Truncate(value);
        decimal part = value - whole;
        decimal kept = decimal.Round(part, MostDecimals);
        decimal partTicks = kept * perUnit;
        decimal nearest = decimal.Round(partTicks);
        // The whole part is compared before it is multiplied: decimal multiplication would round or overflow first.
        tooLarge = Math.Abs(whole) > (decimal)long.MaxValue / perUnit + 1 || !FitsLong((whole * perUnit) + nearest);
        ticks = tooLarge ? 0 : (long)((whole * perUnit) + nearest);
        return !tooLarge && kept == part && nearest == partTicks;
    }

    /// <summary>A decimal count of units as ticks.</summary>
    /// <exception cref="ArgumentException">The number is between two ticks.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the range of a long.</exception>
    internal static long Scale(decimal value, long perUnit, string unit, string parameter, Func<long, string> print)
    {
        if (TryScale(value, perUnit, out long ticks, out bool tooLarge))
        {
            return ticks;
        }

        throw tooLarge ? TooLarge(parameter, value) : Between(FormattableString.Invariant($"{value} {unit}"), parameter, perUnit, unit, print(ticks));
    }

    /// <summary>What is thrown for a value between two ticks.</summary>
    internal static ArgumentException Between(string value, string parameter, long perUnit, string unit, string nearest) =>
        new(FormattableString.Invariant($"{value} is between two steps of the grid ({perUnit:N0} to 1 {unit}). The nearest exact value is {nearest}."), parameter);

    /// <summary>What is thrown for a value outside the scale.</summary>
    internal static ArgumentOutOfRangeException TooLarge(string parameter, object value) =>
        new(parameter, value, "The value is beyond the scale.");

    /// <summary>A double count of units as the nearest tick, half to even, without any rounding on the way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite, or beyond the range of a long.</exception>
    internal static long ScaleRounded(double value, long perUnit, string parameter)
    {
        if (double.IsNaN(value) || double.IsInfinity(value))
        {
            throw new ArgumentOutOfRangeException(parameter, value, "The value must be a finite number.");
        }

        const int mantissaBits = 52;
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)(bits >> mantissaBits) & 0x7FF;
        long mantissa = bits & ((1L << mantissaBits) - 1);
        mantissa |= exponent == 0 ? 0 : 1L << mantissaBits;
        int halvings = 1023 + mantissaBits - Math.Max(exponent, 1);
        if (halvings <= 0)
        {
            // At least 2^52 units, and every unit here has more than 2^11 ticks.
            throw TooLarge(parameter, value);
        }

        if (halvings > 90)
        {
            // A mantissa below 2^53 times fewer than 2^34 ticks is less than half a tick here.
            return 0;
        }

        decimal divisor = 1m;
        for (int i = 0; i < halvings; i++)
        {
            divisor *= 2m;
        }

        decimal scaled = (decimal)mantissa * perUnit;
        decimal rest = scaled % divisor;
        decimal ticks = (scaled - rest) / divisor;
        if (rest * 2m > divisor || (rest * 2m == divisor && ticks % 2m != 0m))
        {
            ticks += 1m;
        }

        ticks = bits < 0 ? -ticks : ticks;
        return FitsLong(ticks) ? (long)ticks : throw TooLarge(parameter, value);
    }

    /// <summary>What is left above the next multiple of a step below: 0 to step − 1, for negative values too.</summary>
    internal static long Above(long value, long step)
    {
        long rest = value % step;
        return rest < 0 ? rest + step : rest;
    }

    /// <summary>The largest whole number that divides both; 0 only if both are 0.</summary>
    internal static ulong CommonDivisor(ulong a, ulong b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    /// <summary>The largest whole number whose square is no more than a value; 0 for what is less than 1.</summary>
    internal static decimal SquareRoot(decimal value)
    {
        if (value < 1m)
        {
            return 0m;
        }

        decimal root = 1m;
        while (root * root < value)
        {
            root *= 2m;
        }

        // Newton's steps from above fall until they are there.
        decimal whole = decimal.Floor(value);
        while (true)
        {
            decimal next = decimal.Floor((root + decimal.Floor(whole / root)) / 2m);
            if (next >= root)
            {
                return root;
            }

            root = next;
        }
    }

    /// <summary>The value without its sign; also right for the lowest long.</summary>
    internal static ulong Magnitude(long value) => value < 0 ? unchecked(0UL - (ulong)value) : (ulong)value;

    private static bool FitsLong(decimal value) => value >= long.MinValue && value <= long.MaxValue;
}
