using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

public class HostileTextTests
{
    private const string Alphabet = "0123456789019283746500 '\"-−–+./⁄½⅓,^³²′″’”\u00A0\t\n\0infetochmINFT٣\uD83D\uDE00\uD800 tocu";

    private static Gen<string> Texts { get; } =
        from count in Gen.Choose(0, 40)
        from characters in Gen.Elements(Alphabet.ToCharArray()).ListOf(count)
        select string.Concat(characters);

    /// <summary>Texts that are nearly right: a good one with one character changed, doubled or dropped.</summary>
    private static Gen<string> Damaged { get; } =
        from text in Gen.Elements("3' - 11-3/4\"", "47-3/4 in", "1219.2 mm", "20.3 cu. in.", "0 in to 1-1/4 in", "-1/2", "115292150460684.6975875 mm")
        from at in Gen.Choose(0, text.Length - 1)
        from other in Gen.Elements(Alphabet.ToCharArray())
        from kind in Gen.Choose(0, 2)
        select kind switch { 0 => text.Remove(at, 1), 1 => text.Insert(at, text.Substring(at, 1)), _ => text.Remove(at, 1).Insert(at, other.ToString()) };

    public static TheoryData<string> Extremes() =>
    [
        new string('9', 100_000) + " in",
        new string('0', 100_000) + " in3",
        "0." + new string('0', 100_000) + "1 in",
        "1/" + new string('9', 1000) + " in",
        new string('1', 1000) + "/3 in",
        new string(' ', 100_000),
        new string('-', 1000),
        "9223372036854775808 in", "18446744073709551616 mm", "999999999999999999' 999999999999999999\"",
        "999999999999999999/1 in", "999999999/1 ft", "0/0 in", "\"", "'", "''", "½", "⅓", ".", "./", "/", "1/", "-", "+", "in", "\0", "1\0in", "\uD800", "1 \uD800",
    ];

    [Fact]
    public void TryParse_AnyText_NeverThrowsAndFailsAsParseDoes() => Holds(Gen.OneOf(Texts, Damaged), text => Consistent(text));

    [Theory]
    [MemberData(nameof(Extremes))]
    public void TryParse_Extremes_NeverThrowAndFailAsParseDoes(string text) => Assert.True(Consistent(text));

    [Fact]
    public void TryParse_ManyZeros_IsTheNumberBehindThem()
    {
        Assert.Equal(Distance.FromInches(48), Distance.Parse(new string('0', 10_000) + "48." + new string('0', 10_000) + " in"));
        Assert.False(Distance.TryParse("0." + new string('0', 30) + "1 in", out _));
    }

    [Fact]
    public void TryRead_AnyText_MovesOnlyForward() => Holds(Both(Gen.OneOf(Texts, Damaged), Gen.Choose(0, 10)), given =>
    {
        int start = Math.Min(given.B, given.A.Length), index = start;
        bool read = DistanceText.TryRead(given.A, ref index, out Distance value, out string? error);
        return read
            ? index > start && index <= given.A.Length && error is null && Distance.Parse(given.A[start..index]) == value
            : index >= start && index <= given.A.Length && error is not null && value == Distance.Zero;
    });

    private static bool Consistent(string text) =>
        Same(Distance.TryParse(text, out Distance distance), distance, () => Distance.Parse(text))
        && Same(Volume.TryParse(text, out Volume volume), volume, () => Volume.Parse(text))
        && Same(Ratio.TryParse(text, out Ratio ratio), ratio, () => Ratio.Parse(text))
        && Same(DistanceRange.TryParse(text, out DistanceRange range), range, () => DistanceRange.Parse(text));

    private static bool Same<T>(bool read, T value, Func<T> parse)
        where T : struct, IEquatable<T>
    {
        try
        {
            return parse().Equals(value) && read;
        }
        catch (FormatException)
        {
            return !read && value.Equals(default);
        }
    }
}
