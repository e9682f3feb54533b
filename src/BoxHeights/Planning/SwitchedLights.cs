using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Which lights go on together and from where: a room's own from each way in, those at an outer door beside it, those of a flight from both floors.</summary>
internal sealed class SwitchedLights(RoughInDraft draft, SwitchesAtEntrances habit)
{
    private readonly EntranceSwitches entrances = new(draft, habit);
    private readonly Dictionary<string, SwitchedGroup> ofRoom = new(StringComparer.Ordinal);
    private readonly List<SwitchStation> stations = [];

    /// <summary>Plans the switches of some rooms, whose lights are planned already.</summary>
    public void Plan(IReadOnlyList<Room> rooms)
    {
        foreach (Room room in rooms)
        {
            Enter(room);
        }

        foreach (StairFlight flight in draft.Described.Flights)
        {
            FromItsHead(flight);
        }

        stations.ForEach(Place);
        stations.ForEach(Settle);
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
        stations.AddRange(own);
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
            if (IsLight(box) && draft.State.AtOf(box) is { } light && !wall.Openings.Exists(other => EntranceSwitches.IsWayIn(other) && Off(other, light) < Off(opening, light)))
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
                station.Box = draft.State.Boxes.Length - 1;
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
            draft.State.Describe(box, filled);
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
