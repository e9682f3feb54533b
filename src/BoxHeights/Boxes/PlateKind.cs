using System;

namespace BoxHeights;

/// <summary>Which of the sizes of cover plate.</summary>
/// <remarks>
/// Open: besides the kinds known here, <c>new PlateKind("screwless")</c> makes one of your own. Two kinds are equal when their names are.
/// <c>default</c> has the empty name and means "not stated".
/// </remarks>
public readonly partial struct PlateKind : IEquatable<PlateKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case words joined by single hyphens.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty or of another form.</exception>
    public PlateKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary>The common size, 2-3/4 × 4-1/2 in for one gang.</summary>
    public static PlateKind Standard { get; } = new("standard");

    /// <summary>The middle size, about 3/8 in larger each way.</summary>
    public static PlateKind Midway { get; } = new("midway");

    /// <summary>The large size, about 3/4 in larger each way.</summary>
    public static PlateKind Jumbo { get; } = new("jumbo");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<PlateKind> Known { get; } = new[]
    {
        Standard, Midway, Jumbo,
    };

    /// <summary>The kind's name; empty for <c>default</c>.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have the same name.</summary>
    public static bool operator ==(PlateKind left, PlateKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(PlateKind left, PlateKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(PlateKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PlateKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The kind's name.</summary>
    public override string ToString() => Name;
}
