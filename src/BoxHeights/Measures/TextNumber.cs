namespace BoxHeights;

/// <summary>A number as it was written: a whole part and a fraction, both without sign.</summary>
internal readonly struct TextNumber(ulong whole, ulong numerator, ulong denominator, int partAt)
{
    // A number below this times any unit here (less than 2^34 ticks) fits: the common case needs no division to know it.
    private const ulong Small = 1UL << 28;

    /// <summary>Where in the text the fraction stands, or the number if it has none.</summary>
    internal int PartAt { get; } = partAt;

    internal bool IsWhole => numerator == 0;

    /// <summary>A magnitude with its sign; false if a long can't hold it.</summary>
    internal static bool TrySign(ulong magnitude, bool negative, out long signed)
    {
        signed = unchecked((long)(negative ? 0UL - magnitude : magnitude));
        return magnitude <= long.MaxValue || (negative && signed == long.MinValue);
    }

    /// <summary>This number of units as ticks, half to even if it may be rounded.</summary>
    internal TextFault Scale(long perUnit, bool rounded, out ulong ticks)
    {
        ulong unit = (ulong)perUnit;
        ticks = 0;
        if (whole > Small && whole > long.MaxValue / unit)
        {
            return TextFault.TooLarge;
        }

        if (numerator == 0)
        {
            ticks = whole * unit;
            return TextFault.None;
        }

        ulong wholeTicks = whole * unit, partTicks, rest;
        if (numerator <= Small || numerator <= ulong.MaxValue / unit)
        {
            ulong product = numerator * unit;
            partTicks = product / denominator;
            rest = product - (partTicks * denominator);
        }
        else
        {
            // At most 18 digits times 11: fewer than decimal holds exactly.
            decimal product = (decimal)numerator * unit;
            decimal left = product % denominator;
            decimal quotient = (product - left) / denominator;
            if (quotient > long.MaxValue)
            {
                return TextFault.TooLarge;
            }

            partTicks = (ulong)quotient;
            rest = (ulong)left;
        }

        ticks = wholeTicks + partTicks;
        if (rest == 0)
        {
            return TextFault.None;
        }

        ulong other = denominator - rest;
        ticks += rest > other || (rest == other && (ticks & 1) == 1) ? 1UL : 0UL;
        return rounded ? TextFault.None : TextFault.OffGrid;
    }
}
