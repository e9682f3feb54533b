namespace BoxHeights;

/// <summary>What is fitted in one gang of a box.</summary>
/// <remarks>An open list: <c>new DeviceKind("doorbell-transformer")</c> makes one of your own. <c>default</c> has the empty name and means "not stated".</remarks>
[Kind("switch", "A single-pole switch whose style isn't stated: it may be any of them.")]
[Kind("three-way-switch", "One of two switches for the same light, of unstated style.")]
[Kind("four-way-switch", "A switch between two three-way switches, of unstated style.")]
[Kind("dimmer", "A dimmer that also switches, of unstated style.")]
[Kind("toggle-switch", "A single-pole switch with a lever.")]
[Kind("rocker-switch", "A single-pole switch with a wide paddle and a rectangular face.")]
[Kind("push-switch", "A single-pole switch with a button.")]
[Kind("three-way-toggle-switch", "A three-way switch with a lever.")]
[Kind("three-way-rocker-switch", "A three-way switch with a wide paddle.")]
[Kind("four-way-toggle-switch", "A four-way switch with a lever.")]
[Kind("four-way-rocker-switch", "A four-way switch with a wide paddle.")]
[Kind("slide-dimmer", "A dimmer with a slide or a paddle in a rectangular face.")]
[Kind("rotary-dimmer", "A dimmer with a knob.")]
[Kind("fan-control", "A speed control that also switches.")]
[Kind("duplex-receptacle", "Two outlets on one strap, upright.")]
[Kind("gfci-receptacle", "A receptacle with ground-fault protection built in.")]
[Kind("split-receptacle", "A duplex receptacle with one half switched.")]
[Kind("single-receptacle", "One outlet on a strap.")]
[Kind("range-receptacle", "The receptacle of an electric range.")]
[Kind("dryer-receptacle", "The receptacle of an electric clothes dryer.")]
[Kind("floor-receptacle", "A receptacle that faces up in a floor box.")]
[Kind("decorator-receptacle", "A duplex receptacle with a rectangular face.")]
[Kind("usb-receptacle", "A receptacle with charging ports beside its outlets.")]
[Kind("thermostat", "A room thermostat.")]
[Kind("doorbell-button", "The button at an entrance.")]
[Kind("chime", "The sounding part of a doorbell.")]
[Kind("luminaire", "A light mounted on the box.")]
[Kind("smoke-alarm", "A smoke alarm mounted on the box.")]
[Kind("co-alarm", "A carbon monoxide alarm mounted on the box.")]
[Kind("smoke-co-alarm", "An alarm for smoke and carbon monoxide in one.")]
[Kind("data-jack", "A network or telephone jack.")]
[Kind("tv-jack", "An antenna or cable television jack.")]
[Kind("blank", "Nothing: a blank cover.")]
public readonly partial record struct DeviceKind
{
    /// <summary>Whether it is one of the switches known here (dimmers and fan controls too), whatever its style.</summary>
    public bool IsSwitch => Switches.Contains(this);

    /// <summary>Whether it is one of the receptacles known here. Says nothing of voltage or of what counts toward a required outlet.</summary>
    public bool IsReceptacle => Receptacles.Contains(this);

    /// <summary>Whether it is one of the kinds known here.</summary>
    public bool IsKnown => Known.Contains(this);

    /// <summary>Whether a hand operates it or plugs into it, so that it sits on a yoke: all but blank covers, luminaires, alarms and chimes. A kind of one's own counts as operated.</summary>
    public bool IsOperated => !NotOperated.Contains(this);

    /// <summary>Whether it is covered by a plate: luminaires, alarms, chimes, thermostats and bell buttons cover their box themselves. Common practice, no source.</summary>
    internal bool TakesPlate => this == Blank || (IsOperated && this != Thermostat && this != DoorbellButton);

    /// <summary>How many gangs it takes where the box doesn't say. Receptacles for ranges and dryers are wider than one: common practice, no source. Of a kind of one's own nothing else is known.</summary>
    internal int Gangs => this == RangeReceptacle || this == DryerReceptacle ? 2 : 1;

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
}
