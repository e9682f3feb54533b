namespace BoxHeights.Rules;

/// <summary>How an edition of the code, and whoever reads it, counts what is in a box.</summary>
[Described(nameof(Grounds))]
public sealed partial record FillCounting
{
    /// <summary>How equipment grounds count.</summary>
    public GroundCounting Grounds { get; init; }

    /// <summary>Whether each assembly of terminal blocks takes one allowance: from 2023.</summary>
    public bool CountsTerminalBlocks { get; init; }

    /// <summary>Whether the molded flap of a plastic box counts as an internal clamp.</summary>
    public bool FlapIsClamp { get; init; }

    /// <summary>The way to count in words.</summary>
    public override string ToString() =>
        "grounds " + (Grounds == GroundCounting.AllAsOne ? "all as one, a separate isolated set as one more" : "up to four as one, each beyond a quarter")
        + (CountsTerminalBlocks ? "; each terminal block as one conductor" : "") + (FlapIsClamp ? "; a molded flap counts as a clamp" : "");
}

/// <summary>How equipment grounding conductors count toward fill.</summary>
public enum GroundCounting
{
    /// <summary>All together as one conductor, and a separate set for isolated grounds as one more: NEC until 2017.</summary>
    AllAsOne = 0,

    /// <summary>Up to four as one conductor, each beyond that as a quarter of one, isolated or not: NEC from 2020.</summary>
    QuarterBeyondFour = 1,
}
