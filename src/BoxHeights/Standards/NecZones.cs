using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Where boxes may not be: round tubs and showers, in closets, and where alarms would be set off or kept silent.</summary>
/// <remarks>
/// Distances are straight in plan, to the center of the box: which part of it is meant isn't said. The 2026 text of these sections hasn't been read: its rows
/// carry 2023 over, marked "from memory".
/// </remarks>
internal static class NecZones
{
    /// <summary>Lights that hang, and what else hangs with them: kinds of one's own, for none is known here.</summary>
    private static readonly Items<DeviceKind> Hanging = new DeviceKind[] { new("pendant"), new("chandelier"), new("track-light"), new("ceiling-fan") };

    private static readonly RuleScope Ceilings = new() { Surfaces = new[] { BoxSurface.Ceiling } };
    private static readonly RuleScope WallsAndCeilings = new() { Surfaces = new[] { BoxSurface.Wall, BoxSurface.Ceiling } };
    private static readonly Distance ThreeFeet = Distance.FromFeetInches(3, 0);
    private static readonly Distance EightFeet = Distance.FromFeetInches(8, 0);
    private static readonly Level Rim = new(Distance.Zero, Datum.Rim);
    private static readonly Level EightFeetOverRim = new(EightFeet, Datum.Rim);
    private static readonly RoomAnchor TubOrShower = new() { Fixtures = new[] { FixtureKind.Tub, FixtureKind.Shower } };
    private static readonly RoomAnchor DoorOfBath = new() { DoorsToRoomsWith = TubOrShower.Fixtures };
    private static readonly RoomAnchor Cooking = new()
    {
        Fixtures = new[] { FixtureKind.Range },
        Interruptions = new[] { InterruptionKind.Range, InterruptionKind.Cooktop },
    };

    /// <summary>Rows of an edition.</summary>
    public static RuleSet Rows(NecEdition edition)
    {
        Citation Section(string section, bool isRead = true) =>
            new("NEC " + (int)edition, section, isRead && edition != NecEdition.Nec2026 ? Confidence.Confirmed : Confidence.FromMemory);
        List<Rule> rows =
        [
            Receptacle(edition, Section("406.9(C)")),
            new Zone("tub-switch", "outside the space of a tub or shower", Severity.Violation, Section("404.4", false), TubOrShower, Distance.Zero)
            {
                Scope = RuleScope.Walls with { Devices = DeviceLists.Switches },
                LeavesOut = "switches that are part of a listed tub or shower",
            },
            new Zone("tub-hanging-light", "3 ft or more in plan from a tub or shower, or over 8 ft above its rim", Severity.Violation, Section("410.10(D)", false), TubOrShower, ThreeFeet)
            {
                Top = EightFeetOverRim,
                Scope = Ceilings with { Devices = Hanging },
                LeavesOut = "how far a light hangs below a ceiling that is higher",
            },
            ClosetLight(Section("410.16")),
            new Zone("closet-hanging-light", "of a kind that a clothes closet may have: enclosed, and not hanging", Severity.Violation, Section("410.16(B)", false), RoomAnchor.WholeRoom, Distance.Zero)
            {
                Scope = Ceilings with { Devices = Hanging.With(new("lampholder")), Rooms = new[] { RoomKind.Closet } },
            },
        ];
        rows.AddRange(AlarmRows);
        return new(rows);
    }

    /// <summary>Until 2017 only the space within and over; from 2020 a zone to 8 ft above the rim; from 2023 down to the floor, ended by fixed barriers.</summary>
    private static Zone Receptacle(NecEdition edition, Citation citation)
    {
        RuleScope scope = WallsAndCeilings with { Devices = DeviceLists.Receptacles };
        if (edition == NecEdition.Nec2017)
        {
            return new Zone("tub-receptacle", "outside the space within and over a tub or shower", Severity.Violation, citation, TubOrShower, Distance.Zero) { Scope = scope };
        }

        Zone row = new("tub-receptacle", OutsideZone(edition), Severity.Violation, citation, TubOrShower, ThreeFeet)
        {
            Top = EightFeetOverRim,
            AllowsFurthestWall = true,
            Scope = scope,
        };
        if (edition == NecEdition.Nec2020)
        {
            // Nothing is said of what lies below the rim.
            return row with { Bottom = Rim };
        }

        row = row with
        {
            EndsAtBarriers = true,
            FurthestWallFor = new[] { BoxPurpose.Bath },
            Scope = scope with { ExceptDedicated = true },
            LeavesOut = "the exceptions for a hydromassage tub, for a toilet's bidet seat and for a listed ceiling receptacle that bears weight: a box that serves one appliance isn't judged",
        };
        return row with
        {
            Readings = new[] { new Reading("half-wall-is-no-barrier", "a screen or half wall that leaves the space open isn't a fixed barrier", row with { EndsAtBarriers = false }) },
        };
    }

    private static string OutsideZone(NecEdition edition) =>
        "3 ft or more in plan from a tub or shower" + (edition == NecEdition.Nec2020 ? "" : " that nothing fixed closes off") + ", or over 8 ft above its rim";

    /// <summary>Over the shelf the space for storage is 12 in deep from the side and back walls, or as deep as the shelf.</summary>
    private static ClosetLight ClosetLight(Citation citation) =>
        new("closet-light", "12 in or more in plan from the storage space if it is enclosed, 6 in if it is recessed or fluorescent, and not open", Severity.Violation, citation)
        {
            Storage = Distance.FromInches(12, 0, 1),
            ToEnclosed = Distance.FromInches(12, 0, 1),
            ToOthers = Distance.FromInches(6, 0, 1),
            Recessed = new[] { DeviceLists.RecessedLight },
            Scope = new RuleScope { Devices = new[] { DeviceKind.Luminaire, DeviceLists.RecessedLight }, Rooms = new[] { RoomKind.Closet } },
            LeavesOut = "how wide the luminaire is, shelves whose depth isn't stated and is more than 12 in, rods above 6 ft, ceilings under 7 ft, lights on walls",
        };

    /// <summary>Smoke alarms: the International Residential Code repeats NFPA 72. Distances that its exceptions may shorten are advice.</summary>
    private static IEnumerable<Rule> AlarmRows
    {
        get
        {
            Citation door = new("International Residential Code", "R314.3.3");
            Citation cooking = new("International Residential Code", "R314.3.1");
            RuleScope alarms = WallsAndCeilings with { Devices = DeviceLists.SmokeAlarms };
            const string FromDoor = "3 ft or more in plan from the door of a room with a tub or shower";
            const string FromCooking = "6 ft or more in plan from a range or cooktop";
            const string Exception = "what is needed to have an alarm at all; supply registers, and the tips of fan blades";
            const string Kinds = "ionization alarms, which keep 10 ft with a silencing switch and 20 ft without";
            yield return new Zone("alarm-bath-door", FromDoor, Severity.Advice, door, DoorOfBath, ThreeFeet) { Scope = alarms, LeavesOut = Exception };
            yield return new Zone("alarm-cooking", FromCooking, Severity.Violation, cooking, Cooking, Distance.FromFeetInches(6, 0)) { Scope = alarms, LeavesOut = Kinds };
            yield return new Zone("alarm-corner", "4 in or more from the walls, as makers' instructions ask", Severity.Note, new("makers' instructions"), new RoomAnchor { EveryWall = true }, Distance.FromInches(4, 0, 1))
            {
                Scope = Ceilings with { Devices = DeviceLists.SmokeAlarms },
            };
        }
    }
}
