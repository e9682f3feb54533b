namespace BoxHeights;

/// <summary>How a ceiling is built up, from its framing down.</summary>
[Described]
public sealed partial record Ceiling
{
    /// <summary>From the subfloor (see <see cref="From"/>) up to the underside of the ceiling framing (the rough height); more than zero.</summary>
    public DistanceRange? Framing { get; init => field = Guard.Positive(value, nameof(Framing)); }

    /// <summary>The subfloor that the framing is measured from: for a storey's ceiling the storey's, for a room's own ceiling the room's, unless stated.</summary>
    /// <remarks>A storey's ceiling is one plane over all its rooms, so that a room whose <see cref="Room.SubfloorOffset"/> sinks it by 7 in is 7 in higher inside.</remarks>
    public CeilingOrigin? From { get; init => field = Guard.Known(value, CeilingOrigin.StoreySubfloor, nameof(From)); }

    /// <summary>The thickness of furring under the framing; zero is "none", never negative.</summary>
    public DistanceRange? Strapping { get; init => field = Guard.NotNegative(value, nameof(Strapping)); }

    /// <summary>The thickness of all layers of ceiling board; not negative.</summary>
    public DistanceRange? Board { get; init => field = Guard.NotNegative(value, nameof(Board)); }
}
