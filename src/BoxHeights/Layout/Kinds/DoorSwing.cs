namespace BoxHeights;

/// <summary>Which way a door leaf swings.</summary>
public enum DoorSwing
{
    /// <summary>Into this room.</summary>
    Into = 0,

    /// <summary>Away from this room.</summary>
    Away = 1,
}
