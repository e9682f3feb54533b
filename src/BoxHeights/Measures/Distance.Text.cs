using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct Distance
{
    /// <summary>Reads a distance as the trade writes it.</summary>
    /// <remarks>
    /// <para>Read are whole numbers, decimals with a point, fractions (<c>47-3/4</c>, <c>47 3/4</c>, <c>47¾</c>) followed by a unit:
    /// in, in., inch, inches, ", ″, ”, '' for inches; ft, ft., foot, feet, ', ′, ’ for feet; mm, cm, m. Capitals don't matter.
    /// Whole feet may be followed by inches, with or without a hyphen between: <c>3' 11-3/4"</c>, <c>7' - 11"</c> (the hyphen is never a minus there).
    /// A minus or plus before all applies to the whole distance.</para>
    /// <para>Refused are a bare number (even 0), a comma, a value between two ticks (such as 1/3 in; 1/3 ft is 4 in exactly),
    /// a part of a foot before inches, and more than 18 digits before or after the point or 9 above or below a line.</para>
    /// </remarks>
    /// <param name="text">The text; blanks around it don't matter.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a distance; the message says at which character (counted from 0) and why; of a value between two ticks it names one near by.</exception>
    public static Distance Parse(string text) =>
        DistanceText.TryReadAll(Guard.NotNull(text, nameof(text)), false, out Distance value, out TextCursor cursor) ? value : throw DistanceText.ToException(text, cursor);

    /// <summary>Reads a distance like <see cref="Parse(string)"/>, and takes the nearest tick (half to even) where the text is between two: 1/3 in, 0.33333333 m.</summary>
    /// <param name="text">The text; blanks around it don't matter.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is not a distance; the message says at which character (counted from 0) and why.</exception>
    public static Distance ParseRounded(string text) =>
        DistanceText.TryReadAll(Guard.NotNull(text, nameof(text)), true, out Distance value, out TextCursor cursor) ? value : throw cursor.ToException(DistanceText.What);

    /// <summary>Reads a distance like <see cref="Parse(string)"/>, without exceptions.</summary>
    /// <param name="text">The text, or null, which is no distance.</param>
    /// <param name="value">The distance, or zero.</param>
    /// <returns>Whether the text is a distance.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out Distance value) =>
        DistanceText.TryReadAll(text ?? "", false, out value, out _);

    /// <summary>The distance in words that <see cref="Parse(string)"/> reads back exactly: inches on the 1/128 in grid (<c>47-3/4 in</c>), else millimeters (<c>1219.3 mm</c>).</summary>
    public override string ToString() => ToString(null, null);

    /// <summary>The distance in a format.</summary>
    /// <param name="format">
    /// <list type="bullet">
    /// <item><description><c>R</c>, null or empty: as <see cref="ToString()"/>.</description></item>
    /// <item><description><c>in</c> (<c>47-3/4 in</c>) and <c>ft</c> (<c>3 ft 11-3/4 in</c>): fractions where the 1/128 in grid is exact; else decimals of an inch
    /// to 0.001 in, with "about" before them if that isn't exact either (what begins with "about" is not read back).</description></item>
    /// <item><description><c>in16</c>, <c>ft16</c>, and so for 2, 4, 8, 32, 64 and 128: rounded to that fraction, half away from zero.</description></item>
    /// <item><description><c>mm</c>, <c>cm</c>, <c>m</c>: all decimals, always exact.</description></item>
    /// </list>
    /// Feet are left out below one foot, and inches where there are only feet.</param>
    /// <param name="formatProvider">Not used: text is the same in every culture.</param>
    /// <exception cref="FormatException">There is no such format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider = null)
    {
#if NET8_0_OR_GREATER
        TextBuffer buffer = new(stackalloc char[TextBuffer.Size]);
#else
        TextBuffer buffer = new(new char[TextBuffer.Size]);
#endif
        DistanceText.Write(ref buffer, ticks, DistanceText.ReadFormat(format ?? ""));
        return buffer.ToString();
    }
}
