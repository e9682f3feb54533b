namespace BoxHeights;

/// <summary>Measures in a dwelling's own units, without rounding: as they are read back.</summary>
internal static class UnitsText
{
    /// <summary>The format of distances that prints every one of them exactly; inches off the 1/128 in grid come in millimeters.</summary>
    public static string ExactFormat(this LengthUnits units) => units == LengthUnits.Millimeters ? "mm" : "R";

    /// <summary>A distance as <see cref="Distance.Parse(string)"/> reads it back.</summary>
    public static string Exactly(this Distance distance, LengthUnits units) => distance.ToString(units.ExactFormat());

    /// <summary>A distance that may not be known exactly, as <see cref="DistanceRange.Parse"/> reads it back.</summary>
    public static string Exactly(this in DistanceRange range, LengthUnits units) => range.ToString(units.ExactFormat());

    /// <summary>A height in words, as <see cref="BoxHeight.Parse"/> reads them back.</summary>
    public static string Exactly(this BoxHeight height, LengthUnits units) => height.ToString(units.ExactFormat());
}
