using System;

namespace BoxHeights;

/// <summary>A storey as it is drawn: its rooms where they lie.</summary>
[Told]
public sealed partial class StoreyView
{
    /// <summary>Its id.</summary>
    public string Id { get; }

    /// <summary>Its rooms that are said where they lie, in the dwelling's order.</summary>
    public Items<PlacedRoomView> Rooms { get; }

    /// <summary>The ids of its rooms that aren't, or are larger than any house.</summary>
    public Items<string> NotPlaced { get; }

    /// <summary>Its id and how many rooms are placed.</summary>
    public override string ToString() => Id + ", " + Rooms.Count + " rooms placed";
}

/// <summary>A room on the drawing of its storey.</summary>
public sealed class PlacedRoomView
{
    private readonly PlanLine first;

    internal PlacedRoomView(RoomView room, RoomPlace place)
    {
        Room = room;
        first = PlanLine.Heading(place.Corner.Right.Ticks, place.Corner.Into.Ticks, place.TurnDegrees, Distance.Zero);
    }

    /// <summary>The room.</summary>
    public RoomView Room { get; }

    /// <summary>A point of the room's plan on the storey's drawing, to the right and down from its origin, rounded to the grid.</summary>
    /// <param name="point">The point.</param>
    public PlanPoint OnStorey(PlanPoint point)
    {
        (decimal x, decimal y) = first.InPlan(point.Right.Ticks, point.Into.Ticks);
        return new(Distance.FromTicks((long)Math.Round(x)), Distance.FromTicks((long)Math.Round(y)));
    }

    /// <summary>The room's id.</summary>
    public override string ToString() => Room.Id;
}
