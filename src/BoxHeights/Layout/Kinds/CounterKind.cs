using System;

namespace BoxHeights;

/// <summary>What a counter is. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct CounterKind : IEquatable<CounterKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public CounterKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>kitchen</c></summary>
    public static CounterKind Kitchen => new("kitchen");

    /// <summary><c>bath</c></summary>
    public static CounterKind Bath => new("bath");

    /// <summary><c>bar</c></summary>
    public static CounterKind Bar => new("bar");

    /// <summary><c>desk</c></summary>
    public static CounterKind Desk => new("desk");

    /// <summary><c>laundry</c></summary>
    public static CounterKind Laundry => new("laundry");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<CounterKind> Known { get; } = new[]
    {
        Kitchen, Bath, Bar, Desk, Laundry,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(CounterKind left, CounterKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(CounterKind left, CounterKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(CounterKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CounterKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
