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
internal ref partial struct TextCursor
{
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

    /// <summary>The alphabet's own case only: a culture's rules (the Turkish i) have no place in what is read.</summary>
    internal static char ToLower(char c) => c is >= 'A' and <= 'Z' ? (char)(c | 0x20) : c;
}
