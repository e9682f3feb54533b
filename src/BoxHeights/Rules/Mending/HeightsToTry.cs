using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>At which heights a remedy may put boxes: those that are worth trying, best first.</summary>
internal sealed class HeightsToTry(LayoutState state, Trials trials)
{
    /// <summary>
    /// Heights worth trying for boxes together: what practice prefers, what their neighbors have, then the nearest that every rule allows. What has to be level with its neighbors
    /// is set like them before it is set as practice prefers: near enough to their level would shift the level that all of them share.
    /// </summary>
    public IEnumerable<(BoxHeight Height, bool Slack)> For(List<int> boxes, bool levelOnly, Distance? along = null)
    {
        if (along is not null && state.HeightOf(boxes[0]) is { Edge: { } own } same && Allowed(boxes, own, same.Datum, along, true).Contains(same.Value))
        {
            // What goes aside keeps its height where it may.
            yield return (same, true);
        }

        IEnumerable<BoxHeight>[] usual = [Preferred(boxes, along), OfNeighbors(boxes, along)];
        for (int i = 0; i < usual.Length; i++)
        {
            foreach (BoxHeight height in usual[levelOnly ? usual.Length - 1 - i : i])
            {
                yield return (height, true);
            }
        }

        if (state.HeightOf(boxes[0]) is not { } now)
        {
            yield break;
        }

        foreach (bool slack in new[] { true, false })
        {
            Edge edge = now.Edge ?? Edge.Center;
            DistanceSet allowed = Allowed(boxes, edge, now.Datum, along, slack);
            if (levelOnly)
            {
                allowed &= LevelOf(boxes[0], edge, now.Datum);
            }

            if (allowed.TryNearestSnapped(now.Value, state.Options.HeightStep, out Distance snapped))
            {
                yield return (BoxHeight.To(edge, snapped, now.Datum), slack);
            }
            else if (!slack && allowed.TryNearest(now.Value, out Distance nearest))
            {
                yield return (BoxHeight.To(edge, nearest, now.Datum), slack);
            }
        }
    }

    /// <summary>Whether every placement rule surely allows a box a height where it is, with slack.</summary>
    public bool Allows(int box, BoxHeight height) => Allowed([box], height.Edge!.Value, height.Datum, null, true).Contains(height.Value);

    private IEnumerable<BoxHeight> Preferred(List<int> boxes, Distance? along)
    {
        StatedSite site = state.SitesOf(boxes[0])[0];
        foreach (BoxHeight preferred in state.Rules.PreferredFor(site.Site.Box, site.Site.Room))
        {
            // What can be marked in the dwelling's units, before what can't, though a habit may be surely met by that alone: half a millimeter is nobody's habit.
            (DistanceSet all, DistanceSet firm) = Together(boxes, preferred.Edge!.Value, preferred.Datum, along);
            DistanceSet slack = firm.Shrink(state.Options.HeightMargin);
            Distance marked = preferred.Value.RoundNearest(state.Options.HeightStep);
            if ((all & slack).Contains(marked) || (all & slack).Contains(preferred.Value))
            {
                yield return preferred.WithValue(slack.Contains(marked) ? marked : preferred.Value);
            }
        }
    }

    private IEnumerable<BoxHeight> OfNeighbors(List<int> boxes, Distance? along)
    {
        foreach (int neighbor in NeighborsOf(boxes[0]))
        {
            if (state.HeightOf(neighbor) is { Edge: { } edge } height && Allowed(boxes, edge, height.Datum, along, true).Contains(height.Value))
            {
                yield return height;
            }
        }
    }

    /// <summary>The nearest height to its own that every rule surely allows a box to add where it goes, else all that don't give way to a violation, with slack where there is any; null where there is none.</summary>
    public BoxHeight? For(PlacedBox placed)
    {
        if (placed.Box is not { At: { } at, Height: { Edge: not null } now } || state.SiteFor(placed.Address, placed.Box) is not { } site)
        {
            return null;
        }

        DistanceSet all = site.Places.SureAt(at.Ticks);
        DistanceSet firm = site.Places.SureOfFirmRulesAt(at.Ticks);
        DistanceSet over = placed.Box.Purpose == BoxPurpose.Counter ? OverCounter.At(site.Site, at) ?? DistanceSet.All : DistanceSet.All;
        (DistanceSet most, DistanceSet needed) = InNeedAt(site, at.Ticks, Severity.Advice);
        foreach (DistanceSet allowed in new[] { all & firm.Shrink(state.Options.HeightMargin), all, firm.Shrink(state.Options.HeightMargin), firm, most & needed.Shrink(state.Options.HeightMargin), most })
        {
            if ((allowed & over).TryNearestSnapped(now.Value, state.Options.HeightStep, out Distance snapped))
            {
                return now.WithValue(snapped);
            }
        }

        return null;
    }

    /// <summary>Heights, each once, that a box to add on a wall may share: those of boxes of its purpose that are surely on the level of its storey or room.</summary>
    public List<BoxHeight> OnTheLevelOf(PlacedBox placed)
    {
        List<BoxHeight> heights = [];
        string? level = placed.Box.At is null ? null : state.SurfaceAt(placed.Address)?.Space.LevelId;
        for (int box = 0; level is not null && box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].Source.Purpose == placed.Box.Purpose && state.Boxes[box].Surface.Space.LevelId == level && state.HeightOf(box) is { } height
                && !heights.Contains(height) && Array.Exists(state.Groups.Of(box), group => IsLevel(box, state.Groups[group].Boxes, state.KeepOf(group))))
            {
                heights.Add(height);
            }
        }

        return heights;
    }

    private static bool IsLevel(int box, ProvisionGroup boxes, DistanceSet keep)
    {
        for (int i = 0; i < boxes.Count; i++)
        {
            if (boxes.Member(i) == box)
            {
                return !keep.IsAll && boxes.TryCenter(i, out DistanceRange center) && keep.ContainsRange(center);
            }
        }

        return false;
    }

    /// <summary>A member of each of a box's groups, whose height most others share of those that keep within the group's level; the lowest of several that as many share.</summary>
    private IEnumerable<int> NeighborsOf(int box)
    {
        foreach (int group in state.Groups.Of(box))
        {
            ProvisionGroup boxes = state.Groups[group].Boxes;
            DistanceSet keep = state.KeepOf(group);
            Dictionary<DistanceRange, (int Member, int Count)> sharing = [];
            for (int i = 0; i < boxes.Count && !keep.IsAll; i++)
            {
                if (boxes.Member(i) != box && boxes.TryCenter(i, out DistanceRange center) && keep.ContainsRange(center))
                {
                    sharing[center] = sharing.TryGetValue(center, out (int Member, int Count) like) ? (like.Member, like.Count + 1) : (boxes.Member(i), 1);
                }
            }

            KeyValuePair<DistanceRange, (int Member, int Count)>? most = null;
            foreach (KeyValuePair<DistanceRange, (int Member, int Count)> one in sharing)
            {
                most = most is { } best && (best.Value.Count > one.Value.Count || (best.Value.Count == one.Value.Count && best.Key.From <= one.Key.From)) ? best : one;
            }

            if (most is { } shared)
            {
                yield return shared.Value.Member;
            }
        }
    }

    /// <summary>The readings of a stick that every placement rule surely allows for all the boxes; with slack, away from every limit but those of habit.</summary>
    private DistanceSet Allowed(List<int> boxes, Edge edge, Datum datum, Distance? along, bool slack)
    {
        (DistanceSet all, DistanceSet firm) = Together(boxes, edge, datum, along);
        return slack ? all & firm.Shrink(state.Options.HeightMargin) : all;
    }

    /// <summary>The readings that every placement rule surely allows for all the boxes, and those that all but habits do.</summary>
    private (DistanceSet All, DistanceSet Firm) Together(List<int> boxes, Edge edge, Datum datum, Distance? along)
    {
        DistanceSet all = DistanceSet.All;
        DistanceSet firm = DistanceSet.All;
        foreach (int box in boxes)
        {
            if ((along ?? state.AtOf(box)) is { } place)
            {
                StatedSite site = state.SiteOf(box, edge, datum, place);
                (DistanceSet here, DistanceSet firmly) = trials.MayBring is { } most ? InNeedAt(site, place.Ticks, most) : (site.Places.SureAt(place.Ticks), site.Places.SureOfFirmRulesAt(place.Ticks));
                if (here.IsEmpty && boxes.Count > 1)
                {
                    // No height mends this one, which has to go elsewhere: it says nothing of the stick that it shares with the others.
                    continue;
                }

                if (OverCounter.Is(state, box) && OverCounter.At(site.Site, place) is { } over)
                {
                    // Where it was over a counter it stays over one.
                    (here, firmly) = (here & over, firmly & over);
                }

                all &= here;
                firm &= firmly;
            }
        }

        return (all, firm);
    }

    /// <summary>What the rules allow that don't give way, as far as the others leave some of it: those that weigh more first; and what those allow alone.</summary>
    private static (DistanceSet All, DistanceSet Firm) InNeedAt(StatedSite site, long along, Severity most)
    {
        bool GivesWay(PlacementRule rule) => rule.GivesWay && rule.Severity <= most;

        DistanceSet firm = DistanceSet.All;
        foreach (StatedPlacement placement in site.Placements)
        {
            firm = GivesWay(placement.Rule) ? firm : firm & SlabJudge.SureAt(placement.Slabs, along);
        }

        DistanceSet all = firm;
        for (Severity weight = most; weight >= Severity.Note; weight--)
        {
            foreach (StatedPlacement placement in site.Placements)
            {
                if (placement.Rule.Severity == weight && GivesWay(placement.Rule) && (all & SlabJudge.SureAt(placement.Slabs, along)) is { IsEmpty: false } some)
                {
                    all = some;
                }
            }
        }

        return (all, firm);
    }

    /// <summary>The readings of a stick that keep a box within its groups' levels.</summary>
    private DistanceSet LevelOf(int box, Edge edge, Datum datum)
    {
        DistanceSet all = DistanceSet.All;
        StatedSite site = state.SiteOf(box, edge, datum, state.AtOf(box));
        foreach (int group in state.Groups.Of(box))
        {
            all &= state.KeepOf(group).ErodeShift(-site.CenterAboveHeight);
        }

        return all;
    }
}
