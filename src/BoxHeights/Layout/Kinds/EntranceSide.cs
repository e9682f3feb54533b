namespace BoxHeights;

/// <summary>Which side of an entrance to the dwelling a room is on.</summary>
public enum EntranceSide
{
    /// <summary>Inside.</summary>
    Inside = 0,

    /// <summary>Outside.</summary>
    Outside = 1,
}
