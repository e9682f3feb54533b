using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Measures;

/// <summary>The short way to read common lengths says what the whole reader says. A blank before a text sends it the long way.</summary>
public class DistancePlainTextTests
{
    private static readonly string[] Pieces =
    [
        "0", "3", "11", "007", "128", "64", "99999", "100000", "/", "-", "/4", "-3/4", "-1/128", "/256", "/3", " ", "  ", "'", "''", "\"", " ft", "ft", " in", "in", " mm", "mm", "m", " m", "\0", ".", ".5",
    ];

    [Fact]
    public void TryParse_AnyPieces_IsWhatTheWholeReaderSays()
    {
        Arbitrary<string> texts = Gen.Elements(Pieces).ListOf(6).Select(pieces => string.Concat(pieces)).Or(Gen.Elements(Pieces).ListOf(4).Select(pieces => string.Concat(pieces))).ToArbitrary();
        Prop.ForAll(texts, text => Said(text) == Said(" " + text)).Check(Tries.Always(20_000));
    }

    [Theory]
    [InlineData("3 ft 11-3/4 in", "47-3/4 in")]
    [InlineData("3' 11-3/4\"", "47-3/4 in")]
    [InlineData("3' 3/4\"", "36-3/4 in")]
    [InlineData("3'3\"", "39 in")]
    [InlineData("8 ft", "96 in")]
    [InlineData("3/4 in", "3/4 in")]
    [InlineData("47-127/128 in", "47-127/128 in")]
    [InlineData("1200 mm", "1200 mm")]
    [InlineData("5 m", "5000 mm")]
    public void Parse_CommonLength_IsThis(string text, string expected)
    {
        Assert.Equal(Distance.Parse(" " + expected), Distance.Parse(text));
        Assert.Equal(Distance.Parse(" " + text), Distance.Parse(text));
    }

    private static (bool, Distance) Said(string text) => (Distance.TryParse(text, out Distance distance), distance);
}
