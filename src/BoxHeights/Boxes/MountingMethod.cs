namespace BoxHeights;

/// <summary>How a box is held, which decides what it asks of the framing.</summary>
public enum MountingMethod
{
    /// <summary>Nailed or screwed to one side of a stud.</summary>
    Stud = 0,

    /// <summary>On a bracket that reaches from one stud into the bay.</summary>
    Bracket,

    /// <summary>On a bar between two studs or joists: anywhere in the bay.</summary>
    Bar,

    /// <summary>Cut into the board and clamped to it: must miss the studs.</summary>
    CutIn,

    /// <summary>On a block between studs: wherever the block is put.</summary>
    Blocking,

    /// <summary>Built or let into masonry: studs don't matter.</summary>
    Masonry,

    /// <summary>On the face of the wall: studs and cavity don't matter.</summary>
    Surface,

    /// <summary>In or on a cabinet.</summary>
    Cabinet,
}
