namespace BoxHeights.Rules;

/// <summary>From where the top of a peninsula is measured, out to its free end.</summary>
public enum PeninsulaMeasure
{
    /// <summary>As its outline is drawn.</summary>
    Outline = 0,

    /// <summary>From its connecting edge: the front of the counter that it joins, or the wall where no counter is there.</summary>
    ConnectingEdge = 1,

    /// <summary>From the wall that it stands out from, the depth of the counter that it joins included.</summary>
    ConnectedWall = 2,
}
