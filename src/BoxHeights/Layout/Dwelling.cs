namespace BoxHeights;

/// <summary>A dwelling as its builder describes it: storeys, rooms, outside faces and stair flights, in the user's own terms. Null means not stated.</summary>
public sealed partial record Dwelling
{
    /// <summary>Describes a dwelling by what it must have.</summary>
    /// <param name="name">What the dwelling is called; not empty.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Dwelling(string name)
    {
        Name = name;
    }

    /// <summary>What the dwelling is called; not empty.</summary>
    public string Name { get; init => field = Valid.Text(value, nameof(Name)); }

    /// <summary>How marks and remedies are rounded and printed; inches unless stated.</summary>
    public LengthUnits Units { get; init; }

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

    /// <summary>The same with another <see cref="Name"/>.</summary>
    /// <param name="name">What the dwelling is called; not empty.</param>
    public Dwelling WithName(string name) => this with { Name = name };

    /// <summary>The same with another <see cref="Units"/>.</summary>
    /// <param name="units">How marks and remedies are rounded and printed; inches unless stated.</param>
    public Dwelling WithUnits(LengthUnits units) => this with { Units = units };

    /// <summary>The same with another <see cref="Occupancy"/>.</summary>
    /// <param name="occupancy">What kind of building it is; it decides which documents a caller adds.</param>
    public Dwelling WithOccupancy(Occupancy? occupancy) => this with { Occupancy = occupancy };

    /// <summary>The same with another <see cref="Storeys"/>.</summary>
    /// <param name="storeys">The storeys, lowest first.</param>
    public Dwelling WithStoreys(Items<Storey> storeys) => this with { Storeys = storeys };

    /// <summary>The same with another <see cref="Rooms"/>.</summary>
    /// <param name="rooms">The rooms, in the order in which they are reported.</param>
    public Dwelling WithRooms(Items<Room> rooms) => this with { Rooms = rooms };

    /// <summary>The same with another <see cref="Outside"/>.</summary>
    /// <param name="outside">Faces of the building seen from outside.</param>
    public Dwelling WithOutside(Items<OutsideFace> outside) => this with { Outside = outside };

    /// <summary>The same with another <see cref="Flights"/>.</summary>
    /// <param name="flights">Flights of stairs.</param>
    public Dwelling WithFlights(Items<StairFlight> flights) => this with { Flights = flights };
}
