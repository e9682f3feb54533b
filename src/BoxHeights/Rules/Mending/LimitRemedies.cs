using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What mends a limit: for boxes that are mended alike one larger box, one deeper or shallower box, or one projection. Each is tried before it is offered.</summary>
internal sealed class LimitRemedies(LayoutState state, Trials trials, Func<Cause, Items<string>, NoneFound> notLookedAt)
{
    public Items<Remedy> For(Cause cause, LimitRule rule, Items<Finding> findings)
    {
        List<(Items<Way> Ways, List<int> Boxes)> alike = [];
        foreach (Finding finding in findings)
        {
            Items<Way> ways = WaysFor(finding, rule);
            int known = alike.FindIndex(one => one.Ways == ways);
            if (known < 0)
            {
                known = alike.Count;
                alike.Add((ways, []));
            }

            alike[known].Boxes.Add(finding.Box);
        }

        List<Remedy> found = [];
        foreach ((Items<Way> ways, List<int> boxes) in alike)
        {
            found.Add(FirstThatMends(cause, ways, boxes) ?? (trials.IsExhausted ? notLookedAt(cause, IdsOf(boxes)) : None(cause, rule, ways.Count > 0, boxes)));
        }

        return new(found);
    }

    private NoneFound None(Cause cause, LimitRule rule, bool wasTried, List<int> boxes)
    {
        (NoRemedyReason reason, Wording text) = cause.Verdict == Verdict.Unknown ? (NoRemedyReason.NotKnown, $"find out first: {cause.Findings[0].Facts:facts}")
            : wasTried ? (NoRemedyReason.NothingFound, $"nothing that mends {IdsOf(boxes):ids} does so without another finding")
            : (NoRemedyReason.ByOtherMeans, rule.ElseDo);
        return new(reason, IdsOf(boxes), new[] { cause.RuleId }, text);
    }

    private Remedy? FirstThatMends(Cause cause, Items<Way> ways, List<int> boxes)
    {
        foreach (Way way in ways)
        {
            Remedy remedy = RemedyOf(way, boxes);
            if (trials.Mends(remedy, cause, boxes))
            {
                return remedy;
            }
        }

        return null;
    }

    private Items<Way> WaysFor(Finding finding, LimitRule rule)
    {
        BoxTraits box = state.SitesOf(finding.Box)[0].Site.Box;
        List<Way> ways = [];
        foreach (DeviceBox mended in rule.Mends(box, finding.Measured, state.Options.Catalog))
        {
            if (mended.SetFor is { } projection && mended.SetFor != box.SetFor)
            {
                ways.Add(new(projection, projection - (box.SetFor ?? Distance.Zero), HowToBringOut(box), null, null, null, null));
            }
            else if (mended.Volume is { } volume)
            {
                // One that is smaller, or of the size of its kind, isn't the same box with more room.
                bool isAnother = mended.Kind != box.Source.Kind || volume < box.Volume || (mended.Size is null && box.Source.Size is not null);
                ways.Add(new(null, default, default, volume, mended.Size == box.Source.Size ? null : mended.Size, isAnother ? mended.Kind : null, mended.Kind is null || mended.Kind == box.Source.Kind ? null : StudOf(finding.Box)));
            }
        }

        return new(ways);
    }

    /// <summary>The stud that a box is nailed to which was placed by its center: one of another width is nailed to it, too. Null where it says so itself, or none holds it.</summary>
    private Mounting? StudOf(int box) =>
        state.Boxes[box] is { Source: { At: { } at, Mounting: null or { How: MountingMethod.Stud, Stud: null } } source, Surface: var surface } && state.HeldAt(new(surface.Address, source), at) is { Stud: not null } held ? held : null;

    private Remedy RemedyOf(Way way, List<int> boxes)
    {
        Items<string> ids = IdsOf(boxes);
        if (way.Projection is { } projection)
        {
            PrintedQuantity outTo = Print(projection);
            PrintedQuantity by = Print(way.Further.Abs());
            bool isBack = way.Further < Distance.Zero;
            return new SetProjection(ids, projection, way.How switch
            {
                BringOut.PlasterRing when isBack => $"take a plaster ring that stands {outTo:projection} out from the framing for {ids}: {by:less} less",
                BringOut.PlasterRing => $"take a plaster ring that stands {outTo:projection} out from the framing for {ids}: {by:more} more",
                _ when isBack => $"set {ids} to stand {outTo:projection} out from the framing, {by:less} further back",
                BringOut.Extension => $"add an extension ring of {by:more} to {ids}, to stand {outTo:projection} out from the framing",
                _ => (Wording)$"set {ids} to stand {outTo:projection} out from the framing, {by:more} further, or add an extension ring of {by:more}",
            });
        }

        PrintedQuantity volume = Printed.Of(way.Volume!.Value, state.Options.Units, Rounding.Up);
        return new ResizeBox(ids, way.Volume!.Value, way.Size, way.Kind, way.Held, way.Kind is { } kind ? RemedyFinder.OnStud(Another(Wording.Term(kind.Name), volume, BoxDepths.Of(kind, 1, way.Volume, state.Options.Catalog), ids), way.Held)
            : way.Size is { Depth: { } depth } ? $"take a box marked at least {volume} and {Print(depth):depth} deep for {ids}"
            : (Wording)$"take a box marked at least {volume} for {ids}");
    }

    private Wording Another(Wording kind, PrintedQuantity volume, DistanceRange? depth, Items<string> ids) => depth is { IsExact: true } known
        ? $"take a {kind} box of {volume}, {Print(known.From):depth} deep, with a ring for {ids}"
        : (Wording)$"take a {kind} box of {volume} with a ring for {ids}";

    /// <summary>A square box wears a plaster ring. What is there already, or hangs on the board or in masonry, can't be set further out any more.</summary>
    private static BringOut HowToBringOut(BoxTraits box) =>
        box.IsExisting || box.Mounting is MountingMethod.CutIn or MountingMethod.Masonry ? BringOut.Extension
        : box.Build.TakesRing ? BringOut.PlasterRing
        : BringOut.Setting;

    private PrintedQuantity Print(Distance distance) => Printed.Of(distance, state.Options.Units);

    private Items<string> IdsOf(List<int> boxes) => new(boxes.ConvertAll(box => state.Boxes[box].Source.Id));

    private enum BringOut
    {
        Setting,
        PlasterRing,
        Extension,
    }

    private sealed record Way(Distance? Projection, Distance Further, BringOut How, Volume? Volume, BoxSize? Size, BoxKind? Kind, Mounting? Held);
}
