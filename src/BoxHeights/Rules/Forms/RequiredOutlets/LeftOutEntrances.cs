using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Entrances of a dwelling whose inner side alone is described.</summary>
/// <remarks>Where a face has an entrance of which nothing says which room it leads to, it may be one of those that a room has: only those that are more are surely left out.</remarks>
internal static class LeftOutEntrances
{
    /// <summary>The rooms that have one, each once; null where it may be that of any room.</summary>
    /// <param name="space">What is judged for the dwelling.</param>
    /// <param name="except">Doors of these kinds are no entrances.</param>
    public static List<string?> In(SpaceView space, Items<OpeningKind> except)
    {
        List<string?> rooms = [];
        int inside = 0;
        foreach (Room room in space.Dwelling.Rooms)
        {
            foreach (Wall wall in room.Untouched ? default : room.Walls)
            {
                foreach (Opening opening in wall.Openings)
                {
                    if (opening.Entrance == EntranceSide.Inside && ThingInPlan.IsDoorway(opening) && !except.Contains(opening.Kind) && !HasFace(space, SurfaceAddress.Of(room.Id, wall.Id), opening))
                    {
                        inside++;
                        if (!rooms.Contains(room.Id))
                        {
                            rooms.Add(room.Id);
                        }
                    }
                }
            }
        }

        int outside = inside == 0 ? 0 : OfNoRoom(space, except);
        return outside == 0 ? rooms : inside > outside ? [null] : [];
    }

    private static bool HasFace(SpaceView space, string address, Opening opening)
    {
        foreach (BackFace back in space.Backs.Behind(address))
        {
            if (back.Face is not null && (back.Offset is null || back.IsBehind(opening.Left, opening.Right)))
            {
                return true;
            }
        }

        return false;
    }

    private static int OfNoRoom(SpaceView space, Items<OpeningKind> except)
    {
        int count = 0;
        foreach (OutsideFace face in space.Dwelling.Outside)
        {
            foreach (Wall wall in face.Walls)
            {
                foreach (Opening opening in wall.Openings)
                {
                    count += ThingInPlan.IsDoorway(opening) && !except.Contains(opening.Kind) && space.Backs.Behind(SurfaceAddress.Of(face.Id, wall.Id)).Count == 0 ? 1 : 0;
                }
            }
        }

        return count;
    }
}
