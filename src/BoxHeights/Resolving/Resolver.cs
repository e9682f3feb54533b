using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Turns a description into surfaces and boxes, and says what in it can't be.</summary>
internal sealed partial class Resolver
{
    private readonly PartsCatalog catalog;
    private readonly LengthUnits units;
    private readonly Dictionary<string, Storey> storeys = [];
    private readonly HashSet<string> addresses = [];
    private readonly List<(string Subject, string BackOf)> backs = [];
    private readonly List<ResolvedSurface> faces = [];
    private readonly Dictionary<string, (StairGeometry Low, StairGeometry High)?> stairs = [];

    private Resolver(PartsCatalog catalog, LengthUnits units)
    {
        this.catalog = catalog;
        this.units = units;
    }

    public List<ResolvedBox> Boxes { get; } = [];

    public List<LayoutFault> Faults { get; } = [];

    /// <summary>Rooms, then outside faces.</summary>
    public List<ResolvedSpace> Spaces { get; } = [];

    public int SurfaceCount { get; private set; }

    public static Resolver Resolve(Dwelling dwelling, PartsCatalog catalog)
    {
        Resolver resolver = new(catalog, dwelling.Units);
        resolver.Storeys(dwelling);
        resolver.UniqueIds(dwelling);
        foreach (StairFlight flight in dwelling.Flights)
        {
            resolver.Within(flight.Id, () => resolver.Stairs(dwelling, flight));
        }

        foreach (Room room in dwelling.Rooms)
        {
            resolver.Within(room.Id, () => resolver.Room(room, dwelling));
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            resolver.Within(face.Id, () => resolver.Outside(face, dwelling));
        }

        resolver.Flights(dwelling);
        foreach ((string subject, string back) in resolver.backs)
        {
            resolver.Refers(resolver.addresses.Contains(back), subject, "backOf", back, "wall");
        }

        WallBody.Join(resolver.faces);

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
            Fault(LayoutFaultKind.BeyondMeasure, subject, "a measure in it is larger than anything in a house");
        }
    }

    private void Fault(LayoutFaultKind kind, string subject, string what, string? address = null) => Faults.Add(new(kind, subject, address ?? subject, what));

    private string Text(Distance distance) => distance.Exactly(units);

    private void Refers(bool known, string subject, string member, string id, string kind)
    {
        if (!known)
        {
            Fault(LayoutFaultKind.UnknownReference, subject, member + " names \"" + id + "\", but there is no such " + kind);
        }
    }

    private void Storeys(Dwelling dwelling)
    {
        foreach (Storey storey in dwelling.Storeys)
        {
            storeys[storey.Id] = storey;
            if (storey.LevelLine is { } line && line.Datum != Datum.Subfloor)
            {
                Fault(LayoutFaultKind.UnknownReference, storey.Id, "its level line is given as " + line + "; give it above the subfloor");
            }
        }
    }

    private void Room(Room room, Dwelling dwelling)
    {
        Refers(storeys.TryGetValue(room.Storey, out Storey? storey), room.Id, "storey", room.Storey, "storey");
        ResolvedSpace space = new(room, storey, dwelling);
        Spaces.Add(space);
        Walls(space, room.Walls);
        foreach (Fixture fixture in room.Fixtures)
        {
            if (fixture.Wall is { } wall)
            {
                Refers(addresses.Contains(room.Id + "/" + wall), room.Id + "/" + fixture.Id, "wall", wall, "wall in this room");
            }
        }

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

        ResolvedSpace space = new(face, storey);
        Spaces.Add(space);
        Walls(space, face.Walls);
    }

    private void Flights(Dwelling dwelling)
    {
        foreach (StairFlight flight in dwelling.Flights)
        {
            Refers(storeys.ContainsKey(flight.From), flight.Id, "from", flight.From, "storey");
            Refers(storeys.ContainsKey(flight.To), flight.Id, "to", flight.To, "storey");
            if (flight.Wall is { } wall)
            {
                Refers(addresses.Contains(wall), flight.Id, "wall", wall, "wall");
            }
        }
    }

    /// <summary>Where two flights name one wall, it isn't known whose nosings a height there is taken from.</summary>
    private void Stairs(Dwelling dwelling, StairFlight flight)
    {
        if (flight.Wall is { } wall)
        {
            stairs[wall] = !stairs.ContainsKey(wall) && StairGeometry.TryEnds(dwelling, flight, out StairGeometry? low, out StairGeometry? high) ? (low!, high!) : null;
        }
    }

    /// <summary>A flight along a wall of the storey that it starts from or leads to.</summary>
    private ResolvedStair? StairOn(string address, ResolvedSpace space)
    {
        if (!stairs.TryGetValue(address, out (StairGeometry Low, StairGeometry High)? ends) || ends is not { } flight
            || !space.Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor))
        {
            return null;
        }

        return space.StoreyId == flight.Low.Flight.From ? new(flight.Low, flight.High, subfloor.From)
            : space.StoreyId == flight.Low.Flight.To ? new(flight.Low, flight.High, subfloor.From + flight.Low.SubfloorToSubfloor)
            : null;
    }

    private void Flat(ResolvedSpace space, Items<DeviceBox> boxes, BoxSurface kind, string name)
    {
        ResolvedSurface surface = new(space.Id + "/" + name, kind, space, null, SurfaceCount++, catalog);
        foreach (DeviceBox box in boxes)
        {
            Boxes.Add(new(box, surface, false));
        }
    }

    private void Walls(ResolvedSpace space, Items<Wall> walls)
    {
        for (int i = 0; i < walls.Count; i++)
        {
            Wall wall = walls[i];
            string address = space.Id + "/" + wall.Id;
            if (!addresses.Add(address))
            {
                int first = 0;
                while (walls[first].Id != wall.Id)
                {
                    first++;
                }

                Fault(LayoutFaultKind.DuplicateId, address, "walls " + (first + 1) + " and " + (i + 1) + " of " + space.Id + ", counted from the left, have the same id");
            }

            if (wall.BackOf is { } back)
            {
                backs.Add((address, back));
            }

            int before = Faults.Count;
            Parts(address, wall);
            ResolvedSurface surface = new(address, BoxSurface.Wall, space, wall, SurfaceCount++, catalog)
            {
                HasBrokenParts = Faults.Count > before,
                Stair = StairOn(address, space),
            };
            space.HasBrokenParts |= surface.HasBrokenParts;
            faces.Add(surface);
            if (surface.HasTooManyStuds)
            {
                Fault(LayoutFaultKind.BeyondMeasure, address, "its studs stand so close that there would be more than can be counted");
            }

            foreach (DeviceBox box in wall.Boxes)
            {
                Boxes.Add(Box(box, surface, wall));
            }
        }
    }

    private void Parts(string address, Wall wall)
    {
        Dictionary<string, string> seen = new(StringComparer.Ordinal);
        void Part(string? id, string what, Distance left, Distance right)
        {
            string subject = id is null ? address : address + "/" + id;
            if (id is not null)
            {
                string where = "the " + what + " from " + Text(left);
                if (seen.TryGetValue(id, out string? first))
                {
                    Fault(LayoutFaultKind.DuplicateId, subject, first + " and " + where + " have the same id");
                }
                else
                {
                    seen.Add(id, where);
                }
            }

            if (right <= left)
            {
                Fault(LayoutFaultKind.NoExtent, subject, "this " + what + " runs from " + Text(left) + " to " + Text(right) + ": its right end isn't right of its left end");
            }
            else if (right > wall.Length)
            {
                Fault(LayoutFaultKind.OutsideItsWall, subject, "this " + what + " ends at " + Text(right) + ", but the wall is " + Text(wall.Length) + " long");
            }
        }

        foreach (Opening opening in wall.Openings)
        {
            Part(opening.Id, "opening", opening.Left, opening.Right);
        }

        foreach (Counter counter in wall.Counters)
        {
            Part(counter.Id, "counter", counter.Left, counter.Right);
        }

        foreach (Finish finish in wall.Finishes)
        {
            Part(finish.Id, "finish", finish.Left, finish.Right);
        }

        foreach (Covering covering in wall.Coverings)
        {
            Part(covering.Id, "covering", covering.Left, covering.Right);
        }

        foreach (NoCavity part in wall.NoCavity)
        {
            Part(null, part.Kind + " without cavity", part.Left, part.Right);
        }

        for (int i = 1; i < wall.Top.Count; i++)
        {
            if (wall.Top[i].Along < wall.Top[i - 1].Along)
            {
                Fault(LayoutFaultKind.NoExtent, address, "the points of its top aren't in order from left to right: " + Text(wall.Top[i].Along) + " follows " + Text(wall.Top[i - 1].Along));
            }
        }

        Overlaps(address, wall.Openings);
    }

    /// <summary>Openings overlap only if they do so both along the wall and in height: a transom over a door doesn't.</summary>
    private void Overlaps(string address, Items<Opening> openings)
    {
        for (int i = 0; i < openings.Count; i++)
        {
            for (int j = i + 1; j < openings.Count; j++)
            {
                Opening a = openings[i];
                Opening b = openings[j];
                if (a.Left < b.Right && b.Left < a.Right && !IsUnder(a, b) && !IsUnder(b, a))
                {
                    Fault(LayoutFaultKind.OverlappingOpenings, address + "/" + a.Id, "it overlaps the opening \"" + b.Id + "\" both along the wall and in height");
                }
            }
        }

        static bool IsUnder(Opening low, Opening high) =>
            low.Head is { } head && high.Sill is { } sill && head.Datum == sill.Datum && head.Offset <= sill.Offset;
    }
}
