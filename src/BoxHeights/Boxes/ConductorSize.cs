using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>A conductor's size by American wire gauge: 18, 16, 14, 12, 10, 8 or 6.</summary>
/// <remarks>
/// Ordered by thickness: 14 AWG comes before 12 AWG, since the smaller number is the thicker wire. <c>default</c> means "not stated",
/// comes first. Larger conductors are not for boxes of this kind (NEC 314.16 and 314.28).
/// </remarks>
public readonly partial record struct ConductorSize : IComparable<ConductorSize>
{
    private const string Unit = "AWG";

    private readonly byte awg;

    private ConductorSize(byte awg) => this.awg = awg;

    /// <summary>18 AWG.</summary>
    public static ConductorSize Awg18 => new(18);

    /// <summary>16 AWG.</summary>
    public static ConductorSize Awg16 => new(16);

    /// <summary>14 AWG.</summary>
    public static ConductorSize Awg14 => new(14);

    /// <summary>12 AWG.</summary>
    public static ConductorSize Awg12 => new(12);

    /// <summary>10 AWG.</summary>
    public static ConductorSize Awg10 => new(10);

    /// <summary>8 AWG.</summary>
    public static ConductorSize Awg8 => new(8);

    /// <summary>6 AWG.</summary>
    public static ConductorSize Awg6 => new(6);

    /// <summary>The gauge number; 0 if not stated.</summary>
    public int Awg => awg;

    /// <summary>Whether the left wire is thinner.</summary>
    public static bool operator <(ConductorSize left, ConductorSize right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left wire is thicker.</summary>
    public static bool operator >(ConductorSize left, ConductorSize right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left wire is not thicker.</summary>
    public static bool operator <=(ConductorSize left, ConductorSize right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left wire is not thinner.</summary>
    public static bool operator >=(ConductorSize left, ConductorSize right) => left.CompareTo(right) >= 0;

    /// <summary>A size by its gauge number.</summary>
    /// <param name="awg">18, 16, 14, 12, 10, 8 or 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public static ConductorSize FromAwg(int awg) => TryFromAwg(awg, out ConductorSize size)
        ? size
        : throw new ArgumentOutOfRangeException(nameof(awg), awg, "Conductors here are 18, 16, 14, 12, 10, 8 or 6 AWG.");

    /// <summary>Reads a size such as "14 AWG".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text.</exception>
    public static ConductorSize Parse(string text) =>
        TryParse(text ?? throw new ArgumentNullException(nameof(text)), out ConductorSize size)
            ? size
            : throw new FormatException("\"" + text + "\" is no conductor size: write 18, 16, 14, 12, 10, 8 or 6 and AWG, such as 14 AWG.");

    /// <summary>Reads a size such as "14 AWG"; false for any other text.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="size">The size read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out ConductorSize size)
    {
        size = default;
        string[] words = (text ?? "").Trim().Split(' ');
        return words.Length == 2 && string.Equals(words[1], Unit, StringComparison.OrdinalIgnoreCase)
            && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int awg) && TryFromAwg(awg, out size);
    }

    internal static bool TryFromAwg(int awg, out ConductorSize size)
    {
        bool known = awg is 18 or 16 or 14 or 12 or 10 or 8 or 6;
        size = known ? new((byte)awg) : default;
        return known;
    }

    /// <inheritdoc/>
    public int CompareTo(ConductorSize other) => Thickness.CompareTo(other.Thickness);

    /// <summary>The size in words: "14 AWG"; "not stated" for <c>default</c>.</summary>
    public override string ToString() => awg == 0 ? "not stated" : awg.ToString(CultureInfo.InvariantCulture) + " " + Unit;

    private int Thickness => awg == 0 ? int.MinValue : -awg;
}
