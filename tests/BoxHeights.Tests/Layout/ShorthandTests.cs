using System;
using Xunit;

namespace BoxHeights.Tests.Layout;

/// <summary>Short names for scripts: each is what its long name is, and refuses what that refuses.</summary>
public sealed class ShorthandTests
{
    // 2,032,000 ticks to the inch, 80,000 to the millimeter.
    [Fact]
    public void Names_OfLengths_AreTheirTicks()
    {
        Assert.Equal(48 * 2_032_000L, Shorthand.In(48).Ticks);
        Assert.Equal(271 * 254_000L, Shorthand.In(33.875m).Ticks);
        Assert.Equal(271 * 254_000L, Shorthand.In("33-7/8").Ticks);
        Assert.Equal(5 * 254_000L, Shorthand.In("5/8").Ticks);
        Assert.Equal(-5 * 254_000L, Shorthand.In("-5/8").Ticks);
        Assert.Equal(144 * 2_032_000L, Shorthand.Ft(12).Ticks);
        Assert.Equal(-144 * 2_032_000L, Shorthand.Ft(-12).Ticks);
        Assert.Equal(195 * 1_016_000L, Shorthand.Ft(8, 1.5m).Ticks);
        Assert.Equal(1200 * 80_000L, Shorthand.Mm(1200).Ticks);
        Assert.Equal(new PlanPoint(Distance.FromTicks(80 * 2_032_000L), Distance.FromTicks(70 * 2_032_000L)), Shorthand.At(80, 70));
        Assert.Equal(new PlanPoint(Distance.FromTicks(80_000), Distance.FromTicks(160_000)), Shorthand.At(Shorthand.Mm(1), Shorthand.Mm(2)));
        Assert.Equal(BoxHeight.ToTop(Distance.FromTicks(48 * 2_032_000L), Datum.FinishedFloor), Shorthand.Height("48 in to top AFF"));
    }

    [Theory]
    [InlineData("48 in")]
    [InlineData("12 ft")]
    [InlineData("")]
    [InlineData("banana")]
    [InlineData("1,5")]
    public void In_WhatIsNoNumberOfInches_Throws(string text) =>
        Assert.Contains("\"" + text + "\" is no number of inches", Assert.Throws<FormatException>(() => Shorthand.In(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Names_OfWhatIsNoLength_Throw()
    {
        Assert.Throws<ArgumentNullException>(() => Shorthand.In(null!));
        Assert.ThrowsAny<ArgumentException>(() => Shorthand.In(1m / 3m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shorthand.Ft(1, -6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shorthand.Ft(-1, 6));
        Assert.Throws<FormatException>(() => Shorthand.Height("48 in to top"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shorthand.In(1e13m));
    }
}
