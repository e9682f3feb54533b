namespace BoxHeights;

/// <summary>The surface that a box sits on.</summary>
public enum BoxSurface
{
    /// <summary>A wall face.</summary>
    Wall = 0,

    /// <summary>A ceiling.</summary>
    Ceiling = 1,

    /// <summary>A floor.</summary>
    Floor = 2,

    /// <summary>A cabinet.</summary>
    Cabinet = 3,
}
