namespace BoxHeights;

/// <summary>How lengths are rounded and printed.</summary>
public enum LengthUnits
{
    /// <summary>Feet and inches with fractions.</summary>
    Inches = 0,

    /// <summary>Millimeters.</summary>
    Millimeters = 1,
}

/// <summary>An end of a wall face, seen from its room.</summary>
public enum WallEnd
{
    /// <summary>The left end.</summary>
    Left = 0,

    /// <summary>The right end.</summary>
    Right = 1,
}

/// <summary>How well a stud layout is known.</summary>
public enum StudKnowledge
{
    /// <summary>Assumed from a drawing or from habit: no stud number is printed.</summary>
    Assumed = 0,

    /// <summary>Stated by whoever framed it.</summary>
    Declared = 1,

    /// <summary>Measured on site.</summary>
    Measured = 2,
}

/// <summary>Which way the long edges of wall board run.</summary>
public enum BoardDirection
{
    /// <summary>Across the studs.</summary>
    Horizontal = 0,

    /// <summary>Along the studs.</summary>
    Vertical = 1,
}

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

/// <summary>The subfloor that the framing of a ceiling is measured from.</summary>
public enum CeilingOrigin
{
    /// <summary>The room's own.</summary>
    RoomSubfloor = 0,

    /// <summary>The storey's, which a sunken or raised room's lies under or over.</summary>
    StoreySubfloor = 1,
}

/// <summary>Which way a door leaf swings.</summary>
public enum DoorSwing
{
    /// <summary>Into this room.</summary>
    Into = 0,

    /// <summary>Away from this room.</summary>
    Away = 1,
}

/// <summary>Which side of an entrance to the dwelling a room is on.</summary>
public enum EntranceSide
{
    /// <summary>Inside.</summary>
    Inside = 0,

    /// <summary>Outside.</summary>
    Outside = 1,
}

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

/// <summary>From which sides a person in a wheelchair can reach a box.</summary>
[System.Flags]
public enum Approach
{
    /// <summary>From neither.</summary>
    None = 0,

    /// <summary>Facing it.</summary>
    Forward = 1,

    /// <summary>Alongside it.</summary>
    Side = 2,

    /// <summary>From both.</summary>
    Either = Forward | Side,
}

/// <summary>How cables are held where they enter a box.</summary>
public enum CableClamps
{
    /// <summary>No clamp takes room inside the box.</summary>
    None = 0,

    /// <summary>One or more clamps inside the box.</summary>
    Internal = 1,

    /// <summary>A plastic flap that is molded into the box.</summary>
    Flap = 2,
}

/// <summary>How much of a receptacle a switch controls.</summary>
public enum SwitchedPart
{
    /// <summary>Nothing of it.</summary>
    None = 0,

    /// <summary>One of its two outlets.</summary>
    Half = 1,

    /// <summary>All of it.</summary>
    All = 2,
}
