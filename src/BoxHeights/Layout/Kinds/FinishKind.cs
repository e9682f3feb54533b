using System;

namespace BoxHeights;

/// <summary>What a finish on a wall is. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct FinishKind : IEquatable<FinishKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public FinishKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>tile</c></summary>
    public static FinishKind Tile => new("tile");

    /// <summary><c>wainscot</c></summary>
    public static FinishKind Wainscot => new("wainscot");

    /// <summary><c>panel</c></summary>
    public static FinishKind Panel => new("panel");

    /// <summary><c>stone</c></summary>
    public static FinishKind Stone => new("stone");

    /// <summary><c>chair-rail</c></summary>
    public static FinishKind ChairRail => new("chair-rail");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<FinishKind> Known { get; } = new[]
    {
        Tile, Wainscot, Panel, Stone, ChairRail,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(FinishKind left, FinishKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(FinishKind left, FinishKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(FinishKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FinishKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
