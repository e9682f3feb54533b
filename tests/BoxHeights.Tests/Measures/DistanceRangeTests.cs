using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

public class DistanceRangeTests
{
    private static readonly DistanceRange Floor = new(Distance.Zero, Distance.FromInches(1.25m));

    private static Gen<DistanceRange> Small { get; } =
        from start in Gen.Choose(-9, 9)
        from width in Gen.Choose(0, 6)
        select new DistanceRange(Distance.FromTicks(start), Distance.FromTicks(start + width));

    [Fact]
    public void Default_IsExactlyZero()
    {
        Assert.Equal(DistanceRange.Exactly(Distance.Zero), default);
        Assert.True(default(DistanceRange).IsExact);
    }

    [Fact]
    public void Constructor_FromAboveTo() =>
        Assert.Contains("1-1/4 in is above 0 in", Assert.Throws<ArgumentException>("from", () => new DistanceRange(Floor.To, Floor.From)).Message, StringComparison.Ordinal);

    [Fact]
    public void Conversion_FromADistance()
    {
        DistanceRange exact = Distance.FromInches(3, 3, 8);
        Assert.True(exact.IsExact);
        Assert.Equal((Distance.Zero, exact.From), (exact.Width, exact.To));
        Assert.Equal(Distance.FromInches(1.25m), Floor.Width);
    }

    [Fact]
    public void Operators_OnAllPairsOfMembers() => Holds(Both(Small, Small), pair =>
    {
        (DistanceRange a, DistanceRange b) = pair;
        long[] sums = [.. from x in Members(a) from y in Members(b) select x + y];
        long[] differences = [.. from x in Members(a) from y in Members(b) select x - y];
        return a + b == Ends(sums) && a - b == Ends(differences) && -a == Ends([.. Members(a).Select(x => -x)])
            && (a.Add(b), a.Subtract(b), a.Negate()) == (a + b, a - b, -a);
    });

    [Fact]
    public void ContainsAndOverlaps_ByMembers() => Holds(Both(Small, Small), pair =>
    {
        (DistanceRange a, DistanceRange b) = pair;
        return a.Contains(b) == Members(b).All(x => Members(a).Contains(x))
            && a.Overlaps(b) == Members(b).Any(x => Members(a).Contains(x))
            && Members(b).All(x => a.Contains(Distance.FromTicks(x)) == Members(a).Contains(x));
    });

    [Fact]
    public void Add_BeyondTheScale() => Assert.Throws<OverflowException>(() => Floor + Distance.MaxValue);

    [Theory]
    [InlineData("0 in to 1-1/4 in", "0 in to 1-1/4 in")]
    [InlineData("  3/8\" ", "3/8 in")]
    [InlineData("1 ft TO 2 ft", "12 in to 24 in")]
    [InlineData("0 mm to 31.75 mm", "0 in to 1-1/4 in")]
    [InlineData("5 mm to 5 mm", "5 mm")]
    [InlineData("-1 in to 1 in", "-1 in to 1 in")]
    public void Parse_ThenToString(string text, string expected) => Assert.Equal(expected, DistanceRange.Parse(text).ToString());

    [Theory]
    [InlineData("2 in to 1 in", 0, "above the second")]
    [InlineData("0 to 1 in", 2, "add a unit: in, ft, mm, cm or m")]
    [InlineData("0 in to 1", 9, "add a unit: in, ft, mm, cm or m")]
    [InlineData("0 into 1 in", 2, "add a unit: in, ft, mm, cm or m")]
    [InlineData("0\"to 1\"", 2, "something follows")]
    [InlineData("0 in to", 7, "number is expected")]
    [InlineData("0 in to 1 in to 2 in", 13, "something follows")]
    [InlineData("", 0, "nothing to read")]
    public void Parse_OfAnythingElse_SaysWhereAndWhy(string text, int at, string why)
    {
        string message = Assert.Throws<FormatException>(() => DistanceRange.Parse(text)).Message;
        Assert.Contains(FormattableString.Invariant($"at character {at}, "), message, StringComparison.Ordinal);
        Assert.Contains(why, message, StringComparison.Ordinal);
        Assert.False(DistanceRange.TryParse(text, out _));
    }

    [Fact]
    public void ToStringParse_AnyRange_IsTheSame() => Holds(Both(Distances, Distances), pair =>
    {
        DistanceRange range = new(Distance.Min(pair.A, pair.B), Distance.Max(pair.A, pair.B));
        bool hasBothEnds = range.From != Distance.MinValue && range.To != Distance.MaxValue;
        return hasBothEnds
            ? DistanceRange.Parse(range.ToString()) == range && DistanceRange.Parse(range.ToString("mm", null)) == range
            : !DistanceRange.TryParse(range.ToString(), out _);
    });

    private static long[] Members(DistanceRange range) =>
        [.. Enumerable.Range((int)range.From.Ticks, (int)range.Width.Ticks + 1).Select(x => (long)x)];

    private static DistanceRange Ends(long[] members) => new(Distance.FromTicks(members.Min()), Distance.FromTicks(members.Max()));
}
