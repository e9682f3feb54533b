using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Builds a <see cref="Dwelling"/> step by step, for languages without <c>init</c> and for programs that collect as they go.</summary>
/// <remarks>A builder isn't thread-safe; what it builds is immutable. Relations between objects are checked when the dwelling is evaluated, not here.</remarks>
public sealed class DwellingBuilder
{
    private readonly List<RoomBuilder> rooms = [];
    private Dwelling dwelling;

    /// <summary>Starts a dwelling.</summary>
    /// <param name="name">What it is called.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public DwellingBuilder(string name) => dwelling = new(name);

    /// <summary>What is being built.</summary>
    public override string ToString() => dwelling.Name + ", rooms so far: " + rooms.Count;

    /// <summary>Sets members of the dwelling itself.</summary>
    /// <param name="change">Gives the dwelling with those members.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="change"/> gives null.</exception>
    public DwellingBuilder With(Func<Dwelling, Dwelling> change)
    {
        dwelling = Guard.Changed((change ?? throw new ArgumentNullException(nameof(change)))(dwelling), nameof(change));
        return this;
    }

    /// <summary>Adds a storey.</summary>
    /// <param name="storey">The storey.</param>
    /// <exception cref="ArgumentNullException"><paramref name="storey"/> is null.</exception>
    public DwellingBuilder Add(Storey storey) => With(d => d.WithStoreys(d.Storeys.With(Guard.NotNull(storey, nameof(storey)))));

    /// <summary>Adds a flight of stairs.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="ArgumentNullException"><paramref name="flight"/> is null.</exception>
    public DwellingBuilder Add(StairFlight flight) => With(d => d.WithFlights(d.Flights.With(Guard.NotNull(flight, nameof(flight)))));

    /// <summary>Adds a face seen from outside.</summary>
    /// <param name="face">The face.</param>
    /// <exception cref="ArgumentNullException"><paramref name="face"/> is null.</exception>
    public DwellingBuilder Add(OutsideFace face) => With(d => d.WithOutside(d.Outside.With(Guard.NotNull(face, nameof(face)))));

    /// <summary>Starts a room, which is part of the dwelling from now on. Each call makes another one: two of one id are a <see cref="LayoutFault"/> when the dwelling is evaluated.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="kind">What it is for.</param>
    /// <param name="storey">The id of its storey.</param>
    /// <exception cref="ArgumentException">An id is empty.</exception>
    public RoomBuilder Room(string id, RoomKind kind, string storey)
    {
        RoomBuilder room = new(new Room(id, kind, storey));
        rooms.Add(room);
        return room;
    }

    /// <summary>The dwelling as it has been described so far.</summary>
    public Dwelling Build() => dwelling.WithRooms(new Items<Room>(rooms.ConvertAll(room => room.Build())));
}

/// <summary>Builds a room of a <see cref="DwellingBuilder"/>.</summary>
public sealed class RoomBuilder
{
    private readonly List<WallBuilder> walls = [];
    private Room room;

    internal RoomBuilder(Room room) => this.room = room;

    /// <summary>What is being built.</summary>
    public override string ToString() => room.Id + ", walls so far: " + walls.Count;

    /// <summary>Sets members of the room itself.</summary>
    /// <param name="change">Gives the room with those members.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="change"/> gives null.</exception>
    public RoomBuilder With(Func<Room, Room> change)
    {
        room = Guard.Changed((change ?? throw new ArgumentNullException(nameof(change)))(room), nameof(change));
        return this;
    }

    /// <summary>Adds a fixture.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is null.</exception>
    public RoomBuilder Add(Fixture fixture) => With(r => r.WithFixtures(r.Fixtures.With(Guard.NotNull(fixture, nameof(fixture)))));

    /// <summary>Adds something that stands free.</summary>
    /// <param name="thing">The island, railing or half wall.</param>
    /// <exception cref="ArgumentNullException"><paramref name="thing"/> is null.</exception>
    public RoomBuilder Add(Freestanding thing) => With(r => r.WithFreestanding(r.Freestanding.With(Guard.NotNull(thing, nameof(thing)))));

    /// <summary>Adds a box in the ceiling.</summary>
    /// <param name="box">The box, with its <see cref="DeviceBox.Plan"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public RoomBuilder AddOverhead(DeviceBox box) => With(r => r.WithOverhead(r.Overhead.With(Guard.NotNull(box, nameof(box)))));

    /// <summary>Adds a box in the floor.</summary>
    /// <param name="box">The box, with its <see cref="DeviceBox.Plan"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public RoomBuilder AddInFloor(DeviceBox box) => With(r => r.WithInFloor(r.InFloor.With(Guard.NotNull(box, nameof(box)))));

    /// <summary>Starts the room's next wall face, to the right of the last one. Each call makes another one: two of one id are a <see cref="LayoutFault"/> when the dwelling is evaluated.</summary>
    /// <param name="id">Its id within the room.</param>
    /// <param name="length">Its length between framing faces.</param>
    /// <exception cref="ArgumentException">The id is empty or the length isn't positive.</exception>
    public WallBuilder Wall(string id, Distance length)
    {
        WallBuilder wall = new(new Wall(id, length));
        walls.Add(wall);
        return wall;
    }

    /// <summary>Starts all walls of the room from its corners on a drawing: w1 from the first point to the second, w2 from there, and so on.</summary>
    /// <param name="points">The corners in order, either way round, from any origin, to the right and down as on a screen; see <see cref="RoomOutline"/>.</param>
    /// <returns>The outline, with its area, how far it missed closing, and its walls. <see cref="FindWall"/> goes on with one of them.</returns>
    /// <exception cref="ArgumentException">The points are no outline.</exception>
    /// <exception cref="InvalidOperationException">The room has walls already.</exception>
    public RoomOutline Outline(params PlanPoint[] points)
    {
        if (walls.Count > 0)
        {
            throw new InvalidOperationException("The room has walls already: an outline is all of them.");
        }

        RoomOutline outline = RoomOutline.Of(Guard.NotNull(points, nameof(points)));
        foreach (Wall wall in outline.Walls)
        {
            walls.Add(new(wall));
        }

        return outline;
    }

    /// <summary>A wall that was started before.</summary>
    /// <param name="id">Its id within the room.</param>
    /// <exception cref="ArgumentException">The room has no wall of that id.</exception>
    public WallBuilder FindWall(string id) => walls.Find(wall => wall.Build().Id == id) ?? throw new ArgumentException("The room \"" + room.Id + "\" has no wall \"" + id + "\"; it has: " + (walls.Count == 0 ? "none" : string.Join(", ", walls.ConvertAll(wall => wall.Build().Id))) + ".", nameof(id));

    internal Room Build() => room.WithWalls(new Items<Wall>(walls.ConvertAll(wall => wall.Build())));
}

/// <summary>Builds a wall face of a <see cref="RoomBuilder"/>.</summary>
public sealed class WallBuilder
{
    private Wall wall;

    internal WallBuilder(Wall wall) => this.wall = wall;

    /// <summary>What is being built.</summary>
    public override string ToString() => wall.Id + ", boxes so far: " + wall.Boxes.Count;

    /// <summary>Sets members of the wall itself.</summary>
    /// <param name="change">Gives the wall with those members.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="change"/> gives null.</exception>
    public WallBuilder With(Func<Wall, Wall> change)
    {
        wall = Guard.Changed((change ?? throw new ArgumentNullException(nameof(change)))(wall), nameof(change));
        return this;
    }

    /// <summary>Adds a box.</summary>
    /// <param name="box">The box.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public WallBuilder Add(DeviceBox box) => With(w => w.WithBoxes(w.Boxes.With(Guard.NotNull(box, nameof(box)))));

    /// <summary>Adds an opening.</summary>
    /// <param name="opening">The opening.</param>
    /// <exception cref="ArgumentNullException"><paramref name="opening"/> is null.</exception>
    public WallBuilder Add(Opening opening) => With(w => w.WithOpenings(w.Openings.With(Guard.NotNull(opening, nameof(opening)))));

    /// <summary>Adds a counter.</summary>
    /// <param name="counter">The counter.</param>
    /// <exception cref="ArgumentNullException"><paramref name="counter"/> is null.</exception>
    public WallBuilder Add(Counter counter) => With(w => w.WithCounters(w.Counters.With(Guard.NotNull(counter, nameof(counter)))));

    /// <summary>Adds a finish.</summary>
    /// <param name="finish">The finish.</param>
    /// <exception cref="ArgumentNullException"><paramref name="finish"/> is null.</exception>
    public WallBuilder Add(Finish finish) => With(w => w.WithFinishes(w.Finishes.With(Guard.NotNull(finish, nameof(finish)))));

    /// <summary>Adds a covering.</summary>
    /// <param name="covering">The covering.</param>
    /// <exception cref="ArgumentNullException"><paramref name="covering"/> is null.</exception>
    public WallBuilder Add(Covering covering) => With(w => w.WithCoverings(w.Coverings.With(Guard.NotNull(covering, nameof(covering)))));

    /// <summary>Adds a part in which no box can be set.</summary>
    /// <param name="part">The part.</param>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    public WallBuilder Add(NoCavity part) => With(w => w.WithNoCavity(w.NoCavity.With(Guard.NotNull(part, nameof(part)))));

    internal Wall Build() => wall;
}
