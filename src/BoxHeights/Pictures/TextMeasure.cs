using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>How wide text is on the page, whatever font a viewer has: no usual sans-serif is wider.</summary>
internal static class TextMeasure
{
    /// <summary>How wide a line is, in thousandths of a user unit, at a font size in the same.</summary>
    public static long Width(string text, long size)
    {
        long thousandths = 0;
        foreach (char one in text)
        {
            thousandths += Of(one);
        }

        return thousandths * size / 1000;
    }

    /// <summary>A text in lines no wider than a width, broken at spaces, and within words that are too long.</summary>
    public static List<string> Wrap(string text, long width, long size)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (Width(longer, size) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (Width(line, size) > width && Fitting(line, width, size) is var count && count < line.Length)
            {
                lines.Add(line.Substring(0, count));
                line = line.Substring(count);
            }
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>How many characters of a word fit, at least one; two halves of one character and what is set over a letter stay together.</summary>
    private static int Fitting(string word, long width, long size)
    {
        int count = 1;
        while (count < word.Length && Width(word.Substring(0, count + 1), size) <= width)
        {
            count++;
        }

        while (count > 1 && Clings(word[count]))
        {
            count--;
        }

        while (count < word.Length && Clings(word[count]))
        {
            count++;
        }

        return count;
    }

    private static bool Clings(char one) => char.IsLowSurrogate(one) || CharUnicodeInfo.GetUnicodeCategory(one) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;

    // Thousandths of the font size, from the widest of the usual fonts.
    private static int Of(char one) => one switch
    {
        'i' or 'j' or 'l' or 'I' or '\'' or '|' => 340,
        ' ' or '.' or ',' or ':' or ';' or '!' => 400,
        '-' or '/' or '(' or ')' or '[' or ']' or 't' or 'f' or 'r' or '"' => 470,
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '\u2014' or '\u2026' => 1010,
        (>= 'a' and <= 'z') or (>= '0' and <= '9') => 660,
        < (char)128 => 860,
        < (char)0x1100 => Clings(one) ? 0 : 850,
        (>= '\u2066' and <= '\u2069') => 0,
        _ => char.IsSurrogate(one) ? 550 : 1050,
    };
}
