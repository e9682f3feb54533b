namespace BoxHeights;

/// <summary>How studs are laid out along a wall: a rule, or the studs themselves.</summary>
public sealed record StudLayout
{
    /// <summary>From center to center.</summary>
    public Distance? Spacing { get; init => field = Valid.Positive(value, nameof(Spacing)); }

    /// <summary>From the end that the layout was pulled from to the near face of the first stud; spacing less half a stud unless stated.</summary>
    public Distance? FirstFace { get; init => field = Valid.NotNegative(value, nameof(FirstFace)); }

    /// <summary>The end that the layout was pulled from.</summary>
    public WallEnd From { get; init; }

    /// <summary>The thickness of a stud; 1-1/2 in unless stated.</summary>
    public Distance? Thickness { get; init => field = Valid.Positive(value, nameof(Thickness)); }

    /// <summary>The left faces of the studs themselves, from the wall's left end, where they are known one by one.</summary>
    public Items<Distance> Faces { get; init; }

    /// <summary>Whether the layout is assumed, declared by the framer, or measured.</summary>
    public StudKnowledge Known { get; init; }

    /// <summary>The side that the open, lipped side of metal studs faces, the other being the web: all of a wall face one way. Null for lumber, or where nobody has looked.</summary>
    public StudSide? OpenSide { get; init; }

    /// <summary>The same with another <see cref="Spacing"/>.</summary>
    /// <param name="spacing">From center to center.</param>
    public StudLayout WithSpacing(Distance? spacing) => this with { Spacing = spacing };

    /// <summary>The same with another <see cref="FirstFace"/>.</summary>
    /// <param name="firstFace">From the end that the layout was pulled from to the near face of the first stud; spacing less half a stud unless stated.</param>
    public StudLayout WithFirstFace(Distance? firstFace) => this with { FirstFace = firstFace };

    /// <summary>The same with another <see cref="From"/>.</summary>
    /// <param name="from">The end that the layout was pulled from.</param>
    public StudLayout WithFrom(WallEnd from) => this with { From = from };

    /// <summary>The same with another <see cref="Thickness"/>.</summary>
    /// <param name="thickness">The thickness of a stud; 1-1/2 in unless stated.</param>
    public StudLayout WithThickness(Distance? thickness) => this with { Thickness = thickness };

    /// <summary>The same with another <see cref="Faces"/>.</summary>
    /// <param name="faces">The left faces of the studs themselves, from the wall's left end, where they are known one by one.</param>
    public StudLayout WithFaces(Items<Distance> faces) => this with { Faces = faces };

    /// <summary>The same with another <see cref="Known"/>.</summary>
    /// <param name="known">Whether the layout is assumed, declared by the framer, or measured.</param>
    public StudLayout WithKnown(StudKnowledge known) => this with { Known = known };

    /// <summary>The same with another <see cref="OpenSide"/>.</summary>
    /// <param name="openSide">The side that the open, lipped side of metal studs faces.</param>
    public StudLayout WithOpenSide(StudSide? openSide) => this with { OpenSide = openSide };
}
