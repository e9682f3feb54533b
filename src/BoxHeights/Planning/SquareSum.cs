namespace BoxHeights;

/// <summary>A sum of squares of lengths in ticks. A hundred gaps of 12 ft are more than a <see cref="long"/> holds, so it is a number of 128 bits.</summary>
internal readonly struct SquareSum
{
    private readonly ulong high;
    private readonly ulong low;

    private SquareSum(ulong high, ulong low)
    {
        this.high = high;
        this.low = low;
    }

    /// <summary>More than any sum.</summary>
    public static SquareSum Most => new(ulong.MaxValue, ulong.MaxValue);

    public static SquareSum operator +(SquareSum left, SquareSum right)
    {
        ulong low = unchecked(left.low + right.low);
        return new(unchecked(left.high + right.high + (low < right.low ? 1UL : 0UL)), low);
    }

    public static bool operator <(SquareSum left, SquareSum right) => left.high < right.high || (left.high == right.high && left.low < right.low);

    public static bool operator >(SquareSum left, SquareSum right) => right < left;

    /// <summary>The square of a length, which isn't negative.</summary>
    public static SquareSum Of(long length)
    {
#if NET8_0_OR_GREATER
        ulong high = System.Math.BigMul((ulong)length, (ulong)length, out ulong low);
        return new(high, low);
#else
        ulong a = (ulong)length >> 32;
        ulong b = (ulong)length & uint.MaxValue;
        ulong cross = a * b;
        ulong small = b * b;
        ulong low = unchecked(small + (cross << 33));
        return new((a * a) + (cross >> 31) + (low < small ? 1UL : 0UL), low);
#endif
    }

    /// <summary>Twice the square of a length, which isn't negative: what an end of a run counts.</summary>
    public static SquareSum TwiceOf(long length)
    {
        SquareSum one = Of(length);
        return one + one;
    }

    public override string ToString() => high + ":" + low;
}
