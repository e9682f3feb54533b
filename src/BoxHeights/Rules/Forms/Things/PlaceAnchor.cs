namespace BoxHeights;

/// <summary>What a box of some purpose is set beside or behind: furniture, an appliance, a basin, a window. Distances are along the wall, from the thing's outline to the center of the box.</summary>
public sealed record PlaceAnchor
{
    /// <summary>Ties boxes to things.</summary>
    /// <param name="things">Kinds of fixture, interruption, opening or covering, by their names; any of them will do.</param>
    /// <param name="upTo">How far outside the outline the center may be at most; zero for within it.</param>
    /// <exception cref="System.ArgumentException">No thing is named, or a name isn't in lower case with hyphens.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="upTo"/> is negative.</exception>
    public PlaceAnchor(Items<string> things, Distance upTo)
    {
        Things = things;
        UpTo = upTo;
    }

    /// <summary>The kinds of thing, by their names.</summary>
    public Items<string> Things { get; init => field = value.Count == 0 ? throw new System.ArgumentException("An anchor names some thing.", nameof(Things)) : value.Select(thing => KindName.Check(thing, nameof(Things))); }

    /// <summary>How far outside the outline the center may be at most.</summary>
    public Distance UpTo { get; init => field = Valid.NotNegative(value, nameof(UpTo)); }

    /// <summary>How far outside the outline the center is at least; null where it may be within it.</summary>
    public Distance? Beyond { get; init => field = Valid.NotNegative(value, nameof(Beyond)); }

    /// <summary>The same with other <see cref="Things"/>.</summary>
    /// <param name="things">The kinds of thing, by their names.</param>
    public PlaceAnchor WithThings(Items<string> things) => this with { Things = things };

    /// <summary>The same with another <see cref="UpTo"/>.</summary>
    /// <param name="upTo">How far outside the outline the center may be at most.</param>
    public PlaceAnchor WithUpTo(Distance upTo) => this with { UpTo = upTo };

    /// <summary>The same with another <see cref="Beyond"/>.</summary>
    /// <param name="beyond">How far outside the outline the center is at least.</param>
    public PlaceAnchor WithBeyond(Distance? beyond) => this with { Beyond = beyond };

    /// <summary>The anchor in words: "2 in to 24 in beside a bed".</summary>
    public override string ToString() =>
        (Beyond is { } beyond ? beyond + " to " + UpTo + " beside a " : UpTo == Distance.Zero ? "within the outline of a " : "within or up to " + UpTo + " beside a ")
        + string.Join(" or ", Things);
}
