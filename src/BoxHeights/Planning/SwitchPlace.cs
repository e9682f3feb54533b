namespace BoxHeights;

/// <summary>Where a switch for an entrance may go, in the order in which the trade tries it.</summary>
public enum SwitchPlaceKind
{
    /// <summary>Beside the latch: of a door on hinges the side away from them, of a pocket the strike side, of a panel the side that it opens from.</summary>
    LatchSide = 0,

    /// <summary>Round the corner, on the wall that returns on that side.</summary>
    ReturnWall = 1,

    /// <summary>On the other side of the opening, where no open leaf stands before it.</summary>
    FarSide = 2,

    /// <summary>On the other side, beyond what the open leaf or panel covers, or beyond the pocket.</summary>
    BeyondLeaf = 3,
}

/// <summary>One place for a switch at an entrance.</summary>
[Told]
public sealed partial class SwitchPlace
{
    /// <summary>Which of the usual places it is.</summary>
    public SwitchPlaceKind Kind { get; }

    /// <summary>The address of the wall ("kitchen/north").</summary>
    public string Wall { get; }

    /// <summary>The center of the box, from that wall's left end.</summary>
    public Distance At { get; }

    /// <summary>How much wall is seen between plate and the entrance's casing; on another wall, between plate and corner.</summary>
    public Distance CasingGap { get; }

    /// <summary>How many 2-by pieces go between the stud that it is nailed to, the king or the next one, and the box to hold it off the casing; 0 where it is nailed to that stud itself or to blocking of its own.</summary>
    public int Packs { get; }

    /// <summary>Why it is this place, and how the box is held there.</summary>
    public string Reason { get; }

    /// <summary>Why it is this place, for a box near it that is held otherwise.</summary>
    internal string Where { get => field ?? Reason; init; }

    /// <summary>The place in words.</summary>
    public override string ToString() => Wall + " at " + At + ": " + Reason;
}
