namespace BoxHeights;

/// <summary>How studs are laid out along a wall: a rule, or the studs themselves.</summary>
[Described]
public sealed partial record StudLayout
{
    /// <summary>From center to center.</summary>
    public Distance? Spacing { get; init => field = Guard.Positive(value, nameof(Spacing)); }

    /// <summary>From the end that the layout was pulled from to the near face of the first stud; spacing less half a stud unless stated.</summary>
    public Distance? FirstFace { get; init => field = Guard.NotNegative(value, nameof(FirstFace)); }

    /// <summary>The end that the layout was pulled from.</summary>
    public WallEnd From { get; init => field = Guard.Known(value, WallEnd.Right, nameof(From)); }

    /// <summary>The thickness of a stud; unless stated that of the lumber that is usual, 1-1/2 in.</summary>
    public Distance? Thickness { get; init => field = Guard.Positive(value, nameof(Thickness)); }

    /// <summary>The left faces of the studs themselves, from the wall's left end, where they are known one by one.</summary>
    public Items<Distance> Faces { get; init; }

    /// <summary>Whether the layout is assumed, declared by the framer, or measured.</summary>
    public StudKnowledge Known { get; init => field = Guard.Known(value, StudKnowledge.Measured, nameof(Known)); }

    /// <summary>The side that the open, lipped side of metal studs faces, the other being the web: all of a wall face one way. Null for lumber, or where nobody has looked.</summary>
    public StudSide? OpenSide { get; init => field = Guard.Known(value, StudSide.Right, nameof(OpenSide)); }

    /// <summary>The same with its thickness stated: that of the usual lumber where it states none.</summary>
    internal StudLayout In(UsualMeasures usual) => Thickness is null ? this with { Thickness = usual.Lumber } : this;
}
