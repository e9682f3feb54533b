namespace BoxHeights;

/// <summary>The subfloor that the framing of a ceiling is measured from.</summary>
public enum CeilingOrigin
{
    /// <summary>The room's own.</summary>
    RoomSubfloor = 0,

    /// <summary>The storey's, which a sunken or raised room's lies under or over.</summary>
    StoreySubfloor = 1,
}
