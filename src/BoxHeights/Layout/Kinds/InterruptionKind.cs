using System;

namespace BoxHeights;

/// <summary>What interrupts a counter. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct InterruptionKind : IEquatable<InterruptionKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public InterruptionKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>sink</c></summary>
    public static InterruptionKind Sink => new("sink");

    /// <summary><c>basin</c></summary>
    public static InterruptionKind Basin => new("basin");

    /// <summary><c>range</c></summary>
    public static InterruptionKind Range => new("range");

    /// <summary><c>cooktop</c></summary>
    public static InterruptionKind Cooktop => new("cooktop");

    /// <summary><c>refrigerator</c></summary>
    public static InterruptionKind Refrigerator => new("refrigerator");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<InterruptionKind> Known { get; } = new[]
    {
        Sink, Basin, Range, Cooktop, Refrigerator,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(InterruptionKind left, InterruptionKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(InterruptionKind left, InterruptionKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(InterruptionKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is InterruptionKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
