using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A switch at each entrance of a room that lacks one, on the side that the trade takes; a closet's outside, in the room that its door opens from.</summary>
internal sealed class EntranceSwitches(RoughInDraft draft, SwitchesAtEntrances habit)
{
    private static readonly Items<OpeningKind> Entrances = new[]
    {
        OpeningKind.Door, OpeningKind.DoubleDoor, OpeningKind.PocketDoor, OpeningKind.BarnDoor, OpeningKind.SlidingDoor, OpeningKind.Cased,
    };

    // A closet that is too shallow to be walked into has these.
    private static readonly Items<OpeningKind> ClosetDoors = Entrances.With(OpeningKind.BifoldDoor).With(OpeningKind.BypassDoor);

    /// <summary>Plans those of a room.</summary>
    public void Plan(Room room)
    {
        bool isCloset = SwitchSide.IsSetOutside(room.Kind);
        List<RoomOpening> entrances = isCloset ? Of(room, ClosetDoors) : Own(room);
        if (entrances.Count > 0 && HasLostSwitch(room))
        {
            draft.Note(room.Id + ": a switch is described whose place along its wall isn't stated, so that none is planned");
            return;
        }

        for (int i = 0; i < entrances.Count; i++)
        {
            RoomOpening entrance = entrances[i];
            RoomOpening? outside = isCloset ? draft.Doors.OtherSide(entrance) : null;
            if (!isCloset)
            {
                DeviceBox box = Switch(entrances.Count == 1 ? null : i == 0 || i == entrances.Count - 1 ? habit.AtEnds : habit.Between);
                At(entrance, box, GangsNear(entrance, box, out _) > 0, "the entrance " + entrance.Opening.Id);
            }
            else if (outside is { } beyond && !SwitchSide.IsSetOutside(beyond.Room.Kind))
            {
                Outside(room, beyond);
            }
            else
            {
                draft.Note(SurfaceAddress.Of(entrance.Address, entrance.Opening.Id) + ": the switch of a " + room.Kind + " goes outside, beside its door; "
                    + (outside is { } other ? "beyond that is a " + other.Room.Kind + ", whose own goes outside too" : "which wall of which room that is isn't described (backOf)") + ", so that none is planned");
            }
        }
    }

    /// <summary>One switch beside a closet's door may be the room's own: then the closet lacks a second.</summary>
    private void Outside(Room closet, RoomOpening door)
    {
        DeviceBox box = habit.Box;
        int gangs = GangsNear(door, box, out HashSet<int> near);
        foreach (RoomOpening entrance in Own(door.Room))
        {
            GangsNear(entrance, box, out HashSet<int> own);
            if (near.Overlaps(own))
            {
                gangs--;
                break;
            }
        }

        At(door, box, gangs > 0, "the door " + door.Opening.Id + " of " + closet.Id + ", outside it");
    }

    private void At(RoomOpening entrance, DeviceBox box, bool isThere, string where)
    {
        if (isThere)
        {
            return;
        }

        SwitchSide side = SideOf(entrance, box);
        foreach (SwitchPlace place in side.Places)
        {
            BoxHeight? height = HeightsOnWall.Wanted(draft, place.Wall, box);
            if (draft.TryAdd(place.Wall, box.WithAt(place.At).WithHeight(height), "at " + where + ": " + place.Reason)
                || (draft.State.SurfaceAt(place.Wall) is { } surface && HeightsOnWall.Of(draft, place.Wall, surface.Length, box, true) is { } heights && Nearby(heights, place, box, "near " + where)))
            {
                return;
            }
        }

        draft.Obstacle(SurfaceAddress.Of(entrance.Address, entrance.Opening.Id) + ": no place for its switch" + (side.Refusals.Count == 0 ? "" : ": " + string.Join("; ", side.Refusals)));
    }

    /// <summary>As near to the usual place as another height or a few inches make room, but not a step away.</summary>
    private bool Nearby(HeightsOnWall heights, SwitchPlace place, DeviceBox box, string where)
    {
        foreach (RunCandidate candidate in heights.NearestTo(place.At))
        {
            if ((candidate.At - place.At).Abs() > habit.WithinReach)
            {
                return false;
            }

            if (draft.TryAdd(place.Wall, box.WithAt(candidate.At).WithHeight(heights.HeightAt(candidate.At)), where + ": " + place.Reason))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How many devices the switches that were described near an entrance hold, and which boxes these are.</summary>
    private int GangsNear(RoomOpening entrance, DeviceBox box, out HashSet<int> near)
    {
        near = [];
        int gangs = 0;
        SwitchSide side = SideOf(entrance, box);
        foreach (Wall wall in entrance.Room.Walls)
        {
            foreach (int there in SwitchesOn(SurfaceAddress.Of(entrance.Room.Id, wall.Id)))
            {
                if (draft.State.AtOf(there) is { } at && IsNear(entrance, side, wall, at))
                {
                    near.Add(there);
                    gangs += ResolvedBox.GangsOf(draft.State.Boxes[there].Source);
                }
            }
        }

        return gangs;
    }

    private bool IsNear(RoomOpening entrance, SwitchSide side, Wall wall, Distance at)
    {
        foreach (SwitchPlace place in side.Places)
        {
            if (place.Wall == SurfaceAddress.Of(entrance.Room.Id, wall.Id) && (place.At - at).Abs() <= habit.WithinReach)
            {
                return true;
            }
        }

        // However it is set, one beside the opening serves it, and so does one just round the corner.
        Distance beforeIt = entrance.Opening.Left;
        Distance afterIt = entrance.Wall.Length - entrance.Opening.Right;
        return wall.Id == entrance.Wall.Id
            ? Distance.Max(entrance.Opening.Left - at, at - entrance.Opening.Right) <= habit.WithinReach
            : (IsNext(entrance, WallEnd.Left, wall) && beforeIt + wall.Length - at <= habit.WithinReach) || (IsNext(entrance, WallEnd.Right, wall) && afterIt + at <= habit.WithinReach);
    }

    private static bool IsNext(RoomOpening entrance, WallEnd end, Wall wall)
    {
        int index = 0;
        while (entrance.Room.Walls[index].Id != entrance.Wall.Id)
        {
            index++;
        }

        return DoorCover.Neighbor(entrance.Room.Walls, index, end) is { } next && entrance.Room.Walls[next].Id == wall.Id;
    }

    private bool HasLostSwitch(Room room)
    {
        foreach (Wall wall in room.Walls)
        {
            foreach (int there in SwitchesOn(SurfaceAddress.Of(room.Id, wall.Id)))
            {
                if (draft.State.AtOf(there) is null)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The switches of a wall that were described: each entrance is planned as if no other had been.</summary>
    private IEnumerable<int> SwitchesOn(string address)
    {
        foreach (int box in draft.State.SurfaceAt(address) is { } surface ? draft.State.BoxesOn(surface) : [])
        {
            if (!draft.IsPlanned(box) && draft.State.Boxes[box].Source.Purpose == habit.Box.Purpose)
            {
                yield return box;
            }
        }
    }

    /// <summary>The ways into a room: a closet's door isn't one, nor one from a room that one only gets to through it. Where there are no others, the first and the last of those.</summary>
    private List<RoomOpening> Own(Room room)
    {
        List<RoomOpening> doors = Of(room, Entrances).FindAll(one => draft.Doors.OtherSide(one) is not { } other || !SwitchSide.IsSetOutside(other.Room.Kind));
        List<RoomOpening> ways = doors.FindAll(one => draft.Doors.OtherSide(one) is not { } other || Privacy(other.Room.Kind) <= Privacy(room.Kind));
        return ways.Count > 0 ? ways : doors.Count < 3 ? doors : [doors[0], doors[doors.Count - 1]];
    }

    private int Privacy(RoomKind kind)
    {
        int rank = habit.Inward.Count - 1;
        while (rank >= 0 && habit.Inward[rank] != kind)
        {
            rank--;
        }

        return rank;
    }

    private static List<RoomOpening> Of(Room room, Items<OpeningKind> kinds)
    {
        List<RoomOpening> found = [];
        foreach (Wall wall in room.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (kinds.Contains(opening.Kind) && opening.Left < opening.Right && opening.Right <= wall.Length)
                {
                    found.Add(new(room, wall, opening));
                }
            }
        }

        return found;
    }

    private SwitchSide SideOf(RoomOpening entrance, DeviceBox box) =>
        SwitchSide.For(entrance.Room, entrance.Wall.Id, entrance.Opening.Id, box, draft.State.Options.Catalog, draft.State.SurfaceAt(entrance.Address)?.Space.Storey, habit, draft.Units);

    private DeviceBox Switch(DeviceKind? device) => device is { } kind ? habit.Box.WithDevices(new[] { kind }) : habit.Box;
}
