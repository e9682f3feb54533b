using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Looks for what mends a cause: the stick before the box, up or down before sideways, with slack before without. Every remedy is tried before it is offered.</summary>
internal sealed class RemedyFinder
{
    private readonly LayoutEvaluator evaluator;
    private readonly Evaluation evaluation;
    private readonly LayoutState state;
    private readonly EvaluatorOptions options;

    public RemedyFinder(LayoutEvaluator evaluator, Evaluation evaluation, LayoutState state)
    {
        this.evaluator = evaluator;
        this.evaluation = evaluation;
        this.state = state;
        options = state.Options;
    }

    public Items<Remedy> For(Cause cause)
    {
        Finding first = cause.Findings[0];
        if (first.Box < 0 || (first.Needs & Facts.BrokenPart) != 0)
        {
            return default;
        }

        if (first.Measured.Kind == QuantityKind.Volume)
        {
            return Larger(cause);
        }

        List<Remedy> found = [];
        foreach (List<int> stick in SticksOf(cause))
        {
            found.AddRange(ByStick(cause, stick, first.Group >= 0));
        }

        return new(found);
    }

    /// <summary>The boxes of a cause, parted by the height that they are set to.</summary>
    private List<List<int>> SticksOf(Cause cause)
    {
        List<List<int>> sticks = [];
        foreach (Finding finding in cause.Findings)
        {
            List<int>? stick = sticks.Find(one => IsSameStick(one[0], finding.Box));
            if (stick is null)
            {
                sticks.Add(stick = []);
            }

            stick.Add(finding.Box);
        }

        return sticks;
    }

    private bool IsSameStick(int a, int b) => IsSameLevel(a, b) && state.HeightOf(a) == state.HeightOf(b);

    private bool IsSameLevel(int a, int b)
    {
        ResolvedBox one = state.Boxes[a];
        ResolvedBox other = state.Boxes[b];
        return one.Source.Purpose == other.Source.Purpose && one.Surface.Space.StoreyId == other.Surface.Space.StoreyId;
    }

    private List<Remedy> ByStick(Cause cause, List<int> boxes, bool levelOnly)
    {
        List<int> whole = levelOnly ? [.. boxes] : All(box => IsSameStick(box, boxes[0]));
        whole.RemoveAll(IsFixed);
        if (whole.Count > 0)
        {
            if (Together(cause, whole, boxes, levelOnly) is { } move)
            {
                return [move];
            }
        }

        // One level for all boxes of the purpose may do where one stick alone would leave the others behind.
        List<int> level = All(box => IsSameLevel(box, boxes[0]) && !IsFixed(box));
        return !levelOnly && level.Count > whole.Count && boxes.TrueForAll(box => level.Contains(box)) && Together(cause, level, boxes, false) is { } all
            ? [all]
            : boxes.ConvertAll(box => Single(cause, box));
    }

    private MoveBoxes? Together(Cause cause, List<int> boxes, List<int> toMend, bool levelOnly)
    {
        foreach ((BoxHeight height, bool slack) in HeightsFor(boxes, levelOnly))
        {
            MoveBoxes move = Move(boxes, height, null, slack);
            if (Mends(move, cause.RuleId, toMend))
            {
                return move;
            }
        }

        return null;
    }

    private Remedy Single(Cause cause, int box)
    {
        if (!IsFixed(box))
        {
            List<int> one = [box];
            foreach (Distance? along in PlacesFor(box))
            {
                foreach ((BoxHeight height, bool slack) in HeightsFor(one, false, along))
                {
                    Remedy move = Move(one, height, along, slack);
                    if (Mends(move, cause.RuleId, one))
                    {
                        return move;
                    }
                }
            }
        }

        Items<string> conflicting = Conflicting(box, cause.RuleId);
        string id = state.Boxes[box].Source.Id;
        return new NoneFound(conflicting, IsFixed(box)
            ? id + " has to stay where it is"
            : cause.Outcome == Outcome.Unknown
                ? "find out first: " + FactText.Of(cause.Findings[0].Needs)
                : "no place for " + id + " was found straight up or down, or along its wall: "
                    + string.Join(" and ", conflicting) + (conflicting.Count == 1 ? " leaves none" : " leave none together"));
    }

    private bool IsFixed(int box) => state.Boxes[box].Source.Pinned || state.Boxes[box].Source.Existing;

    private List<int> All(Predicate<int> which)
    {
        List<int> found = [];
        for (int i = 0; i < state.Boxes.Length; i++)
        {
            if (state.SitesOf(i).Length > 0 && state.HasReading(i) && which(i))
            {
                found.Add(i);
            }
        }

        return found;
    }

    /// <summary>Heights worth trying for boxes together: what practice prefers, what their neighbors have, then the nearest that every rule allows.</summary>
    private IEnumerable<(BoxHeight Height, bool Slack)> HeightsFor(List<int> boxes, bool levelOnly, Distance? along = null)
    {
        StatedSite site = state.SitesOf(boxes[0])[0];
        foreach (PlacementRule rule in state.Rules.Placement)
        {
            if (rule.Preferred is { Edge: { } edge } preferred && rule.Scope.Covers(site.Site.Box, site.Site.Room)
                && Allowed(boxes, edge, preferred.Datum, along, true).Contains(preferred.Value))
            {
                yield return (preferred, true);
            }
        }

        foreach (int neighbor in NeighborsOf(boxes[0]))
        {
            if (state.HeightOf(neighbor) is { Edge: { } edge } height && Allowed(boxes, edge, height.Datum, along, true).Contains(height.Value))
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

            if (allowed.TryNearestSnapped(now.Value, options.HeightStep, out Distance snapped))
            {
                yield return (BoxHeight.To(edge, snapped, now.Datum), slack);
            }
            else if (!slack && allowed.TryNearest(now.Value, out Distance nearest))
            {
                yield return (BoxHeight.To(edge, nearest, now.Datum), slack);
            }
        }
    }

    /// <summary>Members of a box's groups, those that most others agree with first.</summary>
    private IEnumerable<int> NeighborsOf(int box)
    {
        foreach (int group in state.Groups.Of(box))
        {
            ProvisionGroup boxes = state.Groups[group].Boxes;
            for (int i = 0; i < boxes.Count; i++)
            {
                if (boxes.Member(i) != box && boxes.TryCenter(i, out DistanceRange center) && state.KeepOf(group).ContainsRange(center))
                {
                    yield return boxes.Member(i);
                    break;
                }
            }
        }
    }

    /// <summary>The readings of a stick that every placement rule surely allows for all the boxes; with slack, away from every limit but those of habit.</summary>
    private DistanceSet Allowed(List<int> boxes, Edge edge, Datum datum, Distance? along, bool slack)
    {
        DistanceSet all = DistanceSet.All;
        DistanceSet firm = DistanceSet.All;
        foreach (int box in boxes)
        {
            if ((along ?? state.AtOf(box)) is { } place)
            {
                StatedSite site = state.SiteOf(box, edge, datum, place);
                all &= site.SureAt(place.Ticks);
                firm &= site.SureOfFirmRulesAt(place.Ticks);
            }
        }

        return slack ? all & firm.Shrink(options.HeightMargin) : all;
    }

    /// <summary>The readings of a stick that keep a box within its groups' levels.</summary>
    private DistanceSet LevelOf(int box, Edge edge, Datum datum)
    {
        DistanceSet all = DistanceSet.All;
        StatedSite site = state.SiteOf(box, edge, datum, state.AtOf(box));
        foreach (int group in state.Groups.Of(box))
        {
            all &= state.KeepOf(group).ErodeShift(-site.CenterAboveReading);
        }

        return all;
    }

    /// <summary>Where to try a box along its wall: where it is, then stud faces or the ends of what stands in its way, nearest first.</summary>
    private List<Distance?> PlacesFor(int box)
    {
        List<Distance?> places = [null];
        if (state.AtOf(box) is not { } at || state.Boxes[box].Surface is not { Wall: { } wall } surface)
        {
            return places;
        }

        StatedSite site = state.SitesOf(box)[0];
        List<Distance> others = [];
        if (surface.Studs is { } studs && site.Site.Box.Mounting is null or MountingMethod.Stud)
        {
            for (int stud = 1; stud <= (surface.Studs?.Count ?? 0); stud++)
            {
                foreach (StudSide side in new[] { StudSide.Left, StudSide.Right })
                {
                    if (surface.Studs!.TryCenter(stud, side, site.Site.Box.Size.Width, out Distance center))
                    {
                        others.Add(center);
                    }
                }
            }
        }
        else
        {
            foreach (long edge in site.Edges)
            {
                if (edge > 0 && edge < wall.Length.Ticks)
                {
                    others.Add((Distance.FromTicks(edge) - options.AlongMargin).RoundDown(options.AlongStep));
                    others.Add((Distance.FromTicks(edge) + options.AlongMargin).RoundUp(options.AlongStep));
                }
            }
        }

        Distance half = site.Site.Box.Size.HalfWidth;
        if (state.Boxes[box].Source.Purpose == BoxPurpose.Counter && surface.CounterOn(at, at) is { } counter)
        {
            // Beyond its counter it would serve it no more.
            others.RemoveAll(place => place < counter.Left || place > counter.Right);
        }

        others.RemoveAll(place => place < half || place > wall.Length - half || place == at);
        others.Sort((a, b) => (a - at).Abs().CompareTo((b - at).Abs()));
        foreach (Distance place in others)
        {
            places.Add(place);
        }

        return places;
    }

    private MoveBoxes Move(List<int> boxes, BoxHeight height, Distance? along, bool slack)
    {
        Items<string> ids = new(boxes.ConvertAll(box => state.Boxes[box].Source.Id));
        string text = boxes.Count == 1
            ? "set " + ids[0] + " " + height + (along is { } place ? ", " + Printed.Of(place, options.Units) + " from the left end of its wall" : "")
            : "set the stick " + height + " for " + boxes.Count + " boxes: " + ids;
        text += slack ? "" : " (no slack)";
        return new(ids, height, along, slack, text);
    }

    private Items<Remedy> Larger(Cause cause)
    {
        Finding first = cause.Findings[0];
        BoxTraits traits = state.SitesOf(first.Box)[0].Site.Box;
        if (state.Rules.Set.Find(cause.RuleId) is not LimitRule rule || rule.Mend(traits, options.Catalog) is not { Volume: { } volume })
        {
            return new Remedy[] { new NoneFound(new[] { cause.RuleId }, "no standard box of this kind is large enough: take a wider or deeper box, or fewer cables") };
        }

        ResizeBox larger = new(cause.Subjects, volume, "take a box marked at least " + volume + " for " + cause.Subjects);
        List<int> boxes = [];
        foreach (Finding finding in cause.Findings)
        {
            boxes.Add(finding.Box);
        }

        return Mends(larger, cause.RuleId, boxes) ? new Remedy[] { larger } : default;
    }

    /// <summary>Whether a remedy, carried out, clears the finding of every box and adds none.</summary>
    private bool Mends(Remedy remedy, string ruleId, List<int> boxes)
    {
        Evaluation after = evaluator.Evaluate(remedy.ApplyTo(state.Dwelling));
        foreach (Finding finding in after.Findings)
        {
            if (finding.RuleId == ruleId && boxes.Exists(box => state.Boxes[box].Source.Id == finding.Subject))
            {
                return false;
            }

            bool known = false;
            foreach (Finding before in evaluation.Findings)
            {
                known |= before.IsAbout(finding) && before.Outcome >= finding.Outcome && before.Severity >= finding.Severity;
            }

            if (!known)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The fewest rules, the broken one among them, that leave no height together where a box is.</summary>
    private Items<string> Conflicting(int box, string ruleId)
    {
        StatedSite site = state.SitesOf(box)[0];
        if (state.AtOf(box) is not { } at)
        {
            return new[] { ruleId };
        }

        List<StatedPlacement> needed = [.. site.Placements];
        for (int i = needed.Count - 1; i >= 0; i--)
        {
            StatedPlacement one = needed[i];
            needed.RemoveAt(i);
            if (one.Rule.Id == ruleId || Left(needed).Count > 0)
            {
                needed.Insert(i, one);
            }
        }

        return Left(needed).Count > 0 ? new[] { ruleId } : new Items<string>(needed.ConvertAll(placement => placement.Rule.Id));

        DistanceSet Left(List<StatedPlacement> placements)
        {
            DistanceSet all = DistanceSet.All;
            foreach (StatedPlacement placement in placements)
            {
                foreach (Slab slab in placement.Slabs)
                {
                    if (slab.Left <= at && at <= slab.Right)
                    {
                        all &= slab.Allowed.Sure;
                    }
                }
            }

            return all;
        }
    }
}
