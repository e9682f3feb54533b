using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The front edge of a flush box, or of its ring, stands out past the finished surface at most so far, so that its plate lies flat.</summary>
/// <remarks>Silent where it isn't stated how far out the box is set. <see cref="SetbackLimit"/> looks the other way.</remarks>
[Row(nameof(Most))]
public sealed partial record ProudLimit : LimitRule
{
    /// <summary>How far past the finished surface the front edge may be.</summary>
    public Distance Most { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Most < Distance.Zero)
        {
            yield return "its limit, " + Most + ", is negative";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => "front edge of box or ring at most " + Most + " past the finished surface";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Box.SetFor is { } setFor && site.Box.IsFlush && !site.IsOutside && !site.Surface.HasBrokenParts)
        {
            State(site, setFor, statement);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) =>
        box.SetFor is { } setFor ? [box.Source.WithSetFor(setFor - measured.AsDistance())] : [];

    private void State(PlacementSite site, Distance setFor, LimitStatement statement)
    {
        // A box that opens through a finish has the bare board behind that.
        List<FinishLayer> layers = FinishLayer.Of(site);
        foreach (FinishLayer layer in layers)
        {
            LimitZone zone = layer.Zone.IsAPart || layers.Count == 1 ? layer.Zone : LimitZone.ClearOf(layers.FindAll(one => one.Zone.IsAPart).ConvertAll(one => one.Zone));
            Distance at = setFor - layer.Nearest;
            if (layer.Deepest is { } deepest && (at <= Most || setFor - deepest > Most))
            {
                Distance proud = at <= Most ? at : setFor - deepest;
                statement.Judge(proud, DistanceSet.AtMost(Most), () => Said(setFor, layer, proud, site.Units), zone);
            }
            else if (at > Most)
            {
                statement.DependsOn(at, MissingFacts.FinishThickness, () => Said(setFor, layer, at, site.Units), zone);
            }
        }
    }

    private static Wording Said(Distance setFor, FinishLayer layer, Distance proud, LengthUnits units) =>
        $"set to stand {Printed.Exactly(setFor, units):projection} out from the framing, where there is {layer.Text:layer}, so that it stands {Printed.Exactly(proud, units):proud} past the finished surface";
}
