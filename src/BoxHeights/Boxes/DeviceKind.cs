using System;

namespace BoxHeights;

/// <summary>What is fitted in one gang of a box.</summary>
/// <remarks>
/// Open: besides the kinds known here, <c>new DeviceKind("doorbell-transformer")</c> makes one of your own. Two kinds are equal when their names are.
/// <c>default</c> has the empty name and means "not stated".
/// </remarks>
public readonly partial struct DeviceKind : IEquatable<DeviceKind>
{
    private readonly string? name;

    /// <summary>A kind by its name.</summary>
    /// <param name="name">Lower-case words joined by single hyphens.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty or of another form.</exception>
    public DeviceKind(string name) => this.name = KindName.Check(name, nameof(name));

    /// <summary>A single-pole switch whose style isn't stated: it may be any of them.</summary>
    public static DeviceKind Switch { get; } = new("switch");

    /// <summary>One of two switches for the same light, of unstated style.</summary>
    public static DeviceKind ThreeWaySwitch { get; } = new("three-way-switch");

    /// <summary>A switch between two three-way switches, of unstated style.</summary>
    public static DeviceKind FourWaySwitch { get; } = new("four-way-switch");

    /// <summary>A dimmer that also switches, of unstated style.</summary>
    public static DeviceKind Dimmer { get; } = new("dimmer");

    /// <summary>A single-pole switch with a lever.</summary>
    public static DeviceKind ToggleSwitch { get; } = new("toggle-switch");

    /// <summary>A single-pole switch with a wide paddle and a rectangular face.</summary>
    public static DeviceKind RockerSwitch { get; } = new("rocker-switch");

    /// <summary>A single-pole switch with a button.</summary>
    public static DeviceKind PushSwitch { get; } = new("push-switch");

    /// <summary>A three-way switch with a lever.</summary>
    public static DeviceKind ThreeWayToggleSwitch { get; } = new("three-way-toggle-switch");

    /// <summary>A three-way switch with a wide paddle.</summary>
    public static DeviceKind ThreeWayRockerSwitch { get; } = new("three-way-rocker-switch");

    /// <summary>A four-way switch with a lever.</summary>
    public static DeviceKind FourWayToggleSwitch { get; } = new("four-way-toggle-switch");

    /// <summary>A four-way switch with a wide paddle.</summary>
    public static DeviceKind FourWayRockerSwitch { get; } = new("four-way-rocker-switch");

    /// <summary>A dimmer with a slide or a paddle in a rectangular face.</summary>
    public static DeviceKind SlideDimmer { get; } = new("slide-dimmer");

    /// <summary>A dimmer with a knob.</summary>
    public static DeviceKind RotaryDimmer { get; } = new("rotary-dimmer");

    /// <summary>A speed control that also switches.</summary>
    public static DeviceKind FanControl { get; } = new("fan-control");

    /// <summary>Two outlets on one strap, upright.</summary>
    public static DeviceKind DuplexReceptacle { get; } = new("duplex-receptacle");

    /// <summary>A receptacle with ground-fault protection built in.</summary>
    public static DeviceKind GfciReceptacle { get; } = new("gfci-receptacle");

    /// <summary>A duplex receptacle with one half switched.</summary>
    public static DeviceKind SplitReceptacle { get; } = new("split-receptacle");

    /// <summary>One outlet on a strap.</summary>
    public static DeviceKind SingleReceptacle { get; } = new("single-receptacle");

    /// <summary>The receptacle of an electric range.</summary>
    public static DeviceKind RangeReceptacle { get; } = new("range-receptacle");

    /// <summary>The receptacle of an electric clothes dryer.</summary>
    public static DeviceKind DryerReceptacle { get; } = new("dryer-receptacle");

    /// <summary>A receptacle that faces up in a floor box.</summary>
    public static DeviceKind FloorReceptacle { get; } = new("floor-receptacle");

    /// <summary>A duplex receptacle with a rectangular face.</summary>
    public static DeviceKind DecoratorReceptacle { get; } = new("decorator-receptacle");

    /// <summary>A receptacle with charging ports beside its outlets.</summary>
    public static DeviceKind UsbReceptacle { get; } = new("usb-receptacle");

    /// <summary>A room thermostat.</summary>
    public static DeviceKind Thermostat { get; } = new("thermostat");

    /// <summary>The button at an entrance.</summary>
    public static DeviceKind DoorbellButton { get; } = new("doorbell-button");

    /// <summary>The sounding part of a doorbell.</summary>
    public static DeviceKind Chime { get; } = new("chime");

    /// <summary>A light mounted on the box.</summary>
    public static DeviceKind Luminaire { get; } = new("luminaire");

    /// <summary>A smoke alarm mounted on the box.</summary>
    public static DeviceKind SmokeAlarm { get; } = new("smoke-alarm");

    /// <summary>A carbon monoxide alarm mounted on the box.</summary>
    public static DeviceKind CoAlarm { get; } = new("co-alarm");

    /// <summary>An alarm for smoke and carbon monoxide in one.</summary>
    public static DeviceKind SmokeCoAlarm { get; } = new("smoke-co-alarm");

    /// <summary>A network or telephone jack.</summary>
    public static DeviceKind DataJack { get; } = new("data-jack");

    /// <summary>An antenna or cable television jack.</summary>
    public static DeviceKind TvJack { get; } = new("tv-jack");

    /// <summary>Nothing: a blank cover.</summary>
    public static DeviceKind Blank { get; } = new("blank");

    /// <summary>The kinds known here, in the order above.</summary>
    public static Items<DeviceKind> Known { get; } = new[]
    {
        Switch, ThreeWaySwitch, FourWaySwitch, Dimmer, ToggleSwitch, RockerSwitch, PushSwitch, ThreeWayToggleSwitch, ThreeWayRockerSwitch, FourWayToggleSwitch, FourWayRockerSwitch,
        SlideDimmer, RotaryDimmer, FanControl,
        DuplexReceptacle, GfciReceptacle, SplitReceptacle, SingleReceptacle, RangeReceptacle, DryerReceptacle,
        FloorReceptacle, DecoratorReceptacle, UsbReceptacle, Thermostat, DoorbellButton, Chime,
        Luminaire, SmokeAlarm, CoAlarm, SmokeCoAlarm, DataJack, TvJack, Blank,
    };

    /// <summary>The kind's name; empty for <c>default</c>.</summary>
    public string Name => name ?? "";

    /// <summary>Whether it is one of the switches known here (dimmers and fan controls too), whatever its style.</summary>
    public bool IsSwitch => Switches.Contains(this);

    /// <summary>Whether it is one of the receptacles known here. Says nothing of voltage or of what counts toward a required outlet.</summary>
    public bool IsReceptacle => Receptacles.Contains(this);

    /// <summary>Whether it is one of the kinds known here.</summary>
    public bool IsKnown => Known.Contains(this);

    /// <summary>Whether a hand operates it or plugs into it, so that it sits on a yoke: all but blank covers, luminaires, alarms and chimes. A kind of one's own counts as operated.</summary>
    public bool IsOperated => !NotOperated.Contains(this);

    private static Items<DeviceKind> NotOperated { get; } = new[] { Blank, Luminaire, SmokeAlarm, CoAlarm, SmokeCoAlarm, Chime };

    // By table and not by the end of the name: a name of one's own must not join a family by its spelling.

    /// <summary>All switches known here, dimmers and fan controls among them: for the scope of a row about switches.</summary>
    public static Items<DeviceKind> Switches { get; } = new[]
    {
        Switch, ThreeWaySwitch, FourWaySwitch, Dimmer, ToggleSwitch, RockerSwitch, PushSwitch, ThreeWayToggleSwitch, ThreeWayRockerSwitch, FourWayToggleSwitch, FourWayRockerSwitch,
        SlideDimmer, RotaryDimmer, FanControl,
    };

    /// <summary>All receptacles known here, those with GFCI protection, of floors, ranges and dryers among them: for the scope of a row about receptacles.</summary>
    public static Items<DeviceKind> Receptacles { get; } = new[]
    {
        DuplexReceptacle, GfciReceptacle, SplitReceptacle, SingleReceptacle, RangeReceptacle, DryerReceptacle,
        FloorReceptacle, DecoratorReceptacle, UsbReceptacle,
    };

    /// <summary>All that a hand operates on a wall: switches, receptacles, thermostats and bell buttons; for the scope of a row about reach.</summary>
    public static Items<DeviceKind> Operated { get; } = (DeviceKind[])[.. Switches, .. Receptacles, Thermostat, DoorbellButton];

    /// <summary>Alarms for smoke, alone or with carbon monoxide.</summary>
    public static Items<DeviceKind> SmokeAlarms { get; } = new[] { SmokeAlarm, SmokeCoAlarm };

    /// <summary>Whether two kinds have the same name.</summary>
    public static bool operator ==(DeviceKind left, DeviceKind right) => left.Equals(right);

    /// <summary>Whether two kinds have different names.</summary>
    public static bool operator !=(DeviceKind left, DeviceKind right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(DeviceKind other) => string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DeviceKind other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>The kind's name.</summary>
    public override string ToString() => Name;
}
