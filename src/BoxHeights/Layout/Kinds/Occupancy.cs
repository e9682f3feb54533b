using System;

namespace BoxHeights;

/// <summary>What kind of building a dwelling is in. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct Occupancy : IEquatable<Occupancy>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public Occupancy(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>one-family</c></summary>
    public static Occupancy OneFamily => new("one-family");

    /// <summary><c>two-family</c></summary>
    public static Occupancy TwoFamily => new("two-family");

    /// <summary><c>covered-multifamily</c></summary>
    public static Occupancy CoveredMultifamily => new("covered-multifamily");

    /// <summary><c>aging-in-place</c></summary>
    public static Occupancy AgingInPlace => new("aging-in-place");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<Occupancy> Known { get; } = new[]
    {
        OneFamily, TwoFamily, CoveredMultifamily, AgingInPlace,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(Occupancy left, Occupancy right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(Occupancy left, Occupancy right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(Occupancy other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Occupancy other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
