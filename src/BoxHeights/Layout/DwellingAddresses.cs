using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What parts of a dwelling can be addressed.</summary>
internal static class DwellingAddresses
{
    // Of so short an id every other one is nearly the same.
    private const int FewLetters = 3;

    /// <summary>Whether an id or address is that of a part, or of a stretch of one ("living/north 32 in to 14 ft").</summary>
    public static bool Has(Dwelling dwelling, string id)
    {
        foreach (string part in Of(dwelling))
        {
            if (id.StartsWith(part, StringComparison.Ordinal) && (id.Length == part.Length || id[part.Length] == ' '))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The ids of the rooms and outside faces of a storey; none where there is no storey of that id.</summary>
    public static HashSet<string> RoomsOn(Dwelling dwelling, string storey)
    {
        HashSet<string> found = new(StringComparer.Ordinal);
        foreach (Room room in dwelling.Rooms)
        {
            if (room.Storey == storey)
            {
                found.Add(room.Id);
            }
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            if (StoreyOf(dwelling, face) == storey)
            {
                found.Add(face.Id);
            }
        }

        return found;
    }

    /// <summary>The id of the storey that an outside face belongs to: the one stated, else the lowest; null where the dwelling has none.</summary>
    public static string? StoreyOf(Dwelling dwelling, OutsideFace face) => face.Storey ?? (dwelling.Storeys.Count > 0 ? dwelling.Storeys[0].Id : null);

    /// <summary>That a dwelling has no such part: with the part that may have been meant, or the walls of the room that was named.</summary>
    public static ArgumentException NoSuch(Dwelling dwelling, string what, string id, string argument, string otherwise = "")
    {
        string told = "The dwelling has no " + what + " \"" + id + "\"";
        string? meant = id.Length > FewLetters ? Spelling.Meant(id, [.. Of(dwelling)]) : null;
        List<string> walls = [];
        foreach (Room room in meant is null ? dwelling.Rooms : default)
        {
            walls.AddRange(SurfaceAddress.Read(id).Space == room.Id ? room.Walls.Select(wall => SurfaceAddress.Of(room.Id, wall.Id)) : default);
        }

        return new(told + (meant is not null ? ": is \"" + meant + "\" meant?" : walls.Count > 0 ? "; there are: " + string.Join(", ", walls) + "." : otherwise + "."), argument);
    }

    private static IEnumerable<string> Of(Dwelling dwelling)
    {
        yield return dwelling.Name;
        foreach (Storey storey in dwelling.Storeys)
        {
            yield return storey.Id;
        }

        foreach (StairFlight flight in dwelling.Flights)
        {
            yield return flight.Id;
        }

        foreach (Room room in dwelling.Rooms)
        {
            yield return room.Id;
            yield return SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling);
            yield return SurfaceAddress.Of(room.Id, DwellingBoxes.Floor);
            foreach (Fixture fixture in room.Fixtures)
            {
                yield return SurfaceAddress.Of(room.Id, fixture.Id);
            }

            foreach (Freestanding thing in room.Freestanding)
            {
                yield return SurfaceAddress.Of(room.Id, thing.Id);
            }

            foreach (string address in On(room.Id, room.Walls))
            {
                yield return address;
            }
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            yield return face.Id;
            foreach (Platform platform in face.Platforms)
            {
                yield return SurfaceAddress.Of(face.Id, platform.Id);
            }

            foreach (Fixture fixture in face.Fixtures)
            {
                yield return SurfaceAddress.Of(face.Id, fixture.Id);
            }

            foreach (string address in On(face.Id, face.Walls))
            {
                yield return address;
            }
        }

        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            yield return placed.Box.Id;
        }
    }

    private static IEnumerable<string> On(string space, Items<Wall> walls)
    {
        foreach (Wall wall in walls)
        {
            string address = SurfaceAddress.Of(space, wall.Id);
            yield return address;
            foreach (Items<string> ids in new[] { wall.Openings.Select(one => one.Id), wall.Counters.Select(one => one.Id), wall.Finishes.Select(one => one.Id), wall.Coverings.Select(one => one.Id) })
            {
                foreach (string id in ids)
                {
                    yield return SurfaceAddress.Of(address, id);
                }
            }
        }
    }

    /// <summary>The ids of storeys, rooms, outside faces and flights.</summary>
    public static HashSet<string> NamesOfParts(Dwelling dwelling)
    {
        HashSet<string> names = new(StringComparer.Ordinal);
        names.UnionWith(dwelling.Storeys.Select(one => one.Id));
        names.UnionWith(dwelling.Rooms.Select(one => one.Id));
        names.UnionWith(dwelling.Outside.Select(one => one.Id));
        names.UnionWith(dwelling.Flights.Select(one => one.Id));
        return names;
    }
}
