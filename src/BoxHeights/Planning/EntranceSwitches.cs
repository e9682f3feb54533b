using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>From which ways into a room its lights are switched: one switch to a way, on the side that the trade takes; a closet's outside, in the room that its door opens from.</summary>
internal sealed class EntranceSwitches(RoughInDraft draft, SwitchesAtEntrances habit)
{
    private readonly WaysIn ways = new(draft.Doors, habit);
    private readonly Dictionary<string, (RoomOpening Entrance, SwitchSide Side)> usualSides = new(System.StringComparer.Ordinal);

    /// <summary>The switches of a room, with its lights: none where what is described keeps them from being planned.</summary>
    /// <param name="room">The room.</param>
    /// <param name="lights">What goes on together in it.</param>
    public List<SwitchStation> Of(Room room, SwitchedGroup lights)
    {
        bool isCloset = SwitchSide.IsSetOutside(room.Kind);
        List<RoomOpening> entrances = isCloset ? WaysIn.ToACloset(room) : ways.To(room);
        if (entrances.Count > 0 && HasLostSwitch(room))
        {
            draft.Note(room.Id + ": a switch is described whose place along its wall isn't stated, so that none is planned");
            return [];
        }

        if (!isCloset)
        {
            entrances = NearWays.WithoutThose(room, ServingAll(entrances), habit);
            entrances.AddRange(ways.AtTheFarEnd(room, entrances) is { } last ? [last] : []);
        }

        List<SwitchStation> found = [];
        foreach (RoomOpening entrance in entrances)
        {
            if (!isCloset)
            {
                found.Add(new(entrance, entrance.IsOpenSide ? "where its side " + entrance.Wall.Id + " is open" : "at the entrance " + entrance.Opening.Id, GangsNear(entrance, out _) > 0));
            }
            else if (draft.Doors.OtherSide(entrance) is { } beyond && !SwitchSide.IsSetOutside(beyond.Room.Kind))
            {
                found.Add(new(beyond, "at the door " + beyond.Opening.Id + " of " + room.Id + ", outside it", IsThereOutside(beyond)));
            }
            else
            {
                draft.Note(SurfaceAddress.Of(entrance.Address, entrance.Opening.Id) + ": the switch of a " + room.Kind + " goes outside, beside its door; "
                    + (draft.Doors.OtherSide(entrance) is { } other ? "beyond that is a " + other.Room.Kind + ", whose own goes outside too" : "which wall of which room that is isn't described (backOf)") + ", so that none is planned");
            }
        }

        found.ForEach(station => station.Serve(lights));
        return found;
    }

    /// <summary>Puts a station's box on its wall.</summary>
    /// <param name="station">The station.</param>
    /// <param name="box">The box, with its devices and what they control.</param>
    /// <returns>Whether there was a place for it.</returns>
    public bool TryPlace(SwitchStation station, DeviceBox box)
    {
        SwitchSide side = SideOf(station.Entrance, box);
        return TryPlace(station, box, side, false) || TryPlace(station, box, side, true);
    }

    private bool TryPlace(SwitchStation station, DeviceBox box, SwitchSide side, bool isNeeded)
    {
        string switches = box.Controls.Count == 0 ? "" : ", for " + box.Controls;
        foreach (SwitchPlace place in side.Places)
        {
            BoxHeight? height = HeightsOnWall.Wanted(draft, place.Wall, box);
            if (draft.TryAdd(place.Wall, box.WithAt(place.At).WithHeight(height), station.Where + ": " + place.Reason + switches, need: isNeeded ? Need.OfLooks : Need.None)
                || (draft.State.SurfaceAt(place.Wall) is { } surface && HeightsOnWall.Of(draft, place.Wall, surface.Length, box, true) is { } heights && TryNear(heights, place, box, "near, " + station.Where, switches, isNeeded)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Tells that a station has no place.</summary>
    public void Refuse(SwitchStation station, DeviceBox box)
    {
        SwitchSide side = SideOf(station.Entrance, box);
        string what = SurfaceAddress.Of(station.Entrance.Address, station.Entrance.Opening.Id) + ": no place for its switch" + (side.Refusals.Count == 0 ? "" : ": " + string.Join("; ", side.Refusals));
        if (station.Entrance.IsOpenSide)
        {
            draft.Note(what);
        }
        else
        {
            draft.Obstacle(what);
        }
    }

    /// <summary>One switch beside a closet's door may be the room's own: then the closet lacks a second.</summary>
    private bool IsThereOutside(RoomOpening door)
    {
        int gangs = GangsNear(door, out HashSet<int> near);
        foreach (RoomOpening entrance in ways.To(door.Room))
        {
            GangsNear(entrance, out HashSet<int> own);
            if (near.Overlaps(own))
            {
                gangs--;
                break;
            }
        }

        return gangs > 0;
    }

    /// <summary>As few of a room's ways in as have a switch within reach of each: two that are side by side share one, which goes where it serves more of them.</summary>
    private List<RoomOpening> ServingAll(List<RoomOpening> entrances)
    {
        List<SwitchSide> sides = entrances.ConvertAll(UsualSideOf);
        List<HashSet<int>> servedFrom = sides.ConvertAll(side => Served(side, sides, entrances));
        List<int> kept = [];
        for (int i = 0; i < entrances.Count; i++)
        {
            kept.Add(i);
        }

        List<int> inTurn = [.. kept];
        inTurn.Sort((a, b) => servedFrom[a].Count != servedFrom[b].Count ? servedFrom[a].Count.CompareTo(servedFrom[b].Count) : b.CompareTo(a));
        foreach (int one in inTurn)
        {
            HashSet<int> without = [];
            kept.ForEach(other => without.UnionWith(other == one ? [] : servedFrom[other]));
            if (without.IsSupersetOf(servedFrom[one]))
            {
                kept.Remove(one);
            }
        }

        return kept.ConvertAll(one => entrances[one]);
    }

    /// <summary>Which ways in a switch at the usual place of one of them serves; itself at the least.</summary>
    private HashSet<int> Served(SwitchSide side, List<SwitchSide> sides, List<RoomOpening> entrances)
    {
        HashSet<int> served = [];
        for (int i = 0; i < sides.Count; i++)
        {
            if (sides[i] == side || (side.Places.Count > 0 && IsNear(entrances[i], sides[i], SurfaceAddress.Read(side.Places[0].Wall).Surface!, side.Places[0].At)))
            {
                served.Add(i);
            }
        }

        return served;
    }

    /// <summary>As near to the usual place as another height or a few inches make room, but not a step away.</summary>
    private bool TryNear(HeightsOnWall heights, SwitchPlace place, DeviceBox box, string where, string switches, bool isNeeded)
    {
        foreach (PlaceOnWall near in heights.NearestTo(place.At))
        {
            if ((near.At - place.At).Abs() > habit.WithinReach)
            {
                return false;
            }

            if (draft.TryAdd(place.Wall, box.WithAt(near.At).WithHeight(near.Height), where + ": " + place.Where + switches, need: isNeeded ? Need.OfLooks : Need.None))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How many devices the switches that were described near an entrance hold, and which boxes these are.</summary>
    private int GangsNear(RoomOpening entrance, out HashSet<int> near)
    {
        near = [];
        int gangs = 0;
        SwitchSide side = UsualSideOf(entrance);
        foreach (Wall wall in entrance.Room.Walls)
        {
            foreach (int there in SwitchesOn(SurfaceAddress.Of(entrance.Room.Id, wall.Id)))
            {
                if (draft.State.AtOf(there) is { } at && IsNear(entrance, side, wall.Id, at))
                {
                    near.Add(there);
                    gangs += ResolvedBox.GangsOf(draft.State.Boxes[there].Source);
                }
            }
        }

        return gangs;
    }

    private bool IsNear(RoomOpening entrance, SwitchSide side, string wall, Distance at)
    {
        foreach (SwitchPlace place in side.Places)
        {
            if (place.Wall == SurfaceAddress.Of(entrance.Room.Id, wall) && (place.At - at).Abs() <= habit.WithinReach)
            {
                return true;
            }
        }

        // However it is set, one beside the opening serves it, and so does one just round the corner.
        Distance beforeIt = entrance.Opening.Left;
        Distance afterIt = entrance.Wall.Length - entrance.Opening.Right;
        return wall == entrance.Wall.Id
            ? Distance.Max(entrance.Opening.Left - at, at - entrance.Opening.Right) <= habit.WithinReach
            : (Next(entrance, WallEnd.Left) is { } left && left.Id == wall && beforeIt + left.Length - at <= habit.WithinReach)
                || (Next(entrance, WallEnd.Right) is { } right && right.Id == wall && afterIt + at <= habit.WithinReach);
    }

    private static Wall? Next(RoomOpening entrance, WallEnd end)
    {
        int index = 0;
        while (entrance.Room.Walls[index].Id != entrance.Wall.Id)
        {
            index++;
        }

        return DoorCover.Neighbor(entrance.Room.Walls, index, end) is { } next ? entrance.Room.Walls[next] : null;
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

    /// <summary>The side for the usual box: asked of an entrance by itself, and beside others.</summary>
    private SwitchSide UsualSideOf(RoomOpening entrance)
    {
        string address = SurfaceAddress.Of(entrance.Address, entrance.Opening.Id);

        // Two may go by one id: a fault, which a plan goes on with.
        if (!usualSides.TryGetValue(address, out (RoomOpening Entrance, SwitchSide Side) known) || known.Entrance != entrance)
        {
            usualSides[address] = known = (entrance, SideOf(entrance, habit.Box));
        }

        return known.Side;
    }

    private SwitchSide SideOf(RoomOpening entrance, DeviceBox box) =>
        SwitchSide.InPlan(entrance, box, draft.State.Options.Catalog, draft.State.SurfaceAt(entrance.Address)?.Space.Storey, habit, draft.Units);
}
