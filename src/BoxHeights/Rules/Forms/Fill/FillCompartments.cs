using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The spaces that barriers divide a box into, each as a box of its own with the next of its devices, cables and conductors. That it is part of a divided box still shows.</summary>
internal static class FillCompartments
{
    /// <summary>A space that takes none of the box's devices holds none for certain.</summary>
    private static readonly Items<DeviceKind> NoDevice = new[] { DeviceKind.Blank };

    /// <summary>None for a box that isn't divided; else the spaces from left to right, with the room in each where it is stated, and words for which it is.</summary>
    public static (DeviceBox Part, Volume? Volume, int Number)[] Of(DeviceBox box)
    {
        if (box.Compartments.Count == 0)
        {
            return [];
        }

        List<(DeviceBox Part, Volume? Volume, int Number)> parts = [];
        (int devices, int cables, int conductors) = (0, 0, 0);
        int free = Math.Max(0, ResolvedBox.GangsOf(box) - GangsNeeded.ByAll(box));
        for (int i = 0; i < box.Compartments.Count; i++)
        {
            BoxCompartment space = box.Compartments[i];
            int here = devices;
            int first = devices;
            Items<DeviceKind> held = Next(box.Devices, ref devices, space.Devices);
            DeviceBox part = box with
            {
                Devices = held.Count == 0 && box.Devices.Count > 0 ? NoDevice : held,
                Connected = Next(box.Connected, ref here, held.Count),
                DeviceGangs = Next(box.DeviceGangs, ref first, held.Count),
                Cables = Next(box.Cables, ref cables, space.Cables),
                Conductors = Next(box.Conductors, ref conductors, space.Conductors),
                Fittings = default,
            };

            // Which of the spaces a gang that no device is said to need belongs to isn't known.
            part = part with { Gangs = held.Count == 0 ? 1 : GangsNeeded.ByAll(part) + free };
            parts.Add((part, space.Volume, i + 1));
        }

        return parts.ToArray();
    }

    /// <summary>The next so many of a list, or as many as there are.</summary>
    private static Items<T> Next<T>(Items<T> all, ref int from, int? count)
    {
        List<T> some = [];
        while (some.Count < (count ?? 0) && from < all.Count)
        {
            some.Add(all[from++]);
        }

        return new(some);
    }
}
