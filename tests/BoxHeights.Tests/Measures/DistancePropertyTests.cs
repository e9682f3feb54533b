using System;
using System.Globalization;
using System.Linq;
using System.Numerics;
using FsCheck.Fluent;
using Fractions;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

/// <summary>Against exact fractions of big integers, which share nothing with ticks.</summary>
public class DistancePropertyTests
{
    private static readonly Fraction Inch = new(2_032_000);

    [Fact]
    public void ToStringParse_AnyDistance_IsTheSame() => Holds(
        Both(Distances, Gen.Elements("R", "mm", "cm", "m", "in", "ft", "in128", "ft128")),
        pair =>
        {
            string text = pair.A.ToString(pair.B, null);
            bool exact = pair.B is "R" or "mm" or "cm" or "m" || !text.StartsWith("about", StringComparison.Ordinal);
            exact &= !pair.B.EndsWith("128", StringComparison.Ordinal) || pair.A.IsMultipleOf(Distance.FromInches(0, 1, 128));
            return !exact || Distance.Parse(text) == pair.A;
        });

    [Fact]
    public void ToString_InchesNotMarkedAbout_AreExact() => Holds(
        Both(Longs.Select(n => Distance.FromTicks(n / 16 * 16)), Gen.Elements("in", "ft")),
        pair =>
        {
            bool onGrid = pair.A.Ticks % 2_032 == 0 || pair.A.Ticks % 15_875 == 0;
            string text = pair.A.ToString(pair.B, null);
            return onGrid ? Distance.Parse(text) == pair.A : text.StartsWith("about ", StringComparison.Ordinal) && !Distance.TryParse(text, out _);
        });

    [Fact]
    public void ToString_RoundedFraction_IsTheNearest() => Holds(
        Both(Longs.Select(n => Distance.FromTicks(n / 2)), Gen.Elements(2, 4, 8, 16, 32, 64, 128)),
        pair =>
        {
            string denominator = pair.B.ToString(CultureInfo.InvariantCulture);
            Distance nearest = pair.A.RoundNearest(Distance.FromInches(0, 1, pair.B));
            return Distance.Parse(pair.A.ToString("in" + denominator, null)) == nearest
                && Distance.Parse(pair.A.ToString("ft" + denominator, null)) == nearest;
        });

    [Fact]
    public void AddSubtractMultiply_AgainstFractions() => Holds(
        Both(Both(Distances, Distances), Gen.Choose(-1_000_000, 1_000_000)),
        given =>
        {
            (Distance a, Distance b) = given.A;
            Fraction left = Exact(a), right = Exact(b);
            return Same(left + right, () => a + b)
                && Same(left - right, () => a - b)
                && Same(left * new Fraction(given.B), () => a * given.B)
                && Same(-left, () => -a)
                && a.CompareTo(b) == left.CompareTo(right)
                && (a < b) == (left < right) && (a >= b) == (left >= right) && (a == b) == (left == right);
        });

    [Fact]
    public void RatioTo_AgainstFractions() => Holds(
        Both(HalfScale, HalfScale.Where(d => d != Distance.Zero)),
        pair =>
        {
            Fraction expected = Exact(pair.A) / Exact(pair.B);
            Ratio ratio = pair.A.RatioTo(pair.B);
            return ratio.Numerator == expected.Numerator && ratio.Denominator == expected.Denominator && ratio.Of(pair.B) == pair.A;
        });

    [Fact]
    public void Split_AddsUp() => Holds(
        Both(Distances, Gen.Choose(1, 300)),
        pair =>
        {
            Distance[] parts = pair.A.Split(pair.B);
            BigInteger sum = parts.Aggregate(BigInteger.Zero, (total, part) => total + part.Ticks);
            return parts.Length == pair.B && sum == pair.A.Ticks && (BigInteger)parts.Max().Ticks - parts.Min().Ticks <= 1;
        });

    [Fact]
    public void Rounding_IsANeighboringMultiple() => Holds(
        Both(HalfScale, Steps),
        pair =>
        {
            (Distance value, Distance step) = pair;
            Distance down = value.RoundDown(step), up = value.RoundUp(step), nearest = value.RoundNearest(step);
            bool multiple = value.IsMultipleOf(step);
            return BigInteger.Remainder(down.Ticks, step.Ticks).IsZero && down <= value && value < down + step
                && up == (multiple ? down : down + step)
                && multiple == (down == value)
                && (nearest == down || nearest == up)
                && (value - nearest).Abs() <= (value - down).Abs() && (value - nearest).Abs() <= (up - value).Abs()
                && (-value).RoundNearest(step) == -nearest;
        });

    [Fact]
    public void FromInches_AnyDecimal_AgainstFractions() => Holds(
        from mantissa in Longs
        from scale in Gen.Choose(0, 24)
        from extra in Gen.Elements(1m, 10m, 100m, 5m)
        select (decimal)mantissa * extra * Power(scale),
        value => SameOrRefused(Fraction.FromDecimal(value) * Inch, () => Distance.FromInches(value))
            && SameOrRefused(Fraction.FromDecimal(value) * new Fraction(80_000), () => Distance.FromMillimeters(value))
            && SameOrRefused(Fraction.FromDecimal(value) * Inch * new Fraction(12), () => Distance.FromFeet(value)));

    [Fact]
    public void FromInchesRounded_AnyDouble_AgainstFractions() => Holds(
        from mantissa in Longs
        from halvings in Gen.Choose(0, 130)
        select mantissa * Math.Pow(2, -halvings),
        value => Rounded(Fraction.FromDouble(value) * Inch, () => Distance.FromInchesRounded(value))
            && Rounded(Fraction.FromDouble(value) * new Fraction(80_000), () => Distance.FromMillimetersRounded(value)));

    [Fact]
    public void ParseAndParseRounded_AnyFraction_AgainstFractions() => Holds(
        from whole in Gen.Choose(0, 2_000_000_000)
        from denominator in Gen.OneOf(Gen.Choose(1, 300), Gen.Elements(128, 254, 1000, 2_032_000, 4_064_000, 999_999_999))
        from numerator in Gen.Choose(0, denominator - 1)
        from unit in Gen.Elements((" in", 2_032_000), ("\"", 2_032_000), ("'", 24_384_000), (" mm", 80_000), (" cm", 800_000), (" m", 80_000_000))
        from sign in Gen.Elements("", "-", "+")
        select (whole, numerator, denominator, unit, sign),
        given =>
        {
            string text = FormattableString.Invariant($"{given.sign}{given.whole} {given.numerator}/{given.denominator}{given.unit.Item1}");
            Fraction exact = (new Fraction(given.whole) + new Fraction(given.numerator, given.denominator)) * new Fraction(given.unit.Item2);
            exact = given.sign == "-" ? -exact : exact;
            return Distance.TryParse(text, out Distance read) == exact.Denominator.IsOne
                && (!exact.Denominator.IsOne || read.Ticks == exact.Numerator)
                && Distance.ParseRounded(text).Ticks == HalfEven(exact);
        });

    [Fact]
    public void ParseAndParseRounded_AnyDecimal_AgainstFractions() => Holds(
        from whole in Gen.Choose(0, 1_000_000)
        from digits in Gen.Choose(0, 9).ListOf(18)
        from length in Gen.Choose(1, 18)
        from unit in Gen.Elements((" in", 2_032_000), (" ft", 24_384_000), (" mm", 80_000), (" m", 80_000_000))
        select (text: whole.ToString(CultureInfo.InvariantCulture) + "." + string.Concat(digits.Take(length)), unit),
        given =>
        {
            Fraction exact = Fraction.FromString(given.text, CultureInfo.InvariantCulture) * new Fraction(given.unit.Item2);
            string text = given.text + given.unit.Item1;
            return Distance.TryParse(text, out Distance read) == exact.Denominator.IsOne
                && (!exact.Denominator.IsOne || read.Ticks == exact.Numerator)
                && Distance.ParseRounded(text).Ticks == HalfEven(exact);
        });

    /// <summary>
    /// A unit library in doubles agrees to nine digits. It isn't the reference for exactness: there six feet are 72.00000000000001 in,
    /// and 36 in are not equal to 3 ft, which <see cref="UnitsNet_WhereItIsNotExact"/> keeps in view.
    /// </summary>
    [Fact]
    public void InchesAndMillimeters_AgainstUnitsNet() => Holds(
        Gen.Choose(-10_000_000, 10_000_000).Select(n => Distance.FromInches(0, Math.Abs(n), 128) * Math.Sign(n)),
        value =>
        {
            UnitsNet.Length length = UnitsNet.Length.FromInches((double)value.Inches);
            return Near(length.Millimeters, (double)value.Millimeters)
                && Near(length.Feet * 12, (double)value.Inches)
                && Distance.FromInchesRounded(UnitsNet.Length.FromMillimeters((double)value.Millimeters).Inches) == value;
        });

    [Fact]
    public void UnitsNet_WhereItIsNotExact()
    {
        Assert.NotEqual(72.0, UnitsNet.Length.FromFeet(6).ToUnit(UnitsNet.Units.LengthUnit.Inch).Value);
        Assert.Equal(72m, Distance.FromFeet(6).Inches);
        Assert.Equal(Distance.FromInches(36), Distance.FromFeet(3));
    }

    private static Fraction Exact(Distance value) => new(value.Ticks);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(b));

    private static decimal Power(int decimals) => new(1, 0, 0, false, (byte)decimals);

    private static bool Same(Fraction expected, Func<Distance> compute) => WholeLong(expected) is long ticks
        ? compute().Ticks == ticks
        : Record.Exception(() => compute()) is OverflowException;

    private static bool SameOrRefused(Fraction expected, Func<Distance> compute) => WholeLong(expected) is long ticks
        ? compute().Ticks == ticks
        : Record.Exception(() => compute()) is ArgumentException;

    private static bool Rounded(Fraction expected, Func<Distance> compute)
    {
        BigInteger nearest = HalfEven(expected);
        return nearest >= long.MinValue && nearest <= long.MaxValue
            ? compute().Ticks == nearest
            : Record.Exception(() => compute()) is ArgumentOutOfRangeException;
    }
}
