namespace BoxHeights;

/// <summary>Where the center of a box may be over a stretch of its wall, as far as placement rules say: heights above the storey's subfloor.</summary>
public sealed class BandView
{
    internal BandView(Distance left, Distance right, in DistanceSet sure, in DistanceSet possible, Items<string> limitedBy)
    {
        Left = left;
        Right = right;
        Sure = sure;
        Possible = possible;
        LimitedBy = limitedBy;
    }

    /// <summary>The stretch, and where a box may be over it.</summary>
    public override string ToString() => Left + " to " + Right + ": " + (Sure == Possible ? Sure.ToString() : "surely " + Sure + ", possibly " + Possible);

    /// <summary>The left end of the stretch that the center is on, from the wall's left end. Right at an end both neighbors count.</summary>
    public Distance Left { get; }

    /// <summary>Its right end.</summary>
    public Distance Right { get; }

    /// <summary>Allowed whatever isn't known.</summary>
    public DistanceSet Sure { get; }

    /// <summary>Allowed for some of what isn't known; holds <see cref="Sure"/>.</summary>
    public DistanceSet Possible { get; }

    /// <summary>The ids of the rules that don't allow every height here.</summary>
    public Items<string> LimitedBy { get; }
}
