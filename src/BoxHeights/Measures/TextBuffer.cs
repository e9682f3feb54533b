using System;
#if NET8_0_OR_GREATER
using CharRoom = System.Span<char>;
#else
using CharRoom = char[];
#endif

namespace BoxHeights;

/// <summary>Writes a measure into room that its caller gives: ASCII only, never more than <see cref="Size"/> characters.</summary>
internal ref struct TextBuffer
{
    /// <summary>Enough for the longest text of a measure.</summary>
    internal const int Size = 64;

    private readonly CharRoom room;

    internal TextBuffer(CharRoom room)
    {
        this.room = room;
        Length = 0;
    }

    internal int Length { get; private set; }

    internal void Append(char c) => room[Length++] = c;

    internal void Append(string text)
    {
        foreach (char c in text)
        {
            room[Length++] = c;
        }
    }

    /// <summary>A number of one or two digits, which most parts of a length are: without counting digits first.</summary>
    internal void AppendSmall(ulong number)
    {
        if (number >= 100)
        {
            Append(number);
            return;
        }

        uint small = (uint)number, tens = small / 10;
        if (tens != 0)
        {
            room[Length++] = (char)('0' + tens);
        }

        room[Length++] = (char)('0' + (small - (tens * 10)));
    }

    internal void Append(ulong number, int leastDigits = 1)
    {
        int digits = 1;
        for (ulong rest = number / 10; rest != 0; rest /= 10)
        {
            digits++;
        }

        digits = Math.Max(digits, leastDigits);
        for (int at = Length + digits - 1; at >= Length; at--)
        {
            room[at] = (char)('0' + (number % 10));
            number /= 10;
        }

        Length += digits;
    }

    /// <summary>A number of ticks in decimal units, every digit that it has and no zero at the end.</summary>
    internal void AppendDecimal(ulong ticks, ulong perUnit)
    {
        Append(ticks / perUnit);
        ulong rest = ticks % perUnit;
        if (rest != 0)
        {
            Append('.');
        }

        while (rest != 0)
        {
            rest *= 10;
            Append((char)('0' + (rest / perUnit)));
            rest %= perUnit;
        }
    }

    public override readonly string ToString() =>
#if NET8_0_OR_GREATER
        new(room[..Length]);
#else
        new(room, 0, Length);
#endif
}
