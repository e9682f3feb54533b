namespace BoxHeights;

/// <summary>The flight of stairs that climbs along a wall.</summary>
[Told]
public sealed partial class StairView
{
    /// <summary>The flight and its treads.</summary>
    public override string ToString() => Flight.Id + ", treads: " + Treads.Count;

    /// <summary>The flight as it is described.</summary>
    public StairFlight Flight { get; }

    /// <summary>Its nosings from the foot up, the landing's last.</summary>
    public Items<StairTread> Treads { get; }
}

/// <summary>A tread of a flight on a wall: where its nosing is.</summary>
[Told]
public sealed partial class StairTread
{
    /// <summary>The tread, and where it is.</summary>
    public override string ToString() => "tread " + Number + ", along " + Along + ", up " + Up;

    /// <summary>Its number, from 1 at the foot.</summary>
    public int Number { get; }

    /// <summary>Its nosing, from the wall's left end.</summary>
    public ExactDistance Along { get; }

    /// <summary>The top of the finished tread above the storey's subfloor of the wall's room, rounded once to the grid; a range while floors aren't chosen.</summary>
    public DistanceRange Up { get; }
}
