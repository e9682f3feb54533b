using System;

namespace BoxHeights;

/// <summary>What hides a part of a wall. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct CoveringKind : IEquatable<CoveringKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public CoveringKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>wall-cabinet</c></summary>
    public static CoveringKind WallCabinet => new("wall-cabinet");

    /// <summary><c>tall-cabinet</c></summary>
    public static CoveringKind TallCabinet => new("tall-cabinet");

    /// <summary><c>base-cabinet</c></summary>
    public static CoveringKind BaseCabinet => new("base-cabinet");

    /// <summary><c>mirror</c></summary>
    public static CoveringKind Mirror => new("mirror");

    /// <summary><c>tub-surround</c></summary>
    public static CoveringKind TubSurround => new("tub-surround");

    /// <summary><c>panel</c></summary>
    public static CoveringKind Panel => new("panel");

    /// <summary><c>shelf</c></summary>
    public static CoveringKind Shelf => new("shelf");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<CoveringKind> Known { get; } = new[]
    {
        WallCabinet, TallCabinet, BaseCabinet, Mirror, TubSurround, Panel, Shelf,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(CoveringKind left, CoveringKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(CoveringKind left, CoveringKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(CoveringKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CoveringKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
