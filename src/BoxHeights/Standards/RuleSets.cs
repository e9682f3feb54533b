using System;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>An edition of the National Electrical Code (NFPA 70).</summary>
public enum NecEdition
{
    /// <summary>2017.</summary>
    Nec2017 = 2017,

    /// <summary>2020.</summary>
    Nec2020 = 2020,

    /// <summary>2023.</summary>
    Nec2023 = 2023,

    /// <summary>2026.</summary>
    Nec2026 = 2026,
}

/// <summary>The rule sets that come with the library. Join them with <c>+</c>.</summary>
/// <remarks>A published set is frozen within a major version; a corrected number raises its row's revision. Each of them holds the row <c>counter-edge</c> beside its own, since a box across a countertop's edge is a mistake whatever document is asked, and the customs <c>room-for-boxes</c> and <c>entrance-switches</c> that plans go by.</remarks>
public static class RuleSets
{
    /// <summary>What the electrical code asks of the boxes of a dwelling in the United States, each where it is described.</summary>
    /// <remarks>Add <see cref="UnitedStatesOutlets"/> for what has to be there, and reach documents by occupancy.</remarks>
    /// <param name="edition">The edition that is adopted where the dwelling stands.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such edition here.</exception>
    public static RuleSet UnitedStatesDwelling(NecEdition edition) =>
        Standards.Nec.Dwelling(edition)
        + Standards.BoxSizes.Rows(edition)
        + Standards.NecZones.Rows(edition)
        + Standards.NecInspection.Rows
        + Standards.RatedWalls.Rows
        + Standards.Stairs.Flights
        + Standards.Alarms.Rows
        + Standards.InEverySet.Rows;

    /// <summary>What the electrical code asks to be there: receptacles along walls and counters, outlets of rooms, stairs and outside faces, alarms.</summary>
    /// <remarks>Add it where rooms are described whole: of half a room it would miss the other half.</remarks>
    /// <param name="edition">The edition that is adopted where the dwelling stands.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such edition here.</exception>
    public static RuleSet UnitedStatesOutlets(NecEdition edition) =>
        Standards.NecSpacing.Rows(edition)
        + Standards.NecRequired.Rows(edition)
        + Standards.Stairs.Outlets(edition)
        + Standards.InEverySet.Rows;

    /// <summary>How an edition counts what is in a box, for <see cref="BoxFill"/>.</summary>
    /// <param name="edition">The edition; 2026 counts as 2023, from memory.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such edition here.</exception>
    public static FillCounting FillCounting(NecEdition edition) => Standards.BoxSizes.Counting(edition);

    /// <summary>The trade's own habits: heights, one level line, boxes cut into one sheet, the drawing's heights, what framing asks. Common practice, no source.</summary>
    public static RuleSet RoughInPractice => Standards.TradePractice.Rows + AroundTheHouse;

    /// <summary>The same habits with a builder's own heights in place of the usual ones for the same purposes.</summary>
    /// <param name="own">The builder's table.</param>
    /// <exception cref="ArgumentNullException"><paramref name="own"/> is null.</exception>
    /// <exception cref="ArgumentException">It has two heights for one purpose, takes those of one purpose from different surfaces, or leaves none between the lowest and the highest.</exception>
    public static RuleSet RoughInPracticeWith(PracticeTable own) =>
        Standards.TradePractice.With(own ?? throw new ArgumentNullException(nameof(own))) + AroundTheHouse;

    /// <summary>Reach after the 2010 ADA Standards, 308, with the exceptions of 205.1 that speak of one box. It doesn't reach private one-family houses.</summary>
    public static RuleSet Ada2010 => Standards.ReachDocuments.Ada2010;

    /// <summary>Reach in units covered by the Fair Housing Act: the Design Manual decides, the Guidelines' stricter text is the other reading.</summary>
    public static RuleSet FairHousing => Standards.ReachDocuments.FairHousing;

    /// <summary>Reach in Type A units after ICC A117.1-2009.</summary>
    public static RuleSet TypeA2009 => Standards.ReachDocuments.TypeA2009;

    /// <summary>Reach in Type B units after ICC A117.1-2009.</summary>
    public static RuleSet TypeB2009 => Standards.ReachDocuments.TypeB2009;

    /// <summary>Reach in California's covered dwellings, measured to the edges of the box.</summary>
    public static RuleSet California => Standards.ReachDocuments.California;

    /// <summary>What the electrical code asks of walls, counters and receptacles of a dwelling in Canada. Barrier-free rows aren't in it: add them by occupancy.</summary>
    public static RuleSet CanadaDwelling => Standards.Canada.Dwelling;

    /// <summary>Heights of controls and outlets in barrier-free buildings of Canada.</summary>
    public static RuleSet CanadaBarrierFree => Standards.Canada.BarrierFree;

    /// <summary>Heights of controls in barrier-free buildings of Ontario, where they are narrower.</summary>
    public static RuleSet OntarioBarrierFree => Standards.Canada.OntarioBarrierFree;

    private static RuleSet AroundTheHouse => Standards.Framing.Rows + Standards.Doors.Rows + Standards.Stairs.Practice + Standards.Lights.Rows + Standards.UsualBoxes.Rows + Standards.UsualWiring.Rows + Standards.InEverySet.Rows;
}
