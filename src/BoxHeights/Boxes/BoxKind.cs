using System;

namespace BoxHeights;

/// <summary>How a box is built.</summary>
/// <remarks>
/// Open: besides the kinds known here, <c>new BoxKind("weatherproof-surface")</c> makes one of your own. Two kinds are equal when their names are.
/// <c>default</c> has the empty name and means "not stated".
/// </remarks>
public readonly partial struct BoxKind : IEquatable<BoxKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case words joined by single hyphens.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty or of another form.</exception>
    public BoxKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary>A plastic box with its own nails, for new work on a stud's side.</summary>
    public static BoxKind NailOn { get; } = new("nail-on");

    /// <summary>An old-work box that clamps to the board and needs no stud.</summary>
    public static BoxKind CutIn { get; } = new("cut-in");

    /// <summary>A metal box 4 in square, with a plaster ring for its device.</summary>
    public static BoxKind FourSquare { get; } = new("four-square");

    /// <summary>A metal box 4-11/16 in square, with a plaster ring for its device.</summary>
    public static BoxKind FourElevenSquare { get; } = new("four-eleven-square");

    /// <summary>A round or eight-sided ceiling or light box 4 in across.</summary>
    public static BoxKind Octagon { get; } = new("octagon");

    /// <summary>A metal utility box 4 × 2-1/8 in, often on the surface.</summary>
    public static BoxKind Handy { get; } = new("handy");

    /// <summary>A metal box 3 × 2 in a gang, whose sides come off to join gangs.</summary>
    public static BoxKind MetalDevice { get; } = new("metal-device");

    /// <summary>A metal box made to be built into masonry.</summary>
    public static BoxKind Masonry { get; } = new("masonry");

    /// <summary>A cast box with threaded hubs, mostly on the surface: FS, 1-3/4 in deep at the least, or FD, 2-3/8 in.</summary>
    public static BoxKind Cast { get; } = new("cast");

    /// <summary>A shallow round box for a light on a thin wall or ceiling.</summary>
    public static BoxKind Pancake { get; } = new("pancake");

    /// <summary>An open bracket for data and television; never for line voltage.</summary>
    public static BoxKind LowVoltageBracket { get; } = new("low-voltage-bracket");

    /// <summary>A ceiling box made to carry a paddle fan.</summary>
    public static BoxKind FanRated { get; } = new("fan-rated");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<BoxKind> Known { get; } = new[]
    {
        NailOn, CutIn, FourSquare, FourElevenSquare, Octagon, Handy,
        MetalDevice, Masonry, Cast, Pancake, LowVoltageBracket, FanRated,
    };

    /// <summary>The kind's name; empty for <c>default</c>.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have the same name.</summary>
    public static bool operator ==(BoxKind left, BoxKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(BoxKind left, BoxKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(BoxKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BoxKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The kind's name.</summary>
    public override string ToString() => Name;
}
