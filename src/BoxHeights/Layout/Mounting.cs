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

    /// <summary>The same with another <see cref="How"/>.</summary>
    /// <param name="how">The method.</param>
    public Mounting WithHow(MountingMethod how) => this with { How = how };

    /// <summary>The same with another <see cref="Stud"/>.</summary>
    /// <param name="stud">The stud it is on, counted from the left end of the wall, the first full stud being 1.</param>
    public Mounting WithStud(int? stud) => this with { Stud = stud };

    /// <summary>The same with another <see cref="Side"/>.</summary>
    /// <param name="side">The side of that stud.</param>
    public Mounting WithSide(StudSide? side) => this with { Side = side };
}
