namespace BoxHeights;

/// <summary>A box where it is: its body, its plate and the parts of its devices in the coordinates of its surface.</summary>
[Told]
public sealed partial class BoxView
{
    /// <summary>The box as it is described.</summary>
    public DeviceBox Source { get; }

    /// <summary>Its id.</summary>
    public string Id => Source.Id;

    /// <summary>The address of the surface that it is listed under.</summary>
    public string Address { get; }

    /// <summary>What it sits on: a box in a cabinet is listed under a wall.</summary>
    public BoxSurface Surface { get; }

    /// <summary>Whether a fault of the description keeps it from being judged. Then no more is told of it than what is stated.</summary>
    public bool IsBroken { get; internal init; }

    /// <summary>Where its center is along its wall; null where that isn't known, and on ceilings and floors.</summary>
    public Distance? Along { get; internal init; }

    /// <summary>Whether that follows from a stud that is only assumed to stand there.</summary>
    public bool IsAlongAssumed { get; internal init; }

    /// <summary>Its center above the storey's subfloor, with what the tape may be off; null where it has no height or that isn't known.</summary>
    public DistanceRange? Center { get; internal init; }

    /// <summary>The height that is judged, in the terms in which it is given; null where it has none.</summary>
    public BoxHeight? Height { get; internal init; }

    /// <summary>Its body as it sits; null where its size, its place or its height isn't known.</summary>
    public WallArea? Body { get; internal init; }

    /// <summary>Its size as it sits; not stated unless it or its kind tells.</summary>
    public BoxSize Size { get; internal init; }

    /// <summary>Its body if it is of the usual size of its kind, set by the edge that its height is to; <see cref="Body"/> itself where that is exact, null where its place or height isn't known exactly.</summary>
    public WallArea? UsualBody { get; internal init; }

    /// <summary>Whether its size isn't stated and is that of its kind.</summary>
    public bool IsSizeAssumed { get; internal init; }

    /// <summary>Its plate; null where its size, its place or its height isn't known.</summary>
    public WallArea? Plate { get; internal init; }

    /// <summary>What is operated of its devices, from the lowest part to the highest, as wide as its body; null where that isn't known, or nothing is operated.</summary>
    public WallArea? Operable { get; internal init; }

    /// <summary>How many device widths it has.</summary>
    public int Gangs { get; internal init; } = 1;

    /// <summary>Whether its opening is round, or a row of round ones.</summary>
    public bool IsRound { get; internal init; }

    /// <summary>The stud that holds it, counted from the left: as stated, else the one that it is set against where studs are known; null where none does.</summary>
    public int? Stud { get; internal init; }

    /// <summary>The side of that stud.</summary>
    public StudSide? Side { get; internal init; }

    /// <summary>Where it is in plan: of a box on a wall, its center on the framing face; null where that isn't known, outside, and beyond any house.</summary>
    public PlanPoint? Plan { get; internal init; }

    /// <summary>The tapes by which a box in a ceiling or floor is found: from the nearest wall, and from the nearest that runs across it; none for boxes on walls.</summary>
    public Items<WallTape> Tapes { get; internal init; }

    /// <summary>Its id and where it is.</summary>
    public override string ToString() =>
        Id + " (" + Address + ")" + (Along is { } along ? ", along " + along : "") + (Center is { } center ? ", center up " + center : "");
}
