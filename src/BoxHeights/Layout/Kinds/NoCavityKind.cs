using System;

namespace BoxHeights;

/// <summary>What fills a wall so that no box fits. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct NoCavityKind : IEquatable<NoCavityKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public NoCavityKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>header</c></summary>
    public static NoCavityKind Header => new("header");

    /// <summary><c>post</c></summary>
    public static NoCavityKind Post => new("post");

    /// <summary><c>pocket</c></summary>
    public static NoCavityKind Pocket => new("pocket");

    /// <summary><c>duct</c></summary>
    public static NoCavityKind Duct => new("duct");

    /// <summary><c>vent</c></summary>
    public static NoCavityKind Vent => new("vent");

    /// <summary><c>blocking</c></summary>
    public static NoCavityKind Blocking => new("blocking");

    /// <summary><c>fireblock</c></summary>
    public static NoCavityKind Fireblock => new("fireblock");

    /// <summary><c>stringer</c></summary>
    public static NoCavityKind Stringer => new("stringer");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<NoCavityKind> Known { get; } = new[]
    {
        Header, Post, Pocket, Duct, Vent, Blocking, Fireblock, Stringer,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(NoCavityKind left, NoCavityKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(NoCavityKind left, NoCavityKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(NoCavityKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is NoCavityKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
