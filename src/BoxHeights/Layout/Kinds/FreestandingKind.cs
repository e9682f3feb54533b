using System;

namespace BoxHeights;

/// <summary>What stands free in a room. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct FreestandingKind : IEquatable<FreestandingKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public FreestandingKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>island</c></summary>
    public static FreestandingKind Island => new("island");

    /// <summary><c>peninsula</c></summary>
    public static FreestandingKind Peninsula => new("peninsula");

    /// <summary><c>railing</c></summary>
    public static FreestandingKind Railing => new("railing");

    /// <summary><c>half-wall</c></summary>
    public static FreestandingKind HalfWall => new("half-wall");

    /// <summary><c>bar</c>: a counter that parts a room from the next.</summary>
    public static FreestandingKind Bar => new("bar");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<FreestandingKind> Known { get; } = new[]
    {
        Island, Peninsula, Railing, HalfWall, Bar,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(FreestandingKind left, FreestandingKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(FreestandingKind left, FreestandingKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(FreestandingKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FreestandingKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
