namespace BoxHeights;

/// <summary>Which edge of a box or plate a height is measured to.</summary>
public enum Edge
{
    /// <summary>The lowest edge: the outside of the box at its opening.</summary>
    Bottom = 0,

    /// <summary>Halfway between bottom and top, where the device's own center lies.</summary>
    Center = 1,

    /// <summary>The highest edge: the outside of the box at its opening.</summary>
    Top = 2,
}
