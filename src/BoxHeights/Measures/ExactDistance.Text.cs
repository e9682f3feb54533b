using System;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct ExactDistance
{
    private const string Inches = " in";

    // As many as nobody needs who measures; more would only keep a reader busy.
    private const int MostDigits = 200;

    /// <summary>Reads what <see cref="ToString"/> writes: whatever <see cref="Distance.Parse(string)"/> reads, or inches with a fraction of any denominator, <c>10-2/3 in</c>.</summary>
    /// <param name="text">The text; blanks around it don't matter.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="FormatException">The text is no length.</exception>
    public static ExactDistance Parse(string text) => TryParse(text ?? throw new ArgumentNullException(nameof(text)), out ExactDistance value) ? value
        : throw new FormatException("This is not a length such as \"10-2/3 in\" or what a distance is read from.");

    /// <summary>Reads a length like <see cref="Parse"/>, without exceptions.</summary>
    /// <param name="text">The text, or null, which is no length.</param>
    /// <param name="value">The length, or zero.</param>
    /// <returns>Whether the text is a length.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out ExactDistance value)
    {
        string trimmed = text?.Trim() ?? "";
        if (Distance.TryParse(trimmed, out Distance distance))
        {
            value = distance;
            return true;
        }

        value = default;
        bool negative = trimmed.StartsWith("-", StringComparison.Ordinal);
        if (trimmed.Length > MostDigits || !trimmed.EndsWith(Inches, StringComparison.Ordinal))
        {
            return false;
        }

        string[] parts = trimmed.Substring(negative ? 1 : 0, trimmed.Length - Inches.Length - (negative ? 1 : 0)).Split('-');
        string[] fraction = parts[parts.Length - 1].Split('/');
        if (parts.Length > 2 || fraction.Length != 2 || !IsWhole(parts.Length == 1 ? "0" : parts[0], out BigInteger whole)
            || !IsWhole(fraction[0], out BigInteger above) || !IsWhole(fraction[1], out BigInteger below) || below.IsZero)
        {
            return false;
        }

        BigInteger size = ((whole * below) + above) * Distance.TicksPerInch;
        value = new(negative ? -size : size, below);
        return true;
    }

    /// <summary>The length as <see cref="Distance"/> prints it where it is on the grid, else as an exact fraction of an inch: "10-2/3 in"; <see cref="Parse"/> reads it back.</summary>
    public override string ToString()
    {
        if (IsOnGrid)
        {
            return RoundDown().ToString();
        }

        ExactDistance inches = new(BigInteger.Abs(numerator), Denominator * Distance.TicksPerInch);
        BigInteger whole = BigInteger.DivRem(inches.numerator, inches.Denominator, out BigInteger rest);
        string fraction = rest.ToString(CultureInfo.InvariantCulture) + "/" + inches.Denominator.ToString(CultureInfo.InvariantCulture) + " in";
        return (numerator.Sign < 0 ? "-" : "") + (whole.IsZero ? "" : whole.ToString(CultureInfo.InvariantCulture) + "-") + fraction;
    }

    private static bool IsWhole(string digits, out BigInteger value) => BigInteger.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value);
}
