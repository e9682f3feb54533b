namespace BoxHeights;

/// <summary>A dwelling as its builder describes it: storeys, rooms, outside faces and stair flights, in the user's own terms. Null means not stated.</summary>
[Described(nameof(Name))]
public sealed partial record Dwelling
{
    /// <summary>What the dwelling is called; not empty.</summary>
    public string Name { get; init => field = Guard.Text(value, nameof(Name)); }

    /// <summary>How marks and remedies are rounded and printed; inches unless stated.</summary>
    public LengthUnits Units { get; init => field = Guard.Known(value, LengthUnits.Millimeters, nameof(Units)); }

    /// <summary>What kind of building it is; it decides which documents a caller adds.</summary>
    public Occupancy? Occupancy { get; init; }

    /// <summary>The storeys, lowest first.</summary>
    public Items<Storey> Storeys { get; init; }

    /// <summary>The rooms, in the order in which they are reported.</summary>
    public Items<Room> Rooms { get; init; }

    /// <summary>Faces of the building seen from outside.</summary>
    public Items<OutsideFace> Outside { get; init; }

    /// <summary>Flights of stairs.</summary>
    public Items<StairFlight> Flights { get; init; }

    /// <summary>Its name, and how many storeys, rooms and boxes it has.</summary>
    public override string ToString() => Name + ", storeys: " + Storeys.Count + ", rooms: " + Rooms.Count + ", boxes: " + this.PlacedBoxes().Count;
}
