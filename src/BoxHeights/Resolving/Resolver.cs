using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Turns a description into surfaces and boxes, and says what in it can't be.</summary>
internal sealed partial class Resolver
{
    private static readonly Dwelling Nothing = new("nothing");

    private readonly PartsCatalog catalog;
    private readonly LengthUnits units;
    private readonly BoxResolver described;
    private readonly Dictionary<string, Storey> storeys = [];
    private readonly HashSet<string> addresses = [];
    private readonly List<(string Subject, string BackOf)> backs = [];
    private readonly List<ResolvedSurface> faces = [];
    private readonly Dictionary<string, (StairGeometry Low, StairGeometry High)?> stairs = [];

    private Resolver(PartsCatalog catalog, LengthUnits units)
    {
        this.catalog = catalog;
        this.units = units;
        described = new(catalog, units, Faults);
    }

    /// <summary>The description, with what one face of a wall says of it said of the other too.</summary>
    public Dwelling Dwelling { get; private init; } = Nothing;

    /// <summary>Which faces are two sides of one wall.</summary>
    public BackFaces Backs { get; private init; } = BackFaces.None;

    public List<ResolvedBox> Boxes { get; } = [];

    public List<LayoutFault> Faults { get; } = [];

    /// <summary>Rooms, then outside faces.</summary>
    public List<ResolvedSpace> Spaces { get; } = [];

    /// <summary>Walls, ceilings and floors, each at the place of its index.</summary>
    public List<ResolvedSurface> Surfaces { get; } = [];

    /// <summary>Resolves a dwelling.</summary>
    /// <param name="dwelling">The description.</param>
    /// <param name="catalog">Sizes that it doesn't state.</param>
    /// <param name="units">How faults are printed; null for the dwelling's own units.</param>
    public static Resolver Resolve(Dwelling dwelling, PartsCatalog catalog, LengthUnits? units = null)
    {
        BackFaces backs = BackFaces.Of(dwelling);
        Resolver resolver = new(catalog, units ?? dwelling.Units) { Backs = backs, Dwelling = SharedWalls.In(dwelling, backs, catalog.UsualMeasures) };
        dwelling = resolver.Dwelling;
        resolver.Storeys(dwelling);
        foreach (StairFlight flight in dwelling.Flights)
        {
            resolver.Within(flight.Id, () => resolver.Stairs(dwelling, flight));
        }

        foreach (Room room in dwelling.Rooms)
        {
            resolver.Within(room.Id, () => resolver.Room(room));
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            resolver.Within(face.Id, () => resolver.Outside(face, dwelling));
        }

        resolver.UniqueIds(dwelling);
        resolver.Flights(dwelling);
        foreach ((string subject, string back) in resolver.backs)
        {
            resolver.Refers(resolver.addresses.Contains(back), subject, "backOf", back, "wall");
        }

        WallBody.Join(resolver.faces, resolver.Backs);
        resolver.FacesOfWalls();

        return resolver;
    }

    /// <summary>Measures that can't be added up any more are no measures of a house: a fault of what they describe, and the rest goes on.</summary>
    private void Within(string subject, Action resolve)
    {
        try
        {
            resolve();
        }
        catch (OverflowException)
        {
            Fault(LayoutFaultKind.BeyondMeasure, subject, $"a measure in it is larger than anything in a house");
        }
    }

    private void Fault(LayoutFaultKind kind, string subject, Wording what, string? address = null) => Faults.Add(new(kind, subject, address ?? subject, what));

    private PrintedQuantity Text(Distance distance) => Printed.Exactly(distance, units);

    private void Refers(bool known, string subject, string member, string id, string kind)
    {
        if (!known)
        {
            Fault(LayoutFaultKind.UnknownReference, subject, $"{member} names \"{id}\", but there is no such {Wording.Term(kind):kind}");
        }
    }

    private void Storeys(Dwelling dwelling)
    {
        Storey? below = null;
        foreach (Storey storey in dwelling.Storeys)
        {
            Storey(storey, below);
            below = storey;
            storeys[storey.Id] = storey;
        }
    }

    private void Room(Room room)
    {
        Refers(storeys.TryGetValue(room.Storey, out Storey? storey), room.Id, "storey", room.Storey, "storey");
        ResolvedSpace space = new(room, storey, Backs, catalog.UsualMeasures) { Units = units };
        Spaces.Add(space);
        HasRoom(room, space);
        Walls(space, room.Walls);
        OfAHouse(room.SubfloorOffset, room.Id, "its step");
        OfAHouse(room.Ceiling?.Framing?.To, room.Id, "its ceiling framing");
        Closing(room, space.Plan!);
        InPlan(room, space.Plan!);
        Fixtures(room.Id, room.Fixtures, "wall in this room");
        Things(space, room.Fixtures, room.Freestanding);
        Flat(space, room.Overhead, BoxSurface.Ceiling, "ceiling");
        Flat(space, room.InFloor, BoxSurface.Floor, "floor");
    }

    private void Outside(OutsideFace face, Dwelling dwelling)
    {
        Storey? storey = dwelling.Storeys.Count > 0 ? dwelling.Storeys[0] : null;
        if (face.Storey is { } id)
        {
            Refers(storeys.TryGetValue(id, out storey), face.Id, "storey", id, "storey");
        }

        ResolvedSpace space = new(face, storey, catalog.UsualMeasures) { Units = units };
        Spaces.Add(space);
        Walls(space, face.Walls);
        Fixtures(face.Id, face.Fixtures, "wall of this face");
        Things(space, face.Fixtures, default);
    }

    private void Fixtures(string space, Items<Fixture> fixtures, string what)
    {
        foreach (Fixture fixture in fixtures)
        {
            if (fixture.Wall is { } wall)
            {
                Refers(addresses.Contains(SurfaceAddress.Of(space, wall)), SurfaceAddress.Of(space, fixture.Id), "wall", wall, what);
            }

            if (fixture is { Left: { } left, Right: { } right } && right <= left)
            {
                NoExtent(SurfaceAddress.Of(space, fixture.Id), $"fixture", left, right);
            }
        }
    }

    /// <summary>What stands in a room has an id there and a top above its floor.</summary>
    private void Things(ResolvedSpace space, Items<Fixture> fixtures, Items<Freestanding> freestanding)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (Fixture fixture in fixtures)
        {
            Once(fixture.Id, fixture.Top);
        }

        foreach (Freestanding one in freestanding)
        {
            Once(one.Id, one.Top);
        }

        void Once(string id, Level? top)
        {
            if (!seen.Add(id))
            {
                Fault(LayoutFaultKind.DuplicateId, SurfaceAddress.Of(space.Id, id), $"two things that stand in {space.Id:space} have the same id");
            }

            if (!space.IsOutside)
            {
                Within(space, space.Id, id, top, "top", isTop: true, space.Framing?.To);
            }
        }
    }

    private void Flat(ResolvedSpace space, Items<DeviceBox> boxes, BoxSurface kind, string name)
    {
        ResolvedSurface surface = new(SurfaceAddress.Of(space.Id, name), kind, space, null, Surfaces.Count, catalog);
        Surfaces.Add(surface);
        foreach (DeviceBox box in boxes)
        {
            Boxes.Add(described.On(surface, box));
        }
    }

    private void Walls(ResolvedSpace space, Items<Wall> walls)
    {
        for (int i = 0; i < walls.Count; i++)
        {
            Wall wall = walls[i];
            string address = SurfaceAddress.Of(space.Id, wall.Id);
            if (!addresses.Add(address))
            {
                int first = 0;
                while (walls[first].Id != wall.Id)
                {
                    first++;
                }

                Fault(LayoutFaultKind.DuplicateId, address, first == i ? $"two rooms or faces called {space.Id:space} have a wall {wall.Id:wall}"
                    : (Wording)$"walls {first + 1:first} and {i + 1:second} of {space.Id:space}, counted from the left, have the same id");
            }

            if (!space.IsOutside && (wall.Id == "ceiling" || wall.Id == "floor"))
            {
                Fault(LayoutFaultKind.DuplicateId, address, wall.Id == "floor" ? $"a wall can't be called {wall.Id:wall}: that is where the room's boxes in the floor are" : (Wording)$"a wall can't be called {wall.Id:wall}: that is where the room's boxes overhead are");
            }

            if (wall.BackOf is { } back)
            {
                backs.Add((address, back));
            }

            int before = Faults.Count;
            if (!ResolvedBox.IsWithinReason(wall.Length))
            {
                Fault(LayoutFaultKind.BeyondMeasure, address, wall.Length == Distance.MaxValue ? $"its length has no bound"
                    : (Wording)$"it is {Text(wall.Length):length} long, which is larger than anything in a house");
            }

            Parts(address, wall, space);
            foreach (Fixture fixture in space.FixturesOn(wall.Id))
            {
                BeyondItsWall(SurfaceAddress.Of(space.Id, fixture.Id), fixture, wall);
            }

            ResolvedSurface surface = new(address, BoxSurface.Wall, space, wall, Surfaces.Count, catalog) { Stair = StairOn(address, space) };
            BetweenFloorAndCeiling(surface, wall);
            surface.HasBrokenParts = Faults.Count > before;
            space.HasBrokenParts |= surface.HasBrokenParts;
            faces.Add(surface);
            Surfaces.Add(surface);
            CountersOverlap(address, wall);
            CountersAcrossDoors(address, wall);
            HeadsAboveTheCeiling(space, address, wall);
            if (surface.HasTooManyStuds && ResolvedBox.IsWithinReason(wall.Length))
            {
                Fault(LayoutFaultKind.BeyondMeasure, address, $"its studs stand so close that there would be more than can be counted");
            }

            foreach (DeviceBox box in wall.Boxes)
            {
                Boxes.Add(described.On(surface, box));
            }
        }
    }
}
