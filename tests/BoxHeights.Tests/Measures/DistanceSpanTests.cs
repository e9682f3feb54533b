#if !NETSTANDARD_ASSET
using System;
using System.Text;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

/// <summary>The span and UTF-8 forms, which only the newer targets have.</summary>
public class DistanceSpanTests
{
    [Theory]
    [InlineData("3’ 11¾”")]
    [InlineData(" 1219.2 mm ")]
    [InlineData("48")]
    [InlineData("")]
    [InlineData("1,2 m")]
    public void TryParse_AllForms_Agree(string text)
    {
        bool read = Distance.TryParse(text, out Distance expected);
        Assert.Equal((read, expected), (Distance.TryParse(text.AsSpan(), out Distance chars), chars));
        Assert.Equal((read, expected), (Distance.TryParseUtf8(Encoding.UTF8.GetBytes(text), out Distance bytes), bytes));
        Assert.Equal((read, expected), (Generic<Distance>(text, out Distance generic), generic));
        if (!read)
        {
            string message = Assert.Throws<FormatException>(() => Distance.Parse(text)).Message;
            Assert.Equal(message, Assert.Throws<FormatException>(() => Distance.Parse(text.AsSpan())).Message);
            Assert.Equal(message, Assert.Throws<FormatException>(() => Distance.ParseUtf8(Encoding.UTF8.GetBytes(text))).Message);
        }
    }

    [Fact]
    public void TryParseUtf8_LongText()
    {
        byte[] padded = Encoding.UTF8.GetBytes(new string(' ', 5000) + "48 in" + new string('\u00A0', 5000));
        Assert.True(Distance.TryParseUtf8(padded, out Distance value));
        Assert.Equal(Distance.FromInches(48), value);
    }

    [Fact]
    public void TryParseUtf8_BytesThatAreNoUtf8() => Assert.False(Distance.TryParseUtf8([(byte)'4', 0xFF, (byte)' ', (byte)'i', (byte)'n'], out _));

    [Fact]
    public void TryFormat_AnyDistance_IsToString() => Holds(Both(Distances, Gen.Elements("R", "in", "ft", "in16", "ft8", "mm", "cm", "m")), pair =>
    {
        string expected = pair.A.ToString(pair.B, null);
        Span<char> chars = new char[expected.Length];
        Span<byte> bytes = new byte[expected.Length];
        return pair.A.TryFormat(chars, out int charsWritten, pair.B) && chars[..charsWritten].SequenceEqual(expected)
            && pair.A.TryFormat(bytes, out int bytesWritten, pair.B) && Encoding.UTF8.GetString(bytes[..bytesWritten]) == expected
            && !pair.A.TryFormat(chars[1..], out charsWritten, pair.B) && charsWritten == 0
            && !pair.A.TryFormat(bytes[1..], out bytesWritten, pair.B) && bytesWritten == 0;
    });

    [Fact]
    public void TryFormat_InAnInterpolatedString() =>
        Assert.Equal("at 3 ft 11-3/4 in", FormattableString.Invariant($"at {Distance.FromInches(47.75m):ft16}"));

    [Fact]
    public void TryParseAndTryFormat_AllocateNothing()
    {
        Span<char> room = stackalloc char[64];
        Span<byte> bytes = stackalloc byte[64];
        long before = 0;
        bool all = true;
        for (int round = 0; round < 200; round++)
        {
            // The first rounds let the code be compiled.
            before = round == 100 ? GC.GetAllocatedBytesForCurrentThread() : before;
            all &= Distance.TryParse("7' - 11-3/4\"", out Distance value)
                && Distance.TryParse("0.333333333333 m", out _) == false
                && value.TryFormat(room, out int length, "ft16")
                && value.TryFormat(bytes, out int size)
                && Distance.TryParse(room[..length], out Distance again)
                && Distance.TryParseUtf8(bytes[..size], out Distance third)
                && again == value && third == value;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(all);
    }

    private static bool Generic<T>(string text, out T value)
        where T : ISpanParsable<T>, IUtf8SpanParsable<T>
    {
        bool read = T.TryParse(text, null, out T? chars);
        bool readBytes = T.TryParse(Encoding.UTF8.GetBytes(text).AsSpan(), null, out T? bytes);
        Assert.Equal((read, chars), (readBytes, bytes));
        value = chars!;
        return read;
    }
}
#endif
