namespace BoxHeights;

/// <summary>Where hanging of wall board starts.</summary>
public enum BoardOrigin
{
    /// <summary>At the ceiling.</summary>
    Top = 0,

    /// <summary>At the floor.</summary>
    Bottom = 1,

    /// <summary>At the wall's left end.</summary>
    Left = 2,

    /// <summary>At the wall's right end.</summary>
    Right = 3,
}
