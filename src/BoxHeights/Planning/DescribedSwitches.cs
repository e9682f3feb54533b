using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What the described switches of a room are to the plan of its others.</summary>
internal sealed class DescribedSwitches(RoughInDraft draft, Rules.SwitchesAtEntrances habit)
{
    // Of all rooms: looked through for each.
    private readonly List<DeviceBox> controlling = Controlling(draft);

    /// <summary>What is said to switch a room's lights stays as it is: another place is planned only where it is one switch that comes in pairs, as its mate.</summary>
    public void Heed(Room room, SwitchedGroup lights, List<SwitchStation> own)
    {
        List<DeviceBox> switches = controlling.FindAll(one => one.Controls.Exists(lights.Boxes.Contains));
        if (switches.Count > 0 && lights.Boxes.Exists(light => !switches.Exists(one => one.Controls.Contains(light))))
        {
            // Those that are said to be switched don't go on with the rest, which nothing that is there switches.
            lights.Boxes.RemoveAll(light => switches.Exists(one => one.Controls.Contains(light)));
            own.FindAll(station => station.IsThere).ForEach(station => station.Leave(lights));
            return;
        }

        bool lackAMate = switches.Count == 1 && habit.AtEnds is { } end && switches[0].Devices.Contains(end);
        if (lackAMate && !own.Exists(station => station.IsThere))
        {
            // Not beside any way in.
            new SwitchStation(default, "", true).Serve(lights);
        }

        if (switches.Count == 0 && lights.Boxes.Count > 0 && own.Exists(station => station.IsThere) && own.Exists(station => !station.IsThere))
        {
            TellOfTheMate(room);
        }

        if (switches.Count == 0 || lackAMate)
        {
            return;
        }

        foreach (SwitchStation station in own.FindAll(station => !station.IsThere))
        {
            station.Leave(lights);
            draft.Note(room.Id + ": " + string.Join(", ", switches.ConvertAll(one => one.Id)) + (switches.Count == 1 ? " switches" : " switch") + " its lights, as described, so that no other place is planned " + station.Where);
        }
    }

    private static List<DeviceBox> Controlling(RoughInDraft draft)
    {
        List<DeviceBox> found = [];
        for (int box = 0; !draft.IsPlanned(box) && box < draft.State.Boxes.Count; box++)
        {
            if (draft.State.Boxes[box].Source is { Controls.Count: > 0 } source)
            {
                found.Add(source);
            }
        }

        return found;
    }

    /// <summary>A switch of which nothing is said but where it is counts as one of several places: that it has to be of those that come in pairs isn't seen in the plan.</summary>
    private void TellOfTheMate(Room room)
    {
        List<DeviceBox> there = [];
        foreach (int box in draft.BoxesOf(room.Id))
        {
            DeviceBox source = draft.State.Boxes[box].Source;
            there.AddRange(!draft.IsPlanned(box) && source.Purpose == habit.Box.Purpose && source.Controls.Count == 0 ? [source] : []);
        }

        if (habit.AtEnds is { } pair && there.Count > 0 && !there.Exists(one => one.Devices.Contains(pair)))
        {
            draft.Note(room.Id + ": its lights are planned to be switched from " + string.Join(", ", there.ConvertAll(one => one.Id)) + " too, for which a " + pair + " has to be there");
        }
    }
}
