namespace BoxHeights;

/// <summary>A face of the building, seen from outside.</summary>
[Described(nameof(Id))]
public sealed partial record OutsideFace
{
    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>The id of the storey whose subfloor its heights are taken from; the lowest unless stated.</summary>
    public string? Storey { get; init; }

    /// <summary>Whether it is no part of this work: no rule is asked of it or of its boxes, which new work elsewhere is still held against. A box that says otherwise (<see cref="DeviceBox.Untouched"/>) is a new one in it.</summary>
    public bool Untouched { get; init; }

    /// <summary>Its wall faces, left to right.</summary>
    public Items<Wall> Walls { get; init; }

    /// <summary>Decks, porches and balconies before it.</summary>
    public Items<Platform> Platforms { get; init; }

    /// <summary>Equipment that stands before it: the outdoor unit of an air conditioner or a heat pump.</summary>
    public Items<Fixture> Fixtures { get; init; }

    /// <summary>Its id, the storey that it is on, and how many walls and boxes it has.</summary>
    public override string ToString() => Id + (Storey is null ? "" : ": on " + Storey) + ", walls: " + Walls.Count + ", boxes: " + Wall.BoxesOn(Walls);
}
