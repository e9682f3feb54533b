namespace BoxHeights.Rules;

/// <summary>The room that one conductor of a size takes in a box.</summary>
[Described(nameof(Size), nameof(Volume))]
public sealed partial record ConductorAllowance
{
    /// <summary>The size.</summary>
    public ConductorSize Size { get; init; }

    /// <summary>The room that one takes.</summary>
    public Volume Volume { get; init; }

    /// <summary>The size and its room: "14 AWG 2 in3".</summary>
    public override string ToString() => Size + " " + Volume;
}

/// <summary>Where a document says how each thing in a box counts: the paragraphs that a sum names, empty where there is none.</summary>
[Described]
public sealed partial record FillParagraphs
{
    /// <summary>Of conductors.</summary>
    public string Conductors { get; init; } = "";

    /// <summary>Of clamps inside.</summary>
    public string Clamps { get; init; } = "";

    /// <summary>Of luminaire studs and hickeys.</summary>
    public string Fittings { get; init; } = "";

    /// <summary>Of devices.</summary>
    public string Devices { get; init; } = "";

    /// <summary>Of equipment grounds.</summary>
    public string Grounds { get; init; } = "";

    /// <summary>Of terminal blocks.</summary>
    public string TerminalBlocks { get; init; } = "";

    /// <summary>Of barriers.</summary>
    public string Barriers { get; init; } = "";

    /// <summary>All of them.</summary>
    public override string ToString() => string.Join(", ", Conductors, Clamps, Fittings, Devices, Grounds, TerminalBlocks, Barriers);
}
