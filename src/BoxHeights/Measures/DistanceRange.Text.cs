using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct DistanceRange
{
    private const string What = "a range of distances";

    /// <summary>Reads two distances with "to" between them, each with its unit, or one distance alone: <c>0 in to 1-1/4 in</c>, <c>3/8 in</c>.</summary>
    /// <param name="text">The text; blanks around it don't matter. Distances are written as for <see cref="Distance.Parse(string)"/>.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a range, or its first end is above its second; the message says where and why.</exception>
    public static DistanceRange Parse(string text) =>
        TryRead(text ?? throw new ArgumentNullException(nameof(text)), out DistanceRange value, out TextCursor cursor) ? value : throw cursor.ToException(What);

    /// <summary>Reads a range like <see cref="Parse"/>, without exceptions.</summary>
    /// <param name="text">The text, or null, which is no range.</param>
    /// <param name="value">The range, or exactly zero.</param>
    /// <returns>Whether the text is a range.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out DistanceRange value) => TryRead(text ?? "", out value, out _);

    /// <summary>The ends in words, <c>0 in to 1-1/4 in</c>, or the only distance, <c>3/8 in</c>; <see cref="Parse"/> reads it back exactly. An end that stands for there being none is in words, which aren't read: "at most 48 in".</summary>
    public override string ToString() => ToString(null, null);

    /// <summary>The ends in a format of distances; an end that stands for there being none in words: "at most 48 in".</summary>
    /// <param name="format">As for <see cref="Distance.ToString(string?, IFormatProvider?)"/>.</param>
    /// <param name="formatProvider">Not used: text is the same in every culture.</param>
    /// <exception cref="FormatException">There is no such format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider = null) =>
        From == Distance.MinValue || To == Distance.MaxValue ? DistanceSet.Between(From, To).ToString(format, formatProvider)
        : IsExact ? From.ToString(format, formatProvider) : From.ToString(format, formatProvider) + " to " + To.ToString(format, formatProvider);

    private static bool TryRead(string text, out DistanceRange value, out TextCursor cursor)
    {
        value = default;
        cursor = new TextCursor(text);
        cursor.SkipBlanks();
        int start = cursor.Index;
        if (!DistanceText.TryRead(ref cursor, false, out Distance from))
        {
            return false;
        }

        Distance to = from;
        int end = cursor.Index;
        cursor.SkipBlanks();
        if (cursor.Index > end && cursor.TakeWord("to"))
        {
            cursor.SkipBlanks();
            if (!DistanceText.TryRead(ref cursor, false, out to))
            {
                return false;
            }
        }

        if (!cursor.ReadEnd())
        {
            return false;
        }

        if (from > to)
        {
            return cursor.Fail(TextFault.WrongOrder, start);
        }

        value = new(from, to);
        return true;
    }
}
