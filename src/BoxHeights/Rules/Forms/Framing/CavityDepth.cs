using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box is no deeper than the wall: from the face of the studs it reaches at most through their cavity. Touching the board behind is fine.</summary>
/// <remarks>
/// Silent where the cavity isn't stated, and where the depth isn't known well enough to decide. A box whose depth isn't stated is taken by its published
/// volume, a plastic one by the depths that are commonly met with. The board of its own face gives room as far as it is known.
/// </remarks>
[Row]
public sealed partial record CavityDepth : LimitRule
{
    // A deeper box doesn't go into the wall.
    internal override bool GivesWay => false;

    /// <inheritdoc/>
    public override string Numbers => "depth of the box less what stands in front of the studs at most the depth of the cavity";

    /// <inheritdoc/>
    public override Wording ElseDo => $"take a shallower box, or fur the wall out";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Surface.Wall?.Cavity is not { } cavity || !CavityReach.TryOf(site.Box, site.Surface, out DistanceRange reach))
        {
            return;
        }

        if (reach.From > cavity || reach.To <= cavity)
        {
            Distance measured = reach.From > cavity ? reach.From : reach.To;
            statement.Judge(measured, DistanceSet.AtMost(cavity), (measured, site.Units), static said => $"reaching {Printed.OffBy(said.measured, said.Units):depth} behind the face of the studs");
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog)
    {
        // The trade's shallow box: the roomiest that the wall takes. Which that is, trying tells.
        if (box.Build.WhereShallow is { } shallow && box.Mounting != MountingMethod.CutIn && catalog.TryFindVolumes(shallow, box.Gangs, out VolumesPart? sold))
        {
            for (int i = sold.Depths.Count - 1; i >= 0; i--)
            {
                yield return box.Source.WithKind(shallow).WithSize(null).WithVolume(sold.Volumes[i]);
            }
        }
    }
}
