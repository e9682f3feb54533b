using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box over a thing is over its middle, or over the middle between two of them that stand side by side. Silent beside the things, where boxes go in pairs.</summary>
[Row(nameof(Things), nameof(Within))]
public sealed partial record OnCenter : PlacementRule
{
    /// <summary>The kinds of thing, by their names.</summary>
    public Items<string> Things { get; init => field = value.Count > 0 ? value : throw new ArgumentException("A box is over some thing.", nameof(Things)); }

    /// <summary>How far off a middle a box's center may be.</summary>
    public Distance Within { get; init; }

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    internal override bool AsksForTheMiddle => true;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Things;

    /// <inheritdoc/>
    public override string Numbers => "where it is over a " + string.Join(" or ", Things) + ", at most " + Within + " off its middle, or off the middle between two";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        DistanceSet over = DistanceSet.Empty;
        DistanceSet middles = DistanceSet.Empty;
        Dictionary<string, List<Distance>> kinds = new(StringComparer.Ordinal);
        foreach ((_, string kind, Distance? start, Distance? end) in new PlaceAnchor(Things, Distance.Zero).ThingsOn(site.Fixtures, site.Surface.Wall, site.Usual))
        {
            if (start is { } left && end is { } right && left < right)
            {
                over |= DistanceSet.Between(left, right);
                Distance middle = Middle(left, right);
                middles |= Near(middle);
                foreach (Distance other in kinds.ListOf(kind))
                {
                    middles |= Near(Middle(Distance.Min(other, middle), Distance.Max(other, middle)));
                }

                kinds.ListOf(kind).Add(middle);
            }
        }

        DistanceSet off = over & middles.Complement();
        for (int i = 0; i < off.Count; i++)
        {
            statement.Within(off[i].From, off[i].To, AllowedHeights.Nothing);
        }
    }

    private static Distance Middle(Distance left, Distance right) => left + Distance.FromTicks((right - left).Ticks / 2);

    private DistanceSet Near(Distance middle) => DistanceSet.Between(middle - Within, middle + Within);
}
