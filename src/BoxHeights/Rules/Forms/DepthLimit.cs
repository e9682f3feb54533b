using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box is deep enough for its device and the conductors that are connected to it. Silent where its depth isn't known.</summary>
/// <remarks>
/// The depth that is known is from the opening to the back, which is never less than the room inside: a box that is too shallow by it is too shallow. Rings
/// and extensions add to it, so that boxes which take one aren't judged. How deep a device itself is isn't known here.
/// </remarks>
public sealed record DepthLimit : LimitRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    public DepthLimit(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>How deep a box without a device is.</summary>
    public Distance WithoutDevice { get; init; }

    /// <summary>How deep a box is whose device is connected to 14 AWG or thinner.</summary>
    public Distance UpToAwg14 { get; init; }

    /// <summary>How deep a box is whose device is connected to 12 or 10 AWG.</summary>
    public Distance UpToAwg10 { get; init; }

    /// <summary>How deep a box is whose device is connected to 8 AWG or thicker.</summary>
    public Distance BeyondAwg10 { get; init; }

    /// <inheritdoc/>
    public override string Numbers =>
        "at least " + WithoutDevice + " deep; with a device on 14 AWG or thinner " + UpToAwg14 + ", on 12 or 10 AWG " + UpToAwg10 + ", on thicker ones " + BeyondAwg10;

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
        Func<string> because = () => depth.Exactly(site.Units) + " deep";
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

    private static bool TakesRing(BoxTraits box) => box.Source.Extension is not null || box.Kind == BoxKind.FourSquare || box.Kind == BoxKind.FourElevenSquare;

    /// <summary>How deep the box has to be at the least and at the most of what isn't stated.</summary>
    private (Distance Least, Distance Most) Needed(BoxTraits box)
    {
        DeviceBox source = box.Source;
        if (!BoxFill.IsCountable(source))
        {
            bool holdsDevice = false;
            foreach (DeviceKind device in source.Devices)
            {
                holdsDevice |= device.IsKnown && device.IsOperated;
            }

            return (holdsDevice ? UpToAwg14 : WithoutDevice, FillContents.MayHoldMore(source) || holdsDevice ? BeyondAwg10 : WithoutDevice);
        }

        return (For(new FillContents(source, false, false)), For(new FillContents(source, false, true)));
    }

    /// <summary>The thickest conductor that a device is connected to decides.</summary>
    private Distance For(FillContents contents)
    {
        for (int awg = ConductorSize.Awg6.Awg; awg <= ConductorSize.Awg18.Awg; awg++)
        {
            if (contents.YokesOn(awg) > 0)
            {
                return awg >= ConductorSize.Awg14.Awg ? UpToAwg14 : awg >= ConductorSize.Awg10.Awg ? UpToAwg10 : BeyondAwg10;
            }
        }

        return WithoutDevice;
    }
}
