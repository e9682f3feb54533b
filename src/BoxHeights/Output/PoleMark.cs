namespace BoxHeights;

/// <summary>One mark on a story pole: a height that one or more boxes are set to, and what the pole reads there.</summary>
[Told]
public sealed partial record PoleMark
{
    /// <summary>The id of the storey.</summary>
    public string Storey { get; }

    /// <summary>How far the subfloor that the mark is taken from lies above the storey's: zero but in sunken and raised rooms.</summary>
    public Distance Subfloor { get; }

    /// <summary>The rooms on that subfloor that have boxes, where it isn't the storey's own; else empty.</summary>
    public Items<string> Rooms { get; }

    /// <summary>What the pole reads standing on the subfloor, as the sheet marks it, and the edge of the box that goes there.</summary>
    public BoxHeight Mark { get; }

    /// <summary>What the pole reads standing on the bottom plate; null where the box lies no higher than the plate, so that no pole can stand there.</summary>
    public Distance? FromPlate { get; internal init; }

    /// <summary>From the level line, plus above it; null where there is no line.</summary>
    public Distance? FromLevelLine { get; internal init; }

    /// <summary>What the boxes are for, each purpose once.</summary>
    public Items<BoxPurpose> Purposes { get; internal init; }

    /// <summary>The boxes that are set to it.</summary>
    public Items<string> BoxIds { get; internal init; }

    /// <summary>The storey, the mark, and how many boxes have it.</summary>
    public override string ToString() => Storey + ": " + Mark + ", boxes: " + BoxIds.Count;
}

/// <summary>A height that can't be marked yet, because it moves with a floor or another surface that isn't settled.</summary>
[Told]
public sealed partial record PoleRange
{
    /// <summary>The id of the storey.</summary>
    public string Storey { get; }

    /// <summary>How far the subfloor that the range is taken from lies above the storey's: zero but in sunken and raised rooms.</summary>
    public Distance Subfloor { get; }

    /// <summary>The rooms on that subfloor that have boxes, where it isn't the storey's own; else empty.</summary>
    public Items<string> Rooms { get; }

    /// <summary>The height as it is described.</summary>
    public BoxHeight Height { get; }

    /// <summary>Where its edge may come to lie above the subfloor.</summary>
    public DistanceRange Range { get; }

    /// <summary>What isn't settled.</summary>
    public string Why { get; }

    /// <summary>What the boxes are for, each purpose once.</summary>
    public Items<BoxPurpose> Purposes { get; internal init; }

    /// <summary>The boxes that are set to it.</summary>
    public Items<string> BoxIds { get; internal init; }

    /// <summary>The storey, the height, and why it has no mark.</summary>
    public override string ToString() => Storey + ": " + Height + ", " + Why;
}
