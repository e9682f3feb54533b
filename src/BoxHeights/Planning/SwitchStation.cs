using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Lights, or receptacles for lamps, that go on together.</summary>
/// <param name="boxes">The ids of their boxes.</param>
internal sealed class SwitchedGroup(IEnumerable<string> boxes)
{
    /// <summary>The ids of the boxes; none where it isn't known what is switched.</summary>
    public List<string> Boxes { get; } = [.. boxes];

    /// <summary>Where they are switched from, in the order in which the wires go.</summary>
    public List<SwitchStation> From { get; } = [];

    /// <summary>The device that switches them at one of those places.</summary>
    public DeviceKind DeviceAt(SwitchStation station, SwitchesAtEntrances habit)
    {
        int place = From.IndexOf(station);
        return (From.Count == 1 ? null : place == 0 || place == From.Count - 1 ? habit.AtEnds : habit.Between) ?? habit.Box.Devices[0];
    }
}

/// <summary>A place for switches: one box, with a device for each group that it switches.</summary>
/// <param name="entrance">The way in that it is beside.</param>
/// <param name="where">Which that is, in words that go before a reason.</param>
/// <param name="isThere">Whether switches are described there, which stay as they are.</param>
internal sealed class SwitchStation(RoomOpening entrance, string where, bool isThere)
{
    /// <summary>The way in that it is beside.</summary>
    public RoomOpening Entrance => entrance;

    /// <summary>Which that is, in words.</summary>
    public string Where => where;

    /// <summary>Whether switches are described there, which stay as they are.</summary>
    public bool IsThere => isThere;

    /// <summary>What is switched from it, from left to right.</summary>
    public List<SwitchedGroup> Groups { get; } = [];

    /// <summary>Its box in the layout, once it is planned.</summary>
    public int? Box { get; set; }

    /// <summary>Has it switch a group too.</summary>
    public void Serve(SwitchedGroup group)
    {
        Groups.Add(group);
        group.From.Add(this);
    }

    /// <summary>Has it switch a group no longer.</summary>
    public void Leave(SwitchedGroup group)
    {
        Groups.Remove(group);
        group.From.Remove(this);
    }

    /// <summary>A box with what it has to hold.</summary>
    public DeviceBox Filled(DeviceBox box, SwitchesAtEntrances habit)
    {
        List<string> controls = [];
        Groups.ForEach(group => controls.AddRange(group.Boxes));
        return box with { Devices = new(Groups.ConvertAll(group => group.DeviceAt(this, habit))), Controls = new(controls) };
    }
}
