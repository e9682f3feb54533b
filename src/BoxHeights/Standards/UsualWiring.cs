namespace BoxHeights.Standards;

/// <summary>Which cables usually enter a box: in and on for what goes from box to box, travelers between three-way switches. Common practice, no source.</summary>
internal static class UsualWiring
{
    // Circuits of 20 A: kitchens, dining rooms, baths, laundries and garages, after NEC 210.11(C).
    private static readonly Items<BoxPurpose> OnTwentyAmperes = new[]
    {
        BoxPurpose.Counter, BoxPurpose.Bath, BoxPurpose.Bidet, BoxPurpose.Laundry, BoxPurpose.Garage, BoxPurpose.DoorOpener, BoxPurpose.Refrigerator, BoxPurpose.SinkBase, BoxPurpose.Dishwasher, BoxPurpose.Hood,
    };

    private static readonly Items<BoxPurpose> OnFifteenAmperes = new[]
    {
        BoxPurpose.General, BoxPurpose.Television, BoxPurpose.Media, BoxPurpose.Projector, BoxPurpose.Bedside, BoxPurpose.EndTable, BoxPurpose.Sofa, BoxPurpose.WindowTop, BoxPurpose.Office, BoxPurpose.Closet,
        BoxPurpose.Basement, BoxPurpose.Attic, BoxPurpose.Exterior,
    };

    // NEC 210.52(B)(1): the circuits of 20 A for small appliances serve all receptacles of these rooms, and no other room's.
    private static readonly Items<RoomKind> OnSmallAppliances = new[] { RoomKind.Kitchen, RoomKind.Pantry, RoomKind.BreakfastRoom, RoomKind.DiningRoom };

    private static readonly Items<DeviceKind> Receptacles = new[] { DeviceKind.DuplexReceptacle, DeviceKind.GfciReceptacle };

    private static CableType Two { get; } = CableType.Parse("14-2");

    private static CableType Three { get; } = CableType.Parse("14-3");

    private static CableType Thick { get; } = CableType.Parse("12-2");

    public static RuleSet Rows { get; } = new(
    [
        Wired("wiring-switch", "fed by one 14-2, with one to its light", DeviceKind.Switch) with { Feed = new[] { Two }, Each = new[] { Two } },
        Wired("wiring-three-way", "fed by one 14-2, with one 14-3 to its mate", DeviceKind.ThreeWaySwitch) with { Feed = new[] { Two }, Each = new[] { Three } },
        Wired("wiring-four-way", "between two 14-3", DeviceKind.FourWaySwitch) with { Each = new[] { Three, Three } },
        Wired("wiring-kitchen-receptacle", "between two 12-2, in and on, where circuits for small appliances serve the walls too", Receptacles) with { Rooms = OnSmallAppliances, Feed = new[] { Thick, Thick } },
        Wired("wiring-receptacle", "between two 14-2, in and on", Receptacles) with { Purposes = OnFifteenAmperes, Feed = new[] { Two, Two } },
        Wired("wiring-receptacle-20a", "between two 12-2, in and on", Receptacles) with { Purposes = OnTwentyAmperes, Feed = new[] { Thick, Thick } },
        Wired("wiring-range", "fed by one 6-3", DeviceKind.RangeReceptacle) with { Feed = new[] { CableType.Parse("6-3") } },
        Wired("wiring-dryer", "fed by one 10-3", DeviceKind.DryerReceptacle) with { Feed = new[] { CableType.Parse("10-3") } },
        Wired("wiring-light", "between two 14-2, in and on", DeviceKind.Luminaire) with { Feed = new[] { Two, Two } },
        Wired("wiring-alarm", "between two 14-3, in and on", DeviceLists.SmokeAlarms) with { Feed = new[] { Three, Three } },
    ]);

    private static Rules.UsualWiring Wired(string id, string summary, params DeviceKind[] devices) => Wired(id, summary, new Items<DeviceKind>(devices));

    private static Rules.UsualWiring Wired(string id, string summary, Items<DeviceKind> devices) => new(id, summary, Citation.CommonPractice, devices);
}
