using System;
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
        bool isRoomy = site.Box.Volume is null && site.Box.LeastVolume is { } least && BoxFill.IsCountable(site.Box.Source) && BoxFill.Of(site.Box.Source, Counting, site.Box.Build, true).Total <= least;
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

        BoxFill least = BoxFill.Of(box, Counting, site.Box.Build, false);

        // What isn't stated may take room as well: it matters only where it would turn the verdict.
        if (least.Total <= room && least.LeftOpen != MissingFacts.None && BoxFill.Of(box, Counting, site.Box.Build, true) is var most && most.Total > room)
        {
            Judge(most, room, least.LeftOpen, compartment, site.Units, statement);
        }
        else
        {
            Judge(least, room, room is null ? MissingFacts.BoxVolume : MissingFacts.None, compartment, site.Units, statement);
        }
    }

    private static void Judge(BoxFill fill, Volume? room, MissingFacts open, int? compartment, LengthUnits units, LimitStatement statement)
    {
        Func<Wording> because = () => compartment is { } number ? $"in compartment {number} from the left, {fill.Worded(units):fill}" : fill.Worded(units);
        if (open == MissingFacts.None && room is { } volume)
        {
            statement.Judge(fill.Total, QuantitySet.AtMost(volume), because);
        }
        else
        {
            statement.DependsOn(fill.Total, open, because);
        }
    }
}
