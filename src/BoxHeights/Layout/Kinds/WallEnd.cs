namespace BoxHeights;

/// <summary>An end of a wall face, seen from its room.</summary>
public enum WallEnd
{
    /// <summary>The left end.</summary>
    Left = 0,

    /// <summary>The right end.</summary>
    Right = 1,
}
