using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>NFPA 70, National Electrical Code, article 314, editions 2017 to 2026: how large and how deep a box is, and how far behind the finished surface.</summary>
/// <remarks>The 2026 text of these sections hasn't been read: its rows carry 2023 over, marked "from memory".</remarks>
internal static class BoxSizes
{
    /// <summary>314.20: how far a box may be behind a finished surface that doesn't burn.</summary>
    public static Distance MostBehind { get; } = Distance.FromInches(0, 1, 4);

    /// <summary>314.21: the widest gap round it.</summary>
    public static Distance MostGap { get; } = Distance.FromInches(0, 1, 8);

    public static RuleSet Rows(NecEdition edition) => new(
    [
        Fill(Nec.Section(edition, "314.16(A), (B)"), Counting(edition)),
        Setback(Nec.Section(edition, "314.20")),
        Gap(Nec.Section(edition, "314.21")),
        Depth(edition, Nec.Section(edition, "314.24(A), (B)")),
    ]);

    /// <summary>Grounds beyond four count a quarter each from 2020; terminal blocks count from 2023.</summary>
    public static FillCounting Counting(NecEdition edition) => new(Conductors, Nec.Known(edition) == NecEdition.Nec2017 ? GroundCounting.AllAsOne : GroundCounting.QuarterBeyondFour)
    {
        // Common practice, no source: straight blades; a twisted one fits a gang.
        WideAbove = 20,
        CountsTerminalBlocks = edition >= NecEdition.Nec2023,
        MetalBarrier = Volume.FromCubicInches(0.5m),
        PlasticBarrier = Volume.FromCubicInches(1.0m),
        Paragraphs = new() { Conductors = "(B)(1)", Clamps = "(B)(2)", Fittings = "(B)(3)", Devices = "(B)(4)", Grounds = "(B)(5)", TerminalBlocks = "(B)(6)", Barriers = "(A)" },
    };

    /// <summary>Table 314.16(B), numbered 314.16(B)(1) from 2023; the printed metric column is rounded, so the cubic inches govern. Barriers, 314.16(A), are from memory.</summary>
    private static Items<ConductorAllowance> Conductors { get; } = new ConductorAllowance[]
    {
        new(ConductorSize.Awg18, Volume.FromCubicInches(1.5m)),
        new(ConductorSize.Awg16, Volume.FromCubicInches(1.75m)),
        new(ConductorSize.Awg14, Volume.FromCubicInches(2m)),
        new(ConductorSize.Awg12, Volume.FromCubicInches(2.25m)),
        new(ConductorSize.Awg10, Volume.FromCubicInches(2.5m)),
        new(ConductorSize.Awg8, Volume.FromCubicInches(3m)),
        new(ConductorSize.Awg6, Volume.FromCubicInches(5m)),
    };

    private static FillLimit Fill(Citation citation, FillCounting counting)
    {
        FillLimit row = new("box-fill", "large enough for its conductors, clamps, devices and grounds", Severity.Violation, citation, counting)
        {
            LeavesOut = "a side of a barrier whose own volume isn't stated, listed clamps with terminations, conductors thicker than 6 AWG",
        };
        return row with
        {
            Readings = new[] { new Reading("flap-is-clamp", "the molded flap of a plastic box counts as an internal clamp", row with { Counting = counting with { FlapIsClamp = true } }) },
        };
    }

    private static SetbackLimit Setback(Citation citation) =>
        new("box-setback", "at most 1/4 in behind the finished surface, or flush with it where that burns", Severity.Violation, citation, MostBehind)
        {
            LeavesOut = "boxes of which it isn't stated how far out they are set, outside faces",
        };

    private static GapLimit Gap(Citation citation) =>
        new("box-gap", "cut into the board with a gap of at most 1/8 in round it", Severity.Violation, citation, MostGap)
        {
            LeavesOut = "boxes of which the gap round them isn't stated, outside faces",
        };

    /// <summary>
    /// The numbers for 14 to 10 AWG and for deep devices are confirmed; the one for thicker conductors, and how the paragraphs are numbered, are from memory.
    /// Wiring that enters at the center of the back counts from 2023.
    /// </summary>
    private static DepthLimit Depth(NecEdition edition, Citation citation)
    {
        Distance quarter = Distance.FromInches(0, 1, 4);
        Distance deep = Distance.FromInches(1, 7, 8);
        return new("box-depth", "deep enough for its device and conductors", Severity.Violation, citation)
        {
            WithoutDevice = Distance.FromInches(0, 1, 2),
            OnConductors = new DepthOnConductors[]
            {
                new(ConductorSize.Awg14, Distance.FromInches(0, 15, 16)) { DeepDevice = deep, Behind = quarter },
                new(ConductorSize.Awg10, Distance.FromInches(1, 3, 16))
                {
                    DeepDevice = Distance.FromInches(1, 0, 1),
                    Behind = quarter,
                    BehindAtBackEntry = edition >= NecEdition.Nec2023 ? Distance.FromInches(0, 1, 2) : null,
                },
                new(null, Distance.FromInches(2, 1, 16)) { DeepDevice = deep, Behind = quarter },
            },
            LeavesOut = "devices of which the depth isn't stated, boxes of which the depth isn't stated, devices that are listed for their box",
        };
    }
}
