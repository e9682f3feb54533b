namespace BoxHeights;

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
