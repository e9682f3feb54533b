using System;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct Volume
{
    private const long PicolitersPerThousandth = PicolitersPerCubicInch / 1000;

    /// <summary>Reads a volume: a number as for <see cref="Distance.Parse(string)"/> and a unit.</summary>
    /// <remarks>Units are in3, in³, in^3, cu in, cu. in., cubic inch, cubic inches, and cm3, cm³, cm^3, cu cm. A bare number is refused.</remarks>
    /// <param name="text">The text, such as <c>20.3 in3</c>, <c>18 cu in</c> or <c>295 cm3</c>; blanks around it don't matter.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a volume; the message says at which character (counted from 0) and why.</exception>
    public static Volume Parse(string text) =>
        TryRead(text ?? throw new ArgumentNullException(nameof(text)), out Volume value, out TextCursor cursor) ? value : throw cursor.ToException("a volume");

    /// <summary>Reads a volume like <see cref="Parse"/>, without exceptions.</summary>
    /// <param name="text">The text, or null, which is no volume.</param>
    /// <param name="value">The volume, or zero.</param>
    /// <returns>Whether the text is a volume.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out Volume value) => TryRead(text ?? "", out value, out _);

    /// <summary>The volume in words that <see cref="Parse"/> reads back exactly: cubic inches on the grid of 0.001 in³ (<c>20.3 in3</c>), else cubic centimeters (<c>295.1 cm3</c>).</summary>
    public override string ToString() => ToString(null, null);

    /// <summary>The volume in a format.</summary>
    /// <param name="format"><c>R</c>, null or empty: as <see cref="ToString()"/>. <c>in3</c>: to 0.001 in³, half away from zero, with "about" before it
    /// where that isn't exact (and then not read back). <c>cm3</c>: all decimals, always exact.</param>
    /// <param name="formatProvider">Not used: text is the same in every culture.</param>
    /// <exception cref="FormatException">There is no such format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider = null)
    {
        bool exactInches = picoliters % PicolitersPerThousandth == 0;
        switch (format)
        {
            case "in3":
            case null or "" or "R" when exactInches:
                decimal thousandths = decimal.Round(CubicInches, 3, MidpointRounding.AwayFromZero);
                return (exactInches ? "" : "about ") + (thousandths == 0m ? 0m : thousandths).ToString("0.###", CultureInfo.InvariantCulture) + " in3";
            case null or "" or "R" or "cm3":
                return CubicCentimeters.ToString("0.#########", CultureInfo.InvariantCulture) + " cm3";
            default:
                throw new FormatException("\"" + format + "\" is not a volume format. Known are R, in3 and cm3.");
        }
    }

    private static bool TryRead(string text, out Volume value, out TextCursor cursor)
    {
        value = default;
        cursor = new TextCursor(text);
        cursor.SkipBlanks();
        bool negative = cursor.TakeSign();
        int start = cursor.Index;
        if (!cursor.TryReadNumber(out TextNumber number))
        {
            return false;
        }

        cursor.SkipBlanks();
        int unitAt = cursor.Index;
        if (!TryReadUnit(ref cursor, out long perUnit))
        {
            return cursor.Fail(TextFault.VolumeUnitExpected, unitAt);
        }

        if (!cursor.ReadEnd())
        {
            return false;
        }

        TextFault fault = number.Scale(perUnit, false, out ulong magnitude);
        if (fault == TextFault.None && TextNumber.TrySign(magnitude, negative, out long signed))
        {
            value = new(signed);
            return true;
        }

        return cursor.Fail(fault == TextFault.None ? TextFault.TooLarge : fault, fault == TextFault.OffGrid ? number.PartAt : start);
    }

    private static bool TryReadUnit(ref TextCursor cursor, out long perUnit)
    {
        bool cubic = cursor.TakeWord("cubic");
        if (!cubic && cursor.TakeWord("cu"))
        {
            cubic = true;
            cursor.Take('.');
        }

        if (cubic)
        {
            cursor.SkipBlanks();
        }

        perUnit = PicolitersPerCubicInch;
        bool inches = cubic && (cursor.TakeWord("inches") || cursor.TakeWord("inch"));
        if (!inches && cursor.TakeWord("in"))
        {
            inches = cubic || TakeCube(ref cursor);
            if (cubic)
            {
                cursor.Take('.');
            }

            return inches;
        }

        if (inches)
        {
            return true;
        }

        perUnit = PicolitersPerCubicCentimeter;
        return cursor.TakeWord("cm") && (cubic || TakeCube(ref cursor));
    }

    private static bool TakeCube(ref TextCursor cursor)
    {
        cursor.Take('^');
        return cursor.Take('3') || cursor.Take('³');
    }
}
