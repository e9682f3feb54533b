namespace BoxHeights;

/// <summary>What is fitted inside a box besides devices, clamps and conductors, and takes room there.</summary>
public enum BoxFitting
{
    /// <summary>A stud that a luminaire hangs from.</summary>
    LuminaireStud = 0,

    /// <summary>A hickey between such a stud and the luminaire.</summary>
    Hickey = 1,

    /// <summary>An assembly of terminal blocks.</summary>
    TerminalBlock = 2,

    /// <summary>A metal barrier without a volume marked on it.</summary>
    MetalBarrier = 3,

    /// <summary>A nonmetallic barrier without a volume marked on it.</summary>
    PlasticBarrier = 4,
}
