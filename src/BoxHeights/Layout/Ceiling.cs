namespace BoxHeights;

/// <summary>How a ceiling is built up, from its framing down.</summary>
public sealed record Ceiling
{
    /// <summary>From the subfloor (see <see cref="From"/>) up to the underside of the ceiling framing (the rough height); more than zero.</summary>
    public DistanceRange? Framing { get; init => field = Valid.Positive(value, nameof(Framing)); }

    /// <summary>
    /// The subfloor that the framing is measured from. Unless stated, a storey's ceiling is one plane over all its rooms, measured from the storey's subfloor, so that a
    /// room whose <see cref="Room.SubfloorOffset"/> sinks it by 7 in is 7 in higher inside; a room's own ceiling is measured from that room's subfloor.
    /// </summary>
    public CeilingOrigin? From { get; init; }

    /// <summary>The thickness of furring under the framing; zero is "none", never negative.</summary>
    public DistanceRange? Strapping { get; init => field = Valid.NotNegative(value, nameof(Strapping)); }

    /// <summary>The thickness of all layers of ceiling board; not negative.</summary>
    public DistanceRange? Board { get; init => field = Valid.NotNegative(value, nameof(Board)); }

    /// <summary>The same with another <see cref="Framing"/>.</summary>
    /// <param name="framing">From the subfloor up to the underside of the ceiling framing (the rough height).</param>
    public Ceiling WithFraming(DistanceRange? framing) => this with { Framing = framing };

    /// <summary>The same with another <see cref="From"/>.</summary>
    /// <param name="from">The subfloor that the framing is measured from.</param>
    public Ceiling WithFrom(CeilingOrigin? from) => this with { From = from };

    /// <summary>The same with another <see cref="Strapping"/>.</summary>
    /// <param name="strapping">The thickness of furring under the framing; zero is "none".</param>
    public Ceiling WithStrapping(DistanceRange? strapping) => this with { Strapping = strapping };

    /// <summary>The same with another <see cref="Board"/>.</summary>
    /// <param name="board">The thickness of all layers of ceiling board.</param>
    public Ceiling WithBoard(DistanceRange? board) => this with { Board = board };
}
