using System;

namespace BoxHeights;

/// <summary>What a fixture, an appliance or a piece of furniture is. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct FixtureKind : IEquatable<FixtureKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public FixtureKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>refrigerator</c></summary>
    public static FixtureKind Refrigerator => new("refrigerator");

    /// <summary><c>range</c></summary>
    public static FixtureKind Range => new("range");

    /// <summary><c>dishwasher</c></summary>
    public static FixtureKind Dishwasher => new("dishwasher");

    /// <summary><c>washer</c></summary>
    public static FixtureKind Washer => new("washer");

    /// <summary><c>dryer</c></summary>
    public static FixtureKind Dryer => new("dryer");

    /// <summary><c>tub</c></summary>
    public static FixtureKind Tub => new("tub");

    /// <summary><c>shower</c></summary>
    public static FixtureKind Shower => new("shower");

    /// <summary><c>toilet</c></summary>
    public static FixtureKind Toilet => new("toilet");

    /// <summary><c>basin</c></summary>
    public static FixtureKind Basin => new("basin");

    /// <summary><c>bed</c></summary>
    public static FixtureKind Bed => new("bed");

    /// <summary><c>sofa</c></summary>
    public static FixtureKind Sofa => new("sofa");

    /// <summary><c>table</c></summary>
    public static FixtureKind Table => new("table");

    /// <summary><c>desk</c></summary>
    public static FixtureKind Desk => new("desk");

    /// <summary><c>fireplace</c></summary>
    public static FixtureKind Fireplace => new("fireplace");

    /// <summary><c>television</c></summary>
    public static FixtureKind Television => new("television");

    /// <summary><c>sink</c>: one that is set into an island or peninsula.</summary>
    public static FixtureKind Sink => new("sink");

    /// <summary><c>cooktop</c>: one that is set into an island or peninsula.</summary>
    public static FixtureKind Cooktop => new("cooktop");

    /// <summary><c>furnace</c></summary>
    public static FixtureKind Furnace => new("furnace");

    /// <summary><c>air-handler</c></summary>
    public static FixtureKind AirHandler => new("air-handler");

    /// <summary><c>heat-pump</c></summary>
    public static FixtureKind HeatPump => new("heat-pump");

    /// <summary><c>condenser</c>: the outdoor unit of an air conditioner.</summary>
    public static FixtureKind Condenser => new("condenser");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<FixtureKind> Known { get; } = new[]
    {
        Refrigerator, Range, Dishwasher, Washer, Dryer, Tub, Shower, Toilet, Basin, Bed, Sofa, Table, Desk, Fireplace, Television,
        Sink, Cooktop, Furnace, AirHandler, HeatPump, Condenser,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(FixtureKind left, FixtureKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(FixtureKind left, FixtureKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(FixtureKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FixtureKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
