using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Documents on reach in the United States: one band each, with the limits over what is in the way.</summary>
/// <remarks>Their exceptions that speak of one box are in the scopes; those that compare receptacles with each other are the rows' relief.</remarks>
internal static class ReachDocuments
{
    private static ReachOver Ada { get; } = new()
    {
        Forward = new ReachStep[] { new(Inches(20), Inches(48)), new(Inches(25), Inches(44)) },
        Side = new ReachStep[] { new(Inches(10), Inches(48)), new(Inches(24), Inches(46)) },
        SideTopAtMost = Inches(34),
        LaundryTopAtMost = Inches(36),
        ShallowDepth = Inches(10),
    };

    /// <summary>A base of 24 in with a counter of up to 1-1/2 in overhang, and 36 in high, is accepted.</summary>
    private static ReachOver OverStockCounter(ReachOver text) => text with
    {
        Side = new[] { text.Side[0], new ReachStep(Distance.FromInches(25, 1, 2), Inches(46)) },
        SideTopAtMost = Inches(36),
    };

    /// <summary>2010 ADA Standards. 205.1 exception 2 leaves out outlets for one appliance, exception 3 one of several over a length of counter, exception 4 those in a floor.</summary>
    public static RuleSet Ada2010 { get; } = new RuleSet([Band("ada-reach", new("2010 ADA Standards", "308.2, 308.3; 205.1 exceptions 2, 3 and 4"), Ada, Redundant) with { Relief = Relief.OneOverCounter }]) + InEverySet.Rows;

    /// <summary>ICC A117.1-2009, Type A units: the reach of its chapter 3 without relief for counters.</summary>
    public static RuleSet TypeA2009 { get; } = new RuleSet([Band("type-a-reach", new("ICC A117.1-2009", "1003.9, 308", Confidence.FromMemory), Ada, Redundant) with { Relief = Relief.OneOverCounter }]) + InEverySet.Rows;

    /// <summary>ICC A117.1-2009, Type B units: 1004.9 exception 10 allows a stock counter.</summary>
    public static RuleSet TypeB2009 { get; } = new RuleSet([Band("type-b-reach", new("ICC A117.1-2009", "1004.9, 308", Confidence.FromMemory), OverStockCounter(Ada), Redundant) with { Relief = Relief.OneOverCounter }]) + InEverySet.Rows;

    /// <summary>Fair Housing, requirement 5: the Design Manual decides; the Guidelines' own text is stricter over counters.</summary>
    public static RuleSet FairHousing { get; } = new RuleSet([FairHousingRow()]) + InEverySet.Rows;

    /// <summary>California: the band is measured to the edges of the box, not to the device.</summary>
    public static RuleSet California { get; } = new RuleSet(
    [
        new HeightBand("california-reach", "with its box 15 in to 48 in above the finished floor, bottom and top", Severity.Violation,
            new("California Building Code", "1136A.1, 11B-308", Confidence.FromMemory), Datum.FinishedFloor)
        {
            LowLine = TargetLine.BoxBottom,
            Low = Inches(15),
            HighLine = TargetLine.BoxTop,
            High = Inches(48),
            Scope = Reached,
        },
    ]) + InEverySet.Rows;

    private const string InTheWay = "obstructions other than counters and laundry machines, and boxes behind a closed base";
    private const string Redundant = "relief for controls that are there twice; " + InTheWay;

    private static RuleScope Reached => RuleScope.Walls with { ExceptDedicated = true, Devices = DeviceLists.Operated, OrUnstatedFor = DeviceLists.ForOperated };

    private static HeightBand FairHousingRow()
    {
        // The Guidelines print nothing of their own for shallow obstructions: up to 24 in deep the side limit is 46 in.
        ReachOver guidelines = Ada with { Side = new ReachStep[] { new(Inches(24), Inches(46)) }, LaundryTopAtMost = Inches(34), ShallowDepth = null };
        ReachOver manual = guidelines with { Side = new ReachStep[] { new(Distance.FromInches(25, 1, 2), Inches(46)) }, SideTopAtMost = Inches(36), LaundryTopAtMost = Inches(36) };
        HeightBand row = Band("fair-housing-reach", new("HUD Fair Housing Act Design Manual", "chapter 5, requirement 5"), manual, Redundant) with { Relief = Relief.ComparableInRoom };
        return row with
        {
            ReadingId = "design-manual",
            Readings = new[]
            {
                new Reading("guidelines", "the 1991 Guidelines' own text: counters up to 24 in deep and 34 in high from the side",
                    row with { Over = guidelines, Citation = new("Fair Housing Accessibility Guidelines 1991", "requirement 5") }),
            },
        };
    }

    private static HeightBand Band(string id, Citation citation, ReachOver over, string leavesOut) =>
        new(id, "within reach: operable parts 15 in to 48 in above the finished floor, lower over what is in the way", Severity.Violation, citation, Datum.FinishedFloor)
        {
            LowLine = TargetLine.LowestOperable,
            Low = Inches(15),
            HighLine = TargetLine.HighestOperable,
            High = Inches(48),
            Over = over,
            LeavesOut = leavesOut,
            ReliefOver = new[] { CounterKind.Kitchen },
            Scope = Reached,
        };

    private static Distance Inches(int whole) => Distance.FromInches(whole, 0, 1);
}
