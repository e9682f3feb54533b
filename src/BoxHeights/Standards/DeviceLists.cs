using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Families of devices and purposes, and of what breaks a wall, that rows speak of.</summary>
internal static class DeviceLists
{
    /// <summary>The lowest nominal voltage by which drawings call a 125 V receptacle's circuit. From memory.</summary>
    public const int LeastUsualVolts = 110;

    /// <summary>The highest. From memory.</summary>
    public const int MostUsualVolts = 127;

    public static Items<DeviceKind> Switches => DeviceKind.Switches;

    public static Items<DeviceKind> Receptacles { get; } = Of(kind => kind.IsReceptacle && kind != DeviceKind.FloorReceptacle);

    /// <summary>Receptacles for whatever is plugged in, in walls and floors; those of ranges and dryers are none.</summary>
    public static Items<DeviceKind> GeneralReceptacles { get; } = Of(kind => kind.IsReceptacle && kind != DeviceKind.RangeReceptacle && kind != DeviceKind.DryerReceptacle);

    /// <summary>Switches, thermostats and bell buttons.</summary>
    public static Items<DeviceKind> Controls { get; } = Of(kind => kind.IsSwitch || kind == DeviceKind.Thermostat || kind == DeviceKind.DoorbellButton);

    /// <summary>A smoke alarm alone, or one that also warns of carbon monoxide.</summary>
    public static Items<DeviceKind> SmokeAlarms => DeviceKind.SmokeAlarms;

    /// <summary>A luminaire that is recessed: a kind of one's own.</summary>
    public static DeviceKind RecessedLight { get; } = new("recessed-light");

    /// <summary>Whatever gives light from a box of its own.</summary>
    public static Items<DeviceKind> Lights { get; } = new DeviceKind[] { DeviceKind.Luminaire, new("pendant"), new("chandelier"), new("track-light"), new("lampholder"), RecessedLight };

    /// <summary>What controls lights from one place, and from several.</summary>
    public static SwitchWays Ways { get; } = new(
        new[] { DeviceKind.Switch, DeviceKind.ToggleSwitch, DeviceKind.RockerSwitch, DeviceKind.PushSwitch },
        new[] { DeviceKind.ThreeWaySwitch, DeviceKind.ThreeWayToggleSwitch, DeviceKind.ThreeWayRockerSwitch },
        new[] { DeviceKind.FourWaySwitch, DeviceKind.FourWayToggleSwitch, DeviceKind.FourWayRockerSwitch })
    {
        EndName = "three-way",
        BetweenName = "four-way",
    };

    /// <summary>Purposes of receptacles that sit behind, over or under an appliance or a sink, and serve no counter.</summary>
    public static Items<BoxPurpose> BehindAppliances { get; } = new[]
    {
        BoxPurpose.Refrigerator, BoxPurpose.Range, BoxPurpose.Dishwasher, BoxPurpose.SinkBase, BoxPurpose.Hood,
    };

    /// <summary>Purposes of receptacles that an appliance or a sink has at its own wall, because its cord or its pipes are there.</summary>
    public static Items<BoxPurpose> AtAppliances { get; } = BehindAppliances.With(BoxPurpose.Laundry).With(BoxPurpose.Dryer);

    /// <summary>What stands on the floor before a wall and hides what is behind it, up to its top.</summary>
    public static Items<FixtureKind> StandingThings { get; } = new FixtureKind[]
    {
        FixtureKind.Refrigerator, new("freezer"), FixtureKind.Range, FixtureKind.Dishwasher, FixtureKind.Washer, FixtureKind.Dryer, FixtureKind.Furnace, FixtureKind.AirHandler, new("boiler"),
        new("water-heater"), FixtureKind.Bed, FixtureKind.Sofa, FixtureKind.Table, FixtureKind.Desk, new("nightstand"), new("dresser"), new("wardrobe"), new("bookcase"),
    };

    /// <summary>Purposes for which a box that holds nothing known holds no receptacle.</summary>
    public static Items<BoxPurpose> NeverReceptacles { get; } = new[]
    {
        BoxPurpose.Switch, BoxPurpose.BedSwitch, BoxPurpose.Light, BoxPurpose.VanityLight, BoxPurpose.StairLight, BoxPurpose.BedLight, BoxPurpose.Alarm, BoxPurpose.Thermostat,
        BoxPurpose.Doorbell, BoxPurpose.Media,
    };

    /// <summary>Receptacles that serve what stands near them: of 15 or 20 A, at whatever drawings call 125 V.</summary>
    public static CountedOutlet Serving { get; } = new("outlet that counts", GeneralReceptacles)
    {
        UnstatedMayBeOne = true,
        NeverFor = NeverReceptacles,
        Surfaces = new[] { BoxSurface.Wall },
        LowestVolts = LeastUsualVolts,
        HighestVolts = MostUsualVolts,
        Amperes = new[] { 15, 20 },
        ExceptSwitched = true,
    };

    /// <summary>Fixed cabinets that stand on the floor.</summary>
    public static Items<CoveringKind> FloorCabinets { get; } = new[]
    {
        CoveringKind.TallCabinet, CoveringKind.BaseCabinet, new("bookcase"), new("fireplace"), new("closet"),
    };

    /// <summary>Doors that vehicles go through.</summary>
    public static Items<OpeningKind> VehicleDoors { get; } = new[] { OpeningKind.GarageDoor, OpeningKind.OverheadDoor };

    /// <summary>Walls, ceilings, floors and cabinets.</summary>
    public static Items<BoxSurface> Anywhere { get; } = new[] { BoxSurface.Wall, BoxSurface.Ceiling, BoxSurface.Floor, BoxSurface.Cabinet };

    /// <summary>Heating and cooling equipment that somebody has to service.</summary>
    public static Items<FixtureKind> ServicedEquipment { get; } = new FixtureKind[]
    {
        FixtureKind.Furnace, FixtureKind.AirHandler, FixtureKind.HeatPump, FixtureKind.Condenser, new("boiler"), new("air-conditioner"), new("mini-split"),
    };

    /// <summary>Rooms to live in, without kitchens and bathrooms.</summary>
    public static Items<RoomKind> Habitable { get; } = new RoomKind[]
    {
        RoomKind.Bedroom, RoomKind.LivingRoom, RoomKind.DiningRoom, RoomKind.FamilyRoom, RoomKind.Office,
        new("parlor"), new("library"), new("den"), new("sunroom"), new("recreation-room"),
    };

    /// <summary>Whatever a person operates or plugs into, but for what serves one appliance by its kind.</summary>
    public static Items<DeviceKind> Operated { get; } = Of(kind =>
        (kind.IsSwitch || kind.IsReceptacle || kind == DeviceKind.Thermostat || kind == DeviceKind.DoorbellButton)
        && kind != DeviceKind.FloorReceptacle && kind != DeviceKind.RangeReceptacle && kind != DeviceKind.DryerReceptacle);

    /// <summary>Purposes of boxes that surely hold something a person operates or plugs into, and nothing that serves one appliance alone.</summary>
    public static Items<BoxPurpose> ForOperated { get; } = new[]
    {
        BoxPurpose.General, BoxPurpose.Counter, BoxPurpose.Switch, BoxPurpose.Laundry, BoxPurpose.Bath, BoxPurpose.Bedside, BoxPurpose.BedSwitch, BoxPurpose.EndTable, BoxPurpose.Sofa,
        BoxPurpose.WindowTop, BoxPurpose.Closet, BoxPurpose.Office, BoxPurpose.Media, BoxPurpose.Television, BoxPurpose.Garage, BoxPurpose.Basement, BoxPurpose.Exterior,
        BoxPurpose.Doorbell, BoxPurpose.Thermostat,
    };

    private static Items<DeviceKind> Of(System.Predicate<DeviceKind> which) => DeviceKind.Known.Where(which);
}
