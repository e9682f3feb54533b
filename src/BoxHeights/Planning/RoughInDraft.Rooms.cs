using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>Which rooms are planned, and what of them in which order.</content>
internal sealed partial class RoughInDraft
{
    // No house has a longer one, and the boxes along it would be without number.
    private static readonly Distance LongestWall = Distance.FromFeet(300m);

    /// <summary>Plans rooms: their lights and whatever switches them first, then room by room what furniture fixes, then what fills the rest.</summary>
    /// <param name="rooms">The rooms, as they are described.</param>
    /// <param name="withOutside">Whether the outside of the dwelling is planned too.</param>
    public void Rooms(List<Room> rooms, bool withOutside)
    {
        List<Room> planned = rooms.FindAll(IsToPlan);
        SwitchesAtEntrances? habit = Options.Switches ? State.Rules.HabitOf<SwitchesAtEntrances>() : null;
        if (habit is not null)
        {
            planned.ForEach(room => Within(room, () => Lights(room, habit)));
            foreach (OutsideFace face in withOutside ? Described.Outside : default)
            {
                AddLights(face.Id, habit);
            }

            switched = new(this, habit);
            switched.Plan(planned);
        }
        else if (Options.Switches)
        {
            Note("no switches are planned at entrances: no row of the set says which, and where");
        }

        planned.ForEach(room => Within(room, () => Fill(room)));
    }

    private bool IsToPlan(Room room)
    {
        if (room.Untouched)
        {
            Note(room.Id + ": it is no part of this work");
            return false;
        }

        foreach (Wall wall in room.Walls)
        {
            if (wall.Length > LongestWall)
            {
                Obstacle(SurfaceAddress.Of(room.Id, wall.Id) + ": it is " + wall.Length.Exactly(Units) + " long; no room with a wall longer than " + BothUnits.Of(LongestWall.ToString("ft"), Units) + " is planned");
                notPlanned.Add(room.Id);
                return false;
            }
        }

        return true;
    }

    /// <summary>Plans something of a room, unless a measure in it can't be reckoned with.</summary>
    public void Within(Room room, Action plan)
    {
        if (notPlanned.Contains(room.Id))
        {
            return;
        }

        try
        {
            plan();
        }
        catch (Exception beyond) when (beyond is OverflowException or ArgumentException { InnerException: OverflowException })
        {
            notPlanned.Add(room.Id);
            Obstacle(room.Id + ": a measure in it is larger than anything in a house");
        }
    }

    /// <summary>The lights that a room lacks by the rules, then by custom.</summary>
    private void Lights(Room room, SwitchesAtEntrances habit)
    {
        AddLights(room.Id, habit);
        new UsualBoxes(this).Plan(room, habit.Lights);
        Furniture.Appliances(room, habit.Lights);
    }

    private void AddLights(string space, SwitchesAtEntrances habit) =>
        AddLacking(new List<SpaceIndex.JudgedSpace>(State.Spaces.OfSpace(space)).FindAll(one => one.Rule.Adds is { } box && box.Devices.Exists(habit.Lights.Contains)), _ => true);

    private void Fill(Room room)
    {
        Furniture.Appliances(room);
        new ApplianceSwitches(this).Plan(room);
        Furniture.Extras(room);
        new UsualBoxes(this).Plan(room);
        new RunBoxes(this).Plan(room);
        AddLacking([.. State.Spaces.OfSpace(room.Id)], _ => true);
        new CounterCircuits(this).Plan(room);
    }
}
