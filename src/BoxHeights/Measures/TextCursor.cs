using System;
using System.Globalization;
#if NET8_0_OR_GREATER
using Chars = System.ReadOnlySpan<char>;
#else
using Chars = string;
#endif

namespace BoxHeights;

/// <summary>Reads a text from left to right; a failed read leaves the place and reason.</summary>
/// <remarks>It reads a span where the target has them, else a string. It allocates only for the message of a fault.</remarks>
internal ref struct TextCursor
{
    private const int MostWholeDigits = 18;
    private const int MostDecimals = 18;
    private const int MostFractionDigits = 9;

    private readonly Chars text;

    internal TextCursor(Chars text, int index = 0)
    {
        this.text = text;
        Index = index;
        Fault = TextFault.None;
        FaultAt = 0;
    }

    /// <summary>The place of the next character.</summary>
    internal int Index { get; set; }

    /// <summary>The reason of the fault that lies farthest along the text.</summary>
    internal TextFault Fault { get; private set; }

    /// <summary>The place of that fault, counted from 0.</summary>
    internal int FaultAt { get; private set; }

    internal readonly bool AtEnd => Index >= text.Length;

    /// <summary>The next character, or a null character at the end.</summary>
    internal readonly char Current => Index < text.Length ? text[Index] : '\0';

    internal readonly char Next => Index + 1 < text.Length ? text[Index + 1] : '\0';

    /// <summary>Whether the next character can begin a number without sign.</summary>
    internal readonly bool StartsNumber => IsDigit(Current) || Current == '.' || IsVulgar(Current, out _, out _);

    internal static bool IsHyphen(char c) => c is '-' or '\u2212' or '\u2010' or '\u2011' or '\u2013';

    internal static bool IsDigit(char c) => c is >= '0' and <= '9';

    internal void SkipBlanks()
    {
        while (Current is ' ' or '\u00A0' or '\t' or '\u202F' or '\u2007' or '\u2009')
        {
            Index++;
        }
    }

    /// <summary>Notes a fault at a place, unless one farther along is known, and says false.</summary>
    internal bool Fail(TextFault fault, int at)
    {
        if (Fault == TextFault.None || at >= FaultAt)
        {
            Fault = fault;
            FaultAt = at;
        }

        return false;
    }

    /// <summary>Takes a word in any ASCII case, given in lower case, that no other letter follows.</summary>
    internal bool TakeWord(string word)
    {
        int end = Index + word.Length;
        if (end > text.Length || (end < text.Length && char.IsLetter(text[end])))
        {
            return false;
        }

        for (int i = 0; i < word.Length; i++)
        {
            if (ToLower(text[Index + i]) != word[i])
            {
                return false;
            }
        }

        Index = end;
        return true;
    }

    /// <summary>Takes one character if it is next.</summary>
    internal bool Take(char c)
    {
        if (Current != c)
        {
            return false;
        }

        Index++;
        return true;
    }

    /// <summary>Takes a sign and the blanks after it; says whether it was a minus.</summary>
    internal bool TakeSign()
    {
        bool negative = IsHyphen(Current);
        if (negative || Current == '+')
        {
            Index++;
            SkipBlanks();
        }

        return negative;
    }

    /// <summary>Skips blanks and makes sure that the text ends.</summary>
    internal bool ReadEnd()
    {
        SkipBlanks();
        return AtEnd || Fail(TextFault.Trailing, Index);
    }

    /// <summary>Reads a number without sign: 48, 47.75, .5, 3/4, 47-3/4, 47 3/4, 47¾.</summary>
    internal bool TryReadNumber(out TextNumber number)
    {
        number = default;
        int start = Index;
        ulong whole = 0;
        if (IsDigit(Current))
        {
            if (!TryReadDigits(MostWholeDigits, out whole))
            {
                return false;
            }
        }
        else if (!StartsNumber)
        {
            return Fail(AtEnd && Index == 0 ? TextFault.Empty : TextFault.NumberExpected, Index);
        }

        bool read = Current switch
        {
            '.' => TryReadDecimals(whole, out number),
            '/' or '\u2044' => TryReadFraction(0, whole, start, out number),
            _ => TryReadMixed(whole, start, out number),
        };
        return read && (Current != ',' || Fail(TextFault.Comma, Index));
    }

    /// <summary>Reads a whole number without sign that a long holds.</summary>
    internal bool TryReadWhole(out ulong value)
    {
        value = 0;
        int start = Index;
        if (!IsDigit(Current))
        {
            return Fail(AtEnd && Index == 0 ? TextFault.Empty : TextFault.NumberExpected, Index);
        }

        return TryReadDigits(MostWholeDigits + 1, out value) && (value <= long.MaxValue || Fail(TextFault.TooLarge, start));
    }

    /// <summary>The fault in words.</summary>
    internal readonly string Describe() => "at character " + FaultAt.ToString(CultureInfo.InvariantCulture) + ", " + Fault.Reason();

    /// <summary>The exception for a text that isn't what was asked for, with what may be written instead.</summary>
    internal readonly FormatException ToException(string what, string instead = "")
    {
        const int longest = 60;
        string shown = text.ToString();
        shown = shown.Length > longest ? shown.Remove(longest) + "…" : shown;
        return new("\"" + shown + "\" is not " + what + ": " + Describe() + instead + ".");
    }

    private static char ToLower(char c) => c is >= 'A' and <= 'Z' ? (char)(c | 0x20) : c;

    private static bool IsVulgar(char c, out int numerator, out int denominator)
    {
        (numerator, denominator) = c < '¼' ? (0, 0) : c switch
        {
            '½' => (1, 2),
            '¼' => (1, 4),
            '¾' => (3, 4),
            '⅛' => (1, 8),
            '⅜' => (3, 8),
            '⅝' => (5, 8),
            '⅞' => (7, 8),
            '⅓' => (1, 3),
            '⅔' => (2, 3),
            '⅕' => (1, 5),
            '⅖' => (2, 5),
            '⅗' => (3, 5),
            '⅘' => (4, 5),
            '⅙' => (1, 6),
            '⅚' => (5, 6),
            '⅐' => (1, 7),
            '⅑' => (1, 9),
            '⅒' => (1, 10),
            _ => (0, 0),
        };
        return denominator != 0;
    }

    private bool TryReadDigits(int most, out ulong value)
    {
        value = 0;
        int start = Index, digits = 0;
        for (; IsDigit(Current); Index++)
        {
            digits += value == 0 ? 0 : 1;
            if (digits >= most)
            {
                return Fail(TextFault.TooManyDigits, start);
            }

            value = (value * 10) + (ulong)(Current - '0');
        }

        return Index > start;
    }

    private bool TryReadDecimals(ulong whole, out TextNumber number)
    {
        number = default;
        Index++;
        int start = Index, zeros = 0, digits = 0;
        ulong part = 0, scale = 1;
        for (; IsDigit(Current); Index++)
        {
            if (Current == '0')
            {
                zeros++;
                continue;
            }

            digits += zeros + 1;
            if (digits > MostDecimals)
            {
                return Fail(TextFault.TooManyDigits, start);
            }

            for (; zeros >= 0; zeros--)
            {
                scale *= 10;
                part *= 10;
            }

            zeros = 0;
            part += (ulong)(Current - '0');
        }

        number = new(whole, part, scale, start);
        return Index > start || Fail(TextFault.DigitAfterPointExpected, Index);
    }

    // The number after the whole part, if the text goes on with a fraction; else the whole part alone.
    private bool TryReadMixed(ulong whole, int start, out TextNumber number)
    {
        number = new(whole, 0, 1, start);
        int end = Index;
        if (IsHyphen(Current))
        {
            Index++;
        }
        else
        {
            SkipBlanks();
        }

        int at = Index;
        if (IsVulgar(Current, out int above, out int below))
        {
            Index++;
            number = new(whole, (ulong)above, (ulong)below, at);
            return true;
        }

        if (at > end && IsDigit(Current))
        {
            while (IsDigit(Current))
            {
                Index++;
            }

            if (Current is '/' or '\u2044')
            {
                Index = at;
                return TryReadDigits(MostFractionDigits, out ulong numerator) && TryReadFraction(whole, numerator, at, out number);
            }
        }

        Index = end;
        return true;
    }

    private bool TryReadFraction(ulong whole, ulong numerator, int start, out TextNumber number)
    {
        number = default;
        Index++;
        int below = Index;
        if (!IsDigit(Current))
        {
            return Fail(TextFault.NumberExpected, Index);
        }

        if (!TryReadDigits(MostFractionDigits, out ulong denominator))
        {
            return false;
        }

        if (denominator == 0)
        {
            return Fail(TextFault.ZeroDenominator, below);
        }

        number = new(whole, numerator, denominator, start);
        return whole == 0 || numerator < denominator || Fail(TextFault.ImproperFraction, start);
    }
}
