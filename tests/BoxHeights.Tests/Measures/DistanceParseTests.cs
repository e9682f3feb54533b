using System;
using Xunit;

namespace BoxHeights.Tests.Measures;

public class DistanceParseTests
{
    private const long In = 2_032_000;

    [Theory]
    [InlineData("47-3/4\"", 97_028_000L)]
    [InlineData("47 3/4 in", 97_028_000L)]
    [InlineData("47¾", null)]
    [InlineData("47¾\"", 97_028_000L)]
    [InlineData("47 ¾ in.", 97_028_000L)]
    [InlineData("47-¾ inches", 97_028_000L)]
    [InlineData("47.75in", 97_028_000L)]
    [InlineData("47.750000000000000000000000000 in", 97_028_000L)]
    [InlineData("3' 11 3/4\"", 97_028_000L)]
    [InlineData("3'-11 3/4\"", 97_028_000L)]
    [InlineData("3'-11-3/4\"", 97_028_000L)]
    [InlineData("3′ 11¾″", 97_028_000L)]
    [InlineData("3’ 11¾”", 97_028_000L)]
    [InlineData("3' 11.75''", 97_028_000L)]
    [InlineData("3ft11-3/4in", 97_028_000L)]
    [InlineData("3 FT 11-3/4 IN", 97_028_000L)]
    [InlineData("3 feet, 11 in", null)]
    [InlineData("3 ft. 11-3/4 in.", 97_028_000L)]
    [InlineData("3\u00A0ft\u00A011\u202F3⁄4\u2009in", 97_028_000L)]
    [InlineData("7' - 11\"", 95 * In)]
    [InlineData("7'-11\"", 95 * In)]
    [InlineData("7'–11\"", 95 * In)]
    [InlineData("1 foot", 12 * In)]
    [InlineData("2 feet 1 inch", 25 * In)]
    [InlineData("0' 48\"", 48 * In)]
    [InlineData("3.5 ft", 42 * In)]
    [InlineData("3 1/2 ft", 42 * In)]
    [InlineData("1/3 ft", 4 * In)]
    [InlineData("⅓ ft", 4 * In)]
    [InlineData("5/4 in", 2_540_000L)]
    [InlineData(".5 in", 1_016_000L)]
    [InlineData("1219.2 mm", 48 * In)]
    [InlineData("121.92 cm", 48 * In)]
    [InlineData("1.2192 m", 48 * In)]
    [InlineData("1.2 M", 96_000_000L)]
    [InlineData("1 mm", 80_000L)]
    [InlineData("-3' 11 3/4\"", -97_028_000L)]
    [InlineData("−3' 11 3/4\"", -97_028_000L)]
    [InlineData("- 1/2 in", -1_016_000L)]
    [InlineData("+48\"", 48 * In)]
    [InlineData("0 in", 0L)]
    [InlineData("-0 mm", 0L)]
    [InlineData("  48 in  ", 48 * In)]
    [InlineData("00048 in", 48 * In)]
    [InlineData("000000000000000000000000000048 in", 48 * In)]
    [InlineData("-115292150460684.6976 mm", long.MinValue)]
    [InlineData("115292150460684.6975875 mm", long.MaxValue)]
    public void TryParse_AsTheTradeWrites(string text, long? ticks)
    {
        bool read = Distance.TryParse(text, out Distance value);
        Assert.Equal((ticks is not null, ticks ?? 0), (read, value.Ticks));
    }

    [Theory]
    [InlineData("", 0, "nothing to read")]
    [InlineData("   ", 3, "number is expected")]
    [InlineData("48", 2, "add a unit: in, ft, mm, cm or m")]
    [InlineData("0", 1, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48 yd", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48 int", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48 in3", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48 in³", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48 m2", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("in", 0, "number is expected")]
    [InlineData("--1 in", 1, "number is expected")]
    [InlineData("1,200 mm", 1, "comma")]
    [InlineData("3,5 ft", 1, "comma")]
    [InlineData("3.5,5 ft", 3, "comma")]
    [InlineData("1 200 mm", 2, "add a unit: in, ft, mm, cm or m")]
    [InlineData("1'200 mm", 6, "say in for the inches")]
    [InlineData("5. in", 2, "digit is expected after the point")]
    [InlineData("1.2.3 in", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("1/3 in", 0, "between two steps")]
    [InlineData("2 ⅓ in", 2, "between two steps")]
    [InlineData("0.0001 in", 2, "between two steps")]
    [InlineData("1/0 in", 2, "not over 0")]
    [InlineData("3 5/4 in", 2, "less than 1")]
    [InlineData("1/ in", 2, "number is expected")]
    [InlineData("47 - 3/4 in", 3, "add a unit: in, ft, mm, cm or m")]
    [InlineData("3.5 ft 2 in", 0, "whole number")]
    [InlineData("3' 11", 5, "say in for the inches")]
    [InlineData("3' 11 3/4", 9, "say in for the inches")]
    [InlineData("3 ft 2 ft", 7, "say in for the inches")]
    [InlineData("3 ft.11 in", 4, "something follows")]
    [InlineData("3 in 2 ft", 5, "something follows")]
    [InlineData("48 in AFF", 6, "something follows")]
    [InlineData("48 \" \"", 5, "something follows")]
    [InlineData("1234567890123456789 in", 0, "too many digits")]
    [InlineData("1.1234567890123456789 in", 2, "too many digits")]
    [InlineData("1/1234567890 in", 2, "too many digits")]
    [InlineData("115292150460684.6976 mm", 0, "beyond the scale")]
    [InlineData("999999999999999999 ft", 0, "beyond the scale")]
    [InlineData("378250000000 ft 999999999999 in", 0, "beyond the scale")]
    [InlineData("٤٨ in", 0, "number is expected")]
    [InlineData("1e3 in", 1, "add a unit: in, ft, mm, cm or m")]
    [InlineData("48\nin", 2, "add a unit: in, ft, mm, cm or m")]
    public void Parse_OfAnythingElse_SaysWhereAndWhy(string text, int at, string why)
    {
        FormatException error = Assert.Throws<FormatException>(() => Distance.Parse(text));
        Assert.Contains("at character " + at.ToString(System.Globalization.CultureInfo.InvariantCulture) + ",", error.Message, StringComparison.Ordinal);
        Assert.Contains(why, error.Message, StringComparison.Ordinal);
        Assert.StartsWith("\"" + text + "\" is not a distance", error.Message, StringComparison.Ordinal);
        Assert.False(Distance.TryParse(text, out Distance value));
        Assert.Equal(Distance.Zero, value);
    }

    [Fact]
    public void Parse_OfNull()
    {
        Assert.Throws<ArgumentNullException>("text", () => Distance.Parse(null!));
        Assert.Throws<ArgumentNullException>("text", () => Distance.ParseRounded(null!));
        Assert.False(Distance.TryParse((string?)null, out _));
    }

    [Fact]
    public void Parse_OfLongText_ShowsItsBeginning()
    {
        FormatException error = Assert.Throws<FormatException>(() => Distance.Parse(new string('x', 5000)));
        Assert.InRange(error.Message.Length, 60, 200);
    }

    // By hand: 1/3 in is 677,333 1/3 ticks; 1/256 in 7,937.5; 3/256 in 23,812.5; 0.00000625 mm half a tick.
    [Theory]
    [InlineData("1/3 in", 677_333)]
    [InlineData("2/3 in", 1_354_667)]
    [InlineData("-2/3 in", -1_354_667)]
    [InlineData("1/256 in", 7_938)]
    [InlineData("3/256 in", 23_812)]
    [InlineData("-3/256 in", -23_812)]
    [InlineData("0.00000625 mm", 0)]
    [InlineData("0.00001875 mm", 2)]
    [InlineData("0.000006250000000001 mm", 1)]
    [InlineData("0.333333333333333333 m", 26_666_667)]
    [InlineData("3 ft 1/3 in", 73_829_333)]
    [InlineData("47-3/4 in", 97_028_000)]
    public void ParseRounded_TakesTheNearestTick(string text, long ticks) => Assert.Equal(ticks, Distance.ParseRounded(text).Ticks);

    [Fact]
    public void ParseRounded_OfABareNumber() => Assert.Throws<FormatException>(() => Distance.ParseRounded("48"));

    [Theory]
    [InlineData("48 in to top above subfloor", 0, 48 * In, 5)]
    [InlineData("at 48\" to top", 3, 48 * In, 6)]
    [InlineData("3 ft to 4 ft", 0, 36 * In, 4)]
    [InlineData("3 ft - 4 ft", 0, 36 * In, 4)]
    [InlineData("3 ft 2 boxes", 0, 36 * In, 4)]
    [InlineData("3' 2\" AFF", 0, 38 * In, 5)]
    [InlineData("16in. to T.O.B.", 0, 16 * In, 5)]
    [InlineData("3 ft 1/3 in", 0, null, 5)]
    [InlineData("top 48", 4, null, 6)]
    [InlineData("48", 2, null, 2)]
    public void TryRead_AmongOtherWords(string text, int index, long? ticks, int end)
    {
        bool read = DistanceText.TryRead(text, ref index, out Distance value, out string? error);
        Assert.Equal((ticks is not null, ticks ?? 0, end, ticks is null), (read, value.Ticks, index, error is not null));
    }

    // Unicode knows what its vulgar fractions are worth: U+00BC to U+00BE, U+2150 to U+215E. 2520 is a multiple of all their denominators.
    [Fact]
    public void TryReadNumber_OfOneCharacter_IsWhatUnicodeSaysOfVulgarFractions()
    {
        for (int code = 1; code <= char.MaxValue; code++)
        {
            bool isFraction = code is (>= 0xBC and <= 0xBE) or (>= 0x2150 and <= 0x215E);
            TextCursor cursor = new(((char)code).ToString());
            Assert.True(cursor.TryReadNumber(out TextNumber number) == (isFraction || code is >= '0' and <= '9'), code.ToString("X4", System.Globalization.CultureInfo.InvariantCulture));
            if (isFraction)
            {
                Assert.Equal(TextFault.None, number.Scale(2520, false, out ulong parts));
                Assert.Equal(Math.Round(2520 * char.GetNumericValue((char)code)), parts);
            }
        }
    }
}
