using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A metal box opens at most so much of a wall that is declared rated. Plastic boxes follow their own listing and aren't judged.</summary>
[Row(nameof(Largest))]
public sealed partial record RatedOpening : LimitRule
{
    /// <summary>The largest area of one box, itself allowed.</summary>
    public Quantity Largest { get; init; }

    /// <inheritdoc/>
    public override string Numbers => "metal boxes of at most " + Largest;

    /// <inheritdoc/>
    public override Wording ElseDo => $"take smaller boxes, or some that are listed for the wall";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        if (site.Surface.Wall is { Rated: true } && IsOfSteel(site.Box))
        {
            Quantity area = AreaOf(site.Box);
            statement.Judge(area, QuantitySet.AtMost(Largest), (area, site.Units), static said => $"a metal box of {Printed.Exactly(said.area, said.Units):area} in a rated wall");
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];

    /// <summary>Whether a box of a known size is of steel and isn't listed for rated walls by itself: what the exception for steel boxes speaks of.</summary>
    internal static bool IsOfSteel(BoxTraits box) => box.Build.Material == BoxMaterial.Steel && box.Size.IsStated && box.Source.FireProtection != FireProtection.Listed;

    /// <summary>What a box opens of the wall: its face.</summary>
    internal static Quantity AreaOf(BoxTraits box) => Quantity.Area(box.Size.Width, box.Size.Height);
}
