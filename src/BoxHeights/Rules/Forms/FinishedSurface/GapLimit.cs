using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where board, plaster or tile that doesn't burn is cut round a flush box, the gap at the box's edge is at most so wide. Silent where the gap isn't stated.</summary>
/// <remarks>A box that lies wholly in a finish that burns is cut into that alone: nothing is said of its gap, unless the rule asks for it in rated walls, of whose board the gap is.</remarks>
[Row(nameof(Most))]
public sealed partial record GapLimit : LimitRule
{
    /// <summary>The widest gap, itself allowed.</summary>
    public Distance Most { get; init; }

    /// <summary>Whether the rule speaks of walls that are declared rated, and of no other surface.</summary>
    public bool InRatedWalls { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Most < Distance.Zero)
        {
            yield return "its limit, " + Most + ", is negative";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => "a gap of at most " + Most + " between the edge of a flush box and " + (InRatedWalls ? "the board of a rated wall" : "a surface that doesn't burn");

    /// <inheritdoc/>
    public override Wording ElseDo => $"fill the gap with joint compound, or patch the board up to the box";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Box.Source.BoardGap is { } gap && site.Box.IsFlush && !site.IsOutside)
        {
            State(site, gap, statement);
        }
    }

    private void State(PlacementSite site, Distance gap, LimitStatement statement)
    {
        if (InRatedWalls)
        {
            if (site.Surface.Wall is { Rated: true } && site.Box.Source.FireProtection != FireProtection.Listed)
            {
                statement.Judge(gap, DistanceSet.AtMost(Most), Because);
            }

            return;
        }

        if (gap > Most && site.Surface.HasBrokenParts)
        {
            statement.NotJudged(LimitStatement.WallAtFault);
            return;
        }

        foreach (LimitZone zone in gap > Most ? WhereNothingBurns(site) : [default])
        {
            statement.Judge(gap, DistanceSet.AtMost(Most), Because, zone);
        }

        Wording Because() => $"with a gap of {Printed.Exactly(gap, site.Units):gap} round it";
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];

    /// <summary>The whole surface but for where a box lies wholly in a finish that burns.</summary>
    private static List<LimitZone> WhereNothingBurns(PlacementSite site)
    {
        Distance half = site.Box.Size.HalfWidth;
        HeightsAlong burning = new(AllowedHeights.Nothing);
        foreach (Finish finish in site.Surface.Wall?.Finishes ?? default)
        {
            if (finish.Burns != false)
            {
                AllowedHeights within = (finish.Bottom is { } bottom ? site.AtLeast(TargetLine.BoxBottom, bottom, finish.Left, finish.Right) : AllowedHeights.Anything)
                    & (finish.Top is { } top ? site.AtMost(TargetLine.BoxTop, top, finish.Left, finish.Right) : AllowedHeights.Anything);
                burning.Add(finish.Left + half, finish.Right - half, finish.Burns == true ? within : within.If(MissingFacts.Combustible));
            }
        }

        List<LimitZone> zones = [];
        foreach ((Distance from, Distance to, AllowedHeights clear) in burning.Pieces())
        {
            zones.Add(new(from, to, clear));
        }

        return zones;
    }
}
