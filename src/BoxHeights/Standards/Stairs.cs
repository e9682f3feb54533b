using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Flights of stairs: switches after NEC 210.70(A)(2), risers and handrails after the International Residential Code, and the trade's habits with lights.</summary>
internal static class Stairs
{
    private const string Residential = "IRC 2018";

    /// <summary>What has to be there at a flight in a dwelling.</summary>
    public static RuleSet Outlets(NecEdition edition) => new([Switches(edition)]);

    /// <summary>What codes ask of a flight itself.</summary>
    public static RuleSet Flights => new([Risers]);

    /// <summary>What a good crew keeps to beside a flight.</summary>
    public static RuleSet Practice { get; } = new(
    [
        new HeightBand("clear-of-handrail", "clear of where a handrail runs, its top 34 to 38 in above the nosings", Severity.Note, new(Residential, "R311.7.8.1", Confidence.Derived), Datum.Nosing)
        {
            IsKeepOut = true,
            HighLine = TargetLine.PlateTop,
            Low = Distance.FromInches(34, 0, 1),
            LowLine = TargetLine.PlateBottom,
            High = Distance.FromInches(38, 0, 1),
            Scope = RuleScope.Walls with { ExceptExisting = true },
            LeavesOut = "flights of fewer than four risers, which need no handrail",
        },
        new HeightBand("stair-lamp", "low beside the treads, at most 18 in above the nosings, or out of the eyes, 60 in or more above them", Severity.Note, Citation.CommonPractice, Datum.Nosing)
        {
            IsKeepOut = true,
            Low = Distance.FromInches(18, 0, 1),
            High = Distance.FromInches(60, 0, 1),
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Light }, ExceptExisting = true },
        },
        new StairPathLights("stair-path-lights", "at one place on the treads and one height above them", Severity.Note, Citation.CommonPractice)
        {
            MostAlong = Distance.FromInches(1, 0, 1),
            MostInHeight = Distance.FromInches(0, 1, 4),
            Below = Distance.FromInches(18, 0, 1),
        },
    ]);

    private static RiserVariation Risers { get; } =
        new("riser-variation", "with its largest finished riser at most 3/8 in higher than its smallest", Severity.Violation, new(Residential, "R311.7.5"), Distance.FromInches(0, 3, 8));

    /// <summary>"At each floor level" is the text; that it be at the stair is how it is mostly read, and always built.</summary>
    private static RequiredOutlet Switches(NecEdition edition)
    {
        Citation section = new("NEC " + (int)edition, "210.70(A)(2)", edition == NecEdition.Nec2026 ? Confidence.FromMemory : Confidence.Confirmed);
        FlightSubject atTheStair = new(6);
        RequiredOutlet row = new("stair-switches", "with a wall switch at each floor that it joins, as for six risers or more", Severity.Violation, section,
            new CountedOutlet("wall switch", DeviceLists.Switches) { Purposes = new[] { BoxPurpose.Switch }, Surfaces = new[] { BoxSurface.Wall } }, atTheStair)
        {
            ReadingId = "at-the-stair",
            Adds = new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.ThreeWaySwitch }).WithHeight(TradePractice.HeightFor(BoxPurpose.Switch)),
            LeavesOut = "landings between floors that have an entryway; which lights a switch controls",
        };
        return row with { Readings = new[] { new Reading("anywhere-on-that-floor", "a switch in any room of that floor counts", row with { Of = atTheStair with { AnywhereOnLevel = true } }) } };
    }
}
