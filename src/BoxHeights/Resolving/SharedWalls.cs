using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What goes through a wall or fills it is there on both faces, whichever describes it: openings, headers, posts, ducts, and that it carries something.</summary>
/// <remarks>
/// An opening is taken over where it is known where the faces are, where it lies wholly on the other and where nothing is described there. What belongs to one side of it
/// (casing, reveal, stool) isn't; a head that can't be told from the other room's floor isn't stated there, and an opening whose sill can't be isn't taken over.
/// What fills the wall is taken over as far as it lies on the other face, and where nothing of its kind is described there; a stringer lies on its own face.
/// </remarks>
internal static class SharedWalls
{
    /// <summary>The dwelling with every opening, and whatever fills a wall, on both of its faces; the same where nothing is missing.</summary>
    public static Dwelling In(Dwelling dwelling, BackFaces backs, UsualMeasures usual)
    {
        if (backs.Addresses.Count == 0)
        {
            return dwelling;
        }

        bool changed = false;
        Dictionary<string, Levels> levels = new(StringComparer.Ordinal);
        Room[] rooms = new Room[dwelling.Rooms.Count];
        for (int i = 0; i < rooms.Length; i++)
        {
            rooms[i] = dwelling.Rooms[i];
            if (Completed(rooms[i].Id, rooms[i].Walls) is { } walls)
            {
                rooms[i] = rooms[i].WithWalls(walls);
                changed = true;
            }
        }

        OutsideFace[] outside = new OutsideFace[dwelling.Outside.Count];
        for (int i = 0; i < outside.Length; i++)
        {
            outside[i] = dwelling.Outside[i];
            if (Completed(outside[i].Id, outside[i].Walls) is { } walls)
            {
                outside[i] = outside[i].WithWalls(walls);
                changed = true;
            }
        }

        return changed ? dwelling.WithRooms(rooms).WithOutside(outside) : dwelling;

        Items<Wall>? Completed(string space, Items<Wall> walls)
        {
            Wall[]? completed = null;
            for (int i = 0; i < walls.Count; i++)
            {
                foreach (BackFace other in backs.Behind(SurfaceAddress.Of(space, walls[i].Id)))
                {
                    if (Filled(completed?[i] ?? walls[i], other, space) is { } filled)
                    {
                        completed ??= [.. walls];
                        completed[i] = filled;
                    }

                    foreach (Opening opening in other.Wall.Openings)
                    {
                        Wall wall = completed?[i] ?? walls[i];
                        if (!wall.Open && !other.Wall.Open && SeenFrom(wall, other, opening) is { } seen && Heights(seen, opening, space, other) is { } whole)
                        {
                            completed ??= [.. walls];
                            completed[i] = wall.WithOpenings(wall.Openings.With(whole));
                        }
                    }
                }
            }

            return completed is null ? (Items<Wall>?)null : new Items<Wall>(completed);
        }

        // The wall with what fills it by the face behind; null where that is nothing more.
        Wall? Filled(Wall wall, in BackFace other, string space)
        {
            if (wall.Open || other.Wall.Open)
            {
                return null;
            }

            Wall? filled = other.Wall.Bearing && !wall.Bearing ? wall.WithBearing(true) : null;
            foreach (NoCavity part in other.Wall.NoCavity)
            {
                Level? bottom = Here(part.Bottom, space, other.SpaceId);
                Level? top = Here(part.Top, space, other.SpaceId);
                bool isTold = (bottom is null) == (part.Bottom is null) && (top is null) == (part.Top is null);
                if (isTold && part.Kind != NoCavityKind.Stringer && SeenFrom(wall, other, part) is { } seen)
                {
                    filled = (filled ?? wall).WithNoCavity((filled ?? wall).NoCavity.With(seen.WithBottom(bottom).WithTop(top)));
                }
            }

            return filled;
        }

        Opening? Heights(Opening seen, Opening opening, string space, in BackFace other)
        {
            Level? sill = Here(opening.Sill, space, other.SpaceId);
            return sill is null && opening.Sill is not null ? null : seen.WithSill(sill).WithHead(Here(opening.Head, space, other.SpaceId));
        }

        // A height of one space above the other's subfloor; null where the two aren't on one storey or something isn't known exactly.
        Level? Here(Level? level, string space, string other)
        {
            return level is { } there && LevelsOf(space) is var (mine, myStorey) && LevelsOf(other) is var (theirs, storey) && myStorey == storey
                && theirs.TryGet(there.Datum, out DistanceRange up) && mine.TryGet(Datum.Subfloor, out DistanceRange subfloor) && up.IsExact && subfloor.IsExact
                    ? new Level(up.From + there.Offset - subfloor.From, Datum.Subfloor)
                    : null;
        }

        (Levels Levels, string Storey)? LevelsOf(string space)
        {
            foreach (Room room in dwelling.Rooms)
            {
                if (room.Id == space)
                {
                    return (Known(space, () => new ResolvedSpace(room, StoreyOf(room.Storey), backs, usual).Levels), room.Storey);
                }
            }

            foreach (OutsideFace face in dwelling.Outside)
            {
                if (face.Id == space && DwellingAddresses.StoreyOf(dwelling, face) is { } storey)
                {
                    return (Known(space, () => new ResolvedSpace(face, StoreyOf(storey), usual).Levels), storey);
                }
            }

            return null;
        }

        Levels Known(string space, Func<Levels> work)
        {
            if (!levels.TryGetValue(space, out Levels? known))
            {
                levels.Add(space, known = work());
            }

            return known;
        }

        Storey? StoreyOf(string id) => dwelling.Storeys.Find(storey => storey.Id == id);
    }

    /// <summary>A dwelling that differs from another in its boxes alone, with what that other got on both faces of its walls.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="shared">What <see cref="In"/> made of the other.</param>
    /// <param name="other">The other.</param>
    public static Dwelling WithBoxesOf(Dwelling dwelling, Dwelling shared, Dwelling other)
    {
        if (ReferenceEquals(shared, other))
        {
            return dwelling;
        }

        Room[] rooms = new Room[dwelling.Rooms.Count];
        for (int i = 0; i < rooms.Length; i++)
        {
            Room room = dwelling.Rooms[i];
            rooms[i] = ReferenceEquals(shared.Rooms[i], other.Rooms[i]) ? room : room.WithWalls(Walls(room.Walls, shared.Rooms[i].Walls));
        }

        OutsideFace[] outside = new OutsideFace[dwelling.Outside.Count];
        for (int i = 0; i < outside.Length; i++)
        {
            OutsideFace face = dwelling.Outside[i];
            outside[i] = ReferenceEquals(shared.Outside[i], other.Outside[i]) ? face : face.WithWalls(Walls(face.Walls, shared.Outside[i].Walls));
        }

        return dwelling.WithRooms(rooms).WithOutside(outside);

        static Items<Wall> Walls(Items<Wall> walls, Items<Wall> shared)
        {
            Wall[] with = new Wall[walls.Count];
            for (int i = 0; i < with.Length; i++)
            {
                with[i] = walls[i].Boxes == shared[i].Boxes ? shared[i] : shared[i].WithBoxes(walls[i].Boxes);
            }

            return new(with);
        }
    }

    /// <summary>An opening of the face behind as this face sees it; null where it doesn't lie wholly on it, or something is described there.</summary>
    private static Opening? SeenFrom(Wall wall, in BackFace other, Opening opening)
    {
        if (opening.Right <= opening.Left || opening.Right > other.Wall.Length || other.Along(opening.Right) is not { } left || other.Along(opening.Left) is not { } right
            || left < Distance.Zero || right > wall.Length)
        {
            return null;
        }

        string id = opening.Id;
        foreach (Opening there in wall.Openings)
        {
            if (there.Left < right && left < there.Right)
            {
                return null;
            }

            id = there.Id == opening.Id ? opening.Id + " of " + SurfaceAddress.Read(other.Address).InWords : id;
        }

        return opening.WithId(id).WithLeft(left).WithRight(right).WithHinge(Turned(opening.Hinge)).WithPocketOn(Turned(opening.PocketOn))
            .WithSwing(opening.Swing switch { DoorSwing.Into => DoorSwing.Away, DoorSwing.Away => DoorSwing.Into, _ => null })
            .WithEntrance(opening.Entrance switch { EntranceSide.Inside => EntranceSide.Outside, EntranceSide.Outside => EntranceSide.Inside, _ => null })
            .WithCasing(null).WithReveal(null).WithStool(null);
    }

    /// <summary>What fills the wall by the face behind, as far as it lies on this one; null where that is nothing, or something of its kind is described there.</summary>
    private static NoCavity? SeenFrom(Wall wall, in BackFace other, NoCavity part)
    {
        if (other.Along(part.Right) is not { } from || other.Along(part.Left) is not { } to)
        {
            return null;
        }

        Distance left = Distance.Max(from, Distance.Zero);
        Distance right = Distance.Min(to, wall.Length);
        foreach (NoCavity there in wall.NoCavity)
        {
            if (there.Kind == part.Kind && there.Left < right && left < there.Right)
            {
                return null;
            }
        }

        return left < right ? part.WithLeft(left).WithRight(right) : null;
    }

    private static WallEnd? Turned(WallEnd? end) => end switch { WallEnd.Left => WallEnd.Right, WallEnd.Right => WallEnd.Left, _ => null };
}
