namespace BoxHeights;

/// <summary>How a box is held.</summary>
[Described(nameof(How))]
public sealed partial record Mounting
{
    /// <summary>The method.</summary>
    public MountingMethod How { get; init => field = Guard.Known(value, MountingMethod.Cabinet, nameof(How)); }

    /// <summary>The stud it is on, counted from the left end of the wall, the first full stud being 1.</summary>
    public int? Stud { get; init => field = Guard.Count(value, nameof(Stud)); }

    /// <summary>The side of that stud.</summary>
    public StudSide? Side { get; init => field = Guard.Known(value, StudSide.Right, nameof(Side)); }

    /// <summary>The clear bays that a bar, or a bracket held at both ends, spans from one stud's face to the next: a range for one that adjusts. As its maker states it.</summary>
    public DistanceRange? Span { get; init => field = Guard.Positive(value, nameof(Span)); }
}
