using System;

namespace BoxHeights;

/// <summary>What a box is for. Boxes of one purpose are set alike through a storey. An open list: any lower-case name with hyphens will do.</summary>
/// <remarks><c>default</c> has an empty name and equals no named kind.</remarks>
public readonly partial struct BoxPurpose : IEquatable<BoxPurpose>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case letters, digits and single hyphens.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is written otherwise.</exception>
    public BoxPurpose(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary><c>general</c></summary>
    public static BoxPurpose General => new("general");

    /// <summary><c>counter</c></summary>
    public static BoxPurpose Counter => new("counter");

    /// <summary><c>switch</c></summary>
    public static BoxPurpose Switch => new("switch");

    /// <summary><c>refrigerator</c></summary>
    public static BoxPurpose Refrigerator => new("refrigerator");

    /// <summary><c>range</c></summary>
    public static BoxPurpose Range => new("range");

    /// <summary><c>sink-base</c></summary>
    public static BoxPurpose SinkBase => new("sink-base");

    /// <summary><c>dishwasher</c></summary>
    public static BoxPurpose Dishwasher => new("dishwasher");

    /// <summary><c>hood</c></summary>
    public static BoxPurpose Hood => new("hood");

    /// <summary><c>laundry</c></summary>
    public static BoxPurpose Laundry => new("laundry");

    /// <summary><c>dryer</c></summary>
    public static BoxPurpose Dryer => new("dryer");

    /// <summary><c>bath</c></summary>
    public static BoxPurpose Bath => new("bath");

    /// <summary><c>bidet</c></summary>
    public static BoxPurpose Bidet => new("bidet");

    /// <summary><c>vanity-light</c></summary>
    public static BoxPurpose VanityLight => new("vanity-light");

    /// <summary><c>bedside</c></summary>
    public static BoxPurpose Bedside => new("bedside");

    /// <summary><c>bed-light</c></summary>
    public static BoxPurpose BedLight => new("bed-light");

    /// <summary><c>bed-switch</c></summary>
    public static BoxPurpose BedSwitch => new("bed-switch");

    /// <summary><c>end-table</c></summary>
    public static BoxPurpose EndTable => new("end-table");

    /// <summary><c>sofa</c></summary>
    public static BoxPurpose Sofa => new("sofa");

    /// <summary><c>window-top</c></summary>
    public static BoxPurpose WindowTop => new("window-top");

    /// <summary><c>closet</c></summary>
    public static BoxPurpose Closet => new("closet");

    /// <summary><c>office</c></summary>
    public static BoxPurpose Office => new("office");

    /// <summary><c>media</c></summary>
    public static BoxPurpose Media => new("media");

    /// <summary><c>television</c></summary>
    public static BoxPurpose Television => new("television");

    /// <summary><c>projector</c></summary>
    public static BoxPurpose Projector => new("projector");

    /// <summary><c>garage</c></summary>
    public static BoxPurpose Garage => new("garage");

    /// <summary><c>basement</c></summary>
    public static BoxPurpose Basement => new("basement");

    /// <summary><c>attic</c></summary>
    public static BoxPurpose Attic => new("attic");

    /// <summary><c>exterior</c></summary>
    public static BoxPurpose Exterior => new("exterior");

    /// <summary><c>doorbell</c></summary>
    public static BoxPurpose Doorbell => new("doorbell");

    /// <summary><c>doorbell-chime</c></summary>
    public static BoxPurpose DoorbellChime => new("doorbell-chime");

    /// <summary><c>thermostat</c></summary>
    public static BoxPurpose Thermostat => new("thermostat");

    /// <summary><c>alarm</c></summary>
    public static BoxPurpose Alarm => new("alarm");

    /// <summary><c>light</c></summary>
    public static BoxPurpose Light => new("light");

    /// <summary><c>stair-light</c></summary>
    public static BoxPurpose StairLight => new("stair-light");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<BoxPurpose> Known { get; } = new[]
    {
        General, Counter, Switch, Refrigerator, Range, SinkBase, Dishwasher, Hood, Laundry, Dryer, Bath, Bidet, VanityLight,
        Bedside, BedLight, BedSwitch, EndTable, Sofa, WindowTop, Closet, Office, Media, Television, Projector, Garage, Basement, Attic,
        Exterior, Doorbell, DoorbellChime, Thermostat, Alarm, Light, StairLight,
    };

    /// <summary>The name.</summary>
    public string Name => name ?? "";

    /// <summary>Whether two kinds have one name.</summary>
    public static bool operator ==(BoxPurpose left, BoxPurpose right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(BoxPurpose left, BoxPurpose right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(BoxPurpose other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BoxPurpose other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
