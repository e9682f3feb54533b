using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Measures;

public class DistanceTests
{
    // 1 in = 25.4 mm exactly; a tick is 12.5 nm: the numbers here were worked out by hand from those two.
    [Theory]
    [InlineData(0, 0, 1, 0)]
    [InlineData(1, 0, 1, 2_032_000)]
    [InlineData(47, 3, 4, 97_028_000)]
    [InlineData(0, 1, 128, 15_875)]
    [InlineData(0, 1, 1000, 2_032)]
    [InlineData(-2, 0, 5, -4_064_000)]
    [InlineData(0, 763, 16, 96_901_000)]
    [InlineData(0, 1, 127, 16_000)]
    public void FromInches_OfFraction(int whole, int numerator, int denominator, long ticks) =>
        Assert.Equal(ticks, Distance.FromInches(whole, numerator, denominator).Ticks);

    [Theory]
    [InlineData(int.MaxValue, int.MaxValue, 1)]
    [InlineData(int.MinValue, 0, 1)]
    public void FromInches_AtTheEndsOfInt(int whole, int numerator, int denominator) =>
        Assert.Equal(((decimal)whole + numerator) * 2_032_000m / denominator, Distance.FromInches(whole, numerator, denominator).Ticks);

    [Fact]
    public void FromInches_BetweenTicks_SaysTheNearest()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => Distance.FromInches(0, 1, 3));
        Assert.Contains("2,032,000 to 1 in", error.Message, StringComparison.Ordinal);
        Assert.Contains("8.4666625 mm", error.Message, StringComparison.Ordinal);
        Assert.Equal("numerator", error.ParamName);
    }

    [Fact]
    public void FromInches_NegativeWholeWithFraction() =>
        Assert.Equal("whole", Assert.Throws<ArgumentException>(() => Distance.FromInches(-3, 1, 2)).ParamName);

    [Fact]
    public void FromInches_NegativeNumerator() => Assert.Throws<ArgumentOutOfRangeException>("numerator", () => Distance.FromInches(0, -1, 2));

    [Theory]
    [InlineData(0)]
    [InlineData(-2)]
    public void FromInches_DenominatorBelowOne(int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(denominator), () => Distance.FromInches(1, 1, denominator));

    [Theory]
    [InlineData("47.75", 97_028_000)]
    [InlineData("-0.001", -2_032)]
    [InlineData("0.0078125", 15_875)]
    [InlineData("0.0000625", 127)]
    [InlineData("1.0000000000000000000000000000", 2_032_000)]
    public void FromInches_OfDecimal(string inches, long ticks) => Assert.Equal(ticks, Distance.FromInches(Number(inches)).Ticks);

    [Theory]
    [InlineData("0.0001")]
    [InlineData("0.3333333333333333333333333333")]
    [InlineData("0.0000000000000000000000000001")]
    [InlineData("1.0000000000000000000000000001")]
    public void FromInches_DecimalBetweenTicks(string inches) =>
        Assert.Equal("inches", Assert.Throws<ArgumentException>(() => Distance.FromInches(Number(inches))).ParamName);

    [Theory]
    [InlineData("79228162514264337593543950335")]
    [InlineData("-79228162514264337593543950335")]
    [InlineData("4539061041759.3")]
    public void FromInches_DecimalBeyondTheScale(string inches) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(inches), () => Distance.FromInches(Number(inches)));

    [Fact]
    public void FromMillimeters_AtTheEndsOfTheScale()
    {
        Assert.Equal(Distance.MaxValue, Distance.FromMillimeters(115_292_150_460_684.6975875m));
        Assert.Equal(Distance.MinValue, Distance.FromMillimeters(-115_292_150_460_684.6976m));
        Assert.Throws<ArgumentOutOfRangeException>("millimeters", () => Distance.FromMillimeters(115_292_150_460_684.6976m));
        Assert.Throws<ArgumentOutOfRangeException>("millimeters", () => Distance.FromMillimeters(-115_292_150_460_684.6976125m));
    }

    [Theory]
    [InlineData("1219.2", 97_536_000)]
    [InlineData("0.001", 80)]
    [InlineData("-25.4", -2_032_000)]
    public void FromMillimeters_OfDecimal(string millimeters, long ticks) =>
        Assert.Equal(ticks, Distance.FromMillimeters(Number(millimeters)).Ticks);

    [Theory]
    [InlineData("3.5", 85_344_000)]
    [InlineData("0.01", 243_840)]
    public void FromFeet_OfDecimal(string feet, long ticks) => Assert.Equal(ticks, Distance.FromFeet(Number(feet)).Ticks);

    [Fact]
    public void FromFeet_BetweenTicks() => Assert.Throws<ArgumentException>("feet", () => Distance.FromFeet(0.0001m));

    [Theory]
    [InlineData(3, 11, 3, 4, 97_028_000)]
    [InlineData(-4, 0, 0, 1, -97_536_000)]
    [InlineData(0, -3, 0, 1, -6_096_000)]
    [InlineData(0, 48, 0, 1, 97_536_000)]
    public void FromFeetInches_OfParts(int feet, int inches, int numerator, int denominator, long ticks) =>
        Assert.Equal(ticks, Distance.FromFeetInches(feet, inches, numerator, denominator).Ticks);

    [Theory]
    [InlineData(-1, 1, 0)]
    [InlineData(-1, -1, 0)]
    [InlineData(-1, 0, 1)]
    [InlineData(1, -1, 0)]
    [InlineData(0, -1, 1)]
    public void FromFeetInches_NegativeBesideAnotherPart(int feet, int inches, int numerator) =>
        Assert.Throws<ArgumentException>(() => Distance.FromFeetInches(feet, inches, numerator, 2));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e20)]
    [InlineData(-1e20)]
    [InlineData(4.6e12)]
    [InlineData(double.MaxValue)]
    public void FromInchesRounded_OutsideTheScale(double inches) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(inches), () => Distance.FromInchesRounded(inches));

    [Theory]
    [InlineData(0.000006, 0)]
    [InlineData(0.000007, 1)]
    [InlineData(72.00000000000001, 5_760_000)]
    [InlineData(-0.1, -8_000)]
    [InlineData(5e-324, 0)]
    [InlineData(0.0, 0)]
    public void FromMillimetersRounded_ToTheNearestTick(double millimeters, long ticks) =>
        Assert.Equal(ticks, Distance.FromMillimetersRounded(millimeters).Ticks);

    // Powers of two, so that the halves are exact in binary: 2^-8 in is 7937.5 ticks, 3 × 2^-8 in is 23812.5.
    [Theory]
    [InlineData(1.0 / 256, 7_938)]
    [InlineData(3.0 / 256, 23_812)]
    [InlineData(-1.0 / 256, -7_938)]
    [InlineData(-3.0 / 256, -23_812)]
    public void FromInchesRounded_HalfwayGoesToEven(double inches, long ticks) => Assert.Equal(ticks, Distance.FromInchesRounded(inches).Ticks);

    [Fact]
    public void Default_IsZero()
    {
        Assert.Equal(Distance.Zero, default);
        Assert.Equal(0, Distance.Zero.Ticks);
    }

    [Fact]
    public void MinValueAndMaxValue_AreTheEndsOfLong() =>
        Assert.Equal((long.MinValue, long.MaxValue), (Distance.MinValue.Ticks, Distance.MaxValue.Ticks));

    [Fact]
    public void InchesAndMillimeters_OfAMarkOnTheTape()
    {
        Assert.Equal(47.7578125m, Distance.FromInches(47, 97, 128).Inches);
        Assert.Equal(1213.0484375m, Distance.FromInches(47, 97, 128).Millimeters);
    }

    [Fact]
    public void Operators_BeyondTheScale()
    {
        Distance tick = Distance.FromTicks(1);
        Assert.Throws<OverflowException>(() => Distance.MaxValue + tick);
        Assert.Throws<OverflowException>(() => Distance.MinValue - tick);
        Assert.Throws<OverflowException>(() => -Distance.MinValue);
        Assert.Throws<OverflowException>(() => Distance.MinValue.Abs());
        Assert.Throws<OverflowException>(() => Distance.MaxValue * 2);
        Assert.Throws<OverflowException>(() => 2 * Distance.MinValue);
    }

    [Fact]
    public void NamedTwins_EqualTheOperators()
    {
        Distance a = Distance.FromInches(48), b = Distance.FromInches(1.25m);
        Assert.Equal((a + b, a - b, -a, a * 3), (a.Add(b), a.Subtract(b), a.Negate(), a.Multiply(3)));
        Assert.Equal((a, b), (Distance.Max(b, a), Distance.Min(a, b)));
        Assert.Equal(a, (-a).Abs());
    }

    [Fact]
    public void CompareTo_OtherThings()
    {
        Assert.True(Distance.MinValue.CompareTo(null) > 0);
        Assert.Throws<ArgumentException>(() => Distance.Zero.CompareTo("0 in"));
        Assert.False(Distance.Zero.Equals((object)0L));
    }

    [Fact]
    public void Split_OfThirteenTicksInFour()
    {
        Assert.Equal([4L, 3, 3, 3], Distance.FromTicks(13).Split(4).Select(part => part.Ticks));
        Assert.Equal([-3L, -3, -3, -4], Distance.FromTicks(-13).Split(4).Select(part => part.Ticks));
    }

    [Fact]
    public void Split_IntoNoParts() => Assert.Throws<ArgumentOutOfRangeException>("parts", () => Distance.Zero.Split(0));

    // Inches in eighths, to the quarter inch.
    [Theory]
    [InlineData(3, 2, 4, 4)]
    [InlineData(-3, -4, -2, -4)]
    [InlineData(4, 4, 4, 4)]
    [InlineData(1, 0, 2, 2)]
    [InlineData(-1, -2, 0, -2)]
    [InlineData(0, 0, 0, 0)]
    public void RoundDownUpNearest_InEighthsToTheQuarter(int value, int down, int up, int nearest)
    {
        Distance eighth = Distance.FromInches(0, 1, 8), quarter = Distance.FromInches(0, 1, 4);
        Assert.Equal(
            (eighth * down, eighth * up, eighth * nearest),
            ((eighth * value).RoundDown(quarter), (eighth * value).RoundUp(quarter), (eighth * value).RoundNearest(quarter)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Rounding_WithoutAPositiveStep(long ticks)
    {
        Distance step = Distance.FromTicks(ticks);
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Distance.Zero.RoundDown(step));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Distance.Zero.RoundUp(step));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Distance.Zero.RoundNearest(step));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Distance.Zero.IsMultipleOf(step));
    }

    [Fact]
    public void Rounding_BeyondTheScale()
    {
        Distance step = Distance.FromInches(1);
        Assert.Throws<OverflowException>(() => Distance.MaxValue.RoundUp(step));
        Assert.Throws<OverflowException>(() => Distance.MinValue.RoundDown(step));
    }

    [Fact]
    public void RatioTo_OfAnotherDistance()
    {
        Assert.Equal(new Ratio(2, 3), Distance.FromInches(32).RatioTo(Distance.FromFeet(4)));
        Assert.Throws<DivideByZeroException>(() => Distance.Zero.RatioTo(Distance.Zero));
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
