using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Boxes in walls that are declared fire-resistance rated: International Building Code 714.4.2, exceptions 1 and 2; International Residential Code R302.4.2 alike. A wall between house and garage is none by itself.</summary>
internal static class RatedWalls
{
    private static Citation Membrane { get; } = new("IBC 2018", "714.4.2 exceptions 1 and 2");

    public static RuleSet Rows { get; } = new([Separation(), Opening()]);

    private static RatedSeparation Separation()
    {
        RatedSeparation row = new("rated-separation", "24 in apart from boxes on the other face of a rated wall, or kept apart by other permitted means", Severity.Violation, Membrane, Distance.FromInches(24, 0, 1))
        {
            LeavesOut = "what a box's own listing asks for, and staggered studs",
        };

        // From which part of a box isn't said: strictly from side to side.
        return row with
        {
            ReadingId = "side-to-side",
            Readings = new[] { new Reading("centers", "measured from center to center", row with { FromCenters = true }) },
        };
    }

    private static RatedOpening Opening() =>
        new("rated-opening", "at most 16 in2 of wall for one metal box", Severity.Violation, Membrane, Quantity.Area(Distance.FromInches(4, 0, 1), Distance.FromInches(4, 0, 1)))
        {
            LeavesOut = "100 in2 of openings to 100 ft2 of wall, and the gap of 1/8 in round a box",
        };
}
