using System.Globalization;
using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Planning;

/// <summary>The 128-bit sums against whole numbers of any size.</summary>
public sealed class SquareSumTests
{
    private static Gen<long> Lengths { get; } = Longs.Where(length => length >= 0);

    [Fact]
    public void Of_AnyLength_IsItsSquare() => Holds(Lengths, length => Value(SquareSum.Of(length)) == BigInteger.Pow(length, 2));

    [Fact]
    public void Sum_AndOrder_AreThoseOfWholeNumbers() => Holds(Both(Both(Lengths, Lengths), Both(Lengths, Lengths)), four =>
    {
        ((long a, long b), (long c, long d)) = four;
        SquareSum left = SquareSum.Of(a) + SquareSum.Of(b), right = SquareSum.TwiceOf(c / 2) + SquareSum.Of(d);
        BigInteger expectedLeft = BigInteger.Pow(a, 2) + BigInteger.Pow(b, 2), expectedRight = (2 * BigInteger.Pow(c / 2, 2)) + BigInteger.Pow(d, 2);
        return Value(left) == expectedLeft && Value(right) == expectedRight && left < right == expectedLeft < expectedRight && left > right == expectedLeft > expectedRight && left < SquareSum.Most;
    });

    private static BigInteger Value(SquareSum sum)
    {
        string[] halves = sum.ToString().Split(':');
        return (BigInteger.Parse(halves[0], CultureInfo.InvariantCulture) << 64) + BigInteger.Parse(halves[1], CultureInfo.InvariantCulture);
    }
}
