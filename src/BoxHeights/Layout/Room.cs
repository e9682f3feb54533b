namespace BoxHeights;

/// <summary>A room: its floor and ceiling, and its wall faces from left to right as they are seen by someone who stands in it.</summary>
[Described(nameof(Id), nameof(Kind), nameof(Storey))]
public sealed partial record Room
{
    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What the room is for.</summary>
    public RoomKind Kind { get; init; }

    /// <summary>The id of its storey.</summary>
    public string Storey { get; init => field = Guard.Id(value, nameof(Storey)); }

    /// <summary>How far its subfloor lies above the storey's (negative: a sunken room); level with it unless stated. The storey's level line and ceiling stay where they are.</summary>
    public Distance? SubfloorOffset { get; init; }

    /// <summary>Where it lies on the drawing of its storey, for a plan of the whole; no rule reads it.</summary>
    public RoomPlace? Place { get; init; }

    /// <summary>Whether it is no part of this work: no rule is asked of it or of its boxes, which new work elsewhere is still held against. A box that says otherwise (<see cref="DeviceBox.Untouched"/>) is a new one in it.</summary>
    public bool Untouched { get; init; }

    /// <summary>What will lie on the subfloor.</summary>
    public FloorBuildup? Floor { get; init; }

    /// <summary>Its ceiling, measured from its own subfloor unless it says otherwise; the storey's unless stated, which a sunken room lies further below.</summary>
    public Ceiling? Ceiling { get; init; }

    /// <summary>How the joists over it lie; no rule reads it.</summary>
    public JoistLayout? Joists { get; init; }

    /// <summary>Its wall faces, left to right. They needn't close.</summary>
    public Items<Wall> Walls { get; init; }

    /// <summary>Islands, railings and half walls that stand in the room.</summary>
    public Items<Freestanding> Freestanding { get; init; }

    /// <summary>Tubs, appliances, furniture and the like.</summary>
    public Items<Fixture> Fixtures { get; init; }

    /// <summary>Boxes in its ceiling, placed by <see cref="DeviceBox.Plan"/>.</summary>
    public Items<DeviceBox> Overhead { get; init; }

    /// <summary>Boxes in its floor, placed by <see cref="DeviceBox.Plan"/>.</summary>
    public Items<DeviceBox> InFloor { get; init; }

    /// <summary>Its id and kind, the storey that it is on, and how many walls and boxes it has.</summary>
    public override string ToString() => Id + ": " + Kind + " on " + Storey + ", walls: " + Walls.Count + ", boxes: " + (Wall.BoxesOn(Walls) + Overhead.Count + InFloor.Count);
}
