using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Canada: C22.1, section 26, on receptacles of dwellings; and what barrier-free buildings ask of heights.</summary>
/// <remarks>The rules of section 26 were renumbered in 2018: 26-710 and 26-712 became 26-720 and 26-722.</remarks>
internal static class Canada
{
    private const string Code = "Canadian Electrical Code, Part I (C22.1)";

    private static Distance HighestThatCounts { get; } = Distance.FromMillimeters(1700);

    private static Items<RoomKind> CounterRooms { get; } = new[] { RoomKind.Kitchen, new("kitchenette"), new("great-room") };

    private static CountedOutlet Outlets { get; } = DeviceLists.Serving with { Highest = new Level(HighestThatCounts, Datum.FinishedFloor) };

    private static CountedOutlet Receptacle { get; } = Outlets with { Name = "receptacle" };

    private static CountedOutlet CounterOutlets { get; } = Outlets with
    {
        OverCounter = true,
        ExceptDedicated = true,
        ExceptPurposes = DeviceLists.BehindAppliances,
    };

    private static DeviceBox WallBox { get; } = new DeviceBox("added", BoxPurpose.General)
        .WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(400), Datum.Subfloor));

    private static DeviceBox CounterBox { get; } = new DeviceBox("added", BoxPurpose.Counter)
        .WithDevices(new[] { DeviceKind.GfciReceptacle }).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(1100), Datum.Subfloor));

    private static DeviceBox BathBox { get; } = new DeviceBox("receptacle", BoxPurpose.Bath)
        .WithDevices(new[] { DeviceKind.GfciReceptacle }).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(1100), Datum.Subfloor));

    private static DeviceBox ServiceBox { get; } = new DeviceBox("receptacle", BoxPurpose.Laundry)
        .WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(1100), Datum.Subfloor));

    /// <summary>Walls, counters, islands, baths, rooms for laundry and utilities, and the height that counts, of a dwelling.</summary>
    public static RuleSet Dwelling { get; } = new RuleSet([Wall(), Counter(), Island(), Counting(), Basin(), Service(), Tub("canada-tub-receptacle", 500, Severity.Violation), Tub("canada-tub-distance", 1000, Severity.Advice)]) + InEverySet.Rows;

    /// <summary>National Building Code, 3.8.3.8, and CSA B651: which part of a control is meant the Code doesn't say; B651 measures to the center line.</summary>
    public static RuleSet BarrierFree { get; } = new RuleSet(
    [
        Disputed(new("canada-controls", "400 to 1200 mm above the floor", Severity.Violation, new("National Building Code of Canada", "3.8.3.8.(1)(a)"), Datum.FinishedFloor)
        {
            Low = Distance.FromMillimeters(400),
            High = Distance.FromMillimeters(1200),
            Scope = RuleScope.Walls with { Devices = DeviceLists.Controls },
        }),
        new HeightBand("canada-outlets-reach", "400 to 1200 mm above the floor", Severity.Violation, new("CSA B651", "", Confidence.FromMemory), Datum.FinishedFloor)
        {
            Low = Distance.FromMillimeters(400),
            High = Distance.FromMillimeters(1200),
            Scope = RuleScope.Walls with { Devices = DeviceLists.GeneralReceptacles, ExceptDedicated = true },
        },
    ]) + InEverySet.Rows;

    /// <summary>Ontario Building Code, 3.8.1.5: thermostats at one height, other controls in a narrow band.</summary>
    public static RuleSet OntarioBarrierFree { get; } = new RuleSet(
    [
        Disputed(new("ontario-controls", "900 to 1100 mm above the floor", Severity.Violation, new("Ontario Building Code", "3.8.1.5"), Datum.FinishedFloor)
        {
            Low = Distance.FromMillimeters(900),
            High = Distance.FromMillimeters(1100),
            Scope = RuleScope.Walls with { Devices = DeviceLists.Switches },
        }),
        Disputed(new("ontario-thermostat", "1200 mm above the floor", Severity.Violation, new("Ontario Building Code", "3.8.1.5"), Datum.FinishedFloor)
        {
            Low = Distance.FromMillimeters(1200),
            High = Distance.FromMillimeters(1200),
            Scope = RuleScope.Walls with { Devices = new[] { DeviceKind.Thermostat } },
        }),
    ]) + InEverySet.Rows;

    private static HeightBand Disputed(HeightBand row) => row with
    {
        ReadingId = "center",
        Readings = new[] { new Reading("operable-part", "measured to the parts that a hand operates", row with { LowLine = TargetLine.LowestOperable, HighLine = TargetLine.HighestOperable }) },
    };

    /// <summary>An outlet of an adjoining space counts too, by the text; that only its own space counts is how many read it.</summary>
    private static Coverage Wall()
    {
        Coverage row = new("canada-wall-outlets", "within 1.8 m of an outlet that counts, everywhere along the floor line", Severity.Violation,
            new(Code, "26-722 a), 26-712 a) before 2018", Confidence.FromMemory),
            new WallSpaces
            {
                Doorways = OpeningKind.Doorways,
                ClearBelow = InEverySet.SillOverReceptacles,
                FloorWindowsBreak = true,
                OpenLeavesBreak = true,
                Cabinets = DeviceLists.FloorCabinets,
                Fixtures = new[] { FixtureKind.Fireplace, FixtureKind.Range, FixtureKind.Dishwasher, FixtureKind.Tub, FixtureKind.Shower, FixtureKind.Toilet },
                Counters = new[] { CounterKind.Kitchen, CounterKind.Bar },
                CounterRooms = CounterRooms,
                MeetsWithin = InEverySet.MeetsWithin,
            },
            Outlets, Distance.FromMillimeters(900), Distance.FromMillimeters(1800), WallBox)
        {
            ExceptRooms = new[]
            {
                RoomKind.Bathroom, RoomKind.Hall, RoomKind.Laundry, RoomKind.Utility, RoomKind.Closet, new("toilet"), new("pantry"),

                // Walls are seldom finished to within 450 mm of the floor there, which is what the rule speaks of.
                RoomKind.Garage, RoomKind.Basement, RoomKind.Attic, RoomKind.Stair, new("storage"),
            },
            NextSpacesToo = true,
            OneToEach = InEverySet.OneToEachWall,
            LeavesOut = "walls that aren't finished to within 450 mm of the floor",
        };
        return row with
        {
            ReadingId = "next-space",
            Readings = new[] { new Reading("same-space", "only an outlet on the same wall space serves it", row with { NextSpacesToo = false }) },
        };
    }

    private static Coverage Counter() =>
        new("canada-counter-outlets", "within 900 mm of an outlet that counts, everywhere along the wall behind it", Severity.Violation,
            new(Code, "26-722 d), 26-712 d) before 2018", Confidence.FromMemory),
            new CounterSpaces
            {
                ClearBelow = InEverySet.SillOverCounters,
                Counters = new[] { CounterKind.Kitchen, CounterKind.Bar },
                Cuts = new[] { InterruptionKind.Sink, InterruptionKind.Basin, InterruptionKind.Range, InterruptionKind.Cooktop, InterruptionKind.Refrigerator },
            },
            CounterOutlets, Distance.FromMillimeters(300), Distance.FromMillimeters(900), CounterBox)
        {
            Scope = new() { Rooms = CounterRooms },
        };

    private static RequiredOutlet Island() =>
        new("canada-island-outlets", "served by an outlet", Severity.Violation, new(Code, "26-722 d), 26-712 d) before 2018", Confidence.FromMemory),
            CounterOutlets with { OverCounter = false, Surfaces = new[] { BoxSurface.Wall, BoxSurface.Cabinet } },
            new IslandSubject
            {
                LongSide = Distance.FromMillimeters(600),
                ShortSide = Distance.FromMillimeters(300),

                // Nothing is said of how far above or below the top: anywhere on the island's sides.
                Above = Distance.FromMillimeters(1000),
                Below = Distance.FromMillimeters(1000),
                OverhangAtMost = Distance.FromMillimeters(1000),
                MeetsWithin = InEverySet.MeetsWithin,
            })
        {
            Scope = new() { Rooms = CounterRooms },
        };

    private static RequiredOutlet Basin() =>
        new("canada-bath-receptacle", "within 1 m in plan of a basin, one in each room with basins", Severity.Violation, new(Code, "26-720"),
            Receptacle with { Surfaces = new[] { BoxSurface.Wall, BoxSurface.Cabinet } },
            new FixtureSubject(new() { Fixtures = new[] { FixtureKind.Basin }, Interruptions = new[] { InterruptionKind.Basin } }, Distance.FromMillimeters(1000)) { AnyOne = true })
        {
            Scope = new() { Rooms = new[] { RoomKind.Bathroom, new("toilet") } },
            Adds = BathBox,
        };

    /// <summary>Where a washing machine stands elsewhere it needs one, too; that its space is meant for one isn't described.</summary>
    private static RequiredOutlet Service() =>
        new("canada-service-receptacle", "there at least once", Severity.Violation, new(Code, "26-720"), Receptacle, new RoomSubject())
        {
            Scope = new() { Rooms = new[] { RoomKind.Laundry, RoomKind.Utility, RoomKind.Basement } },
            Adds = ServiceBox,
            LeavesOut = "washing machines in other rooms",
        };

    private static Zone Tub(string id, int millimeters, Severity severity) =>
        new(id, millimeters == 1000 ? "1 m or more in plan from a tub or shower, where that can be done" : millimeters + " mm or more in plan from a tub or shower", severity,
            new(Code, "26-720"), new() { Fixtures = new[] { FixtureKind.Tub, FixtureKind.Shower } }, Distance.FromMillimeters(millimeters))
        {
            EndsAtBarriers = true,
            Scope = new() { Surfaces = new[] { BoxSurface.Wall, BoxSurface.Ceiling }, Devices = DeviceLists.Receptacles },
        };

    private static HeightBand Counting() =>
        new("canada-counts-as-required", "at most 1.7 m above the floor to count as a required outlet", Severity.Note, new(Code, "26-720 j)"), Datum.FinishedFloor)
        {
            High = HighestThatCounts,
            Scope = RuleScope.Walls with { Devices = DeviceLists.GeneralReceptacles, Purposes = new[] { BoxPurpose.General, BoxPurpose.Bath, BoxPurpose.Laundry, BoxPurpose.Counter } },
        };
}
