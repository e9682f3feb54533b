using System;
using System.Text;

namespace BoxHeights;

/// <summary>Gives the measures of a row's own words in a dwelling's units too: "within 6 ft of it" reads "within 1828.8 mm (6 ft) of it" where marks are in millimeters.</summary>
/// <remarks>What a document prints stays to be read, in parentheses: it is the limit. A measure that the units can't show exactly says "about".</remarks>
internal static class BothUnits
{
    private const string To = " to ";

    /// <summary>A text with its measures in these units; the same text where it has none in others.</summary>
    public static string Of(string text, LengthUnits units)
    {
        StringBuilder? changed = null;
        int kept = 0;
        for (int start = 0; start < text.Length; start++)
        {
            if (!BeginsNumber(text, start) || !TryRead(text, start, out int end, out Distance low, out Distance high) || IsIn(units, text, start, end))
            {
                continue;
            }

            changed = (changed ?? new()).Append(text, kept, start - kept).Append(Printed.About(low, units));
            if (high != low)
            {
                changed.Append(To).Append(Printed.About(high, units));
            }

            changed.Append(" (").Append(text, start, end - start).Append(')');
            kept = end;
            start = end - 1;
        }

        return changed is null ? text : changed.Append(text, kept, text.Length - kept).ToString();
    }

    /// <summary>A digit that no part of a number, a section or a name comes before: "210.52", "2x4" and "A-1" hold no measure.</summary>
    private static bool BeginsNumber(string text, int at) =>
        TextCursor.IsDigit(text[at]) && (at == 0 || !(char.IsLetterOrDigit(text[at - 1]) || text[at - 1] is '.' or ',' or '/' || TextCursor.IsHyphen(text[at - 1])));

    /// <summary>One measure, "6 ft 6 in", or two that share a unit, "34 to 38 in".</summary>
    private static bool TryRead(string text, int start, out int end, out Distance low, out Distance high)
    {
        end = start;
        if (DistanceText.TryRead(text, ref end, out low, out _))
        {
            high = low;
            return !IsRaised(text, end);
        }

        high = default;
        TextCursor cursor = new(text, start);
        if (!cursor.TryReadNumber(out _) || string.CompareOrdinal(text, cursor.Index, To, 0, To.Length) != 0)
        {
            return false;
        }

        string number = text.Substring(start, cursor.Index - start);
        end = cursor.Index + To.Length;
        return DistanceText.TryRead(text, ref end, out high, out _) && !IsRaised(text, end) && Distance.TryParse(number + text.Substring(text.LastIndexOf(' ', end - 1), end - text.LastIndexOf(' ', end - 1)), out low);
    }

    /// <summary>Whether a power makes it an area or a volume: 100 ft2.</summary>
    private static bool IsRaised(string text, int end) => end < text.Length && (TextCursor.IsDigit(text[end]) || text[end] is '²' or '³' or '^');

    /// <summary>Whether a measure is printed in these units already: only metric ones have an m.</summary>
    private static bool IsIn(LengthUnits units, string text, int start, int end) =>
        units == LengthUnits.Millimeters == text.IndexOf("m", start, end - start, StringComparison.OrdinalIgnoreCase) >= 0;
}
