using System;
using FsCheck;
using FsCheck.Fluent;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Measures;

/// <summary>Exact quotients of ticks, against a library of fractions.</summary>
public sealed class ExactDistanceTests
{
    private static Arbitrary<(long Ticks, int Parts, long OtherTicks, int OtherParts, int Over, int Under)> Numbers { get; } = Arb.From(
        from a in Gen.Choose(-2_000_000_000, 2_000_000_000)
        from parts in Gen.Choose(1, 97)
        from b in Gen.Choose(-2_000_000_000, 2_000_000_000)
        from others in Gen.Choose(1, 97)
        from over in Gen.Choose(-40, 40)
        from under in Gen.Choose(1, 40)
        select ((long)a, parts, (long)b, others, over, under));

    [Fact]
    public void Arithmetic_AnyQuotients_IsThatOfFractions() => Prop.ForAll(Numbers, n =>
    {
        ExactDistance one = new(Distance.FromTicks(n.Ticks), n.Parts);
        ExactDistance other = new(Distance.FromTicks(n.OtherTicks), n.OtherParts);
        Fraction first = new(n.Ticks, n.Parts);
        Fraction second = new(n.OtherTicks, n.OtherParts);
        Ratio ratio = new(n.Over, n.Under);
        return Same(one + other, first + second) && Same(one - other, first - second) && Same(-one, -first) && Same(one * ratio, first * new Fraction(n.Over, n.Under))
            && Same(one.Abs(), first.Abs()) && Math.Sign(one.CompareTo(other)) == Math.Sign(first.CompareTo(second)) && (one == other) == first.Equals(second);
    }).Check(Tries.Always(100));

    [Fact]
    public void Rounding_AnyQuotient_IsNextToIt() => Prop.ForAll(Numbers, n =>
    {
        ExactDistance one = new(Distance.FromTicks(n.Ticks), n.Parts);
        Fraction exact = new(n.Ticks, n.Parts);
        Fraction nearest = new(one.RoundNearest().Ticks);
        return new Fraction(one.RoundDown().Ticks) <= exact && new Fraction(one.RoundDown().Ticks + 1) > exact
            && new Fraction(one.RoundUp().Ticks) >= exact && new Fraction(one.RoundUp().Ticks - 1) < exact
            && (nearest - exact).Abs() <= new Fraction(1, 2) && one.IsOnGrid == exact.Denominator.IsOne
            && (-one).RoundNearest() == -one.RoundNearest();
    }).Check(Tries.Always(100));

    [Theory]
    [InlineData(32, 3, "10-2/3 in")]
    [InlineData(-32, 3, "-10-2/3 in")]
    [InlineData(2, 3, "2/3 in")]
    [InlineData(105, 14, "7-1/2 in")]
    public void ToString_SharesOfInches_AreFractions(int inches, int parts, string text) =>
        Assert.Equal(text, new ExactDistance(Distance.FromInches(inches, 0, 1), parts).ToString());

    [Fact]
    public void Parse_WhatIsWritten_IsTheSame() => Prop.ForAll(Arb.From(Gen.Choose(-2_000_000_000, 2_000_000_000).Two()), n =>
    {
        ExactDistance one = new ExactDistance(Distance.FromTicks(n.Item1), Math.Abs(n.Item2 % 977) + 1) * new Ratio(7, 1 + Math.Abs(n.Item1 % 13));
        return ExactDistance.Parse(one.ToString()) == one && ExactDistance.TryParse(" " + one + " ", out ExactDistance read) && read == one;
    }).Check(Tries.Always(100));

    [Theory]
    [InlineData("3/4 in", true)]
    [InlineData("19 mm", true)]
    [InlineData("2/3 in", true)]
    [InlineData("2/3", false)]
    [InlineData("2/0 in", false)]
    [InlineData("1-2-1/3 in", false)]
    [InlineData("--1/3 in", false)]
    [InlineData(" 1 /3 in", false)]
    [InlineData("in", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void TryParse_OfEachText_IsALengthOrNot(string? text, bool isOne) => Assert.Equal(isOne, ExactDistance.TryParse(text, out _));

    [Fact]
    public void Parse_OfALongText_IsRefused()
    {
        Assert.Throws<FormatException>(() => ExactDistance.Parse(new string('9', 10_000) + "/7 in"));
        Assert.Throws<ArgumentNullException>(() => ExactDistance.Parse(null!));
    }

    [Fact]
    public void RatioTo_AnotherLength_TellsHowManyTimes()
    {
        ExactDistance tread = new(Distance.FromInches(32, 0, 1), 3);
        Assert.Equal(new Ratio(3, 2), ((ExactDistance)Distance.FromInches(16, 0, 1)).RatioTo(tread));
        Assert.Throws<DivideByZeroException>(() => tread.RatioTo(ExactDistance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExactDistance(Distance.Zero, 0));
        Assert.Equal(ExactDistance.Zero, default);
    }

    /// <summary>A length is a fraction of a tick if what remains of it is nothing.</summary>
    private static bool Same(ExactDistance length, Fraction ticks) => (length * new Ratio((long)ticks.Denominator)) == (ExactDistance)Distance.FromTicks((long)ticks.Numerator);
}
