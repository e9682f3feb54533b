namespace BoxHeights;

/// <summary>Which way the long edges of wall board run.</summary>
public enum BoardDirection
{
    /// <summary>Across the studs.</summary>
    Horizontal = 0,

    /// <summary>Along the studs.</summary>
    Vertical = 1,
}
