namespace BoxHeights;

/// <summary>What an upright piece of a stud wall is there for.</summary>
public enum FramingPart
{
    /// <summary>A stud of the layout.</summary>
    Stud = 0,

    /// <summary>The stud in a corner.</summary>
    Corner = 1,

    /// <summary>The full stud beside an opening.</summary>
    King = 2,

    /// <summary>The trimmer between a king and its opening, which carries the header.</summary>
    Jack = 3,

    /// <summary>A short stud under a sill.</summary>
    Cripple = 4,
}

/// <summary>An upright piece of a stud wall: its two faces, from the wall's left end.</summary>
public readonly struct FramingMember
{
    // Taken apart and packed: a house has thousands of members, and so each is 40 bytes instead of 104.
    private readonly Distance top;
    private readonly Datum topDatum;
    private readonly int number;

    internal FramingMember(FramingPart part, Distance left, Distance right, bool isSure, Level? top = null, int number = 0, bool isReplaced = false)
    {
        Left = left;
        Right = right;
        this.top = top?.Offset ?? Distance.Zero;
        topDatum = top?.Datum ?? default;
        HasTop = top is not null;
        this.number = number;
        Part = part;
        IsSure = isSure;
        IsReplaced = isReplaced;
    }

    /// <summary>What it is, and from where to where.</summary>
    public override string ToString() => Part + ", " + Left + " to " + Right;

    /// <summary>Its left face, from the wall's left end.</summary>
    public Distance Left { get; }

    /// <summary>Its right face, from the wall's left end.</summary>
    public Distance Right { get; }

    /// <summary>Its upper end; the top plate unless stated.</summary>
    public Level? Top => HasTop ? new Level(top, topDatum) : null;

    /// <summary>What it is there for.</summary>
    public FramingPart Part { get; }

    /// <summary>Its number among the studs between the corners, from 1 at the left, as <see cref="Mounting.Stud"/> names it; null for what corners and openings add.</summary>
    public int? Number => number == 0 ? null : number;

    /// <summary>Whether it is there whatever isn't known.</summary>
    /// <remarks>False for a stud of an assumed layout that would go if the layout was pulled from the other end, for a stud whose place a king or jack takes, and for cripples that framers may leave out.</remarks>
    public bool IsSure { get; }

    /// <summary>Whether a corner, king or jack surely stands where the layout has it, so that it is left out or moved.</summary>
    internal bool IsReplaced { get; }

    private bool HasTop { get; }

    /// <summary>Whether it surely stands at a height above the storey's subfloor: a short stud ends under its sill.</summary>
    internal bool StandsAt(Distance up, Levels levels) =>
        Top is not { } top || (top.TryResolve(levels, out DistanceRange high) && up <= high.From);
}
