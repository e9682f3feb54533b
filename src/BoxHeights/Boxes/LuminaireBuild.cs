namespace BoxHeights;

/// <summary>How a luminaire is built and set, as far as rules for clothes closets ask.</summary>
public enum LuminaireBuild
{
    /// <summary>Its lamps are bare, or only partly enclosed: a lampholder, a pendant.</summary>
    Open = 0,

    /// <summary>On the surface, with incandescent or LED lamps that are wholly enclosed.</summary>
    Enclosed = 1,

    /// <summary>On the surface, fluorescent.</summary>
    Fluorescent = 2,

    /// <summary>Recessed: fluorescent, or incandescent or LED and wholly enclosed.</summary>
    Recessed = 3,

    /// <summary>Listed to be inside storage space.</summary>
    ForStorage = 4,
}
