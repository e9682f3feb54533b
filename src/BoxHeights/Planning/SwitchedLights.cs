using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Which lights go on together and from where: a room's own from each way in, those at an outer door beside it, those of a flight from both floors.</summary>
internal sealed class SwitchedLights(RoughInDraft draft, SwitchesAtEntrances habit)
{
    private readonly EntranceSwitches entrances = new(draft, habit);
    private readonly DescribedSwitches described = new(draft, habit);
    private readonly Dictionary<string, SwitchedGroup> ofRoom = new(StringComparer.Ordinal);
    private readonly List<SwitchStation> stations = [];

    /// <summary>Plans the switches of some rooms, whose lights are planned already.</summary>
    public void Plan(IReadOnlyList<Room> rooms)
    {
        foreach (Room room in rooms)
        {
            draft.Within(room, () => Enter(room));
        }

        // Where some are lit, a switch is no good in those that aren't.
        if (stations.Exists(station => station.Groups.Exists(group => group.Boxes.Count > 0)))
        {
            stations.ForEach(LeaveTheDark);
        }

        foreach (StairFlight flight in draft.Described.Flights)
        {
            FromItsHead(flight);
        }

        stations.ForEach(station => draft.Within(station.Entrance.Room, () => Place(station)));
        stations.ForEach(Settle);
    }

    /// <summary>Has the planned switches that other rules asked for switch something: those beside a bed the light there, those at a flight what lights it, any other its room.</summary>
    public void Adopt()
    {
        List<SwitchStation> adopted = [];
        for (int box = 0; box < draft.State.Boxes.Count; box++)
        {
            DeviceBox source = draft.State.Boxes[box].Source;
            if (draft.IsPlanned(box) && source.Controls.Count == 0 && source.Devices.Exists(device => device.IsSwitch) && For(box) is { } group)
            {
                SwitchStation station = new(default, "", false) { Box = box };
                station.Serve(group);
                adopted.Add(station);
            }
        }

        adopted.ForEach(Settle);
        stations.ForEach(Settle);
    }

    private SwitchedGroup? For(int box)
    {
        ResolvedSurface surface = draft.State.Boxes[box].Surface;
        Distance? at = draft.State.AtOf(box);
        int? nearest = null;
        foreach (int light in draft.State.BoxesOn(surface))
        {
            if (IsLight(light) && draft.IsPlanned(light) && !stations.Exists(station => station.Groups.Exists(group => group.Boxes.Contains(draft.State.Boxes[light].Source.Id)))
                && (nearest is not { } other || (draft.State.AtOf(light) - at)?.Abs() < (draft.State.AtOf(other) - at)?.Abs()))
            {
                nearest = light;
            }
        }

        SwitchedGroup? own = ofRoom.TryGetValue(surface.Space.Id, out SwitchedGroup? lights) && lights.Boxes.Count > 0 ? lights : null;
        return nearest is { } found ? new([draft.State.Boxes[found].Source.Id])
            : own is { From.Count: 0 } ? own
            : OfFlight(surface.Space.Id) ?? own;
    }

    /// <summary>What lights a flight that starts or ends in a room.</summary>
    private SwitchedGroup? OfFlight(string room)
    {
        foreach (StairFlight flight in draft.Described.Flights)
        {
            List<Room> foot = StairGeometry.RoomsAt(draft.Described, flight, flight.From);
            if (StairGeometry.RoomsAt(draft.Described, flight, flight.To).Exists(one => one.Id == room) || foot.Exists(one => one.Id == room))
            {
                foreach (Room one in foot)
                {
                    if (ofRoom.TryGetValue(one.Id, out SwitchedGroup? lights) && lights.Boxes.Count > 0)
                    {
                        return lights;
                    }
                }
            }
        }

        return null;
    }

    /// <summary>A room's lights together, but for those that have a switch of their own beside the first way in.</summary>
    private void Enter(Room room)
    {
        List<string> together = [];
        List<string> alone = [];
        foreach (int box in LightsIn(room.Id))
        {
            DeviceBox source = draft.State.Boxes[box].Source;
            (habit.Alone.Contains(source.Purpose) ? alone : together).Add(source.Id);
        }

        SwitchedGroup lights = new(together);
        List<SwitchStation> own = entrances.Of(room, lights);
        ofRoom[room.Id] = lights;
        described.Heed(room, lights, own);
        if (own.Count > 0 && alone.Count > 0)
        {
            own[0].Serve(new(alone));
        }

        foreach (SwitchStation station in own)
        {
            if (Outside(station.Entrance) is { Count: > 0 } outside)
            {
                station.Serve(new(outside));
            }
        }

        stations.AddRange(own.FindAll(station => station.IsThere || station.Groups.Count > 0));
    }

    /// <summary>The lights on the outer side of an entrance: those to which none in their wall is nearer.</summary>
    private List<string> Outside(RoomOpening entrance)
    {
        List<string> found = [];
        if (draft.Doors.Outside(entrance) is not ({ Wall: { } wall } face, var opening))
        {
            return found;
        }

        foreach (int box in draft.State.BoxesOn(face))
        {
            if (IsLight(box) && draft.State.AtOf(box) is { } light && !wall.Openings.Exists(other => WaysIn.IsWayIn(other) && Off(other, light) < Off(opening, light)))
            {
                found.Add(draft.State.Boxes[box].Source.Id);
            }
        }

        return found;

        static Distance Off(Opening one, Distance at) => Distance.Max(Distance.Max(one.Left - at, at - one.Right), Distance.Zero);
    }

    /// <summary>The light at the foot of a flight is switched from its head too, beside the first switch of the room where it arrives.</summary>
    private void FromItsHead(StairFlight flight)
    {
        foreach (Room foot in StairGeometry.RoomsAt(draft.Described, flight, flight.From))
        {
            if (!ofRoom.TryGetValue(foot.Id, out SwitchedGroup? lights) || lights.Boxes.Count == 0)
            {
                continue;
            }

            foreach (Room head in StairGeometry.RoomsAt(draft.Described, flight, flight.To))
            {
                if (stations.Find(station => station.Entrance.Room.Id == head.Id && !station.IsThere) is { } first && !first.Groups.Contains(lights))
                {
                    first.Serve(lights);
                    return;
                }
            }
        }
    }

    private void LeaveTheDark(SwitchStation station)
    {
        foreach (SwitchedGroup group in station.IsThere ? [] : station.Groups.FindAll(group => group.Boxes.Count == 0))
        {
            station.Leave(group);
        }

        if (!station.IsThere && station.Groups.Count == 0)
        {
            draft.Note(station.Entrance.Room.Id + ": no light is planned for a switch " + station.Where + ", so that none is either");
        }
    }

    /// <summary>Puts a station's box on its wall; what there is no room for goes to another of the room's.</summary>
    private void Place(SwitchStation station)
    {
        if (station.IsThere)
        {
            return;
        }

        List<SwitchedGroup> left = [];
        while (station.Groups.Count > 0)
        {
            if (entrances.TryPlace(station, station.Filled(habit.Box, habit)))
            {
                station.Box = draft.State.Boxes.Count - 1;
                break;
            }

            if (station.Groups.Count == 1)
            {
                entrances.Refuse(station, station.Filled(habit.Box, habit));
            }

            SwitchedGroup last = station.Groups[station.Groups.Count - 1];
            station.Leave(last);
            left.Add(last);
        }

        foreach (SwitchedGroup group in left)
        {
            if (group.From.Count == 0 && stations.Find(other => other.Entrance.Room.Id == station.Entrance.Room.Id && !other.IsThere && other.Box is null && other.Groups.Count > 0) is { } next)
            {
                next.Serve(group);
            }
        }
    }

    /// <summary>Where another place of a group came to nothing, the devices at the rest are others.</summary>
    private void Settle(SwitchStation station)
    {
        if (station.Box is { } box && draft.State.Boxes[box].Source is var source && station.Filled(source, habit) is var filled && filled != source)
        {
            draft.State.Describe(box, filled.Devices == source.Devices ? filled : draft.Rewired(box, filled));
            draft.State.Spaces.SetStale(box);
        }
    }

    private IEnumerable<int> LightsIn(string room)
    {
        foreach (int box in draft.BoxesOf(room))
        {
            if (IsLight(box) || draft.State.Boxes[box].Source.Switched is not (null or SwitchedPart.None))
            {
                yield return box;
            }
        }
    }

    private bool IsLight(int box) => draft.State.Boxes[box].Source.Devices.Exists(habit.Lights.Contains);
}
