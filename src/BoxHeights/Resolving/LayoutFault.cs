namespace BoxHeights;

/// <summary>What can't be about a description.</summary>
public enum LayoutFaultKind
{
    /// <summary>Two parts share an id.</summary>
    DuplicateId = 0,

    /// <summary>An id is named that no part has, or a height is taken from something that isn't there.</summary>
    UnknownReference = 1,

    /// <summary>A part lies beyond the wall that it is listed under.</summary>
    OutsideItsWall = 2,

    /// <summary>A part's right end isn't right of its left end.</summary>
    NoExtent = 3,

    /// <summary>Two openings overlap both along the wall and in height.</summary>
    OverlappingOpenings = 4,

    /// <summary>A box on a wall has no height.</summary>
    NoHeight = 5,

    /// <summary>A measure is larger than anything in a house can be.</summary>
    BeyondMeasure = 6,

    /// <summary>Two statements about one part can't both be true.</summary>
    Contradiction = 7,

    /// <summary>The walls of a room don't end where they begin: a side or a turn is missing.</summary>
    DoesNotClose = 8,

    /// <summary>A kind that nobody knows, and that is nearly spelled like one that is known, where a rule would have read it.</summary>
    MisspelledKind = 9,

    /// <summary>A kind that neither the library nor a row, the catalog or the evaluator's options know, where a rule would have read it, or a rating without volts and amperes: only a note, since kinds are open.</summary>
    UnknownKind = 10,

    /// <summary>It isn't said where a fixture or a box overhead or in the floor is, in a room whose walls close.</summary>
    NoPlace = 11,

    /// <summary>A place in plan lies outside the room that it is listed under.</summary>
    OutsideItsRoom = 12,
}

/// <summary>Two parts of a description that don't go together. Everything that needs neither is still judged.</summary>
[Told]
public sealed partial record LayoutFault
{
    /// <summary>What kind of fault it is.</summary>
    public LayoutFaultKind Kind { get; }

    /// <summary>The id of the box at fault, or the address of another part.</summary>
    public string Subject { get; }

    /// <summary>The address of the surface that the box is on, or of the part.</summary>
    public string Address { get; }

    /// <summary>What can't be, with its numbers, as data.</summary>
    public Wording Wording { get; }

    /// <summary>What can't be, with its numbers, in English.</summary>
    public string Message => Wording.ToString();

    /// <summary>What is at fault, and why.</summary>
    public override string ToString() => Subject + ": " + Message;
}
