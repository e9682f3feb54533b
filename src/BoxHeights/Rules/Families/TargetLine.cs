namespace BoxHeights.Rules;

/// <summary>The line of a box or its device that a document measures to.</summary>
public enum TargetLine
{
    /// <summary>The bottom of the box.</summary>
    BoxBottom = 0,

    /// <summary>The center line of box, device and plate.</summary>
    Center = 1,

    /// <summary>The top of the box.</summary>
    BoxTop = 2,

    /// <summary>The bottom of the cover plate.</summary>
    PlateBottom = 3,

    /// <summary>The top of the cover plate.</summary>
    PlateTop = 4,

    /// <summary>The lowest part that a person operates.</summary>
    LowestOperable = 5,

    /// <summary>The highest part that a person operates.</summary>
    HighestOperable = 6,

    /// <summary>The center of the grip of a handle in its highest position.</summary>
    GripAtHighest = 7,
}

internal static class TargetLineText
{
    public static string Words(this TargetLine line) => line switch
    {
        TargetLine.BoxBottom => "bottom of the box",
        TargetLine.Center => "center",
        TargetLine.BoxTop => "top of the box",
        TargetLine.PlateBottom => "bottom of the plate",
        TargetLine.PlateTop => "top of the plate",
        TargetLine.LowestOperable => "lowest operable part",
        TargetLine.HighestOperable => "highest operable part",
        _ => "center of the grip at its highest position",
    };
}
