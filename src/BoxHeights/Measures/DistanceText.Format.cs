using System;
#if NET8_0_OR_GREATER
using Chars = System.ReadOnlySpan<char>;
#else
using Chars = string;
#endif

namespace BoxHeights;

/// <content>The writing side.</content>
internal static partial class DistanceText
{
    private const long TicksPerCentimeter = 10 * Distance.TicksPerMillimeter;
    private const long TicksPerMeter = 1000 * Distance.TicksPerMillimeter;

    // The finest fraction that is written, and the decimal step that stands in where a distance isn't on it.
    private const int FinestDenominator = 128;
    private const ulong TicksPerFinest = Distance.TicksPerInch / FinestDenominator;
    private const ulong TicksPerThousandth = Distance.TicksPerInch / 1000;

    internal enum Style
    {
        /// <summary>Inches where the finest fraction is exact, else millimeters.</summary>
        RoundTrip,
        Inches,
        FeetInches,
        InchesRounded,
        FeetInchesRounded,
        Millimeters,
        Centimeters,
        Meters,
    }

    /// <summary>What a format text asks for.</summary>
    /// <exception cref="FormatException">There is no such format.</exception>
    internal static (Style Style, int Denominator) ReadFormat(Chars format) => format switch
    {
        "" or "R" => (Style.RoundTrip, FinestDenominator),
        "in" => (Style.Inches, FinestDenominator),
        "ft" => (Style.FeetInches, FinestDenominator),
        "mm" => (Style.Millimeters, 1),
        "cm" => (Style.Centimeters, 1),
        "m" => (Style.Meters, 1),
        "in2" => (Style.InchesRounded, 2),
        "in4" => (Style.InchesRounded, 4),
        "in8" => (Style.InchesRounded, 8),
        "in16" => (Style.InchesRounded, 16),
        "in32" => (Style.InchesRounded, 32),
        "in64" => (Style.InchesRounded, 64),
        "in128" => (Style.InchesRounded, 128),
        "ft2" => (Style.FeetInchesRounded, 2),
        "ft4" => (Style.FeetInchesRounded, 4),
        "ft8" => (Style.FeetInchesRounded, 8),
        "ft16" => (Style.FeetInchesRounded, 16),
        "ft32" => (Style.FeetInchesRounded, 32),
        "ft64" => (Style.FeetInchesRounded, 64),
        "ft128" => (Style.FeetInchesRounded, 128),
        _ => throw new FormatException(
            "\"" + format.ToString() + "\" is not a distance format. Known are R, in, ft, mm, cm, m, and in or ft followed by 2, 4, 8, 16, 32, 64 or 128."),
    };

    internal static void Write(ref TextBuffer buffer, long ticks, (Style Style, int Denominator) format)
    {
        ulong magnitude = Grid.Magnitude(ticks);
        bool negative = ticks < 0;
        ulong finest = magnitude / TicksPerFinest;
        bool onFinest = finest * TicksPerFinest == magnitude;
        switch (format.Style)
        {
            case Style.Millimeters:
            case Style.RoundTrip when !onFinest:
                WriteMetric(ref buffer, negative, magnitude, Distance.TicksPerMillimeter, " mm");
                break;
            case Style.Centimeters:
                WriteMetric(ref buffer, negative, magnitude, TicksPerCentimeter, " cm");
                break;
            case Style.Meters:
                WriteMetric(ref buffer, negative, magnitude, TicksPerMeter, " m");
                break;
            case Style.Inches or Style.FeetInches when !onFinest:
                WriteThousandths(ref buffer, negative, magnitude, format.Style == Style.FeetInches);
                break;
            default:
                // What is on the fraction asked for needs no division but by powers of two. Written, a fraction is reduced anyway.
                bool feet = format.Style is Style.FeetInches or Style.FeetInchesRounded;
                if (onFinest && (finest * (ulong)format.Denominator) % FinestDenominator == 0)
                {
                    WriteFraction(ref buffer, negative, finest / FinestDenominator, finest % FinestDenominator, FinestDenominator, feet);
                    break;
                }

                (ulong whole, ulong numerator) = Round(magnitude, (ulong)format.Denominator);
                WriteFraction(ref buffer, negative, whole, numerator, (ulong)format.Denominator, feet);
                break;
        }
    }

    private static void WriteMetric(ref TextBuffer buffer, bool negative, ulong magnitude, ulong perUnit, string unit)
    {
        WriteSign(ref buffer, negative);
        buffer.AppendDecimal(magnitude, perUnit);
        buffer.Append(unit);
    }

    private static void WriteThousandths(ref TextBuffer buffer, bool negative, ulong magnitude, bool feet)
    {
        if (magnitude % TicksPerThousandth != 0)
        {
            buffer.Append("about ");
        }

        (ulong whole, ulong thousandths) = Round(magnitude, 1000);
        WriteSign(ref buffer, negative && (whole | thousandths) != 0);
        if (WriteFeet(ref buffer, feet, ref whole, thousandths))
        {
            buffer.Append(whole);
            if (thousandths != 0)
            {
                int digits = 3;
                for (; thousandths % 10 == 0; digits--)
                {
                    thousandths /= 10;
                }

                buffer.Append('.');
                buffer.Append(thousandths, digits);
            }

            buffer.Append(" in");
        }
    }

    private static void WriteFraction(ref TextBuffer buffer, bool negative, ulong whole, ulong numerator, ulong denominator, bool feet)
    {
        WriteSign(ref buffer, negative && (whole | numerator) != 0);
        if (!WriteFeet(ref buffer, feet, ref whole, numerator))
        {
            return;
        }

        if (whole != 0 || numerator == 0)
        {
            buffer.AppendSmall(whole);
        }

        if (numerator != 0)
        {
            for (; (numerator & 1) == 0; denominator >>= 1)
            {
                numerator >>= 1;
            }

            if (whole != 0)
            {
                buffer.Append('-');
            }

            buffer.AppendSmall(numerator);
            buffer.Append('/');
            buffer.AppendSmall(denominator);
        }

        buffer.Append(" in");
    }

    // Writes the feet if there are any, and says whether inches follow.
    private static bool WriteFeet(ref TextBuffer buffer, bool feet, ref ulong whole, ulong part)
    {
        if (!feet || whole < 12)
        {
            return true;
        }

        buffer.AppendSmall(whole / 12);
        buffer.Append(" ft");
        whole %= 12;
        if ((whole | part) == 0)
        {
            return false;
        }

        buffer.Append(' ');
        return true;
    }

    private static void WriteSign(ref TextBuffer buffer, bool negative)
    {
        if (negative)
        {
            buffer.Append('-');
        }
    }

    // Whole inches and parts of an inch, half away from zero; the parts carry into the inches.
    private static (ulong Whole, ulong Parts) Round(ulong magnitude, ulong partsPerInch)
    {
        const ulong inch = Distance.TicksPerInch;
        ulong whole = magnitude / inch;
        ulong parts = ((magnitude % inch * partsPerInch * 2) + inch) / (2 * inch);
        return parts == partsPerInch ? (whole + 1, 0) : (whole, parts);
    }
}
