namespace BoxHeights;

/// <summary>What a door takes of the wall beside it when it stands open.</summary>
public enum DoorCoverKind
{
    /// <summary>A leaf on hinges stands before the wall.</summary>
    Leaf = 0,

    /// <summary>The panel of a barn door hangs before the wall.</summary>
    Panel = 1,

    /// <summary>A pocket door is inside the wall, open or not.</summary>
    Pocket = 2,
}
