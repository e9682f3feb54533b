using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Outlets that a dwelling has to have, beyond those that its walls, counters, halls and foyers ask for by their length.</summary>
/// <remarks>The 2026 text of these sections hasn't been read: its rows carry 2023 over, marked "from memory".</remarks>
internal static class NecRequired
{
    private static readonly Items<string> FrontAndBack = new[] { "front", "back", "rear" };
    private static readonly Distance SixFeet = Distance.FromFeetInches(6, 0);
    private static readonly Items<Occupancy> OneAndTwoFamily = new[] { Occupancy.OneFamily, Occupancy.TwoFamily, Occupancy.AgingInPlace };
    private static readonly Items<RoomKind> OtherLaundries = new RoomKind[]
    {
        RoomKind.Bathroom, RoomKind.Utility, RoomKind.Basement, RoomKind.Garage, RoomKind.Closet, RoomKind.Hall, RoomKind.Kitchen, RoomKind.Pantry, new("mudroom"),
    };

    /// <summary>What 210.52 counts: 125 V receptacles for general use, not above 5 ft 6 in.</summary>
    private static CountedOutlet Receptacle { get; } = DeviceLists.Serving with
    {
        Name = "receptacle",
        UnstatedMayBeOne = false,
        NeverFor = default,
        Purposes = new[] { BoxPurpose.General, BoxPurpose.Bath, BoxPurpose.Laundry, BoxPurpose.Garage, BoxPurpose.Basement, BoxPurpose.Exterior, BoxPurpose.Counter },
        Surfaces = new[] { BoxSurface.Wall, BoxSurface.Floor },
        ExceptDedicated = true,
        Highest = new Level(NecSpacing.HighestThatCounts, Datum.FinishedFloor),
    };

    private static CountedOutlet SmokeAlarm { get; } = new("smoke alarm", DeviceLists.SmokeAlarms) { Purposes = new[] { BoxPurpose.Alarm } };

    /// <summary>Rows of an edition.</summary>
    public static RuleSet Rows(NecEdition edition)
    {
        Citation Section(string section, bool isRead = true) =>
            new("NEC " + (int)edition, section, isRead && edition != NecEdition.Nec2026 ? Confidence.Confirmed : Confidence.FromMemory);
        List<Rule> rows = [.. Receptacles(edition, Section), .. NecLighting.Rows(edition), .. Alarms];
        if (edition != NecEdition.Nec2017)
        {
            rows.Add(new FanReady("fan-box", "in a box that can hold a ceiling fan, or with framing behind it that can", Severity.Advice, Section("314.27(C)"))
            {
                Scope = new RuleScope { Devices = new[] { DeviceKind.Luminaire }, Rooms = DeviceLists.Habitable },
                LeavesOut = "framing that can be reached through the box; rooms with several lights",
            });
        }

        return new(rows.ConvertAll(row => row with { Covers = "other required outlets" }));
    }

    private delegate Citation Cited(string section, bool isRead = true);

    private static IEnumerable<Rule> Receptacles(NecEdition edition, Cited section)
    {
        FixtureSubject basins = new(new() { Fixtures = new[] { FixtureKind.Basin }, Interruptions = new[] { InterruptionKind.Basin } }, Distance.FromFeetInches(3, 0)) { MostBelowTop = Distance.FromInches(12, 0, 1) };
        RequiredOutlet basin = new(
            "bath-receptacle", "within 3 ft in plan of the outside edge of each basin", Severity.Violation, section("210.52(D)"),
            Receptacle with { Surfaces = Receptacle.Surfaces.With(BoxSurface.Cabinet) }, basins)
        {
            Scope = In(RoomKind.Bathroom),
            Adds = Box("receptacle", BoxPurpose.Bath, DeviceKind.GfciReceptacle, 44),
            LeavesOut = "whether it is on a wall, counter or cabinet that adjoins the basin",
        };
        yield return basin with
        {
            Readings = new[] { new Reading("not-across-a-basin", "one that is reached only across another basin doesn't serve", basin with { Of = basins with { NotAcrossAnother = true } }) },
        };
        yield return new RequiredOutlet("laundry-receptacle", "there at least once where laundry equipment is meant to be", Severity.Violation, section("210.52(F)", false), Receptacle, new RoomSubject())
        {
            Scope = In(RoomKind.Laundry),
            Adds = Box("receptacle", BoxPurpose.Laundry, DeviceKind.DuplexReceptacle, 44),
            LeavesOut = "multifamily dwellings with a common laundry",
        };
        OutletCount bays = new() { OneForEach = DeviceLists.VehicleDoors, TwoBeyond = Distance.FromFeetInches(12, 0) };
        RequiredOutlet garage = new("garage-bay", "there at least once for each vehicle bay, no higher than 5 ft 6 in above the floor", Severity.Violation, section("210.52(G)(1)"), Receptacle, new RoomSubject())
        {
            Count = bays,
            Occupancies = edition == NecEdition.Nec2017 ? OneAndTwoFamily : default,
            Scope = In(RoomKind.Garage),
            Adds = Box("receptacle", BoxPurpose.Garage, DeviceKind.GfciReceptacle, 44),
            LeavesOut = "which bay a receptacle is in where vehicle doors are in several walls or the walls aren't all described; detached garages without power",
        };
        yield return garage with
        {
            ReadingId = "wide-door-two-bays",
            Readings = new[] { new Reading("one-bay-a-door", "a door of any width leads to one bay", garage with { Count = bays with { TwoBeyond = null } }) },
        };
        yield return new RequiredOutlet("basement-receptacle", "there at least once in each unfinished part of a basement", Severity.Violation, section("210.52(G)(3)"), Receptacle, new RoomSubject())
        {
            Scope = In(RoomKind.Basement),
            Adds = Box("receptacle", BoxPurpose.Basement, DeviceKind.GfciReceptacle, 44),
        };
        // An arm's length beyond its end, common practice.
        PlatformSubject decks = new()
        {
            MostGap = edition == NecEdition.Nec2017 ? null : Distance.FromInches(4, 0, 1),
            NeedsDoor = edition == NecEdition.Nec2017,
            Beyond = Distance.FromFeetInches(2, 0),
        };
        CountedOutlet outdoors = Receptacle with { Highest = new Level(Distance.FromFeetInches(6, 6), Datum.Grade) };
        DeviceBox outside = new DeviceBox("receptacle", BoxPurpose.Exterior).WithDevices(new[] { DeviceKind.GfciReceptacle })
            .WithHeight(BoxHeight.ToBottom(Distance.FromInches(18, 0, 1), Datum.Grade));
        yield return new RequiredOutlet("front-and-back", "there at the front and at the back, no higher than 6 ft 6 in above grade", Severity.Violation, section("210.52(E)(1)"), outdoors, new FaceSubject { Faces = FrontAndBack })
        {
            Occupancies = OneAndTwoFamily,
            Adds = outside,
            LeavesOut = "faces with other ids than front, back and rear; whether one is readily reached from grade",
        };
        yield return new RequiredOutlet("deck-receptacle", "within reach of each deck, porch or balcony, no higher than 6 ft 6 in above it", Severity.Violation, section("210.52(E)(3)"), outdoors, decks)
        {
            Adds = outside,
            LeavesOut = "whether one that is low above the ground is under a deck whose surface isn't stated",
        };
        yield return Serviced("hvac-receptacle", false, Box("receptacle", BoxPurpose.General, DeviceKind.DuplexReceptacle, 44));
        yield return Serviced("outdoor-unit-receptacle", true, outside);

        // 210.52(F) asks for one wherever laundry equipment is meant to be; in a laundry that is a row of its own.
        yield return Appliance("washer-receptacle", FixtureKind.Washer, BoxPurpose.Laundry, BoxPurpose.General, OtherLaundries);
        yield return Appliance("dryer-receptacle", FixtureKind.Dryer, BoxPurpose.Dryer);
        yield return Appliance("refrigerator-receptacle", FixtureKind.Refrigerator, BoxPurpose.Refrigerator, BoxPurpose.General);
        yield return Appliance("dishwasher-receptacle", FixtureKind.Dishwasher, BoxPurpose.Dishwasher, BoxPurpose.SinkBase);
        yield return Appliance("range-receptacle", FixtureKind.Range, BoxPurpose.Range);

        // "Within 25 ft" of the equipment isn't said to be by a cord: it is measured straight. Evaporative coolers of one- and two-family dwellings are excepted, and aren't listed.
        RequiredOutlet Serviced(string id, bool isOutside, DeviceBox added) =>
            new(id, "within 25 ft of heating and cooling equipment, on its level", Severity.Violation, section(edition == NecEdition.Nec2017 ? "210.63" : "210.63(A)", false),
                Receptacle with { ExceptDedicated = false, ExceptSwitched = false, Highest = null, Surfaces = DeviceLists.Anywhere },
                new FixtureSubject(new() { Fixtures = DeviceLists.ServicedEquipment }, Distance.FromFeet(25))
                {
                    Outside = isOutside,
                    AnywhereOnItsLevel = true,
                    OwnLevels = new[] { RoomKind.Attic, new("crawl-space") },
                })
            {
                Adds = added,
            };

        // From where on the appliance isn't said: its nearest edge, or strictly its middle. What plugs in at 120 V may use another box that is near.
        RequiredOutlet Appliance(string id, FixtureKind appliance, BoxPurpose purpose, BoxPurpose? other = null, Items<RoomKind> always = default)
        {
            Items<BoxPurpose> own = new[] { purpose };
            Items<BoxPurpose> too = other is { } near ? new[] { near } : default(Items<BoxPurpose>);
            FixtureSubject byItsEdge = new(new() { Fixtures = new[] { appliance } }, SixFeet) { Serving = own, ServingToo = too, AlwaysIn = always, ByCord = true };
            RequiredOutlet row = new(
                id, "within 6 ft of the " + appliance + " by its cord", Severity.Violation, section("210.50(C)"),
                new CountedOutlet("receptacle for it", DeviceLists.Receptacles.With(DeviceKind.FloorReceptacle)) { Purposes = new([.. own, .. too]), Surfaces = DeviceLists.Anywhere }, byItsEdge);
            return row with
            {
                ReadingId = "nearest-edge",
                Readings = new[] { new Reading("middle", "measured from the middle of the appliance", row with { Of = byItsEdge with { FromMiddle = true } }) },
            };
        }
    }

    // Where people pass, and neither steam nor cooking is near. Common practice, no source.
    private static Items<RoomKind> BestForAlarms { get; } = new[] { RoomKind.Hall, RoomKind.Stair, RoomKind.Foyer, RoomKind.LivingRoom, RoomKind.FamilyRoom, RoomKind.DiningRoom, RoomKind.Office, RoomKind.Basement };

    // The middle of a ceiling is its light's. Common practice, no source.
    private const int OffTheLight = 4;

    private static IEnumerable<Rule> Alarms
    {
        get
        {
            Citation places = new("International Residential Code", "R314.3");
            StoreySubject outsideBedrooms = new()
            {
                WhereThereIs = new[] { RoomKind.Bedroom },
                NotIn = new[] { RoomKind.Bedroom, RoomKind.Closet, RoomKind.Bathroom, RoomKind.Garage },
                Best = BestForAlarms,
            };
            yield return new RequiredOutlet("bedroom-alarm", "there in each sleeping room", Severity.Violation, places, SmokeAlarm, new RoomSubject())
            {
                Scope = In(RoomKind.Bedroom),
                Adds = Ceiling("alarm", BoxPurpose.Alarm, DeviceKind.SmokeAlarm),
                AddedInPart = OffTheLight,
            };
            yield return new RequiredOutlet("bedroom-hall-alarm", "there outside the sleeping rooms", Severity.Violation, places, SmokeAlarm, outsideBedrooms)
            {
                Adds = Ceiling("alarm", BoxPurpose.Alarm, DeviceKind.SmokeAlarm),
                AddedInPart = OffTheLight,
                LeavesOut = "how near the bedrooms it is, and whether they are in several areas",
            };
            yield return new RequiredOutlet("storey-alarm", "there on each storey", Severity.Violation, places, SmokeAlarm,
                new StoreySubject { NotIn = new[] { RoomKind.Attic, RoomKind.Garage, RoomKind.Bathroom, RoomKind.Closet }, Best = BestForAlarms })
            {
                Adds = Ceiling("alarm", BoxPurpose.Alarm, DeviceKind.SmokeAlarm),
                AddedInPart = OffTheLight,
            };
            yield return new RequiredOutlet("bedroom-hall-co-alarm", "there outside the sleeping rooms, where fuel is burned or a garage is attached", Severity.Violation,
                new("International Residential Code", "R315", Confidence.FromMemory), new CountedOutlet("carbon monoxide alarm", new[] { DeviceKind.CoAlarm, DeviceKind.SmokeCoAlarm }), outsideBedrooms)
            {
                OnlyWhereListed = true,
                NeededWhere = new() { OpensFrom = new[] { RoomKind.Garage }, Fixtures = new FixtureKind[] { FixtureKind.Furnace, FixtureKind.Fireplace, new("boiler") } },
                Adds = Ceiling("alarm", BoxPurpose.Alarm, DeviceKind.SmokeCoAlarm),
                AddedInPart = OffTheLight,
                MayServeOthers = true,
                LeavesOut = "whether a furnace, boiler or fireplace burns fuel, as each is taken to, and what else does; garages whose door into the house isn't described",
            };
        }
    }

    private static RuleScope In(params RoomKind[] rooms) => new() { Rooms = rooms };

    private static DeviceBox Box(string id, BoxPurpose purpose, DeviceKind device, int center) =>
        new DeviceBox(id, purpose).WithDevices(new[] { device }).WithHeight(BoxHeight.ToCenter(Distance.FromInches(center, 0, 1), Datum.Subfloor));

    private static DeviceBox Ceiling(string id, BoxPurpose purpose, DeviceKind device) => new DeviceBox(id, purpose).WithDevices(new[] { device }).WithKind(BoxKind.Octagon);
}
