using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>NFPA 70, National Electrical Code, editions 2017 to 2026: what it asks of heights in a dwelling.</summary>
/// <remarks>The 2026 text of these sections hasn't been read: its rows carry 2023 over, marked "from memory", but for the one that is new.</remarks>
internal static class Nec
{
    public static RuleSet Dwelling(NecEdition edition)
    {
        Citation Section(string section) => Nec.Section(edition, section);
        List<Rule> rows =
        [
            SwitchReach(Section("404.8(A)")),
            CounterReceptacle(Section(edition == NecEdition.Nec2017 ? "210.52(C)(5)" : "210.52(C)(3)")),
            BelowItsCounter(edition, Section(edition == NecEdition.Nec2017 ? "210.52(C)(5) exception" : "210.52(C)(3)")),
            Counting(Section("210.52(4)")),
            Garage(Section("210.52(G)(1)")),
            Outdoor(Section("210.52(E)")),
            Circuit("circuit-20a", "on a circuit of 20 A", Severity.Violation, Section("210.11(C)(1) to (3), 240.4(D)"), BoxPurpose.Counter, BoxPurpose.Bath, BoxPurpose.Laundry),
            Circuit("garage-circuit-20a", "on a circuit of 20 A, as those that a garage has to have are", Severity.Advice, Section("210.11(C)(4), 240.4(D)"), BoxPurpose.Garage),
        ];
        if (edition == NecEdition.Nec2026)
        {
            rows.Add(BelowCounter(Section("210.52(C)(4)")));
        }

        return new(rows);
    }

    /// <summary>A section of an edition; what stands in the newest is known from memory only.</summary>
    public static Citation Section(NecEdition edition, string section) =>
        new("NEC " + (int)Known(edition), section, edition == NecEdition.Nec2026 ? Confidence.FromMemory : Confidence.Confirmed);

    /// <summary>The edition, if there are rows for it.</summary>
    public static NecEdition Known(NecEdition edition) => edition is NecEdition.Nec2017 or NecEdition.Nec2020 or NecEdition.Nec2023 or NecEdition.Nec2026
        ? edition
        : throw new ArgumentOutOfRangeException(nameof(edition), edition, "There are rows for the editions 2017, 2020, 2023 and 2026.");

    /// <summary>240.4(D) for small copper conductors, from memory; thicker ones serve any circuit of a dwelling's receptacles.</summary>
    private static Items<ConductorRating> SmallConductors { get; } = new ConductorRating[]
    {
        new(ConductorSize.Awg18, 7), new(ConductorSize.Awg16, 10), new(ConductorSize.Awg14, 15), new(ConductorSize.Awg12, 20), new(ConductorSize.Awg10, 30),
    };

    /// <summary>From memory in every edition. Which other outlets share the circuit isn't looked at, nor what is wired already.</summary>
    private static CircuitRating Circuit(string id, string summary, Severity severity, Citation citation, params BoxPurpose[] purposes) =>
        new(id, summary, severity, citation with { Confidence = Confidence.FromMemory }, 20, SmallConductors)
        {
            Scope = RuleScope.Everything with { Devices = DeviceLists.GeneralReceptacles, Purposes = purposes, ExceptDedicated = true, ExceptExisting = true },
            LeavesOut = "what else the circuit feeds, boxes of which no cable is described",
        };

    private static HeightBand SwitchReach(Citation citation) =>
        new("switch-reach", "at most 6 ft 7 in above the floor to the grip at its highest", Severity.Violation, citation, Datum.FinishedFloor)
        {
            HighLine = TargetLine.GripAtHighest,
            High = Distance.FromFeetInches(6, 7),
            Scope = RuleScope.Walls with { Devices = DeviceLists.Switches },
        };

    /// <summary>Which part of the receptacle is meant isn't said: its center, or strictly the top of the box.</summary>
    private static HeightBand CounterReceptacle(Citation citation)
    {
        HeightBand row = new("counter-receptacle", "at most 20 in above the counter it serves", Severity.Violation, citation, Datum.Countertop)
        {
            High = NecSpacing.AboveCounter,
            Scope = RuleScope.Walls with { Devices = DeviceLists.Receptacles, Purposes = new[] { BoxPurpose.Counter } },
        };
        return row with
        {
            ReadingId = "center",
            Readings = new[] { new Reading("box-top", "measured to the top of the box", row with { HighLine = TargetLine.BoxTop }) },
        };
    }

    /// <summary>Until 2020 some islands and peninsulas could be served from up to 12 in below their top; since 2023 what serves a counter is on or above it.</summary>
    private static HeightBand BelowItsCounter(NecEdition edition, Citation citation)
    {
        bool mayBeBelow = edition is NecEdition.Nec2017 or NecEdition.Nec2020;
        return new("counter-receptacle-low", mayBeBelow ? "at most 12 in below the counter it serves" : "on or above the counter it serves", Severity.Violation, citation, Datum.Countertop)
        {
            Low = mayBeBelow ? -Distance.FromInches(12, 0, 1) : Distance.Zero,
            Scope = RuleScope.Walls with { Devices = DeviceLists.Receptacles, Purposes = new[] { BoxPurpose.Counter } },
            LeavesOut = mayBeBelow ? "which counters may be served from below, and tops that overhang their base by more than 6 in" : null,
        };
    }

    private static HeightBand Counting(Citation citation)
    {
        HeightBand row = new("counts-as-required", "at most 5 ft 6 in above the floor to count as a required outlet", Severity.Note, citation, Datum.FinishedFloor)
        {
            High = NecSpacing.HighestThatCounts,
            Scope = RuleScope.Walls with { Devices = DeviceLists.Receptacles, Purposes = new[] { BoxPurpose.General, BoxPurpose.Bath, BoxPurpose.Laundry } },
        };
        return row with
        {
            ReadingId = "center",
            Readings = new[] { new Reading("box-top", "measured to the top of the box", row with { HighLine = TargetLine.BoxTop }) },
        };
    }

    private static HeightBand Garage(Citation citation) =>
        new("garage-receptacle", "at most 5 ft 6 in above the floor to count for its vehicle bay", Severity.Note, citation, Datum.FinishedFloor)
        {
            High = Distance.FromFeetInches(5, 6),
            Scope = RuleScope.Walls with { Devices = DeviceLists.Receptacles, Purposes = new[] { BoxPurpose.Garage }, ExceptDedicated = true },
        };

    private static HeightBand Outdoor(Citation citation) =>
        new("outdoor-receptacle", "at most 6 ft 6 in above grade, or the deck or porch before it, to count as a required outlet", Severity.Note, citation, Datum.Grade)
        {
            High = Distance.FromFeetInches(6, 6),
            Scope = RuleScope.Walls with { Devices = DeviceLists.Receptacles, Purposes = new[] { BoxPurpose.Exterior } },
        };

    /// <summary>
    /// Only summaries of the text were read, so this is advice, and only for exposed faces in the rooms that 210.52(C) names: neither a box in a sink base
    /// nor one under a desk is its concern.
    /// </summary>
    private static HeightBand BelowCounter(Citation citation) =>
        new("below-counter", "not within 24 in below a counter", Severity.Advice, citation, Datum.Countertop)
        {
            IsKeepOut = true,
            Low = -Distance.FromInches(24, 0, 1),
            High = Distance.Zero,
            Scope = RuleScope.Walls with
            {
                Devices = DeviceLists.Receptacles,
                Purposes = new[] { BoxPurpose.General, BoxPurpose.Counter },
                Rooms = NecSpacing.CounterRooms,
                ExceptDedicated = true,
                ExceptExisting = true,
            },
        };
}
