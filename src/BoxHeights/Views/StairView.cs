namespace BoxHeights;

/// <summary>The flight of stairs that climbs along a wall.</summary>
public sealed class StairView
{
    internal StairView(StairFlight flight, Items<StairTread> treads)
    {
        Flight = flight;
        Treads = treads;
    }

    /// <summary>The flight and its treads.</summary>
    public override string ToString() => Flight.Id + ", treads: " + Treads.Count;

    /// <summary>The flight as it is described.</summary>
    public StairFlight Flight { get; }

    /// <summary>Its nosings from the foot up, the landing's last.</summary>
    public Items<StairTread> Treads { get; }
}

/// <summary>A tread of a flight on a wall: where its nosing is.</summary>
public sealed class StairTread
{
    internal StairTread(int number, ExactDistance along, DistanceRange up)
    {
        Number = number;
        Along = along;
        Up = up;
    }

    /// <summary>The tread, and where it is.</summary>
    public override string ToString() => "tread " + Number + ", along " + Along + ", up " + Up;

    /// <summary>Its number, from 1 at the foot.</summary>
    public int Number { get; }

    /// <summary>Its nosing, from the wall's left end.</summary>
    public ExactDistance Along { get; }

    /// <summary>The top of the finished tread above the storey's subfloor of the wall's room, rounded once to the grid; a range while floors aren't chosen.</summary>
    public DistanceRange Up { get; }
}
