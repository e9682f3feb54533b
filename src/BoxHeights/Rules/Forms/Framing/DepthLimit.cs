using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box is deep enough for its devices and the conductors that are connected to them. Silent where its depth isn't stated.</summary>
/// <remarks>
/// The depth that is known is from the opening to the back, which is never less than the room inside: a box that is too shallow by it is too shallow. Rings
/// and extensions add to it, so that boxes which take one aren't judged. How deep a device is counts where it is stated, or the catalog knows it.
/// </remarks>
[Row]
public sealed partial record DepthLimit : LimitRule
{
    /// <summary>How deep a box without a device is.</summary>
    public Distance WithoutDevice { get; init; }

    /// <summary>How deep a box is whose device is connected to 14 AWG or thinner.</summary>
    public Distance UpToAwg14 { get; init; }

    /// <summary>How deep a box is whose device is connected to 12 or 10 AWG.</summary>
    public Distance UpToAwg10 { get; init; }

    /// <summary>How deep a box is whose device is connected to 8 AWG or thicker.</summary>
    public Distance BeyondAwg10 { get; init; }

    /// <summary>A device that reaches back further than this has to have room behind it.</summary>
    public Distance DeepDevice { get; init; }

    /// <summary>The same for a device on 12 or 10 AWG.</summary>
    public Distance DeepDeviceOnAwg10 { get; init; }

    /// <summary>The room behind such a device.</summary>
    public Distance Behind { get; init; }

    /// <summary>The room behind one on 12 or 10 AWG where wiring enters at the center of the back.</summary>
    public Distance BehindAtBackEntry { get; init; }

    /// <inheritdoc/>
    public override string Numbers =>
        "at least " + WithoutDevice + " deep; with a device on 14 AWG or thinner " + UpToAwg14 + ", on 12 or 10 AWG " + UpToAwg10 + ", on thicker ones " + BeyondAwg10
        + ", and never less than the device; " + Behind + " behind one deeper than " + DeepDevice + ", or than " + DeepDeviceOnAwg10 + " on 12 or 10 AWG, there " + BehindAtBackEntry + " where wiring enters at the center of the back";

    /// <inheritdoc/>
    public override string ElseDo => "take a deeper box";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Box.Size.Depth is not { } depth || TakesRing(site.Box))
        {
            return;
        }

        (Distance least, Distance most) = Needed(site.Box);
        Func<Wording> because = () => Deepest(site) is { } device ? $"{Printed.Exactly(depth, site.Units):depth} deep with a device {Printed.Exactly(device, site.Units):device} deep" : (Wording)$"{Printed.Exactly(depth, site.Units):depth} deep";
        if (depth < least || depth >= most)
        {
            statement.Judge(depth, DistanceSet.AtLeast(depth < least ? least : most), because);
        }
        else if (BoxFill.IsCountable(site.Box.Source))
        {
            statement.DependsOn(depth, Facts.Devices, because);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog)
    {
        Distance needed = Needed(box).Most;
        if (catalog.TryFindVolumes(box.Kind, box.Gangs, out VolumesPart? sold))
        {
            for (int i = 0; i < sold.Depths.Count; i++)
            {
                if (sold.Depths[i] >= needed && (box.Volume is not { } now || sold.Volumes[i] >= now))
                {
                    BoxSize deeper = new BoxSize(box.Size.Width, box.Size.Height, sold.Depths[i]).Ranging(box.Size.WidthRange, box.Size.HeightRange);
                    yield return box.Source.WithSize(deeper).WithVolume(sold.Volumes[i]);
                }
            }
        }
    }

    private static bool TakesRing(BoxTraits box) => box.Source.Extension is not null || box.Build.TakesRing;

    private static Distance? Deepest(PlacementSite site)
    {
        Distance? deepest = null;
        for (int i = 0; i < site.Box.Devices.Count; i++)
        {
            deepest = site.Box.DeviceDepth(i) is { } depth && !(deepest > depth) ? depth : deepest;
        }

        return deepest;
    }

    /// <summary>How deep the box has to be at the least and at the most of what isn't stated: the device that asks for the most decides.</summary>
    private (Distance Least, Distance Most) Needed(BoxTraits box)
    {
        DeviceBox source = box.Source;
        List<ConductorSize> may = MayFeed(box);
        (Distance least, Distance most) = (WithoutDevice, WithoutDevice);
        for (int i = 0; i < source.Devices.Count; i++)
        {
            Distance? depth = box.DeviceDepth(i);
            if (!source.Devices[i].IsOperated && depth is null)
            {
                continue;
            }

            (Distance low, Distance high) = Among(i < source.Connected.Count && source.Connected[i] != default ? [source.Connected[i]] : may, depth, box.Source.BackEntry);
            least = source.Devices[i].IsKnown || depth is not null ? Distance.Max(least, low) : least;
            most = Distance.Max(most, high);
        }

        return source.Devices.Count == 0 && FillContents.MayHoldMore(source, box.Build) ? (least, Distance.Max(most, Among(may, null, false).High)) : (least, most);
    }

    /// <summary>The sizes that a device may be connected to; one of each class where nothing is said of conductors.</summary>
    private static List<ConductorSize> MayFeed(BoxTraits box)
    {
        FillContents contents = new(box.Source, box.Build, false, false);
        List<ConductorSize> sizes = [];
        for (int awg = ConductorSize.Awg6.Awg; awg <= ConductorSize.Awg18.Awg; awg++)
        {
            if (contents.MayFeed(awg))
            {
                sizes.Add(ConductorSize.FromAwg(awg));
            }
        }

        return sizes.Count > 0 ? sizes : [ConductorSize.Awg14, ConductorSize.Awg10, ConductorSize.Awg6];
    }

    private (Distance Low, Distance High) Among(List<ConductorSize> sizes, Distance? device, bool backEntry)
    {
        Distance low = For(sizes[0], device, backEntry);
        Distance high = low;
        for (int i = 1; i < sizes.Count; i++)
        {
            Distance one = For(sizes[i], device, backEntry);
            (low, high) = (Distance.Min(low, one), Distance.Max(high, one));
        }

        return (low, high);
    }

    private Distance For(ConductorSize size, Distance? device, bool backEntry)
    {
        bool isThin = size <= ConductorSize.Awg14;
        bool isMedium = !isThin && size <= ConductorSize.Awg10;
        Distance least = isThin ? UpToAwg14 : isMedium ? UpToAwg10 : BeyondAwg10;
        if (device is not { } depth)
        {
            return least;
        }

        // A box holds its device in any case.
        Distance behind = depth <= (isMedium ? DeepDeviceOnAwg10 : DeepDevice) ? Distance.Zero : isMedium && backEntry ? BehindAtBackEntry : Behind;
        return Distance.Max(least, depth + behind);
    }
}
