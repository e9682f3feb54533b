using System;

namespace BoxHeights;

/// <summary>What stands before an outside face. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct PlatformKind : IEquatable<PlatformKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public PlatformKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>deck</c></summary>
    public static PlatformKind Deck => new("deck");

    /// <summary><c>porch</c></summary>
    public static PlatformKind Porch => new("porch");

    /// <summary><c>balcony</c></summary>
    public static PlatformKind Balcony => new("balcony");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<PlatformKind> Known { get; } = new[]
    {
        Deck, Porch, Balcony,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(PlatformKind left, PlatformKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(PlatformKind left, PlatformKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(PlatformKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PlatformKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
