namespace BoxHeights;

/// <summary>How lengths are rounded and printed.</summary>
public enum LengthUnits
{
    /// <summary>Feet and inches with fractions.</summary>
    Inches = 0,

    /// <summary>Millimeters.</summary>
    Millimeters = 1,
}
