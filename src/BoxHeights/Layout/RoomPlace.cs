namespace BoxHeights;

/// <summary>Where a room lies on the drawing of its storey.</summary>
[Described(nameof(Corner))]
public sealed partial record RoomPlace
{
    /// <summary>The left end of the room's first wall, to the right and down from the origin of the storey's drawing.</summary>
    public PlanPoint Corner { get; init; }

    /// <summary>How far the first wall is turned, clockwise in degrees: 0 where it runs to the right with the room below it on the drawing, 90 where it runs down with the room to its left.</summary>
    public decimal TurnDegrees { get; init => field = Guard.Turn(value, nameof(TurnDegrees)); }
}
