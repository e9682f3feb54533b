using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>The spaces that barriers divide a box into, each as a box of its own with the next of its devices, cables and conductors.</summary>
internal static class FillCompartments
{
    /// <summary>None for a box that isn't divided; else the spaces from left to right, with the room in each where it is stated, and words for which it is.</summary>
    public static IReadOnlyList<(DeviceBox Part, Volume? Volume, string Where)> Of(DeviceBox box)
    {
        if (box.Compartments.Count == 0)
        {
            return [];
        }

        List<(DeviceBox Part, Volume? Volume, string Where)> parts = [];
        (int devices, int cables, int conductors) = (0, 0, 0);
        for (int i = 0; i < box.Compartments.Count; i++)
        {
            BoxCompartment space = box.Compartments[i];
            DeviceBox part = box with
            {
                Devices = Next(box.Devices, devices, space.Devices),
                Gangs = space.Devices ?? 1,
                Connected = Next(box.Connected, devices, space.Devices),
                Cables = Next(box.Cables, cables, space.Cables),
                Conductors = Next(box.Conductors, conductors, space.Conductors),
                Fittings = default,
                Compartments = default,
            };
            parts.Add((part, space.Volume, "in compartment " + (i + 1).ToString(CultureInfo.InvariantCulture) + " from the left, "));
            devices += space.Devices ?? 0;
            cables += space.Cables ?? 0;
            conductors += space.Conductors ?? 0;
        }

        return parts;
    }

    private static Items<T> Next<T>(Items<T> all, int from, int? count)
    {
        List<T> some = [];
        for (int i = from; i < all.Count && i - from < (count ?? 0); i++)
        {
            some.Add(all[i]);
        }

        return new(some);
    }
}
