namespace BoxHeights;

/// <summary>What lets a box be near one on the other face of a rated wall.</summary>
public enum FireProtection
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A putty pad that is listed for it.</summary>
    PuttyPad = 1,

    /// <summary>The box itself, or other means, listed for it.</summary>
    Listed = 2,
}
