namespace BoxHeights;

/// <summary>A room: its floor and ceiling, and its wall faces from left to right as they are seen by someone who stands in it.</summary>
public sealed partial record Room
{
    /// <summary>Describes a room by what it must have.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    /// <param name="kind">What the room is for.</param>
    /// <param name="storey">The id of its storey.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Room(string id, RoomKind kind, string storey)
    {
        Id = id;
        Kind = kind;
        Storey = storey;
    }

    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What the room is for.</summary>
    public RoomKind Kind { get; init; }

    /// <summary>The id of its storey.</summary>
    public string Storey { get; init => field = Valid.Id(value, nameof(Storey)); }

    /// <summary>How far its subfloor lies above the storey's (negative: a sunken room); level with it unless stated. The storey's level line and ceiling stay where they are.</summary>
    public Distance? SubfloorOffset { get; init; }

    /// <summary>Whether it is no part of this work: nothing is asked of it, and its boxes are there to be reckoned with only.</summary>
    public bool Untouched { get; init; }

    /// <summary>What will lie on the subfloor.</summary>
    public FloorBuildup? Floor { get; init; }

    /// <summary>Its ceiling, measured from its own subfloor unless it says otherwise; the storey's unless stated, which a sunken room lies further below.</summary>
    public Ceiling? Ceiling { get; init; }

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

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    public Room WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">What the room is for.</param>
    public Room WithKind(RoomKind kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Storey"/>.</summary>
    /// <param name="storey">The id of its storey.</param>
    public Room WithStorey(string storey) => this with { Storey = storey };

    /// <summary>The same with another <see cref="SubfloorOffset"/>.</summary>
    /// <param name="subfloorOffset">How far its subfloor lies above the storey's (negative: a sunken room); level with it unless stated.</param>
    public Room WithSubfloorOffset(Distance? subfloorOffset) => this with { SubfloorOffset = subfloorOffset };

    /// <summary>The same with another <see cref="Untouched"/>.</summary>
    /// <param name="untouched">Whether it is no part of this work: nothing is asked of it, and its boxes are there to be reckoned with only.</param>
    public Room WithUntouched(bool untouched) => this with { Untouched = untouched };

    /// <summary>The same with another <see cref="Floor"/>.</summary>
    /// <param name="floor">What will lie on the subfloor.</param>
    public Room WithFloor(FloorBuildup? floor) => this with { Floor = floor };

    /// <summary>The same with another <see cref="Ceiling"/>.</summary>
    /// <param name="ceiling">Its ceiling; the storey's unless stated.</param>
    public Room WithCeiling(Ceiling? ceiling) => this with { Ceiling = ceiling };

    /// <summary>The same with another <see cref="Walls"/>.</summary>
    /// <param name="walls">Its wall faces, left to right. They needn't close.</param>
    public Room WithWalls(Items<Wall> walls) => this with { Walls = walls };

    /// <summary>The same with another <see cref="Freestanding"/>.</summary>
    /// <param name="freestanding">Islands, railings and half walls that stand in the room.</param>
    public Room WithFreestanding(Items<Freestanding> freestanding) => this with { Freestanding = freestanding };

    /// <summary>The same with another <see cref="Fixtures"/>.</summary>
    /// <param name="fixtures">Tubs, appliances, furniture and the like.</param>
    public Room WithFixtures(Items<Fixture> fixtures) => this with { Fixtures = fixtures };

    /// <summary>The same with another <see cref="Overhead"/>.</summary>
    /// <param name="overhead">Boxes in its ceiling, placed by <see cref="DeviceBox.Plan"/>.</param>
    public Room WithOverhead(Items<DeviceBox> overhead) => this with { Overhead = overhead };

    /// <summary>The same with another <see cref="InFloor"/>.</summary>
    /// <param name="inFloor">Boxes in its floor, placed by <see cref="DeviceBox.Plan"/>.</param>
    public Room WithInFloor(Items<DeviceBox> inFloor) => this with { InFloor = inFloor };
}
