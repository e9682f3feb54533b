using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Fractions;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

public class RatioTests
{
    // Without the lowest long, which has no opposite.
    private static Gen<Ratio> Ratios { get; } =
        from above in Longs.Select(n => Math.Max(n, -long.MaxValue))
        from below in Longs.Select(n => Math.Max(n, -long.MaxValue)).Where(n => n != 0)
        select new Ratio(above, below);

    [Fact]
    public void Default_IsZero()
    {
        Assert.Equal((0, 1), (default(Ratio).Numerator, default(Ratio).Denominator));
        Assert.Equal((Ratio.Zero, Ratio.Zero), (default, new Ratio(0, -7)));
    }

    [Theory]
    [InlineData(2, 4, 1, 2)]
    [InlineData(2, -4, -1, 2)]
    [InlineData(-2, -4, 1, 2)]
    [InlineData(0, 5, 0, 1)]
    [InlineData(long.MinValue, 2, long.MinValue / 2, 1)]
    [InlineData(long.MinValue, long.MinValue, 1, 1)]
    public void Constructor_Reduces(long numerator, long denominator, long above, long below) =>
        Assert.Equal((above, below), (new Ratio(numerator, denominator).Numerator, new Ratio(numerator, denominator).Denominator));

    [Fact]
    public void Constructor_OutsideTheRange()
    {
        Assert.Throws<ArgumentOutOfRangeException>("denominator", () => new Ratio(1, 0));
        Assert.Throws<OverflowException>(() => new Ratio(long.MinValue, -1));
        Assert.Throws<OverflowException>(() => new Ratio(1, long.MinValue));
    }

    // n over n + 1 beside n + 1 over n + 2: their cross products differ by 1, in the lowest of 128 bits.
    [Fact]
    public void CompareTo_LargeNeighbors_AgainstFractions() => Holds(Both(Gen.Choose(2, int.MaxValue), Gen.Choose(0, 40)), pair =>
    {
        (int n, int k) = pair;
        long large = n * (long)int.MaxValue;
        return new[] { 0L, 1L, n }.All(step =>
        {
            (Ratio a, Ratio b) = (new(large, large + 1), new(large + step, large + step + 1 + (k == 0 ? 1 : 0)));
            return Math.Sign(a.CompareTo(b)) == new Fraction(a.Numerator, a.Denominator).CompareTo(new Fraction(b.Numerator, b.Denominator))
                && Math.Sign(b.CompareTo(a)) == -Math.Sign(a.CompareTo(b));
        });
    });

    [Fact]
    public void CompareTo_AgainstFractions() => Holds(Both(Ratios, Ratios), pair =>
    {
        (Ratio a, Ratio b) = pair;
        int order = new Fraction(a.Numerator, a.Denominator).CompareTo(new Fraction(b.Numerator, b.Denominator));
        return Math.Sign(a.CompareTo(b)) == order && (a < b) == (order < 0) && (a > b) == (order > 0) && (a <= b) == (order <= 0)
            && (a >= b) == (order >= 0) && (a == b) == (order == 0) && (a != b) == (order != 0);
    });

    [Fact]
    public void CompareTo_NeighborsThatDoublesCannotTellApart()
    {
        Ratio a = new(long.MaxValue - 1, long.MaxValue), b = new(long.MaxValue - 2, long.MaxValue - 1);
        Assert.True(a > b);
        Assert.True(a.CompareTo(null) > 0);
        Assert.Throws<ArgumentException>(() => a.CompareTo(1));
    }

    [Fact]
    public void Of_ADistance()
    {
        Assert.Equal(Distance.FromInches(24), new Ratio(1, 2).Of(Distance.FromFeet(4)));
        Assert.Equal(Distance.FromInches(-16), new Ratio(-1, 3).Of(Distance.FromFeet(4)));
        Assert.Throws<ArgumentException>("distance", () => new Ratio(1, 3).Of(Distance.FromInches(1)));
        Assert.Throws<OverflowException>(() => new Ratio(3).Of(Distance.MaxValue));
    }

    [Fact]
    public void Of_AgainstFractions() => Holds(Both(Ratios, Distances), pair =>
    {
        Fraction expected = new Fraction(pair.A.Numerator, pair.A.Denominator) * new Fraction(pair.B.Ticks);
        Exception? error = null;
        Distance share = default;
        try
        {
            share = pair.A.Of(pair.B);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            error = e;
        }

        return WholeLong(expected) is long ticks ? error is null && share.Ticks == ticks
            : expected.Denominator.IsOne ? error is OverflowException : error is ArgumentException;
    });

    [Theory]
    [InlineData("1/2", "1/2")]
    [InlineData(" 2 / 4 ", "1/2")]
    [InlineData("3", "3")]
    [InlineData("-3/1", "-3")]
    [InlineData("−6/4", "-3/2")]
    [InlineData("+0/9", "0")]
    public void Parse_ThenToString(string text, string expected) => Assert.Equal(expected, Ratio.Parse(text).ToString());

    [Theory]
    [InlineData("", 0)]
    [InlineData("1/0", 2)]
    [InlineData("1/-2", 2)]
    [InlineData("1/2/3", 3)]
    [InlineData("0.5", 1)]
    [InlineData("1 1/2", 2)]
    [InlineData("1234567890123456789012", 0)]
    public void Parse_OfAnythingElse_SaysWhere(string text, int at)
    {
        Assert.Contains(FormattableString.Invariant($"at character {at}, "), Assert.Throws<FormatException>(() => Ratio.Parse(text)).Message, StringComparison.Ordinal);
        Assert.False(Ratio.TryParse(text, out _));
    }

    [Fact]
    public void ToStringParse_AnyRatio_IsTheSame() => Holds(Ratios, ratio => Ratio.Parse(ratio.ToString()) == ratio);
}
