using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The front edge of a flush box, or of its ring, is at most so far behind a finished surface that doesn't burn, and flush with one that does.</summary>
/// <remarks>
/// Silent where it isn't stated how far out the box is set.
/// The finished surface lies as far from the framing as the board and every layer of the finish that the box's opening meets. A box that stands proud meets
/// the rule. What is thicker or thinner than is known, or may or may not burn, matters only where it turns the verdict.
/// </remarks>
[Row(nameof(Most))]
public sealed partial record SetbackLimit : LimitRule
{
    private static readonly Wording NoBoardThickness = $"how thick the board is isn't stated";

    /// <summary>How far behind a surface that doesn't burn the front edge may be.</summary>
    public Distance Most { get; init; }

    /// <inheritdoc/>
    public override string Numbers => "front edge of box or ring at most " + Most + " behind a finished surface that doesn't burn, flush with one that does";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Box.SetFor is not { } setFor || !site.Box.IsFlush || site.IsOutside)
        {
            return;
        }

        if (site.Surface.HasBrokenParts)
        {
            statement.NotJudged(LimitStatement.WallAtFault);
            return;
        }

        if (site.BoardThickness is null)
        {
            statement.NotJudged(NoBoardThickness);
            return;
        }

        foreach (FinishLayer layer in FinishLayer.Of(site))
        {
            State(layer, setFor, site.Units, statement);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) =>
        box.SetFor is { } setFor ? [box.Source.WithSetFor(setFor + measured.AsDistance())] : [];

    private void State(FinishLayer layer, Distance setFor, LengthUnits units, LimitStatement statement)
    {
        Distance near = layer.Nearest - setFor;
        Distance? far = layer.Deepest - setFor;
        Distance strict = layer.Burns == false ? Most : Distance.Zero;
        Distance loose = layer.Burns == true ? Distance.Zero : Most;
        if (near > loose)
        {
            statement.Judge(far ?? near, DistanceSet.AtMost(loose), Because, layer.Zone);
        }
        else if (far <= strict)
        {
            statement.Judge(far.Value, DistanceSet.AtMost(strict), Because, layer.Zone);
        }
        else
        {
            bool thickness = far is not { } known || (near <= strict) != (known <= strict) || known > loose;
            bool burns = layer.Burns is null && near <= Most;
            statement.DependsOn(far ?? near, (thickness ? MissingFacts.FinishThickness : MissingFacts.None) | (burns ? MissingFacts.Combustible : MissingFacts.None), Because, layer.Zone);
        }

        Wording Because() => $"set to stand {Printed.Exactly(setFor, units):projection} out from the framing, where there is {layer.Text:layer}, so that it is {Behind():setback} behind the finished surface";

        Wording Behind()
        {
            PrintedQuantity most = Printed.Exactly(far ?? near, units);
            return far <= Distance.Zero ? $"not" : far is null ? $"at least {most}" : far == near ? $"{most}" : (Wording)$"up to {most}";
        }
    }
}
