using System;

namespace BoxHeights;

/// <summary>A length or a difference of two positions, exact on a grid of 12.5 nanometers.</summary>
/// <remarks>
/// <para>There are 2,032,000 ticks to the inch and 80,000 to the millimeter, so that every 1/128 in, 0.001 in, 0.01 ft, 0.1 mm and 1 µm
/// is a whole number of ticks, and half of every 1/64 in is too. Sums, differences, comparisons and whole multiples are exact.
/// The inch is 25.4 mm exactly (international yard and pound agreement of 1959).</para>
/// <para><c>default</c> is <see cref="Zero"/>. The range is about ±115 million km; leaving it throws an <see cref="OverflowException"/>.
/// There is no division: <see cref="Split"/> gives parts that add up.</para>
/// </remarks>
public readonly partial record struct Distance : IComparable<Distance>, IComparable, IFormattable
{
    internal const long TicksPerInch = 2_032_000;
    internal const long TicksPerMillimeter = 80_000;
    internal const long TicksPerFoot = 12 * TicksPerInch;

    private readonly long ticks;

    private Distance(long ticks) => this.ticks = ticks;

    /// <summary>No distance at all.</summary>
    public static Distance Zero => default;

    /// <summary>The lowest distance, about −115 million km; as an end of a <see cref="DistanceSet"/> it means no bound.</summary>
    public static Distance MinValue => new(long.MinValue);

    /// <summary>The highest distance, about 115 million km; as an end of a <see cref="DistanceSet"/> it means no bound.</summary>
    public static Distance MaxValue => new(long.MaxValue);

    /// <summary>The distance in ticks of 12.5 nm: 2,032,000 to the inch, 80,000 to the millimeter.</summary>
    public long Ticks => ticks;

    /// <summary>The distance in inches: exact on the grid of 1/128 in and of 0.001 in, elsewhere rounded to 28 digits.</summary>
    public decimal Inches => ticks / (decimal)TicksPerInch;

    /// <summary>The distance in millimeters, always exact (up to seven decimals).</summary>
    public decimal Millimeters => ticks / (decimal)TicksPerMillimeter;

    /// <summary>Whether the left distance is lower.</summary>
    public static bool operator <(Distance left, Distance right) => left.ticks < right.ticks;

    /// <summary>Whether the left distance is higher.</summary>
    public static bool operator >(Distance left, Distance right) => left.ticks > right.ticks;

    /// <summary>Whether the left distance is lower or equal.</summary>
    public static bool operator <=(Distance left, Distance right) => left.ticks <= right.ticks;

    /// <summary>Whether the left distance is higher or equal.</summary>
    public static bool operator >=(Distance left, Distance right) => left.ticks >= right.ticks;

    /// <summary>The sum.</summary>
    /// <exception cref="OverflowException">The sum is beyond the scale.</exception>
    public static Distance operator +(Distance left, Distance right) => new(checked(left.ticks + right.ticks));

    /// <summary>The difference.</summary>
    /// <exception cref="OverflowException">The difference is beyond the scale.</exception>
    public static Distance operator -(Distance left, Distance right) => new(checked(left.ticks - right.ticks));

    /// <summary>The distance with the other sign.</summary>
    /// <exception cref="OverflowException">The distance is <see cref="MinValue"/>.</exception>
    public static Distance operator -(Distance value) => new(checked(-value.ticks));

    /// <summary>A whole number of times the distance.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public static Distance operator *(Distance value, int times) => new(checked(value.ticks * times));

    /// <summary>A whole number of times the distance.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public static Distance operator *(int times, Distance value) => value * times;

    /// <summary>The distance of a number of ticks of 12.5 nm.</summary>
    /// <param name="ticks">Any whole number.</param>
    public static Distance FromTicks(long ticks) => new(ticks);

    /// <summary>The distance of whole inches and a fraction: <c>FromInches(47, 3, 4)</c> is 47-3/4 in.</summary>
    /// <param name="whole">Whole inches; negative only with a numerator of 0.</param>
    /// <param name="numerator">0 or more; it may exceed the denominator.</param>
    /// <param name="denominator">1 or more; such as 2, 4, 8, 16, 32, 64, 128, 10, 100 or 1000.</param>
    /// <exception cref="ArgumentException">The fraction is not on the grid (as 1/3 in), or a negative whole comes with a fraction.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The numerator is negative, or the denominator less than 1.</exception>
    public static Distance FromInches(int whole, int numerator, int denominator)
    {
        if (numerator < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(numerator), numerator, "The numerator is 0 or more: negate the whole distance instead.");
        }

        if (denominator < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "The denominator is 1 or more.");
        }

        if (whole < 0 && numerator != 0)
        {
            throw new ArgumentException("A negative whole with a fraction reads two ways: negate the whole distance instead.", nameof(whole));
        }

        long part = numerator * TicksPerInch;
        if (part % denominator != 0)
        {
            decimal nearest = decimal.Round(part / (decimal)denominator);
            throw Grid.Between(
                FormattableString.Invariant($"{numerator}/{denominator} in"), nameof(numerator), TicksPerInch, "in", new Distance((long)nearest).ToString());
        }

        // An int of inches and a fraction of ints are far inside the scale.
        return new((whole * TicksPerInch) + (part / denominator));
    }

    /// <summary>The distance of a decimal number of inches: <c>FromInches(43.1875m)</c>.</summary>
    /// <remarks>There is none for <c>double</c>, on purpose: beside it a plain <c>FromInches(48)</c> would read two ways. What is measured in <c>double</c>
    /// comes in by <see cref="FromInchesRounded"/>; scripting languages that turn 43.1875 into a decimal by themselves may write it so.</remarks>
    /// <param name="inches">Up to seven decimals, on the grid of 1/2,032,000 in: every 0.001 in and every 1/128 in is.</param>
    /// <exception cref="ArgumentException">The number is between two ticks.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the scale.</exception>
    public static Distance FromInches(decimal inches) => new(Grid.Scale(inches, TicksPerInch, "in", nameof(inches), Print));

    /// <summary>The distance of feet and inches: <c>FromFeetInches(3, 11, 3, 4)</c> is 3 ft 11-3/4 in.</summary>
    /// <param name="feet">Whole feet; negative only when inches and numerator are 0.</param>
    /// <param name="inches">Whole inches, 0 or more when feet aren't 0; 12 and more are allowed.</param>
    /// <param name="numerator">0 or more.</param>
    /// <param name="denominator">1 or more.</param>
    /// <exception cref="ArgumentException">The fraction is not on the grid, or a negative part comes with another part.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The numerator is negative, or the denominator less than 1.</exception>
    public static Distance FromFeetInches(int feet, int inches, int numerator = 0, int denominator = 1)
    {
        if ((feet < 0 && (inches != 0 || numerator != 0)) || (feet > 0 && inches < 0))
        {
            throw new ArgumentException("A negative part beside another part reads two ways: negate the whole distance instead.", nameof(feet));
        }

        return new((feet * TicksPerFoot) + FromInches(inches, numerator, denominator).ticks);
    }

    /// <summary>The distance of a decimal number of feet.</summary>
    /// <param name="feet">Up to nine decimals, on the grid of 1/24,384,000 ft: every 0.01 ft is.</param>
    /// <exception cref="ArgumentException">The number is between two ticks.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the scale.</exception>
    public static Distance FromFeet(decimal feet) => new(Grid.Scale(feet, TicksPerFoot, "ft", nameof(feet), Print));

    /// <summary>The distance of a decimal number of millimeters.</summary>
    /// <param name="millimeters">Up to seven decimals, on the grid of 1/80,000 mm: every micrometer is.</param>
    /// <exception cref="ArgumentException">The number is between two ticks.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is beyond the scale.</exception>
    public static Distance FromMillimeters(decimal millimeters) =>
        new(Grid.Scale(millimeters, TicksPerMillimeter, "mm", nameof(millimeters), Print));

    /// <summary>The distance nearest to a number of inches, half to even.</summary>
    /// <param name="inches">Any finite number within the scale.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite, or beyond the scale.</exception>
    public static Distance FromInchesRounded(double inches) => new(Grid.ScaleRounded(inches, TicksPerInch, nameof(inches)));

    /// <summary>The distance nearest to a number of millimeters, half to even.</summary>
    /// <param name="millimeters">Any finite number within the scale.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite, or beyond the scale.</exception>
    public static Distance FromMillimetersRounded(double millimeters) =>
        new(Grid.ScaleRounded(millimeters, TicksPerMillimeter, nameof(millimeters)));

    /// <summary>The lower of two distances.</summary>
    public static Distance Min(Distance left, Distance right) => left.ticks <= right.ticks ? left : right;

    /// <summary>The higher of two distances.</summary>
    public static Distance Max(Distance left, Distance right) => left.ticks >= right.ticks ? left : right;

    /// <summary>The sum, for callers without operators.</summary>
    /// <exception cref="OverflowException">The sum is beyond the scale.</exception>
    public Distance Add(Distance other) => this + other;

    /// <summary>The difference, for callers without operators.</summary>
    /// <exception cref="OverflowException">The difference is beyond the scale.</exception>
    public Distance Subtract(Distance other) => this - other;

    /// <summary>The distance with the other sign, for callers without operators.</summary>
    /// <exception cref="OverflowException">The distance is <see cref="MinValue"/>.</exception>
    public Distance Negate() => -this;

    /// <summary>A whole number of times the distance, for callers without operators.</summary>
    /// <exception cref="OverflowException">The product is beyond the scale.</exception>
    public Distance Multiply(int times) => this * times;

    /// <summary>The distance without its sign.</summary>
    /// <exception cref="OverflowException">The distance is <see cref="MinValue"/>.</exception>
    public Distance Abs() => ticks < 0 ? -this : this;

    /// <summary>Parts that add up to this distance exactly and differ from each other by at most one tick, the longer ones first.</summary>
    /// <param name="parts">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is less than one part.</exception>
    public Distance[] Split(int parts)
    {
        if (parts < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(parts), parts, "There is 1 part or more.");
        }

        long longer = Grid.Above(ticks, parts);
        long shorter = ticks / parts - (ticks % parts < 0 ? 1 : 0);
        Distance[] split = new Distance[parts];
        for (int i = 0; i < parts; i++)
        {
            split[i] = new(i < longer ? shorter + 1 : shorter);
        }

        return split;
    }

    /// <summary>The middles of so many parts that add up to this distance: where to hang as many things, evenly, with half a part left at each end.</summary>
    /// <param name="parts">How many: 1 or more.</param>
    /// <returns>From the start of the distance.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="parts"/> is below 1, or more than there are ticks for.</exception>
    public Distance[] SplitCenters(int parts)
    {
        if (parts is < 1 or > int.MaxValue / 2)
        {
            throw new ArgumentOutOfRangeException(nameof(parts), parts, "There is 1 part or more.");
        }

        Distance[] halves = Split(2 * parts);
        Distance[] centers = new Distance[parts];
        Distance at = Zero;
        for (int i = 0; i < parts; i++)
        {
            centers[i] = at + halves[2 * i];
            at = centers[i] + halves[(2 * i) + 1];
        }

        return centers;
    }

    /// <summary>How many times the other distance this one is, exactly.</summary>
    /// <param name="other">Any distance but zero.</param>
    /// <exception cref="DivideByZeroException">The other distance is zero.</exception>
    /// <exception cref="OverflowException">The reduced ratio doesn't fit (only beside <see cref="MinValue"/>).</exception>
    public Ratio RatioTo(Distance other) => other.ticks == 0 ? throw new DivideByZeroException() : new Ratio(ticks, other.ticks);

    /// <summary>Whether this is a whole number of steps.</summary>
    /// <param name="step">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    public bool IsMultipleOf(Distance step) => Grid.Above(ticks, StepTicks(step)) == 0;

    /// <summary>The highest multiple of the step that is not above this distance (for −3/8 in and 1/4 in: −1/2 in).</summary>
    /// <param name="step">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    /// <exception cref="OverflowException">The multiple is beyond the scale.</exception>
    public Distance RoundDown(Distance step) => new(checked(ticks - Grid.Above(ticks, StepTicks(step))));

    /// <summary>The lowest multiple of the step that is not below this distance (for −3/8 in and 1/4 in: −1/4 in).</summary>
    /// <param name="step">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    /// <exception cref="OverflowException">The multiple is beyond the scale.</exception>
    public Distance RoundUp(Distance step)
    {
        long above = Grid.Above(ticks, StepTicks(step));
        return above == 0 ? this : new(checked(ticks + (step.ticks - above)));
    }

    /// <summary>The multiple of the step nearest to this distance; halfway between two, the one farther from zero.</summary>
    /// <param name="step">More than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step isn't more than zero.</exception>
    /// <exception cref="OverflowException">The multiple is beyond the scale.</exception>
    public Distance RoundNearest(Distance step)
    {
        long above = Grid.Above(ticks, StepTicks(step));
        long below = step.ticks - above;
        return above < below || (above == below && ticks < 0) ? RoundDown(step) : RoundUp(step);
    }

    /// <inheritdoc/>
    public bool Equals(Distance other) => ticks == other.ticks;

    /// <inheritdoc/>
    public override int GetHashCode() => ticks.GetHashCode();

    /// <inheritdoc/>
    public int CompareTo(Distance other) => ticks.CompareTo(other.ticks);

    /// <summary>Compares with another distance; every distance is higher than null.</summary>
    /// <exception cref="ArgumentException">The other object is not a distance.</exception>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Distance other => CompareTo(other),
        _ => throw new ArgumentException("A distance compares only with a distance.", nameof(obj)),
    };

    private static string Print(long ticks) => new Distance(ticks).ToString();

    private static long StepTicks(Distance step) =>
        step.ticks > 0 ? step.ticks : throw new ArgumentOutOfRangeException(nameof(step), step, "A step is more than zero.");
}
