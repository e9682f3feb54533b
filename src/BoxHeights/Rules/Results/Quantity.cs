using System;

namespace BoxHeights;

/// <summary>What a quantity measures.</summary>
public enum QuantityKind
{
    /// <summary>A length, in ticks of 12.5 nm.</summary>
    Distance = 0,

    /// <summary>A volume, in picoliters.</summary>
    Volume = 1,
}

/// <summary>A measured amount: a distance or a volume.</summary>
public readonly struct Quantity : IEquatable<Quantity>
{
    internal Quantity(QuantityKind kind, long raw)
    {
        Kind = kind;
        Raw = raw;
    }

    /// <summary>What it measures.</summary>
    public QuantityKind Kind { get; }

    internal long Raw { get; }

    /// <summary>A distance as a quantity.</summary>
    public static implicit operator Quantity(Distance value) => new(QuantityKind.Distance, value.Ticks);

    /// <summary>A volume as a quantity.</summary>
    public static implicit operator Quantity(Volume value) => new(QuantityKind.Volume, value.Picoliters);

    /// <summary>Whether two quantities are the same.</summary>
    public static bool operator ==(Quantity left, Quantity right) => left.Equals(right);

    /// <summary>Whether two quantities differ.</summary>
    public static bool operator !=(Quantity left, Quantity right) => !left.Equals(right);

    /// <summary>The distance.</summary>
    /// <exception cref="InvalidOperationException">It is a volume.</exception>
    public Distance AsDistance() => Kind == QuantityKind.Distance ? Distance.FromTicks(Raw) : throw new InvalidOperationException("This quantity is a volume.");

    /// <summary>The volume.</summary>
    /// <exception cref="InvalidOperationException">It is a distance.</exception>
    public Volume AsVolume() => Kind == QuantityKind.Volume ? Volume.FromPicoliters(Raw) : throw new InvalidOperationException("This quantity is a distance.");

    /// <summary>The amount without its sign.</summary>
    public Quantity Abs() => new(Kind, Raw == long.MinValue ? long.MaxValue : Math.Abs(Raw));

    /// <inheritdoc/>
    public bool Equals(Quantity other) => Kind == other.Kind && Raw == other.Raw;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Quantity other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Raw.GetHashCode() ^ (int)Kind;

    /// <summary>The amount with its unit, as <see cref="Distance"/> or <see cref="Volume"/> prints it.</summary>
    public override string ToString() => Kind == QuantityKind.Distance ? AsDistance().ToString() : AsVolume().ToString();
}

/// <summary>The amounts that a rule allows.</summary>
public readonly struct QuantitySet : IEquatable<QuantitySet>
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

    /// <summary>A set of distances.</summary>
    public static implicit operator QuantitySet(DistanceSet set) => new(QuantityKind.Distance, set);

    /// <summary>Whether two sets are the same.</summary>
    public static bool operator ==(QuantitySet left, QuantitySet right) => left.Equals(right);

    /// <summary>Whether two sets differ.</summary>
    public static bool operator !=(QuantitySet left, QuantitySet right) => !left.Equals(right);

    /// <summary>All volumes up to one.</summary>
    /// <param name="most">The largest volume allowed.</param>
    public static QuantitySet AtMost(Volume most) => new(QuantityKind.Volume, DistanceSet.AtMost(Distance.FromTicks(most.Picoliters)));

    /// <summary>The distances.</summary>
    /// <exception cref="InvalidOperationException">The set is one of volumes.</exception>
    public DistanceSet AsDistances() => Kind == QuantityKind.Distance ? raw : throw new InvalidOperationException("This set is one of volumes.");

    /// <summary>Whether an amount is allowed.</summary>
    /// <param name="amount">The amount; an amount of another kind isn't.</param>
    public bool Contains(Quantity amount) => amount.Kind == Kind && raw.Contains(Distance.FromTicks(amount.Raw));

    /// <inheritdoc/>
    public bool Equals(QuantitySet other) => Kind == other.Kind && raw.Equals(other.raw);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is QuantitySet other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => raw.GetHashCode();

    /// <summary>The amounts in words: "15 in to 48 in", "at most 18 in3".</summary>
    public override string ToString()
    {
        if (Kind == QuantityKind.Distance)
        {
            return raw.ToString();
        }

        return raw.Count == 0 ? "nothing" : "at most " + Volume.FromPicoliters(raw[0].To.Ticks);
    }
}
