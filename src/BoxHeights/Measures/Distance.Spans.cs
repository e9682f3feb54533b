#if NET8_0_OR_GREATER
using System;
using System.Buffers;
using System.Text;

namespace BoxHeights;

/// <content>Spans of characters and of UTF-8 bytes, on the targets that have them.</content>
public readonly partial record struct Distance : ISpanFormattable, ISpanParsable<Distance>, IUtf8SpanFormattable, IUtf8SpanParsable<Distance>
{
    // Every text of a distance is shorter; longer ones are mostly blanks or zeros.
    private const int OnStack = 256;

    /// <summary>Reads a distance like <see cref="Parse(string)"/>.</summary>
    /// <param name="text">The text; blanks around it don't matter.</param>
    /// <exception cref="FormatException">The text is not a distance; the message says at which character (counted from 0) and why.</exception>
    public static Distance Parse(ReadOnlySpan<char> text) =>
        DistanceText.TryReadAll(text, false, out Distance value, out TextCursor cursor) ? value : throw DistanceText.ToException(text, cursor);

    /// <summary>Reads a distance like <see cref="Parse(string)"/>, without exceptions.</summary>
    /// <param name="text">The text.</param>
    /// <param name="value">The distance, or zero.</param>
    /// <returns>Whether the text is a distance.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Distance value) => DistanceText.TryReadAll(text, false, out value, out _);

    /// <summary>Reads a distance like <see cref="Parse(string)"/>.</summary>
    /// <param name="utf8Text">The text in UTF-8; blanks around it don't matter.</param>
    /// <exception cref="FormatException">The text is not a distance; the message says at which character (counted from 0, not bytes) and why.</exception>
    public static Distance ParseUtf8(ReadOnlySpan<byte> utf8Text) => TryParseUtf8(utf8Text, out Distance value) ? value : Parse(Encoding.UTF8.GetString(utf8Text));

    /// <summary>Reads a distance like <see cref="Parse(string)"/>, without exceptions.</summary>
    /// <param name="utf8Text">The text in UTF-8.</param>
    /// <param name="value">The distance, or zero.</param>
    /// <returns>Whether the text is a distance.</returns>
    public static bool TryParseUtf8(ReadOnlySpan<byte> utf8Text, out Distance value)
    {
        // Never more characters than bytes. Bytes that are no UTF-8 become the replacement character, which no distance has.
        char[]? rented = utf8Text.Length > OnStack ? ArrayPool<char>.Shared.Rent(utf8Text.Length) : null;
        Span<char> room = rented ?? stackalloc char[OnStack];
        int length = Encoding.UTF8.GetChars(utf8Text, room);
        bool read = TryParse(room[..length], out value);
        if (rented is not null)
        {
            ArrayPool<char>.Shared.Return(rented);
        }

        return read;
    }

    /// <summary>Writes the distance into characters.</summary>
    /// <param name="destination">Where to write.</param>
    /// <param name="charsWritten">How many characters were written.</param>
    /// <param name="format">As for <see cref="ToString(string?, IFormatProvider?)"/>.</param>
    /// <returns>False, with nothing written, if the room is too small.</returns>
    /// <exception cref="FormatException">There is no such format.</exception>
    public bool TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format = default)
    {
        // Where any text fits it is written in place: clearing and copying a buffer took a third of the time.
        if (destination.Length >= TextBuffer.Size)
        {
            TextBuffer inPlace = new(destination);
            DistanceText.Write(ref inPlace, ticks, DistanceText.ReadFormat(format));
            charsWritten = inPlace.Length;
            return true;
        }

        Span<char> room = stackalloc char[TextBuffer.Size];
        TextBuffer buffer = new(room);
        DistanceText.Write(ref buffer, ticks, DistanceText.ReadFormat(format));
        bool fits = room[..buffer.Length].TryCopyTo(destination);
        charsWritten = fits ? buffer.Length : 0;
        return fits;
    }

    /// <summary>Writes the distance into UTF-8 bytes.</summary>
    /// <param name="utf8Destination">Where to write.</param>
    /// <param name="bytesWritten">How many bytes were written.</param>
    /// <param name="format">As for <see cref="ToString(string?, IFormatProvider?)"/>.</param>
    /// <returns>False, with nothing written, if the room is too small.</returns>
    /// <exception cref="FormatException">There is no such format.</exception>
    public bool TryFormat(Span<byte> utf8Destination, out int bytesWritten, ReadOnlySpan<char> format = default)
    {
        Span<char> room = stackalloc char[TextBuffer.Size];
        TryFormat(room, out int length, format);
        bool fits = length <= utf8Destination.Length;
        bytesWritten = fits ? Encoding.UTF8.GetBytes(room[..length], utf8Destination) : 0;
        return fits;
    }

    static Distance IParsable<Distance>.Parse(string s, IFormatProvider? provider) => Parse(s);

    static bool IParsable<Distance>.TryParse(string? s, IFormatProvider? provider, out Distance result) => TryParse(s, out result);

    static Distance ISpanParsable<Distance>.Parse(ReadOnlySpan<char> s, IFormatProvider? provider) => Parse(s);

    static bool ISpanParsable<Distance>.TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Distance result) => TryParse(s, out result);

    static Distance IUtf8SpanParsable<Distance>.Parse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider) => ParseUtf8(utf8Text);

    static bool IUtf8SpanParsable<Distance>.TryParse(ReadOnlySpan<byte> utf8Text, IFormatProvider? provider, out Distance result) =>
        TryParseUtf8(utf8Text, out result);

    bool ISpanFormattable.TryFormat(Span<char> destination, out int charsWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        TryFormat(destination, out charsWritten, format);

    bool IUtf8SpanFormattable.TryFormat(Span<byte> utf8Destination, out int bytesWritten, ReadOnlySpan<char> format, IFormatProvider? provider) =>
        TryFormat(utf8Destination, out bytesWritten, format);
}
#endif
