namespace BoxHeights;

/// <summary>How a box is held.</summary>
public sealed record Mounting
{
    /// <summary>Describes a mounting by what it must have.</summary>
    /// <param name="how">The method.</param>
    public Mounting(MountingMethod how)
    {
        How = how;
    }

    /// <summary>The method.</summary>
    public MountingMethod How { get; init; }

    /// <summary>The stud it is on, counted from the left end of the wall, the first full stud being 1.</summary>
    public int? Stud { get; init => field = Valid.Count(value, nameof(Stud)); }

    /// <summary>The side of that stud.</summary>
    public StudSide? Side { get; init; }

    /// <summary>The clear bays that a bar, or a bracket held at both ends, spans from one stud's face to the next: a range for one that adjusts. As its maker states it.</summary>
    public DistanceRange? Span { get; init => field = Valid.Positive(value, nameof(Span)); }

    /// <summary>The same with another <see cref="How"/>.</summary>
    /// <param name="how">The method.</param>
    public Mounting WithHow(MountingMethod how) => this with { How = how };

    /// <summary>The same with another <see cref="Stud"/>.</summary>
    /// <param name="stud">The stud it is on, counted from the left end of the wall, the first full stud being 1.</param>
    public Mounting WithStud(int? stud) => this with { Stud = stud };

    /// <summary>The same with another <see cref="Side"/>.</summary>
    /// <param name="side">The side of that stud.</param>
    public Mounting WithSide(StudSide? side) => this with { Side = side };

    /// <summary>The same with another <see cref="Span"/>.</summary>
    /// <param name="span">The clear bays that a bar, or a bracket held at both ends, spans.</param>
    public Mounting WithSpan(DistanceRange? span) => this with { Span = span };
}
