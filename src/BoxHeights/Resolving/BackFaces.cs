using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A face on the other side of a wall.</summary>
/// <param name="Address">Its address.</param>
/// <param name="Room">Its room; null for an outside face.</param>
/// <param name="Face">Its outside face; null for a room.</param>
/// <param name="Wall">The face.</param>
/// <param name="Offset">How far right of this face's left end its right end lies; null where that isn't known.</param>
internal readonly record struct BackFace(string Address, Room? Room, OutsideFace? Face, Wall Wall, Distance? Offset)
{
    /// <summary>The id of its room or outside face.</summary>
    public string SpaceId => Room?.Id ?? Face!.Id;

    /// <summary>Where a place on it is on this face: faces back to back run against each other.</summary>
    public Distance? Along(Distance place) => Offset + Wall.Length - place;

    /// <summary>Whether it shares a stretch with a stretch of this face.</summary>
    public bool IsBehind(Distance left, Distance right) => Offset is { } offset && left < offset + Wall.Length && offset < right;
}

/// <summary>Which wall faces are two sides of one wall. It is the same whichever of them says so, and one face may have several behind it.</summary>
internal sealed class BackFaces
{
    private readonly Dictionary<string, BackFace> faces = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<BackFace>> behind = new(StringComparer.Ordinal);

    private BackFaces()
    {
    }

    private BackFaces(Dwelling dwelling)
    {
        foreach (Room room in dwelling.Rooms)
        {
            Enter(room.Id, room.Walls, room, null);
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Enter(face.Id, face.Walls, null, face);
        }

        foreach (BackFace one in faces.Values)
        {
            if (one.Wall.BackOf is not { } back || back == one.Address || !faces.TryGetValue(back, out BackFace other))
            {
                continue;
            }

            // Said the other way round: this face's right end lies at the same offset on the other, as far as both are known.
            Distance? offset = OffsetOf(one.Wall, other.Wall);
            Note(one.Address, other with { Offset = offset });
            Note(other.Address, one with { Offset = offset + other.Wall.Length - one.Wall.Length });
        }
    }

    /// <summary>The addresses of the faces that have another behind them.</summary>
    public ICollection<string> Addresses => behind.Keys;

    /// <summary>No face has another behind it.</summary>
    public static BackFaces None { get; } = new();

    public static BackFaces Of(Dwelling dwelling) => IsSaid(dwelling) ? new(dwelling) : None;

    /// <summary>The faces behind a face, those first of which it is known where they are.</summary>
    public IReadOnlyList<BackFace> Behind(string address) => behind.TryGetValue(address, out List<BackFace>? list) ? list : [];

    /// <summary>The rooms that an opening in a face leads to: the one behind it, or all that may be where that isn't known.</summary>
    public IEnumerable<Room> RoomsBehind(string address, Opening opening)
    {
        bool isKnown = false;
        foreach (BackFace face in Behind(address))
        {
            if (face.Room is { } room && (face.Offset is null ? !isKnown : face.IsBehind(opening.Left, opening.Right)))
            {
                isKnown |= face.Offset is not null;
                yield return room;
            }
        }
    }

    private static bool IsSaid(Dwelling dwelling)
    {
        foreach (Room room in dwelling.Rooms)
        {
            if (IsSaid(room.Walls))
            {
                return true;
            }
        }

        return dwelling.Outside.Exists(face => IsSaid(face.Walls));
    }

    private static bool IsSaid(Items<Wall> walls) => walls.Exists(wall => wall.BackOf is not null);

    private void Enter(string space, Items<Wall> walls, Room? room, OutsideFace? face)
    {
        foreach (Wall wall in walls)
        {
            string address = SurfaceAddress.Of(space, wall.Id);
            if (!faces.ContainsKey(address))
            {
                faces.Add(address, new(address, room, face, wall, null));
            }
        }
    }

    private void Note(string address, BackFace other)
    {
        List<BackFace> list = behind.ListOf(address);

        // Both may say it, and one of them where the other is.
        int known = list.FindIndex(one => one.Address == other.Address);
        if (known >= 0 && (list[known].Offset is not null || other.Offset is null))
        {
            return;
        }

        if (known >= 0)
        {
            list.RemoveAt(known);
        }

        list.Insert(other.Offset is null ? list.Count : 0, other);
    }

    /// <summary>Where it isn't said how far one is off the other, faces of equal length are taken to match; of others that share no stretch nothing is known.</summary>
    public static Distance? OffsetOf(Wall face, Wall other)
    {
        Distance? offset = face.BackOffset ?? (face.Length == other.Length ? Distance.Zero : null);
        return IsOfAHouse(face.Length) && IsOfAHouse(other.Length) && offset < face.Length && offset > -other.Length ? offset : null;
    }

    /// <summary>Short enough for the lengths of any number of walls to be added up.</summary>
    private static bool IsOfAHouse(Distance length) => length.Ticks < 1L << 48;
}
