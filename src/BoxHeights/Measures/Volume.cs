using System;

namespace BoxHeights;

/// <summary>The room in a box or what a conductor takes of it, exact in whole picoliters.</summary>
/// <remarks>
/// 1 in³ is 16,387,064,000 pL and 1 cm³ is 1,000,000,000 pL (25.4 mm cubed), so that every 0.001 in³ and 1/64 in³ is whole.
/// <c>default</c> is <see cref="Zero"/>. The range is about ±9,223 m³; leaving it throws an <see cref="OverflowException"/>.
/// </remarks>
public readonly partial record struct Volume : IComparable<Volume>, IComparable, IFormattable
{
    internal const long PicolitersPerCubicInch = 16_387_064_000;
    internal const long PicolitersPerCubicCentimeter = 1_000_000_000;

    private readonly long picoliters;

    private Volume(long picoliters) => this.picoliters = picoliters;

    /// <summary>No volume at all.</summary>
    public static Volume Zero => default;

    /// <summary>The volume in picoliters.</summary>
    public long Picoliters => picoliters;

    /// <summary>The volume in cubic inches: exact on the grids of 0.001 in³ and 1/64 in³, elsewhere rounded to 28 digits.</summary>
    public decimal CubicInches => picoliters / (decimal)PicolitersPerCubicInch;

    /// <summary>The volume in cubic centimeters, always exact (up to nine decimals).</summary>
    public decimal CubicCentimeters => picoliters / (decimal)PicolitersPerCubicCentimeter;

    /// <summary>Whether the left volume is less.</summary>
    public static bool operator <(Volume left, Volume right) => left.picoliters < right.picoliters;

    /// <summary>Whether the left volume is more.</summary>
    public static bool operator >(Volume left, Volume right) => left.picoliters > right.picoliters;

    /// <summary>Whether the left volume is less or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left.picoliters <= right.picoliters;

    /// <summary>Whether the left volume is more or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left.picoliters >= right.picoliters;

    /// <summary>The sum.</summary>
    /// <exception cref="OverflowException">The sum is beyond the scale.</exception>
    public static Volume operator +(Volume left, Volume right) => new(checked(left.picoliters + right.picoliters));

    /// <summary>The difference; negative when the right volume is more.</summary>
    /// <exception cref="OverflowException">The difference is beyond the scale.</exception>
    public static Volume operator -(Volume left, Volume right) => new(checked(left.picoliters - right.picoliters));

    /// <summary>A whole number of times the volume.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public static Volume operator *(Volume value, int times) => new(checked(value.picoliters * times));

    /// <summary>A whole number of times the volume.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public static Volume operator *(int times, Volume value) => value * times;

    /// <summary>The volume of a number of picoliters.</summary>
    /// <param name="picoliters">Any whole number.</param>
    public static Volume FromPicoliters(long picoliters) => new(picoliters);

    /// <summary>The volume of a decimal number of cubic inches.</summary>
    /// <param name="cubicInches">Up to six decimals, on the grid of 1/16,387,064,000 in³: every 0.001 in³ is.</param>
    /// <exception cref="ArgumentException">The number is between two picoliters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the scale.</exception>
    public static Volume FromCubicInches(decimal cubicInches) =>
        new(Grid.Scale(cubicInches, PicolitersPerCubicInch, "in3", nameof(cubicInches), Print));

    /// <summary>The volume of a decimal number of cubic centimeters.</summary>
    /// <param name="cubicCentimeters">Up to nine decimals.</param>
    /// <exception cref="ArgumentException">The number is between two picoliters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the scale.</exception>
    public static Volume FromCubicCentimeters(decimal cubicCentimeters) =>
        new(Grid.Scale(cubicCentimeters, PicolitersPerCubicCentimeter, "cm3", nameof(cubicCentimeters), Print));

    /// <summary>The sum, for callers without operators.</summary>
    /// <exception cref="OverflowException">The sum is beyond the scale.</exception>
    public Volume Add(Volume other) => this + other;

    /// <summary>The difference, for callers without operators.</summary>
    /// <exception cref="OverflowException">The difference is beyond the scale.</exception>
    public Volume Subtract(Volume other) => this - other;

    /// <summary>A whole number of times the volume, for callers without operators.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public Volume Multiply(int times) => this * times;

    /// <summary>A number of quarters of the volume, as conductor allowances are counted: 5 quarters of 2 in³ are 2.5 in³.</summary>
    /// <param name="quarters">Any whole number.</param>
    /// <exception cref="ArgumentException">The answer is between two picoliters; never for a multiple of 0.001 in³ or 1/16 in³.</exception>
    /// <exception cref="OverflowException">The answer is beyond the scale.</exception>
    public Volume MultiplyQuarters(int quarters)
    {
        long product = checked(picoliters * quarters);
        return product % 4 == 0
            ? new(product / 4)
            : throw new ArgumentException(FormattableString.Invariant($"{quarters} quarters of {this} are not a whole number of picoliters."), nameof(quarters));
    }

    /// <inheritdoc/>
    public int CompareTo(Volume other) => picoliters.CompareTo(other.picoliters);

    /// <summary>Compares with another volume; every volume is more than null.</summary>
    /// <exception cref="ArgumentException">The other object is not a volume.</exception>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Volume other => CompareTo(other),
        _ => throw new ArgumentException("A volume compares only with a volume.", nameof(obj)),
    };

    private static string Print(long picoliters) => new Volume(picoliters).ToString();
}
