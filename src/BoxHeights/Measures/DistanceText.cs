using System;
#if NET8_0_OR_GREATER
using Chars = System.ReadOnlySpan<char>;
#else
using Chars = string;
#endif

namespace BoxHeights;

/// <summary>Reads and writes distances: one engine for every form of text.</summary>
internal static partial class DistanceText
{
    internal const string What = "a distance";

    // The magnitude of the lowest long; the highest has one less.
    private const ulong LowestMagnitude = 1UL << 63;

    private enum Unit
    {
        Inch,
        Foot,
        Millimeter,
        Centimeter,
        Meter,
    }

    /// <summary>Reads the longest distance that begins at an index, and leaves the index after it; blanks after it are not taken.</summary>
    /// <param name="text">The text around it.</param>
    /// <param name="index">Where to begin; moved to the fault if there is none.</param>
    /// <param name="value">The distance, or zero.</param>
    /// <param name="error">Why there is none, or null.</param>
    internal static bool TryRead(string text, ref int index, out Distance value, out string? error)
    {
        TextCursor cursor = new(text, index);
        bool read = TryRead(ref cursor, false, out value);
        error = null;
        if (!read)
        {
            TextCursor again = new(text, index);
            error = cursor.Fault.Reason() + (cursor.Fault == TextFault.OffGrid && TryRead(ref again, true, out Distance nearest) ? Nearest(text, nearest) : "") + ".";
        }

        index = read ? cursor.Index : cursor.FaultAt;
        return read;
    }

    /// <summary>The exception for a text that is no distance; where it lies between two steps of the grid it says what is near and on it.</summary>
    internal static FormatException ToException(Chars text, TextCursor cursor) =>
        cursor.ToException(What, cursor.Fault == TextFault.OffGrid && TryReadAll(text, true, out Distance nearest, out _) ? Nearest(text, nearest) : "");

    // Only metric units have an m. What is rounded to 1/128 in is on the grid, and so is every tick in millimeters.
    private static string Nearest(Chars text, Distance nearest) =>
        "; near it and on the grid is " + nearest.ToString(text.IndexOf('m') >= 0 || text.IndexOf('M') >= 0 ? "mm" : "in" + FinestDenominator);

    /// <summary>Reads a whole text as one distance.</summary>
    internal static bool TryReadAll(Chars text, bool rounded, out Distance value, out TextCursor cursor)
    {
        cursor = new TextCursor(text);
        if (TryReadPlain(text, out value))
        {
            return true;
        }

        cursor.SkipBlanks();
        if (TryRead(ref cursor, rounded, out value) && cursor.ReadEnd())
        {
            return true;
        }

        value = default;
        return false;
    }

    /// <summary>Reads the longest distance that begins at the cursor.</summary>
    internal static bool TryRead(ref TextCursor cursor, bool rounded, out Distance value)
    {
        value = default;
        bool negative = cursor.TakeSign();
        int start = cursor.Index;
        if (!cursor.TryReadNumber(out TextNumber number))
        {
            return false;
        }

        cursor.SkipBlanks();
        if (!TryReadUnit(ref cursor, out Unit unit))
        {
            return cursor.Fail(TextFault.LengthUnitExpected, cursor.Index);
        }

        if (!TryScale(ref cursor, number, TicksPer(unit), rounded, out ulong ticks))
        {
            return false;
        }

        if (unit == Unit.Foot && TryReadInchesAfterFeet(ref cursor, out TextNumber inches))
        {
            if (!number.IsWhole)
            {
                return cursor.Fail(TextFault.FeetWithPart, start);
            }

            if (!TryScale(ref cursor, inches, Distance.TicksPerInch, rounded, out ulong inchTicks))
            {
                return false;
            }

            ticks += inchTicks;
        }

        if (!TextNumber.TrySign(ticks, negative, out long signed))
        {
            return cursor.Fail(TextFault.TooLarge, start);
        }

        value = Distance.FromTicks(signed);
        return true;
    }

    private static bool TryScale(ref TextCursor cursor, TextNumber number, long perUnit, bool rounded, out ulong ticks)
    {
        TextFault fault = number.Scale(perUnit, rounded, out ticks);
        fault = fault == TextFault.None && ticks > LowestMagnitude ? TextFault.TooLarge : fault;
        return fault == TextFault.None || cursor.Fail(fault, number.PartAt);
    }

    // Nothing is taken unless inches follow: "3 ft to 4 ft" and "3' 2 boxes" end after the feet.
    private static bool TryReadInchesAfterFeet(ref TextCursor cursor, out TextNumber inches)
    {
        inches = default;
        int end = cursor.Index;
        cursor.SkipBlanks();
        if (TextCursor.IsHyphen(cursor.Current))
        {
            cursor.Index++;
            cursor.SkipBlanks();
        }

        // A point right after the feet is the end of "ft." or of a sentence as likely as the beginning of inches.
        bool begins = cursor.StartsNumber && (cursor.Current != '.' || cursor.Index > end);
        if (begins && cursor.TryReadNumber(out inches))
        {
            cursor.SkipBlanks();
            int unitAt = cursor.Index;
            if (TryReadUnit(ref cursor, out Unit unit) && unit == Unit.Inch)
            {
                return true;
            }

            cursor.Fail(TextFault.InchUnitExpected, unitAt);
        }

        cursor.Index = end;
        return false;
    }

    private static bool TryReadUnit(ref TextCursor cursor, out Unit unit)
    {
        unit = Unit.Inch;
        switch (cursor.Current)
        {
            case '"' or '\u2033' or '\u201D':
                cursor.Index++;
                return true;
            case '\'' or '\u2032' or '\u2019':
                bool twice = cursor.Next is '\'' or '\u2032' or '\u2019';
                unit = twice ? Unit.Inch : Unit.Foot;
                cursor.Index += twice ? 2 : 1;
                return true;
            case 'i' or 'I':
                return TakeAbbreviation(ref cursor, "in") || cursor.TakeWord("inches") || cursor.TakeWord("inch");
            case 'f' or 'F':
                unit = Unit.Foot;
                return TakeAbbreviation(ref cursor, "ft") || cursor.TakeWord("feet") || cursor.TakeWord("foot");
            case 'c' or 'C':
                unit = Unit.Centimeter;
                return TakeLength(ref cursor, "cm");
            case 'm' or 'M':
                unit = cursor.Next is 'm' or 'M' ? Unit.Millimeter : Unit.Meter;
                return TakeLength(ref cursor, unit == Unit.Millimeter ? "mm" : "m");
            default:
                return false;
        }
    }

    // "in." and "ft." may have their point, if it isn't the point of a number.
    private static bool TakeAbbreviation(ref TextCursor cursor, string word)
    {
        if (!(word == "in" ? TakeLength(ref cursor, word) : cursor.TakeWord(word)))
        {
            return false;
        }

        if (cursor.Current == '.' && !TextCursor.IsDigit(cursor.Next))
        {
            cursor.Index++;
        }

        return true;
    }

    // A power after the unit makes it an area or a volume.
    private static bool TakeLength(ref TextCursor cursor, string word)
    {
        int start = cursor.Index;
        if (cursor.TakeWord(word) && !(TextCursor.IsDigit(cursor.Current) || cursor.Current is '²' or '³' or '^'))
        {
            return true;
        }

        cursor.Index = start;
        return false;
    }

    private static long TicksPer(Unit unit) => unit switch
    {
        Unit.Inch => Distance.TicksPerInch,
        Unit.Foot => Distance.TicksPerFoot,
        Unit.Millimeter => Distance.TicksPerMillimeter,
        Unit.Centimeter => TicksPerCentimeter,
        _ => TicksPerMeter,
    };
}
