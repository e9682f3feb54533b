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

    /// <summary>How deep a box with a device is, by the conductors that this is connected to: from thin to thick, each up to its own; the last is for all that are thicker.</summary>
    public Items<DepthOnConductors> OnConductors { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (OnConductors.Count == 0)
        {
            yield return "it doesn't say how deep a box with a device is";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => "at least " + WithoutDevice + " deep; with a device never less than that, and " + string.Join(", ", OnConductors);

    /// <inheritdoc/>
    public override Wording ElseDo => $"take a deeper box";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Box.Size.Depth is { } depth && !TakesRing(site.Box))
        {
            State(site, depth, statement);
        }
    }

    private void State(PlacementSite site, Distance depth, LimitStatement statement)
    {
        (Distance least, Distance most) = Needed(site.Box);
        Func<Wording> because = () => Deepest(site) is { } device ? $"{Printed.Exactly(depth, site.Units):depth} deep with a device {Printed.Exactly(device, site.Units):device} deep" : (Wording)$"{Printed.Exactly(depth, site.Units):depth} deep";
        if (depth < least || depth >= most)
        {
            statement.Judge(depth, DistanceSet.AtLeast(depth < least ? least : most), because);
        }
        else if (BoxFill.IsCountable(site.Box.Source))
        {
            statement.DependsOn(depth, MissingFacts.Devices, because);
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
        List<DepthOnConductors> may = MayFeed(box);
        (Distance least, Distance most) = (WithoutDevice, WithoutDevice);
        for (int i = 0; i < source.Devices.Count; i++)
        {
            Distance? depth = box.DeviceDepth(i);
            if (!source.Devices[i].IsOperated && depth is null)
            {
                continue;
            }

            (Distance low, Distance high) = Among(i < source.Connected.Count && source.Connected[i] != default ? [Of(source.Connected[i])] : may, depth, box.Source.BackEntry);
            least = source.Devices[i].IsKnown || depth is not null ? Distance.Max(least, low) : least;
            most = Distance.Max(most, high);
        }

        return source.Devices.Count == 0 && FillContents.MayHoldMore(source, box.Build) ? (least, Distance.Max(most, Among(may, null, false).High)) : (least, most);
    }

    /// <summary>What a device may be connected to; all of it where nothing is said of conductors.</summary>
    private List<DepthOnConductors> MayFeed(BoxTraits box)
    {
        FillContents contents = new FillContents().Of(box.Source, box.Build, null, most: false);
        List<DepthOnConductors> may = [];
        for (int place = 1; place < ConductorSize.Count; place++)
        {
            if (contents.MayFeed(ConductorSize.At(place)))
            {
                may.Add(Of(ConductorSize.At(place)));
            }
        }

        return may.Count > 0 ? may : [.. OnConductors];
    }

    private DepthOnConductors Of(ConductorSize size)
    {
        foreach (DepthOnConductors one in OnConductors)
        {
            if (size <= one.UpTo)
            {
                return one;
            }
        }

        return OnConductors[OnConductors.Count - 1];
    }

    private static (Distance Low, Distance High) Among(List<DepthOnConductors> may, Distance? device, bool backEntry)
    {
        Distance low = may[0].For(device, backEntry);
        Distance high = low;
        foreach (DepthOnConductors one in may)
        {
            Distance needed = one.For(device, backEntry);
            (low, high) = (Distance.Min(low, needed), Distance.Max(high, needed));
        }

        return (low, high);
    }
}

/// <summary>How deep a box is whose device is connected to conductors up to a size.</summary>
[Described(nameof(UpTo), nameof(Least))]
public sealed partial record DepthOnConductors
{
    /// <summary>The thickest of them; null for all that are thicker than others in the list.</summary>
    public ConductorSize? UpTo { get; init; }

    /// <summary>How deep the box is at the least.</summary>
    public Distance Least { get; init; }

    /// <summary>A device that reaches back further than this has to have room behind it.</summary>
    public Distance DeepDevice { get; init; } = Distance.MaxValue;

    /// <summary>The room behind such a device.</summary>
    public Distance Behind { get; init; }

    /// <summary>The same where wiring enters at the center of the back; null where that is all one.</summary>
    public Distance? BehindAtBackEntry { get; init; }

    /// <summary>The depths in words.</summary>
    public override string ToString() => "on conductors " + (UpTo is { } thick ? "up to " + thick : "that are thicker") + " " + Least
        + (DeepDevice == Distance.MaxValue ? "" : " (" + Behind + " behind one deeper than " + DeepDevice + (BehindAtBackEntry is { } entry ? ", " + entry + " where wiring enters at the center of the back" : "") + ")");

    /// <summary>The depth for a device; a box holds its device in any case.</summary>
    internal Distance For(Distance? device, bool backEntry) => device is not { } depth ? Least
        : Distance.Max(Least, depth + (depth <= DeepDevice ? Distance.Zero : backEntry && BehindAtBackEntry is { } entry ? entry : Behind));
}
