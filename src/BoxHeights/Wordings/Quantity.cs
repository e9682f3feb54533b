using System;

namespace BoxHeights;

/// <summary>What a quantity measures.</summary>
public enum QuantityKind
{
    /// <summary>A length, in ticks of 12.5 nm.</summary>
    Distance = 0,

    /// <summary>A volume, in picoliters.</summary>
    Volume = 1,

    /// <summary>A number of things, such as boxes.</summary>
    Count = 2,

    /// <summary>An area, in squares of a tick.</summary>
    Area = 3,

    /// <summary>A ratio of two amounts of one kind, such as the share of a box that is full, in parts of 720,720,000: every half to sixteenth and every 1/1000 is a whole number of them.</summary>
    Ratio = 4,
}

/// <summary>A measured amount: a distance, a volume, a number of things, an area or a ratio.</summary>
public readonly partial record struct Quantity
{
    private const long PartsOfOne = 720_720_000;

    internal Quantity(QuantityKind kind, long raw)
    {
        Kind = kind;
        Raw = raw;
    }

    /// <summary>What it measures.</summary>
    public QuantityKind Kind { get; }

    internal long Raw { get; }

    /// <summary>Whether it stands for there being no bound, as the margin inside a set without ends does.</summary>
    public bool IsUnbounded => Raw is long.MaxValue or long.MinValue;

    /// <summary>A distance as a quantity.</summary>
    public static implicit operator Quantity(Distance value) => new(QuantityKind.Distance, value.Ticks);

    /// <summary>A volume as a quantity.</summary>
    public static implicit operator Quantity(Volume value) => new(QuantityKind.Volume, value.Picoliters);

    /// <summary>A number of things.</summary>
    /// <param name="things">How many.</param>
    public static Quantity Of(int things) => new(QuantityKind.Count, things);

    /// <summary>The area of a rectangle.</summary>
    /// <param name="width">One side.</param>
    /// <param name="height">The other.</param>
    /// <exception cref="OverflowException">It is larger than some 2,000 m².</exception>
    public static Quantity Area(Distance width, Distance height) => new(QuantityKind.Area, checked(width.Ticks * height.Ticks));

    /// <summary>A ratio.</summary>
    /// <param name="ratio">How much, as a share of one.</param>
    /// <exception cref="ArgumentException">It is no whole number of parts of 720,720,000: 1/17, say. Round it to what you compare it with.</exception>
    /// <exception cref="OverflowException">It is larger than some twelve thousand million.</exception>
    public static Quantity Of(Ratio ratio) => PartsOfOne % ratio.Denominator == 0
        ? new(QuantityKind.Ratio, checked(ratio.Numerator * (PartsOfOne / ratio.Denominator)))
        : throw new ArgumentException(ratio + " is no whole number of parts of 720,720,000.", nameof(ratio));

    /// <summary>The ratio.</summary>
    /// <exception cref="InvalidOperationException">It is no ratio.</exception>
    public Ratio AsRatio() => Kind == QuantityKind.Ratio ? new(Raw, PartsOfOne) : throw new InvalidOperationException("This quantity is no ratio.");

    /// <summary>The distance.</summary>
    /// <exception cref="InvalidOperationException">It is no distance.</exception>
    public Distance AsDistance() => Kind == QuantityKind.Distance ? Distance.FromTicks(Raw) : throw new InvalidOperationException("This quantity is no distance.");

    /// <summary>The volume.</summary>
    /// <exception cref="InvalidOperationException">It is no volume.</exception>
    public Volume AsVolume() => Kind == QuantityKind.Volume ? Volume.FromPicoliters(Raw) : throw new InvalidOperationException("This quantity is no volume.");

    /// <summary>The amount without its sign.</summary>
    public Quantity Abs() => new(Kind, Raw == long.MinValue ? long.MaxValue : Math.Abs(Raw));

    /// <summary>The amount with its unit, exactly, as <see cref="Distance"/> or <see cref="Volume"/> prints it: inches on the 1/128 in grid, else millimeters.</summary>
    public override string ToString() => ToString(LengthUnits.Inches);

    /// <summary>The amount with its unit, exactly: a distance in a dwelling's own units; "without a bound" for what has none.</summary>
    /// <remarks>Inches off the 1/128 in grid come in millimeters; messages round them to 1/16 in.</remarks>
    /// <param name="units">The units, such as <see cref="Dwelling.Units"/>.</param>
    public string ToString(LengthUnits units) => IsUnbounded ? "without a bound" : Kind switch
    {
        QuantityKind.Distance => AsDistance().Exactly(units),
        QuantityKind.Volume => AsVolume().ToString(units == LengthUnits.Millimeters ? "cm3" : null),
        QuantityKind.Area => Square(units),
        QuantityKind.Ratio => AsRatio().ToString(),
        _ => Raw.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    private string Square(LengthUnits units)
    {
        long grid = Distance.FromInches(0, 1, 128).Ticks;
        bool metric = units == LengthUnits.Millimeters || Raw % (grid * grid) != 0;
        Distance unit = metric ? Distance.FromMillimeters(1m) : Distance.FromInches(1m);
        decimal squares = Raw / ((decimal)unit.Ticks * unit.Ticks);
        return squares.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + (metric ? " mm2" : " in2");
    }
}

/// <summary>The amounts that a rule allows.</summary>
public readonly partial record struct QuantitySet
{
    private readonly DistanceSet raw;

    internal QuantitySet(QuantityKind kind, DistanceSet raw)
    {
        Kind = kind;
        this.raw = raw;
    }

    /// <summary>What is measured.</summary>
    public QuantityKind Kind { get; }

    internal DistanceSet Raw => raw;

    /// <summary>The least amount in the set; null where nothing bounds it below, or the set is empty.</summary>
    public Quantity? Least => raw.Count == 0 || raw[0].From == Distance.MinValue ? null : new(Kind, raw[0].From.Ticks);

    /// <summary>The largest amount in the set; null where nothing bounds it above, or the set is empty.</summary>
    public Quantity? Most => raw.Count == 0 || raw[raw.Count - 1].To == Distance.MaxValue ? null : new(Kind, raw[raw.Count - 1].To.Ticks);

    /// <summary>Whether nothing is allowed.</summary>
    public bool IsEmpty => raw.Count == 0;

    /// <summary>A set of distances.</summary>
    public static implicit operator QuantitySet(DistanceSet set) => new(QuantityKind.Distance, set);

    /// <summary>All volumes up to one.</summary>
    /// <param name="most">The largest volume allowed.</param>
    public static QuantitySet AtMost(Volume most) => AtMost((Quantity)most);

    /// <summary>All amounts of a kind up to one.</summary>
    /// <param name="most">The largest amount allowed.</param>
    public static QuantitySet AtMost(Quantity most) => new(most.Kind, DistanceSet.AtMost(Distance.FromTicks(most.Raw)));

    /// <summary>All amounts of a kind from one up.</summary>
    /// <param name="least">The smallest amount allowed.</param>
    public static QuantitySet AtLeast(Quantity least) => new(least.Kind, DistanceSet.AtLeast(Distance.FromTicks(least.Raw)));

    /// <summary>All amounts of a kind between two, themselves allowed; none where the first is the larger.</summary>
    /// <param name="least">The smallest amount allowed.</param>
    /// <param name="most">The largest amount allowed.</param>
    /// <exception cref="ArgumentException">They are of two kinds.</exception>
    public static QuantitySet Between(Quantity least, Quantity most) => least.Kind == most.Kind
        ? new(least.Kind, DistanceSet.BetweenTicks(least.Raw, most.Raw))
        : throw new ArgumentException("Amounts of two kinds have nothing between them.", nameof(most));

    /// <summary>So many things or fewer.</summary>
    /// <param name="most">The largest number allowed.</param>
    public static QuantitySet AtMost(int most) => AtMost(Quantity.Of(most));

    /// <summary>So many things or more.</summary>
    /// <param name="fewest">The smallest number allowed.</param>
    public static QuantitySet AtLeast(int fewest) => AtLeast(Quantity.Of(fewest));

    /// <summary>The distances.</summary>
    /// <exception cref="InvalidOperationException">The set isn't one of distances.</exception>
    public DistanceSet AsDistances() => Kind == QuantityKind.Distance ? raw : throw new InvalidOperationException("This set isn't one of distances.");

    /// <summary>Whether an amount is allowed.</summary>
    /// <param name="amount">The amount; an amount of another kind isn't.</param>
    public bool Contains(Quantity amount) => amount.Kind == Kind && raw.Contains(Distance.FromTicks(amount.Raw));

    /// <summary>How far an amount lies inside the set; negative outside.</summary>
    internal Quantity Margin(Quantity amount) => new(Kind, raw.Margin(Distance.FromTicks(amount.Raw)).Ticks);

    /// <summary>The amounts in words, exactly: "15 in to 48 in", "at most 18 in3", "at least 2".</summary>
    public override string ToString() => ToString(LengthUnits.Inches);

    /// <summary>The amounts in words, exactly: distances in a dwelling's own units. Inches off the 1/128 in grid come in millimeters; messages round them to 1/16 in, inward.</summary>
    /// <param name="units">The units, such as <see cref="Dwelling.Units"/>.</param>
    public string ToString(LengthUnits units)
    {
        if (Kind == QuantityKind.Distance)
        {
            return raw.ToString(units.ExactFormat());
        }

        return raw.Count == 0 ? "nothing"
            : (Least?.ToString(units), Most?.ToString(units)) switch
            {
                (null, null) => "anything",
                (null, { } most) => "at most " + most,
                ({ } least, null) => "at least " + least,
                (var least, var most) => least + " to " + most,
            };
    }
}
