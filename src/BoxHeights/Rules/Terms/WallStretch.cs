namespace BoxHeights;

/// <summary>A stretch of a wall face, or of a side of something that stands free.</summary>
public sealed record WallStretch
{
    /// <summary>A stretch by its ends.</summary>
    /// <param name="address">The address of the wall, or of what stands free.</param>
    /// <param name="left">Its left end, from the wall's left end.</param>
    /// <param name="right">Its right end.</param>
    public WallStretch(string address, Distance left, Distance right)
    {
        Address = address;
        Left = left;
        Right = right;
    }

    /// <summary>The address of the wall, or of what stands free.</summary>
    public string Address { get; }

    /// <summary>Its left end, from the wall's left end.</summary>
    public Distance Left { get; }

    /// <summary>Its right end, from the wall's left end.</summary>
    public Distance Right { get; }

    /// <summary>The stretch in words.</summary>
    public override string ToString() => Address + " " + Left + " to " + Right;
}
