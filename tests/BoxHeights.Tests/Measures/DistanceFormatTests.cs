using System;
using System.Globalization;
using Xunit;

namespace BoxHeights.Tests.Measures;

public class DistanceFormatTests
{
    /// <summary>Frozen: a change here is a breaking change.</summary>
    public static TheoryData<long, string?, string> Table() => new()
    {
        { 0, null, "0 in" },
        { 0, "mm", "0 mm" },
        { 0, "ft", "0 in" },
        { 97_028_000, null, "47-3/4 in" },
        { 97_028_000, "", "47-3/4 in" },
        { 97_028_000, "R", "47-3/4 in" },
        { 97_028_000, "in", "47-3/4 in" },
        { 97_028_000, "ft", "3 ft 11-3/4 in" },
        { 97_028_000, "mm", "1212.85 mm" },
        { 97_028_000, "cm", "121.285 cm" },
        { 97_028_000, "m", "1.21285 m" },
        { -97_028_000, "R", "-47-3/4 in" },
        { -97_028_000, "ft", "-3 ft 11-3/4 in" },
        { -97_028_000, "m", "-1.21285 m" },
        { 97_536_000, "ft", "4 ft" },
        { 97_536_000, "in", "48 in" },
        { 12 * 2_032_000, "ft", "1 ft" },
        { 11 * 2_032_000, "ft16", "11 in" },
        { 12 * 2_032_000, "ft16", "1 ft" },
        { 13 * 2_032_000, "ft16", "1 ft 1 in" },
        { 98_552_000, "ft", "4 ft 1/2 in" },
        { 1_016_000, "ft", "1/2 in" },
        { -1_016_000, "in", "-1/2 in" },
        { 15_875, "R", "1/128 in" },
        { 80_000, "R", "1 mm" },
        { 97_544_000, "R", "1219.3 mm" },
        { 1, "R", "0.0000125 mm" },
        { 1, "m", "0.0000000125 m" },
        { -1, "cm", "-0.00000125 cm" },
        { 2_032, "in", "0.001 in" },
        { 97_437_456, "in", "about 47.952 in" },
        { 97_536_000 + 20_320, "in", "48.01 in" },
        { 97_536_000 + 20_320, "ft", "4 ft 0.01 in" },
        { 97_536_000 - 1, "in", "about 48 in" },
        { 97_536_000 - 1, "ft", "about 4 ft" },
        { 1, "in", "about 0 in" },
        { -1, "in", "about 0 in" },
        { -1_016, "in", "about -0.001 in" },
        { 95 * 2_032_000 + 127 * 15_875, "in16", "96 in" },
        { 95 * 2_032_000 + 127 * 15_875, "ft16", "8 ft" },
        { 95 * 2_032_000 + 127 * 15_875, "in128", "95-127/128 in" },
        { 95 * 2_032_000 + 127 * 15_875, "ft64", "8 ft" },
        { 95 * 2_032_000 + 123 * 15_875, "in16", "95-15/16 in" },
        { 63_500, "in16", "1/16 in" },
        { 63_499, "in16", "0 in" },
        { -63_500, "in16", "-1/16 in" },
        { -63_499, "ft16", "0 in" },
        { 97_028_000, "in2", "48 in" },
        { 97_028_000, "in4", "47-3/4 in" },
        { 97_028_000, "ft2", "4 ft" },
        { 97_028_000, "in8", "47-3/4 in" },
        { 97_028_000, "in32", "47-3/4 in" },
        { 97_544_000, "ft32", "4 ft" },
        { 97_544_000, "in128", "48-1/128 in" },
        { long.MaxValue, "R", "115292150460684.6975875 mm" },
        { long.MinValue, "R", "-115292150460684.6976 mm" },
        { long.MinValue, "m", "-115292150460.6846976 m" },
        { long.MinValue, "ft16", "-378255086813 ft 3-1/4 in" },
        { long.MaxValue, "ft", "about 378255086813 ft 3.24 in" },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void ToString_InEveryCulture(long ticks, string? format, string expected)
    {
        foreach (string culture in MeasureGen.Cultures)
        {
            MeasureGen.InCulture(culture, () =>
            {
                Assert.Equal(expected, Distance.FromTicks(ticks).ToString(format, null));
                Assert.Equal(expected, Distance.FromTicks(ticks).ToString(format, CultureInfo.CurrentCulture));
            });
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("tr-TR")]
    public void Parse_InEveryCulture(string culture) => MeasureGen.InCulture(culture, () =>
    {
        Assert.Equal(97_028_000, Distance.Parse("-3 FT 11.75 IN").Negate().Ticks);
        Assert.Equal("15 in to 48 in", DistanceRange.Parse("15 INCHES TO 1.2192 M").ToString());
        Assert.Equal("20.3 in3", Volume.Parse("20.3 CUBIC INCHES").ToString());
        Assert.Equal("-1/2", Ratio.Parse("-2/4").ToString());
        Assert.Contains("(2,032,000 to 1 in)", Assert.Throws<ArgumentException>(() => Distance.FromInches(0, 1, 3)).Message, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("in3")]
    [InlineData("in256")]
    [InlineData("in0")]
    [InlineData("IN")]
    [InlineData("r")]
    [InlineData("km")]
    [InlineData(" mm")]
    public void ToString_UnknownFormat_NamesTheKnownOnes(string format)
    {
        string message = Assert.Throws<FormatException>(() => Distance.Zero.ToString(format, null)).Message;
        Assert.Contains("\"" + format + "\"", message, StringComparison.Ordinal);
        Assert.Contains("R, in, ft, mm, cm, m", message, StringComparison.Ordinal);
    }
}
