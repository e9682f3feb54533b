using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Boxes in walls that are declared fire-resistance rated: International Building Code 714.4.2, exceptions 1 and 2; International Residential Code R302.4.2 alike. A wall between house and garage is none by itself.</summary>
internal static class RatedWalls
{
    private static Citation Membrane { get; } = new("IBC 2018", "714.4.2 exceptions 1 and 2");

    public static RuleSet Rows { get; } = new([Separation(), Opening(), Total(), Gap()]);

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
            // Said here and not with the total, which speaks of every room: a report of a house without a rated wall needn't say so.
            LeavesOut = "of the total, openings that aren't for boxes, and outside faces; doors and windows count as wall",
        };

    /// <summary>Whether any 100 ft² means every such part of the wall, or so much for its whole area, isn't said.</summary>
    private static RatedTotal Total()
    {
        Quantity hundredSquareFeet = Quantity.Area(Distance.FromFeetInches(10, 0), Distance.FromFeetInches(10, 0));
        RatedTotal row = new("rated-total", "at most 100 in2 of openings for metal boxes in any 100 ft2 of one face of a rated wall", Severity.Violation, Membrane,
            Quantity.Area(Distance.FromInches(10, 0, 1), Distance.FromInches(10, 0, 1)), hundredSquareFeet);
        return row with
        {
            ReadingId = "any-part",
            Readings = new[] { new Reading("in-proportion", "the openings of the whole face in proportion to its area", row with { InProportion = true }) },
        };
    }

    private static GapLimit Gap() =>
        new("rated-gap", "cut into the board of a rated wall with a gap of at most 1/8 in round it", Severity.Violation, Membrane, BoxSizes.MostGap) { InRatedWalls = true };
}
