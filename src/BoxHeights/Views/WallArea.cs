namespace BoxHeights;

/// <summary>A rectangle on a wall: from left to right along it, from bottom to top above the storey's subfloor; every edge a range where it isn't known exactly.</summary>
public readonly partial record struct WallArea
{
    /// <summary>Makes a rectangle of its edges.</summary>
    /// <param name="left">Its left edge, from the wall's left end.</param>
    /// <param name="right">Its right edge, from the wall's left end.</param>
    /// <param name="bottom">Its lower edge above the storey's subfloor; null where nothing is known of it.</param>
    /// <param name="top">Its upper edge above the storey's subfloor; null where nothing is known of it.</param>
    public WallArea(DistanceRange left, DistanceRange right, DistanceRange? bottom, DistanceRange? top)
    {
        Left = left;
        Right = right;
        Bottom = bottom;
        Top = top;
    }

    /// <summary>Its left edge, from the wall's left end.</summary>
    public DistanceRange Left { get; }

    /// <summary>Its right edge, from the wall's left end.</summary>
    public DistanceRange Right { get; }

    /// <summary>Its lower edge above the storey's subfloor; null where nothing is known of it.</summary>
    public DistanceRange? Bottom { get; }

    /// <summary>Its upper edge above the storey's subfloor; null where nothing is known of it.</summary>
    public DistanceRange? Top { get; }

    /// <summary>Whether all four edges are known exactly.</summary>
    public bool IsExact => Left.IsExact && Right.IsExact && Bottom is { IsExact: true } && Top is { IsExact: true };

    /// <summary>The rectangle in words: "along 12 in to 14 in, up 16 in to 20 in".</summary>
    public override string ToString() =>
        "along " + Left + " to " + Right + ", up " + (Bottom is { } bottom ? bottom.ToString() : "not known") + " to " + (Top is { } top ? top.ToString() : "not known");
}
