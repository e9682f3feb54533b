using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Planned boxes with the cables that usually enter them, in the smallest size that the rules let hold that; without either where no rule asks.</summary>
internal sealed class WiredBoxes(RoughInDraft draft)
{
    // What is in a box and how it is built decide how large it is, wherever it goes.
    private readonly Dictionary<DeviceBox, Volume?> sizes = [];

    /// <summary>The box with its cables and its volume; as it is where none are usual, or none of its kind holds them.</summary>
    public DeviceBox Wired(string address, DeviceBox box)
    {
        Items<CableType> cables = box.Cables.Count > 0 ? box.Cables : CablesOf(address, box);
        if (box.Volume is not null || cables.Count == 0)
        {
            return box;
        }

        DeviceBox alone = box with { Id = "box", At = null, Plan = null, Height = null, Controls = default, Mounting = null, Cables = cables };
        if (!sizes.TryGetValue(alone, out Volume? size))
        {
            sizes.Add(alone, size = SizeOf(address, box with { Cables = cables }));
        }

        return size is { } volume ? box with { Cables = cables, Volume = volume } : box;
    }

    private Volume? SizeOf(string address, DeviceBox wired)
    {
        PartsCatalog catalog = draft.State.Options.Catalog;
        using (LayoutState.Probe? none = draft.State.ProbeFor(address, wired.WithVolume(Volume.FromPicoliters(1))))
        {
            // Where no rule asks how full a box is, its size is nobody's to say.
            if (none is not { IsWithinLimits: false })
            {
                return null;
            }
        }

        foreach (Volume volume in catalog.StandardVolumes(ResolvedBox.KindOf(wired, catalog), ResolvedBox.GangsOf(wired)))
        {
            using LayoutState.Probe? probe = draft.State.ProbeFor(address, wired.WithVolume(volume));
            if (probe is { IsWithinLimits: true })
            {
                return volume;
            }
        }

        return null;
    }

    private CableType[] CablesOf(string address, DeviceBox box)
    {
        RoomKind room = draft.State.SurfaceAt(address)?.RoomKind ?? default;
        List<CableType> feed = [];
        List<CableType> each = [];
        foreach (DeviceKind device in box.Devices)
        {
            foreach (UsualWiring habit in draft.State.Rules.HabitsOf<UsualWiring>())
            {
                if (habit.Devices.Contains(device) && (habit.Purposes.Count == 0 || habit.Purposes.Contains(box.Purpose)) && (habit.Rooms.Count == 0 || habit.Rooms.Contains(room)))
                {
                    feed = habit.Feed.Count > feed.Count ? [.. habit.Feed] : feed;
                    each.AddRange(habit.Each);
                    break;
                }
            }
        }

        return [.. feed, .. each];
    }
}
