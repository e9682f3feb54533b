using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>
/// A box holds its conductors: the fill is at most the box's volume, and that of each compartment whose volume is stated at most its own.
/// Silent where no cables or conductors are described.
/// </summary>
[Row(nameof(Counting))]
public sealed partial record FillLimit : LimitRule
{
    /// <summary>How things count.</summary>
    public FillCounting Counting { get; init; }

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "fill, depth and setback of boxes";

    /// <inheritdoc/>
    public override string Numbers => "conductors, clamps, fittings, devices and grounds at most the volume of the box; " + Counting;

    /// <inheritdoc/>
    public override Wording ElseDo => $"no standard box of this kind is large enough: take a wider or deeper box, or fewer cables";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        // A box whose mark isn't known needs no mark if the smallest of its kind holds all that may be in it.
        bool isRoomy = site.Box.Volume is null && site.Box.LeastVolume is { } least && BoxFill.IsCountable(site.Box.Source) && TotalOf(site.Box.Source, site, true, statement) <= least;
        Judge(site, site.Box.Source, isRoomy ? site.Box.LeastVolume : site.Box.Volume, null, statement);
        foreach ((DeviceBox part, Volume? volume, int number) in FillCompartments.Of(site.Box.Source))
        {
            if (volume is not null)
            {
                Judge(site, part, volume, number, statement);
            }
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) =>
        box.Source.Compartments.Count == 0 && BoxFill.SmallestFor(box.Source, Counting, catalog) is { } volume ? [box.Source.WithVolume(volume)] : [];

    private void Judge(PlacementSite site, DeviceBox box, Volume? room, int? compartment, LimitStatement statement)
    {
        if (!BoxFill.IsCountable(box))
        {
            return;
        }

        Volume total = TotalOf(box, site, false, statement);
        MissingFacts open = statement.Scratch.Of<FillContents>().LeftOpen(box, site.Box.Build);
        if (room is not { } volume)
        {
            statement.DependsOn(total, MissingFacts.BoxVolume, (this, box, site, compartment, false), Said);
        }
        else if (total <= volume && open != MissingFacts.None && TotalOf(box, site, true, statement) is var most && most > volume)
        {
            // What isn't stated may take room as well: it matters only where it would turn the verdict.
            statement.DependsOn(most, open, (this, box, site, compartment, true), Said);
        }
        else
        {
            statement.Judge(total, QuantitySet.AtMost(volume), (this, box, site, compartment, false), Said);
        }
    }

    private Volume TotalOf(DeviceBox box, PlacementSite site, bool most, LimitStatement statement) =>
        FillSum.Of(statement.Scratch.Of<FillContents>().Of(box, site.Box.Build, Counting, most), Counting, null);

    private static Wording Said((FillLimit Row, DeviceBox Box, PlacementSite Site, int? Compartment, bool Most) of)
    {
        Wording fill = BoxFill.Of(of.Box, of.Row.Counting, of.Site.Box.Build, of.Most).Worded(of.Site.Units);
        return of.Compartment is { } number ? $"in compartment {number} from the left, {fill}" : fill;
    }
}
