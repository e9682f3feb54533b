using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the devices of a box may be operated. Boxes that hold one kind of device share it.</summary>
[Told]
internal sealed partial class OperatedParts
{
    /// <summary>Of no device.</summary>
    public static OperatedParts None { get; } = new(null, null);

    /// <summary>Where the operated parts of all devices may end; null where a device isn't known, or none is operated.</summary>
    public OperableRange? Range { get; }

    /// <summary>Where the highest grip may be at its highest; null where no device has one that is known.</summary>
    public DistanceRange? Grip { get; }

    /// <summary>Those of a box.</summary>
    public static OperatedParts Of(DeviceBox box, PartsCatalog catalog)
    {
        OperableRange? range = OperableRange.Of(box.Devices, box.OnItsSide, catalog, out DistanceRange? grip);
        return new(range, grip);
    }
}

/// <summary>Where devices are operated, worked out once for each kind: most boxes of a house hold a few kinds, one each.</summary>
internal sealed class KnownOperatedParts(PartsCatalog catalog)
{
    private readonly Dictionary<string, OperatedParts> upright = new(StringComparer.Ordinal);
    private readonly Dictionary<string, OperatedParts> onTheirSides = new(StringComparer.Ordinal);

    /// <summary>Those of a box.</summary>
    public OperatedParts Of(DeviceBox box)
    {
        if (box.Devices.Count == 0)
        {
            return OperatedParts.None;
        }

        for (int i = 1; i < box.Devices.Count; i++)
        {
            if (box.Devices[i] != box.Devices[0])
            {
                return OperatedParts.Of(box, catalog);
            }
        }

        Dictionary<string, OperatedParts> known = box.OnItsSide ? onTheirSides : upright;
        if (!known.TryGetValue(box.Devices[0].Name, out OperatedParts? parts))
        {
            known.Add(box.Devices[0].Name, parts = OperatedParts.Of(box, catalog));
        }

        return parts;
    }
}
