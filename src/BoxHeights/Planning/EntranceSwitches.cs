using BoxHeights.Standards;

namespace BoxHeights;

/// <summary>A switch at each entrance of a room that has none yet, on the side that the trade takes.</summary>
internal sealed class EntranceSwitches(RoughInDraft draft)
{
    private static readonly Items<OpeningKind> Entrances = new[]
    {
        OpeningKind.Door, OpeningKind.DoubleDoor, OpeningKind.PocketDoor, OpeningKind.BarnDoor, OpeningKind.SlidingDoor, OpeningKind.Cased,
    };

    public void Plan(Room room)
    {
        int entrances = 0;
        foreach (Wall wall in room.Walls)
        {
            foreach (DeviceBox there in wall.Boxes)
            {
                if (there.Purpose == BoxPurpose.Switch)
                {
                    return;
                }
            }

            foreach (Opening opening in wall.Openings)
            {
                entrances += Entrances.Contains(opening.Kind) ? 1 : 0;
            }
        }

        DeviceBox box = new DeviceBox("switch", BoxPurpose.Switch).WithHeight(TradePractice.HeightFor(BoxPurpose.Switch)).WithDevices(new[] { entrances > 1 ? DeviceKind.ThreeWaySwitch : DeviceKind.Switch });
        foreach (Wall wall in room.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (Entrances.Contains(opening.Kind) && opening.Left < opening.Right && opening.Right <= wall.Length)
                {
                    At(room, wall, opening, box);
                }
            }
        }
    }

    private void At(Room room, Wall wall, Opening opening, DeviceBox box)
    {
        SwitchSide side = SwitchSide.For(room, wall.Id, opening.Id, box, draft.State.Options.Catalog, StoreyOf(room));
        if (side.IsBetterOutside)
        {
            return;
        }

        foreach (SwitchPlace place in side.Places)
        {
            Wall on = WallOf(room, place.Wall);
            BoxHeight? height = HeightsOnWall.Wanted(draft, place.Wall, box);
            if (draft.TryAdd(place.Wall, box.WithAt(place.At).WithHeight(height), "at the entrance " + opening.Id + ": " + place.Reason)
                || (HeightsOnWall.Of(draft, place.Wall, on.Length, box, true) is { } heights && Nearby(heights, place, box, opening)))
            {
                return;
            }
        }

        draft.Obstacle(room.Id + "/" + wall.Id + "/" + opening.Id + ": no place for its switch" + (side.Refusals.Count == 0 ? "" : ": " + string.Join("; ", side.Refusals)));
    }

    /// <summary>As near to the usual place as another height or a few inches make room, but not a step away.</summary>
    private bool Nearby(HeightsOnWall heights, SwitchPlace place, DeviceBox box, Opening opening)
    {
        Distance most = Distance.FromInches(24, 0, 1);
        foreach (RunCandidate candidate in heights.NearestTo(place.At))
        {
            if ((candidate.At - place.At).Abs() > most)
            {
                return false;
            }

            if (draft.TryAdd(place.Wall, box.WithAt(candidate.At).WithHeight(heights.HeightAt(candidate.At)), "near the entrance " + opening.Id + ": " + place.Reason))
            {
                return true;
            }
        }

        return false;
    }

    private Storey? StoreyOf(Room room)
    {
        foreach (Storey storey in draft.Dwelling.Storeys)
        {
            if (storey.Id == room.Storey)
            {
                return storey;
            }
        }

        return null;
    }

    private static Wall WallOf(Room room, string address)
    {
        foreach (Wall wall in room.Walls)
        {
            if (room.Id + "/" + wall.Id == address)
            {
                return wall;
            }
        }

        return room.Walls[0];
    }
}
