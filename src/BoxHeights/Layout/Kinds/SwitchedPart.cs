namespace BoxHeights;

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
