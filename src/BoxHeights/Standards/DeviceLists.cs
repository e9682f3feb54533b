using System.Collections.Generic;

namespace BoxHeights.Standards;

/// <summary>Families of devices that rows speak of.</summary>
internal static class DeviceLists
{
    public static Items<DeviceKind> Switches { get; } = Of(kind => kind.IsSwitch);

    public static Items<DeviceKind> Receptacles { get; } = Of(kind => kind.IsReceptacle && kind != DeviceKind.FloorReceptacle);

    /// <summary>Whatever a person operates or plugs into, but for what serves one appliance by its kind.</summary>
    public static Items<DeviceKind> Operated { get; } = Of(kind =>
        (kind.IsSwitch || kind.IsReceptacle || kind == DeviceKind.Thermostat || kind == DeviceKind.DoorbellButton)
        && kind != DeviceKind.FloorReceptacle && kind != DeviceKind.RangeReceptacle && kind != DeviceKind.DryerReceptacle);

    private static Items<DeviceKind> Of(System.Predicate<DeviceKind> which)
    {
        List<DeviceKind> found = [];
        foreach (DeviceKind kind in DeviceKind.Known)
        {
            if (which(kind))
            {
                found.Add(kind);
            }
        }

        return new(found);
    }
}
