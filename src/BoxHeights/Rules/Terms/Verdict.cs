using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What a rule says of a box, a group or a space. There are findings of <see cref="Unknown"/> and <see cref="Fails"/> alone.</summary>
public enum Verdict
{
    /// <summary>It meets the rule, whatever isn't known.</summary>
    Passes = 0,

    /// <summary>It depends on something that isn't stated.</summary>
    Unknown = 1,

    /// <summary>It doesn't meet the rule, whatever isn't known.</summary>
    Fails = 2,
}

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note = 1,

    /// <summary>Good work would do otherwise.</summary>
    Advice = 2,

    /// <summary>A document that is in the rule set asks for it.</summary>
    Violation = 3,
}

/// <summary>What may be missing from a description.</summary>
[Flags]
public enum MissingFacts
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The thickness of the finished floor.</summary>
    FloorFinish = 1 << 0,

    /// <summary>The size of the box.</summary>
    BoxSize = 1 << 1,

    /// <summary>The edge that a height is measured to.</summary>
    EdgeMeant = 1 << 2,

    /// <summary>Where the box is along its wall.</summary>
    Along = 1 << 3,

    /// <summary>Which devices the box holds, how wide one of them is, or which conductors are connected to them.</summary>
    Devices = 1 << 4,

    /// <summary>From which side a person reaches the box.</summary>
    Approach = 1 << 5,

    /// <summary>How deep knees fit under a counter.</summary>
    KneeSpace = 1 << 6,

    /// <summary>How deep a counter or an appliance is.</summary>
    ObstructionDepth = 1 << 7,

    /// <summary>How high the top of a counter or an appliance is.</summary>
    ObstructionHeight = 1 << 8,

    /// <summary>The height of the ceiling framing, its strapping or its board.</summary>
    Ceiling = 1 << 9,

    /// <summary>Whether clamps take room inside the box.</summary>
    Clamps = 1 << 10,

    /// <summary>Where grade, the level line or another surface lies that a height is taken from.</summary>
    Datum = 1 << 11,

    /// <summary>Which parts of the device a person operates.</summary>
    OperableParts = 1 << 12,

    /// <summary>The volume marked on the box.</summary>
    BoxVolume = 1 << 13,

    /// <summary>More than the tape can tell.</summary>
    TapeReading = 1 << 14,

    /// <summary>A part of the description that is at fault.</summary>
    BrokenPart = 1 << 15,

    /// <summary>Whether a box inside a cabinet or panel can still be reached.</summary>
    OpenInside = 1 << 16,

    /// <summary>How thick a finish and what it is set in are.</summary>
    FinishThickness = 1 << 17,

    /// <summary>Whether a finish burns.</summary>
    Combustible = 1 << 18,

    /// <summary>What breaks the floor line of a wall: what an opening or a cabinet is, how a door opens.</summary>
    FloorLine = 1 << 19,

    /// <summary>Where a fixture or a box is in plan.</summary>
    PlanPlace = 1 << 20,

    /// <summary>The height of a tub's rim or a shower's threshold.</summary>
    Rim = 1 << 21,

    /// <summary>Whether a fixed barrier stands between a box and a tub or shower.</summary>
    Barrier = 1 << 22,

    /// <summary>How a luminaire is enclosed and where its listing lets it be.</summary>
    Enclosure = 1 << 23,

    /// <summary>Whether an outlet of another room serves this one.</summary>
    ServedFromOutside = 1 << 24,

    /// <summary>What lets boxes be near each other in a rated wall.</summary>
    FireProtection = 1 << 25,

    /// <summary>How the wall board is hung: the widths of its courses, or the gap at the floor.</summary>
    Boards = 1 << 26,

    /// <summary>How thick a countertop is.</summary>
    CounterThickness = 1 << 27,

    /// <summary>How tall a header is.</summary>
    HeaderHeight = 1 << 28,
}

/// <summary>Says facts in words.</summary>
internal static class FactText
{
    private static readonly string[] Words =
    [
        "the floor finish", "the size of the box (measure yours)", "which edge is meant (to top, to center or to bottom)", "where it is along the wall", "which devices it holds and what is connected to them",
        "the side it is reached from", "the knee space", "the depth of what it is reached over", "the height of what it is reached over",
        "the ceiling", "whether clamps take room inside", "the surface its height is taken from", "the device's operable parts", "the volume marked on the box",
        "a closer measurement", "the part of the description that is at fault", "whether it can be reached inside", "how thick the finish is", "whether the finish burns",
        "what breaks the wall at the floor",
        "where things stand in plan", "the height of the rim or threshold", "whether a fixed barrier stands between", "how the luminaire is enclosed and listed",
        "whether one outside the room serves it", "how the boxes are protected in the rated wall", "how the board is hung",
        "how thick the countertop is", "how tall the header is",
    ];

    public static Wording Of(MissingFacts facts) => Of(facts, null);

    /// <summary>The same of a box, naming what its height is taken from where that is what isn't known.</summary>
    public static Wording Of(MissingFacts facts, ResolvedBox box, BoxHeight? height, PartsCatalog catalog) =>
        Of(facts, height is { } from && !box.TryOffset(Datum.Subfloor, from.Datum, catalog, out _, out Datum? unknown) ? unknown : null);

    private static Wording Of(MissingFacts facts, Datum? unknown)
    {
        List<Wording> all = [];
        for (int bit = 0; bit < Words.Length; bit++)
        {
            if (((int)facts & (1 << bit)) != 0)
            {
                all.Add(unknown is { } datum && 1 << bit == (int)MissingFacts.Datum ? $"where the {Wording.Term(DatumText.Name(datum)):datum} lies" : Wording.Term(Words[bit]));
            }
        }

        return Wording.Listed(all);
    }
}
