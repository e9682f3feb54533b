using System;

namespace BoxHeights.Interop;

/// <summary>Line and column of a byte, both from 1. Worked out only once something is wrong.</summary>
[Told]
internal readonly partial struct TextPlace
{
    internal int Line { get; }

    internal int Column { get; }

    internal static TextPlace Of(ReadOnlySpan<byte> text, int offset)
    {
        int line = 1, column = 1;
        foreach (byte b in text[..offset])
        {
            if (b == (byte)'\n')
            {
                line++;
                column = 1;
            }
            else
            {
                // Bytes that go on with a character don't count; one that begins four bytes begins two UTF-16 characters.
                column += (b & 0xC0) == 0x80 ? 0 : b >= 0xF0 ? 2 : 1;
            }
        }

        return new(line, column);
    }

    /// <summary>The byte at a place given by line and byte within it, both from 0.</summary>
    internal static int Offset(ReadOnlySpan<byte> text, long line, long byteInLine)
    {
        int start = 0;
        for (; line > 0; line--)
        {
            start += text[start..].IndexOf((byte)'\n') + 1;
        }

        return (int)Math.Min(text.Length, start + byteInLine);
    }
}
