using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>A conductor's size: by American wire gauge 18, 16, 14, 12, 10, 8 or 6, or by its metric cross section 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 mm².</summary>
/// <remarks>
/// Ordered by thickness: 14 AWG comes before 12 AWG, since the smaller number is the thicker wire, and 1.5 mm² before both. <c>default</c> means "not stated",
/// comes first. Larger conductors are not for boxes of this kind (NEC 314.16 and 314.28). Metric sizes are those of IEC 60228; how gauges stand between
/// them is by the areas of ASTM B258, both from memory.
/// </remarks>
public readonly partial record struct ConductorSize : IComparable<ConductorSize>
{
    private const string Unit = "AWG";
    private const string MetricUnit = "mm2";

    // From thin to thick, each by its gauge or by its metric cross section: 18 AWG is 0.823 mm2, 16: 1.31, 14: 2.08, 12: 3.31, 10: 5.26, 8: 8.37, 6: 13.3.
    private static readonly (int Awg, decimal Metric)[] Known =
    [
        (0, 0m), (0, 0.5m), (0, 0.75m), (18, 0m), (0, 1m), (16, 0m), (0, 1.5m), (14, 0m), (0, 2.5m), (12, 0m), (0, 4m), (10, 0m), (0, 6m), (8, 0m), (0, 10m), (6, 0m), (0, 16m),
    ];

    private readonly byte place;

    private ConductorSize(int place) => this.place = (byte)place;

    /// <summary>18 AWG.</summary>
    public static ConductorSize Awg18 => FromAwg(18);

    /// <summary>16 AWG.</summary>
    public static ConductorSize Awg16 => FromAwg(16);

    /// <summary>14 AWG.</summary>
    public static ConductorSize Awg14 => FromAwg(14);

    /// <summary>12 AWG.</summary>
    public static ConductorSize Awg12 => FromAwg(12);

    /// <summary>10 AWG.</summary>
    public static ConductorSize Awg10 => FromAwg(10);

    /// <summary>8 AWG.</summary>
    public static ConductorSize Awg8 => FromAwg(8);

    /// <summary>6 AWG.</summary>
    public static ConductorSize Awg6 => FromAwg(6);

    /// <summary>The gauge number; 0 of a metric size, and if not stated.</summary>
    public int Awg => Known[place].Awg;

    /// <summary>The metric cross section in mm²; 0 of a gauge, and if not stated.</summary>
    public decimal SquareMillimeters => Known[place].Metric;

    /// <summary>Every size from thin to thick, by its <see cref="Place"/>; the first is that which isn't stated.</summary>
    internal static int Count => Known.Length;

    /// <summary>Where it stands among all sizes, from thin to thick; 0 if not stated.</summary>
    internal int Place => place;

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

    /// <summary>A size by its metric cross section.</summary>
    /// <param name="area">0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 mm².</param>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public static ConductorSize FromSquareMillimeters(decimal area) => TryFromSquareMillimeters(area, out ConductorSize size)
        ? size
        : throw new ArgumentOutOfRangeException(nameof(area), area, "Metric conductors here are 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 mm².");

    /// <summary>Reads a size such as "14 AWG" or "2.5 mm2".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text.</exception>
    public static ConductorSize Parse(string text) =>
        TryParse(text ?? throw new ArgumentNullException(nameof(text)), out ConductorSize size)
            ? size
            : throw new FormatException("\"" + text + "\" is no conductor size: write 18, 16, 14, 12, 10, 8 or 6 and AWG, such as 14 AWG, or 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10 or 16 and mm2.");

    /// <summary>Reads a size such as "14 AWG" or "2.5 mm2"; false for any other text.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="size">The size read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out ConductorSize size)
    {
        size = default;
        string[] words = (text ?? "").Trim().Split(' ');
        return words.Length == 2 && (string.Equals(words[1], Unit, StringComparison.OrdinalIgnoreCase)
            ? int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int awg) && TryFromAwg(awg, out size)
            : words[1] is MetricUnit or "mm²" && decimal.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal area) && TryFromSquareMillimeters(area, out size));
    }

    internal static bool TryFromAwg(int awg, out ConductorSize size) => TryFind(awg != 0, (awg, 0m), out size);

    internal static bool TryFromSquareMillimeters(decimal area, out ConductorSize size) => TryFind(area != 0m, (0, area), out size);

    /// <summary>The size at a place among all.</summary>
    internal static ConductorSize At(int place) => new(place);

    private static bool TryFind(bool isStated, (int, decimal) named, out ConductorSize size)
    {
        int place = isStated ? Array.IndexOf(Known, named) : -1;
        size = new(Math.Max(0, place));
        return place > 0;
    }

    /// <inheritdoc/>
    public int CompareTo(ConductorSize other) => place.CompareTo(other.place);

    /// <summary>The size in words: "14 AWG", "2.5 mm2"; "not stated" for <c>default</c>.</summary>
    public override string ToString() => place == 0 ? "not stated"
        : Awg != 0 ? Awg.ToString(CultureInfo.InvariantCulture) + " " + Unit
        : SquareMillimeters.ToString(CultureInfo.InvariantCulture) + " " + MetricUnit;
}
