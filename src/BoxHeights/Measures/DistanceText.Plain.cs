#if NET8_0_OR_GREATER
using Chars = System.ReadOnlySpan<char>;
#else
using Chars = string;
#endif

namespace BoxHeights;

/// <content>Lengths as this library prints them and most people type them. Anything else is left to the whole reader, which says the same of these and takes
/// more than twice as long: it notes places and reasons.</content>
internal static partial class DistanceText
{
    private const uint MostSmall = 99_999;

    /// <summary>Reads "3 ft 11-3/4 in", 3' 11-3/4", "47-3/4 in", "3/4 in", "1200 mm": small numbers, single blanks and nothing around. False says nothing.</summary>
    private static bool TryReadPlain(Chars text, out Distance value)
    {
        value = default;
        int at = 0;
        if (!TakeSmall(text, ref at, out uint first))
        {
            return false;
        }

        long ticks = 0;
        if (TakeUnit(text, ref at, 'f', 't', '\''))
        {
            ticks = first * Distance.TicksPerFoot;
            if (at == text.Length)
            {
                value = Distance.FromTicks(ticks);
                return true;
            }

            at += text[at] == ' ' ? 1 : 0;
            if (!TakeSmall(text, ref at, out first))
            {
                return false;
            }
        }
        else if (TakeUnit(text, ref at, 'm', 'm', '\''))
        {
            value = Distance.FromTicks(first * Distance.TicksPerMillimeter);
            return at == text.Length;
        }

        if (at < text.Length && text[at] is '-' or '/')
        {
            uint numerator = first;
            if (text[at++] == '-')
            {
                ticks += first * Distance.TicksPerInch;
                if (!TakeSmall(text, ref at, out numerator) || at == text.Length || text[at++] != '/')
                {
                    return false;
                }
            }

            if (!TakeSmall(text, ref at, out uint denominator) || denominator > FinestDenominator || (denominator & (denominator - 1)) != 0 || numerator >= denominator)
            {
                return false;
            }

            ticks += numerator * (Distance.TicksPerInch / denominator);
        }
        else
        {
            ticks += first * Distance.TicksPerInch;
        }

        if (!TakeUnit(text, ref at, 'i', 'n', '"') || at != text.Length)
        {
            return false;
        }

        value = Distance.FromTicks(ticks);
        return true;
    }

    private static bool TakeSmall(Chars text, ref int at, out uint number)
    {
        number = 0;
        int start = at;
        for (; at < text.Length && text[at] - '0' is >= 0 and <= 9 && number <= MostSmall / 10; at++)
        {
            number = (number * 10) + (uint)(text[at] - '0');
        }

        return at > start;
    }

    // A word of two letters, with one blank before it or none, that ends the text or is followed by a blank; or its sign.
    private static bool TakeUnit(Chars text, ref int at, char first, char second, char sign)
    {
        if (at < text.Length && text[at] == sign)
        {
            at++;
            return true;
        }

        int word = at < text.Length && text[at] == ' ' ? at + 1 : at;
        if (word + 1 >= text.Length || text[word] != first || text[word + 1] != second || (word + 2 < text.Length && text[word + 2] != ' '))
        {
            return false;
        }

        at = word + 2;
        return true;
    }
}
