namespace BoxHeights;

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
