using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>NFPA 70, National Electrical Code, 210.52: how receptacle outlets are spaced along walls and counters of a dwelling, editions 2017 to 2026.</summary>
/// <remarks>
/// Measured from rough opening to rough opening and to the center of a box, since the text says neither. The 2026 text of these parts hasn't been read:
/// its rows carry 2023 over, marked "from memory".
/// </remarks>
internal static class NecSpacing
{
    /// <summary>210.52(4): above this a receptacle isn't one of the required.</summary>
    public static Distance HighestThatCounts { get; } = Distance.FromFeetInches(5, 6);

    /// <summary>210.52(C)(3), (C)(5) in 2017: how far above its counter a receptacle is at most.</summary>
    public static Distance AboveCounter { get; } = Distance.FromInches(20);

    /// <summary>The rooms that 210.52(C) names, and like ones.</summary>
    public static Items<RoomKind> CounterRooms { get; } = new[]
    {
        RoomKind.Kitchen, RoomKind.DiningRoom, new("pantry"), new("breakfast-room"), new("kitchenette"), new("great-room"),
    };

    // "Kitchen, family room, dining room, living room, parlor, library, den, sunroom, bedroom, recreation room", and rooms that are like them.
    private static Items<RoomKind> WallRooms { get; } = new[]
    {
        RoomKind.Kitchen, RoomKind.FamilyRoom, RoomKind.DiningRoom, RoomKind.LivingRoom, RoomKind.Bedroom, RoomKind.Office,
        new("parlor"), new("library"), new("den"), new("sunroom"), new("recreation-room"), new("great-room"), new("breakfast-room"), new("study"), new("playroom"), new("media-room"),
    };

    /// <summary>What breaks the floor line of a wall: doorways and the like, fireplaces, cabinets without a top; a range or dishwasher stands in a line of counters.</summary>
    private static WallSpaces Walls { get; } = new()
    {
        Doorways = OpeningKind.Doorways,
        ClearBelow = InEverySet.SillOverReceptacles,
        Cabinets = DeviceLists.FloorCabinets,
        Fixtures = new[] { FixtureKind.Fireplace, FixtureKind.Range, FixtureKind.Dishwasher },
        Counters = new[] { CounterKind.Kitchen, CounterKind.Bar },
        CounterRooms = CounterRooms,
        Dividers = new[] { FreestandingKind.Railing, FreestandingKind.HalfWall, FreestandingKind.Bar, FreestandingKind.Peninsula, FreestandingKind.Island },
        Tops = new[] { FreestandingKind.Peninsula, FreestandingKind.Bar, FreestandingKind.Island },
        MeetsWithin = InEverySet.MeetsWithin,
    };

    private static CountedOutlet Outlets { get; } = DeviceLists.Serving with
    {
        Highest = new Level(HighestThatCounts, Datum.FinishedFloor),
        Surfaces = new[] { BoxSurface.Wall, BoxSurface.Floor },
        InFloorWithin = Distance.FromInches(18),
    };

    private static CountedOutlet WallOutlets { get; } = Outlets with { OnDividers = true, CountersApartIn = CounterRooms };

    private static CountedOutlet CounterOutlets { get; } = DeviceLists.Serving with
    {
        OverCounter = true,
        AboveCounter = AboveCounter,
        ExceptDedicated = true,
        ExceptPurposes = DeviceLists.BehindAppliances,
    };

    private static DeviceBox WallBox { get; } = new DeviceBox("added", BoxPurpose.General)
        .WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithHeight(TradePractice.HeightFor(BoxPurpose.General));

    private static DeviceBox CounterBox { get; } = new DeviceBox("added", BoxPurpose.Counter)
        .WithDevices(new[] { DeviceKind.GfciReceptacle }).WithHeight(TradePractice.HeightFor(BoxPurpose.Counter));

    public static RuleSet Rows(NecEdition edition)
    {
        Confidence read = edition == NecEdition.Nec2026 ? Confidence.FromMemory : Confidence.Confirmed;
        Citation Section(string section) => new("NEC " + (int)edition, section, read);
        List<Rule> rows =
        [
            Wall(Section("210.52(A)"), edition),
            Counter(Section(edition == NecEdition.Nec2017 ? "210.52(C)(1), (4)" : "210.52(C)(1)"), edition >= NecEdition.Nec2023),
            Hall(Section("210.52(H)")),
            Foyer(Section("210.52(I)")),

            // 210.8(A) asks for protection, and one device protects all that it feeds. Common practice, no source.
            new ApplianceCircuits("counter-circuits", "on two circuits of 20 A, each protected by the first receptacle on it", Section("210.52(B)(3)") with { Confidence = Confidence.FromMemory },
                new[] { BoxPurpose.Counter }, CounterRooms, 2) { Protecting = DeviceKind.GfciReceptacle, Onward = DeviceKind.DuplexReceptacle },
            edition switch
            {
                NecEdition.Nec2017 => BySides(Section("210.52(C)(2), (3), (4)")),
                NecEdition.Nec2020 => ByArea(Section("210.52(C)(2)")),
                _ => Provision(Section("210.52(C)(2)"), edition),
            },
        ];
        return new(rows);
    }

    private static Coverage Wall(Citation citation, NecEdition edition)
    {
        Coverage row = new("wall-outlets", "within 6 ft of an outlet that counts, everywhere along the floor line", Severity.Violation, citation,
            Walls, WallOutlets, Distance.FromFeet(2), Distance.FromFeet(6), WallBox)
        {
            Scope = new() { Rooms = WallRooms },
            OneToEach = InEverySet.OneToEachWall,
            LeavesOut = "sides of islands, peninsulas and bars whose line isn't stated, sliding doors whose leaf isn't, receptacles of baseboard heaters"
                + (edition == NecEdition.Nec2026 ? ", that 210.52(C)(4) keeps outlets off the 24 in below a top also where its side divides a room" : ""),
        };
        return row with
        {
            ReadingId = "same-space",
            Readings = new[]
            {
                new Reading("next-space", "an outlet on the next wall space serves across a doorway", row with { NextSpacesToo = true }),
                new Reading("box-top", "the height of an outlet that counts is measured to the top of its box", row with { Outlets = WallOutlets with { Line = TargetLine.BoxTop } }),
            },
        };
    }

    private static Coverage Counter(Citation citation, bool relief)
    {
        CounterSpaces counters = new()
        {
            Counters = new[] { CounterKind.Kitchen, CounterKind.Bar },
            Cuts = new[] { InterruptionKind.Sink, InterruptionKind.Basin, InterruptionKind.Range, InterruptionKind.Cooktop, InterruptionKind.Refrigerator },
            ClearBelow = InEverySet.SillOverCounters,
            StraightBehind = Distance.FromInches(12),
            CornerBehind = Distance.FromInches(18),
        };
        Coverage row = new("counter-outlets", "within 24 in of an outlet that counts, everywhere along the wall behind it", Severity.Violation, citation,
            counters, CounterOutlets, Distance.FromInches(12), Distance.FromInches(24), CounterBox)
        {
            Scope = new() { Rooms = CounterRooms },

            ExceptWhereTheWallIsBlocked = relief,
            LeavesOut = "walls at the ends of a straight counter, strips of several outlets, appliance garages",
        };
        return row with
        {
            ReadingId = "round-corners",
            Readings = new[] { new Reading("each-leg", "the legs of an L are served each for itself", row with { AroundCorners = false }) },
        };
    }

    private static RequiredOutlet Hall(Citation citation) =>
        new("hall-outlet", "with an outlet that counts from 10 ft of length on", Severity.Violation, citation, Outlets with { InFloorWithin = null }, new PassageSubject(Distance.FromFeet(10), Walls))
        {
            Scope = new() { Rooms = new[] { RoomKind.Hall, new("corridor") } },
            Adds = WallBox,
        };

    private static Coverage Foyer(Citation citation) =>
        new("foyer-outlets", "with an outlet of its own that counts", Severity.Violation, citation,
            Walls with { FloorWindowsBreak = true, Dividers = default }, Outlets, Distance.FromFeet(3), null, WallBox)
        {
            Scope = new() { Rooms = new[] { RoomKind.Foyer } },
            OneToEach = InEverySet.OneToEachWall,
            FloorOver = Quantity.Area(Distance.FromFeet(10), Distance.FromFeet(6)),
        };

    private static CountedOutlet IslandCounting { get; } = CounterOutlets with { OverCounter = false, AboveCounter = null, Surfaces = new[] { BoxSurface.Wall, BoxSurface.Cabinet } };

    private static DeviceBox OnIsland { get; } = new DeviceBox("island", BoxPurpose.Counter).WithDevices(new[] { DeviceKind.GfciReceptacle }).WithSurface(BoxSurface.Cabinet).WithMounting(new(MountingMethod.Cabinet));

    private static IslandSubject Islands { get; } = new()
    {
        Above = AboveCounter,
        Below = Distance.FromInches(12),
        OverhangAtMost = Distance.FromInches(6),
        Peninsulas = PeninsulaMeasure.ConnectedWall,
        MeetsWithin = InEverySet.MeetsWithin,
        WallServes = true,
    };

    /// <summary>An outlet on the wall that a peninsula joins may serve it, or the wall's counter alone.</summary>
    private static RequiredOutlet Island(Citation citation, IslandSubject islands, OutletCount count, params (string Id, string Summary, IslandSubject Islands)[] readings)
    {
        RequiredOutlet row = new("island-outlets", "served by outlets at its top, or up to 12 in below one that reaches out no more than 6 in", Severity.Violation, citation, IslandCounting, islands)
        {
            Count = count,
            Adds = OnIsland,
            Scope = new() { Rooms = CounterRooms },
            LeavesOut = "what else allows outlets below the top",
        };
        (string, string, IslandSubject) own = ("own-outlets", "an outlet on the wall that a peninsula joins serves the wall's counter alone", islands with { WallServes = false });
        List<Reading> all = [];
        foreach ((string id, string summary, IslandSubject read) in (List<(string, string, IslandSubject)>)[own, .. readings])
        {
            all.Add(new(id, summary, row with { Of = read }));
        }

        return row with { ReadingId = "from-the-wall", Readings = new(all) };
    }

    /// <summary>2017: one for a top with sides of 24 by 12 in, or for each part of it beside a sink or range with little behind it.</summary>
    /// <remarks>Until 2014 a peninsula was measured from its connecting edge; since 2017 from the wall, so that by some accounts an outlet on that wall serves it too.</remarks>
    private static RequiredOutlet BySides(Citation citation)
    {
        IslandSubject bySides = Islands with
        {
            LongSide = Distance.FromInches(24),
            ShortSide = Distance.FromInches(12),
            Dividing = new[] { FixtureKind.Sink, FixtureKind.Cooktop, FixtureKind.Range },
            DividedBelow = Distance.FromInches(12),
        };
        return Island(citation, bySides, OutletCount.One,
            ("connecting-edge", "a peninsula is measured from its connecting edge, and what is on the wall serves the wall's counter alone",
                bySides with { Peninsulas = PeninsulaMeasure.ConnectingEdge, WallServes = false }));
    }

    /// <summary>2020: by the area of the top, nothing taken off for what is set into it; of a peninsula's, one near its outer end.</summary>
    private static RequiredOutlet ByArea(Citation citation) => Island(citation, Islands with { EndWithin = Distance.FromFeet(2) }, new() { First = SquareFeet(9), Each = SquareFeet(18) });

    private static Quantity SquareFeet(int count) => Quantity.Area(Distance.FromFeet(1), Distance.FromFeet(count));

    /// <summary>From 2023 on an outlet is the owner's choice: without one, there has to be provision for it, which a layout can't show.</summary>
    private static RequiredOutlet Provision(Citation citation, NecEdition edition) =>
        new("island-provision", "with an outlet that serves its top, or with " + (edition == NecEdition.Nec2026 ? "an electrical " : "") + "provision for one", Severity.Note, citation, IslandCounting,
            Islands with { Below = Distance.Zero, OverhangAtMost = Distance.Zero })
        {
            Adds = OnIsland,
            Scope = new() { Rooms = CounterRooms },
        };
}
