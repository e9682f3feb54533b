namespace BoxHeights;

/// <summary>How wall board is hung.</summary>
[Described]
public sealed partial record BoardLayout
{
    /// <summary>Whether the long edges run horizontally or vertically.</summary>
    public BoardDirection Hung { get; init => field = Guard.Known(value, BoardDirection.Vertical, nameof(Hung)); }

    /// <summary>The widths of the courses, in hanging order; each more than zero. None: how the board is hung isn't stated.</summary>
    /// <remarks>What courses that lie across leave, beyond the gap that is usual (1 in), is a strip of its own. Of upright sheets the last width is that of all that follow, to the wall's other end.</remarks>
    public Items<Distance> Widths { get; init => field = Guard.Positive(value, nameof(Widths)); }

    /// <summary>Where hanging starts.</summary>
    public BoardOrigin From { get; init => field = Guard.Known(value, BoardOrigin.Right, nameof(From)); }

    /// <summary>The thickness of all its layers.</summary>
    public Distance? Thickness { get; init => field = Guard.Positive(value, nameof(Thickness)); }

    /// <summary>The gap left above the subfloor; anything up to the one that is usual (1 in) where it isn't stated, which matters for boards hung from the floor.</summary>
    public Distance? FloorGap { get; init => field = Guard.NotNegative(value, nameof(FloorGap)); }

    /// <summary>Where the sheets of courses that lie across meet end to end; empty while that isn't stated. Drawings and cutouts go by them; no rule does.</summary>
    /// <remarks>They are places along one wall: those of a storey's layout are of no wall.</remarks>
    public Items<ButtJoint> ButtJoints { get; init; }
}
