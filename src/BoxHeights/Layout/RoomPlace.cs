namespace BoxHeights;

/// <summary>Where a room lies on the drawing of its storey.</summary>
public sealed record RoomPlace
{
    /// <summary>Places a room by the left end of its first wall.</summary>
    /// <param name="corner">The left end of the room's first wall, to the right and down from the origin of the storey's drawing.</param>
    public RoomPlace(PlanPoint corner) => Corner = corner;

    /// <summary>The left end of the room's first wall, to the right and down from the origin of the storey's drawing.</summary>
    public PlanPoint Corner { get; init; }

    /// <summary>How far the first wall is turned, clockwise in degrees: 0 where it runs to the right with the room below it on the drawing, 90 where it runs down with the room to its left.</summary>
    public decimal TurnDegrees { get; init => field = Valid.Turn(value, nameof(TurnDegrees)); }

    /// <summary>The same with another <see cref="Corner"/>.</summary>
    /// <param name="corner">The left end of the room's first wall.</param>
    public RoomPlace WithCorner(PlanPoint corner) => this with { Corner = corner };

    /// <summary>The same with another <see cref="TurnDegrees"/>.</summary>
    /// <param name="turnDegrees">How far the first wall is turned, clockwise in degrees.</param>
    public RoomPlace WithTurnDegrees(decimal turnDegrees) => this with { TurnDegrees = turnDegrees };
}
