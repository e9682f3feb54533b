using System;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct Ratio
{
    /// <summary>Reads a whole number, <c>3</c>, or two with a stroke between, <c>1/2</c>, with a minus or plus before all.</summary>
    /// <param name="text">The text; blanks around it and around the stroke don't matter.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a ratio; the message says at which character (counted from 0) and why.</exception>
    public static Ratio Parse(string text) =>
        TryRead(text ?? throw new ArgumentNullException(nameof(text)), out Ratio value, out TextCursor cursor) ? value : throw cursor.ToException("a ratio");

    /// <summary>Reads a ratio like <see cref="Parse"/>, without exceptions.</summary>
    /// <param name="text">The text, or null, which is no ratio.</param>
    /// <param name="value">The ratio, or zero.</param>
    /// <returns>Whether the text is a ratio.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out Ratio value) => TryRead(text ?? "", out value, out _);

    /// <summary>The reduced numbers with a stroke between, <c>1/2</c>, or the numerator alone where the denominator is 1; <see cref="Parse"/> reads it back.</summary>
    public override string ToString()
    {
        string above = Numerator.ToString(CultureInfo.InvariantCulture);
        return Denominator == 1 ? above : above + "/" + Denominator.ToString(CultureInfo.InvariantCulture);
    }

    private static bool TryRead(string text, out Ratio value, out TextCursor cursor)
    {
        value = default;
        cursor = new TextCursor(text);
        cursor.SkipBlanks();
        bool negative = cursor.TakeSign();
        ulong below = 1;
        if (!cursor.TryReadWhole(out ulong above))
        {
            return false;
        }

        cursor.SkipBlanks();
        if (cursor.Take('/'))
        {
            cursor.SkipBlanks();
            int at = cursor.Index;
            if (!cursor.TryReadWhole(out below))
            {
                return false;
            }

            if (below == 0)
            {
                return cursor.Fail(TextFault.ZeroDenominator, at);
            }
        }

        if (!cursor.ReadEnd())
        {
            return false;
        }

        value = new(negative ? -(long)above : (long)above, (long)below);
        return true;
    }
}
