using System;

namespace BoxHeights;

/// <summary>What an opening in a wall is. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct OpeningKind : IEquatable<OpeningKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public OpeningKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>door</c></summary>
    public static OpeningKind Door => new("door");

    /// <summary><c>double-door</c></summary>
    public static OpeningKind DoubleDoor => new("double-door");

    /// <summary><c>pocket-door</c></summary>
    public static OpeningKind PocketDoor => new("pocket-door");

    /// <summary><c>barn-door</c></summary>
    public static OpeningKind BarnDoor => new("barn-door");

    /// <summary><c>sliding-door</c></summary>
    public static OpeningKind SlidingDoor => new("sliding-door");

    /// <summary><c>bifold-door</c></summary>
    public static OpeningKind BifoldDoor => new("bifold-door");

    /// <summary><c>bypass-door</c>: panels that slide past each other within the opening.</summary>
    public static OpeningKind BypassDoor => new("bypass-door");

    /// <summary><c>cased</c></summary>
    public static OpeningKind Cased => new("cased");

    /// <summary><c>window</c></summary>
    public static OpeningKind Window => new("window");

    /// <summary><c>pass-through</c></summary>
    public static OpeningKind PassThrough => new("pass-through");

    /// <summary><c>garage-door</c>: a door for vehicles.</summary>
    public static OpeningKind GarageDoor => new("garage-door");

    /// <summary><c>overhead-door</c>: a door for vehicles that goes up under the ceiling.</summary>
    public static OpeningKind OverheadDoor => new("overhead-door");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<OpeningKind> Known { get; } = new[]
    {
        Door, DoubleDoor, PocketDoor, BarnDoor, SlidingDoor, BifoldDoor, BypassDoor, Cased, Window, PassThrough, GarageDoor, OverheadDoor,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(OpeningKind left, OpeningKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(OpeningKind left, OpeningKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(OpeningKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OpeningKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
