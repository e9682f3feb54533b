using System;

namespace BoxHeights;

/// <summary>How many gangs the devices of a box need to be mounted: as stated, else as their kinds tell.</summary>
internal static class GangsNeeded
{
    /// <summary>What one device needs at the least.</summary>
    /// <param name="box">The box.</param>
    /// <param name="device">Its place among the box's devices.</param>
    public static int By(DeviceBox box, int device) => IsStated(box, device) ? box.DeviceGangs[device] : box.Devices[device].Gangs;

    /// <summary>Whether it is stated how many gangs one device needs.</summary>
    public static bool IsStated(DeviceBox box, int device) => device < box.DeviceGangs.Count;

    /// <summary>What all of them need side by side.</summary>
    public static int ByAll(DeviceBox box) => Sum(box, _ => true);

    /// <summary>What is wrong where they need more gangs than the box has, or its gangs stand further apart than it is wide; null where they fit. Jacks may share a plate, and covers, lights and alarms need no gang.</summary>
    public static Wording? Misfit(DeviceBox box, PartsCatalog catalog, LengthUnits units = LengthUnits.Inches)
    {
        int needed = Sum(box, device => device.IsOperated && device != DeviceKind.DataJack && device != DeviceKind.TvJack);
        int gangs = box.Gangs ?? needed;
        if (needed > gangs)
        {
            return $"it has {Count(gangs):gangs}, but its devices ({Wording.Listed(box.Devices.Select(device => Wording.Term(device.Name))):devices}) need {needed}: which is meant? Devices that share a strap are one device, of a kind of your own";
        }

        if (Miscounted(box) is { } told)
        {
            return told;
        }

        Distance apart = LeastWidth(box, gangs, catalog);
        return box.Size is not { IsStated: true } size || (box.OnItsSide ? size.HeightRange : size.WidthRange).To is var wide && wide >= apart ? null
            : box.OnItsSide ? $"it is {Printed.Exactly(wide, units):size} high, but the outer ones of {Count(gangs):gangs} stand {Printed.Exactly(apart, units):apart} apart: which is meant?"
            : (Wording)$"it is {Printed.Exactly(wide, units):size} wide, but the outer ones of {Count(gangs):gangs} stand {Printed.Exactly(apart, units):apart} apart: which is meant?";
    }

    /// <summary>What is said of each device in their order is said of no more than there are.</summary>
    private static Wording? Miscounted(DeviceBox box)
    {
        int devices = box.Devices.Count;
        return devices == 0 ? null
            : box.DeviceGangs.Count > devices ? $"it states the gangs of {box.DeviceGangs.Count:count} devices, but has {devices}"
            : box.DeviceDepths.Count > devices ? $"it states the depths of {box.DeviceDepths.Count:count} devices, but has {devices}"
            : box.Connected.Count > devices ? (Wording)$"it states what is connected to {box.Connected.Count:count} devices, but has {devices}"
            : null;
    }

    /// <summary>From the middle of the first of so many gangs to that of the last: no box for them is narrower.</summary>
    public static Distance LeastWidth(DeviceBox box, int gangs, PartsCatalog catalog) => (catalog.BuildOf(ResolvedBox.KindOf(box, catalog)).GangPitch ?? catalog.GangPitch) * Math.Max(0, gangs - 1);

    private static Wording Count(int gangs) => gangs == 1 ? $"1 gang" : (Wording)$"{gangs} gangs";

    private static int Sum(DeviceBox box, Func<DeviceKind, bool> counts)
    {
        int sum = 0;
        for (int i = 0; i < box.Devices.Count; i++)
        {
            sum += counts(box.Devices[i]) ? By(box, i) : 0;
        }

        return sum;
    }
}
