using System;
using FsCheck.Fluent;
using Fractions;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

public class VolumeTests
{
    // 25.4 mm cubed is 16.387064 cm³ exactly.
    [Theory]
    [InlineData("1", 16_387_064_000)]
    [InlineData("20.3", 332_657_399_200)]
    [InlineData("0.001", 16_387_064)]
    [InlineData("0.015625", 256_047_875)]
    [InlineData("-2.25", -36_870_894_000)]
    public void FromCubicInches_OfDecimal(string cubicInches, long picoliters) =>
        Assert.Equal(picoliters, Volume.FromCubicInches(Number(cubicInches)).Picoliters);

    [Fact]
    public void FromCubicCentimeters_OfDecimal() => Assert.Equal(16_387_064_000, Volume.FromCubicCentimeters(16.387064m).Picoliters);

    [Fact]
    public void Factories_BetweenStepsOrBeyondTheScale()
    {
        Assert.Contains("16,387,064,000 to 1 in3", Assert.Throws<ArgumentException>("cubicInches", () => Volume.FromCubicInches(0.0000001m)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("cubicCentimeters", () => Volume.FromCubicCentimeters(0.0000000001m));
        Assert.Throws<ArgumentOutOfRangeException>("cubicInches", () => Volume.FromCubicInches(562_844_695m));
        Assert.Throws<ArgumentOutOfRangeException>("cubicCentimeters", () => Volume.FromCubicCentimeters(decimal.MinValue));
    }

    [Fact]
    public void Default_IsZero() => Assert.Equal((Volume.Zero, 0L), (default, default(Volume).Picoliters));

    [Fact]
    public void CubicInchesAndCentimeters_OfABox()
    {
        Volume box = Volume.FromCubicInches(18m);
        Assert.Equal((18m, 294.967152m), (box.CubicInches, box.CubicCentimeters));
    }

    // Allowances by conductor size in quarters of a cubic inch are common: 1/4 of 2.25 in³ is 0.5625 in³.
    [Theory]
    [InlineData("2.25", 1, "0.5625")]
    [InlineData("2", 5, "2.5")]
    [InlineData("1.75", -3, "-1.3125")]
    [InlineData("0.001", 1, "0.00025")]
    public void MultiplyQuarters_OfAnAllowance(string cubicInches, int quarters, string expected) =>
        Assert.Equal(Volume.FromCubicInches(Number(expected)), Volume.FromCubicInches(Number(cubicInches)).MultiplyQuarters(quarters));

    [Fact]
    public void MultiplyQuarters_NotWhole()
    {
        Assert.Throws<ArgumentException>("quarters", () => Volume.FromPicoliters(3).MultiplyQuarters(2));
        Assert.Throws<OverflowException>(() => Volume.FromPicoliters(long.MaxValue).MultiplyQuarters(2));
    }

    [Fact]
    public void Operators_AgainstFractions() => Holds(Both(Both(Longs, Longs), Gen.Choose(-1000, 1000)), given =>
    {
        Volume a = Volume.FromPicoliters(given.A.A), b = Volume.FromPicoliters(given.A.B);
        Fraction left = new(a.Picoliters), right = new(b.Picoliters);
        return Same(left + right, () => a + b) && Same(left - right, () => a - b) && Same(left * new Fraction(given.B), () => given.B * a)
            && a.CompareTo(b) == left.CompareTo(right) && (a < b) == (left < right) && (a <= b) == (left <= right)
            && (a > b) == (left > right) && (a >= b) == (left >= right) && (a == b) == (left == right);
    });

    [Fact]
    public void NamedTwins_EqualTheOperators()
    {
        Volume a = Volume.FromCubicInches(18m), b = Volume.FromCubicInches(2.25m);
        Assert.Equal((a + b, a - b, b * 3), (a.Add(b), a.Subtract(b), b.Multiply(3)));
        Assert.Throws<ArgumentException>(() => a.CompareTo(18));
        Assert.True(a.CompareTo(null) > 0);
    }

    [Theory]
    [InlineData("20.3 in3", "20.3 in3")]
    [InlineData("18 cu in", "18 in3")]
    [InlineData("18 cu. in.", "18 in3")]
    [InlineData("18 CU IN", "18 in3")]
    [InlineData("18 in³", "18 in3")]
    [InlineData("18in^3", "18 in3")]
    [InlineData("1 cubic inch", "1 in3")]
    [InlineData("12 1/2 cubic inches", "12.5 in3")]
    [InlineData("295 cm3", "295 cm3")]
    [InlineData("295 cm³", "295 cm3")]
    [InlineData("295.5 cu cm", "295.5 cm3")]
    [InlineData("16.387064 cm3", "1 in3")]
    [InlineData("-2 in3", "-2 in3")]
    [InlineData("0 cm3", "0 in3")]
    public void Parse_ThenToString(string text, string expected) => Assert.Equal(expected, Volume.Parse(text).ToString());

    [Theory]
    [InlineData("18", 2, "say in3 or cm3")]
    [InlineData("18 in", 3, "say in3 or cm3")]
    [InlineData("18 cm", 3, "say in3 or cm3")]
    [InlineData("18 mm3", 3, "say in3 or cm3")]
    [InlineData("18 cubic", 3, "say in3 or cm3")]
    [InlineData("1,000 in3", 1, "comma")]
    [InlineData("18 in3 full", 7, "something follows")]
    [InlineData("18 in33", 6, "something follows")]
    [InlineData("1/3 in3", 0, "between two steps")]
    [InlineData("562844695 in3", 0, "beyond the scale")]
    [InlineData("999999999999999999 in3", 0, "beyond the scale")]
    [InlineData("", 0, "nothing to read")]
    public void Parse_OfAnythingElse_SaysWhereAndWhy(string text, int at, string why)
    {
        string message = Assert.Throws<FormatException>(() => Volume.Parse(text)).Message;
        Assert.Contains(FormattableString.Invariant($"at character {at}, "), message, StringComparison.Ordinal);
        Assert.Contains(why, message, StringComparison.Ordinal);
        Assert.False(Volume.TryParse(text, out _));
    }

    [Theory]
    [InlineData(16_387_064_000, "in3", "1 in3")]
    [InlineData(16_387_064_000, "cm3", "16.387064 cm3")]
    [InlineData(16_387_063_999, "in3", "about 1 in3")]
    [InlineData(16_387_063_999, "R", "16.387063999 cm3")]
    [InlineData(-1, "in3", "about 0 in3")]
    [InlineData(-1, "", "-0.000000001 cm3")]
    [InlineData(long.MinValue, null, "-9223372036.854775808 cm3")]
    public void ToString_InEveryCulture(long picoliters, string? format, string expected)
    {
        foreach (string culture in Cultures)
        {
            InCulture(culture, () => Assert.Equal(expected, Volume.FromPicoliters(picoliters).ToString(format, null)));
        }
    }

    [Fact]
    public void ToString_UnknownFormat() => Assert.Throws<FormatException>(() => Volume.Zero.ToString("in", null));

    [Fact]
    public void ToStringParse_AnyVolume_IsTheSame() => Holds(Longs.Select(Volume.FromPicoliters), volume =>
        Volume.Parse(volume.ToString()) == volume && Volume.Parse(volume.ToString("cm3", null)) == volume);

    private static bool Same(Fraction expected, Func<Volume> compute) => WholeLong(expected) is long picoliters
        ? compute().Picoliters == picoliters
        : Record.Exception(() => compute()) is OverflowException;

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
