using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>What a space lacks: boxes that are added, or set where their neighbors ask for them.</content>
internal sealed partial class RemedyFinder
{
    /// <summary>How many studs an added box is tried at.</summary>
    private const int MostStudsToTry = 4;

    /// <summary>A box to where its neighbors ask for it, on the steps that marks have.</summary>
    private Items<Remedy> SetRight(Cause cause, DeviceBox moved)
    {
        Items<string> id = new[] { moved.Id };
        int box = state.Boxes.FindIndex(one => one.Source.Id == moved.Id);
        if (!sticks.IsFree(box) || SetTo(box, moved) is not { } move)
        {
            return new Remedy[] { NonePlaced(cause, id, new[] { cause.RuleId }, stays: true) };
        }

        return new Remedy[]
        {
            trials.LeftAfter(move, [box]) is { } left && trials.Clears(cause, [-1], left) ? move
                : trials.IsExhausted ? NotLookedAt(cause, id)
                : new NoneFound(NoRemedyReason.NothingFound, id, new[] { cause.RuleId }, $"nothing that mends {moved.Id:id} does so without another finding"),
        };
    }

    private Remedy? SetTo(int box, DeviceBox moved)
    {
        if (moved.Plan is { } plan && plan != state.Boxes[box].Source.Plan)
        {
            PlanPoint set = new(plan.Right.RoundNearest(state.Options.AlongStep), plan.Into.RoundNearest(state.Options.AlongStep));
            return new MoveInPlan(moved.Id, set, $"set {moved.Id:id} {Printed.Of(set.Right, state.Options.Units):right} to the right of the left end of the first wall and {Printed.Of(set.Into, state.Options.Units):into} into the room");
        }

        return moved is { At: { } at, Height: { } height }
            ? Move([box], height.WithValue(height.Value.RoundNearest(state.Options.HeightStep)), at == state.AtOf(box) ? null : at.RoundNearest(state.Options.AlongStep), true)
            : null;
    }

    private Items<Remedy> Added(Cause cause, SpaceAnswer lacking)
    {
        if (lacking.Adds.Count == 0)
        {
            return new Remedy[] { NothingToAdd(cause, lacking) };
        }

        // At the height of their like, before another that is allowed there, before that of others which are on one level.
        if ((AtStuds(cause, lacking.Adds, false) ?? AtStuds(cause, lacking.Adds, true)) is { } added)
        {
            return new Remedy[] { added };
        }

        // In a ceiling whatever is well where it is, before whatever is only near enough.
        Items<PlacedBox> overhead = lacking.Adds.Select(trials.Well);
        if (overhead != lacking.Adds && Adding(overhead, isElsewhere: true) is var well && trials.Mends(well, cause, [-1]))
        {
            return new Remedy[] { well };
        }

        foreach (BoxHeight height in heights.OnTheLevelOf(lacking.Adds[0]))
        {
            if (AtStuds(cause, lacking.Adds.Select(one => new PlacedBox(one.Address, one.Box.WithHeight(height))), false) is { } level)
            {
                return new Remedy[] { level };
            }
        }

        if (cause.Severity == Severity.Violation && (SetToCount(cause) ?? (Remedy?)InNeed()) is { } needed)
        {
            return new[] { needed };
        }

        return new Remedy[] { trials.IsExhausted ? NotLookedAt(cause, default) : NoneAdded(cause, lacking.Adds) };
    }

    /// <summary>Boxes of the room that hang where something else is found of them, set where they serve: none has to be added then, which would be off their level.</summary>
    private MoveBoxes? SetToCount(Cause cause)
    {
        HashSet<int> seen = [];
        foreach (int box in trials.FoundIn(SurfaceAddress.Read(cause.Findings[0].Address).Space))
        {
            List<int> stick = sticks.SetWith(box);
            foreach ((MoveBoxes move, HashSet<(string, string)> left) in stick.Contains(box) && seen.Add(stick[0]) ? Tried(stick) : [])
            {
                if (trials.Clears(cause, [-1], left) && trials.MendsInAll(move, cause))
                {
                    return move;
                }
            }
        }

        return null;
    }

    /// <summary>What a document asks for, where it brings a finding that gives way to it; the text says of which.</summary>
    private AddBox? InNeed()
    {
        trials.InNeed?.Bring(trials.Brings(trials.InNeed));
        return trials.InNeed;
    }

    private NoneFound NothingToAdd(Cause cause, SpaceAnswer lacking)
    {
        (NoRemedyReason reason, Wording text) = cause.Verdict == Verdict.Unknown && cause.Findings[0].Needs != MissingFacts.None ? (NoRemedyReason.NotKnown, $"find out first: {cause.Findings[0].Facts:facts}")
            : lacking.ElseDo?.Invoke() is { } instead ? (NoRemedyReason.ByOtherMeans, instead)
            : state.Rules.Set.Row(cause.RuleId) is SpaceRule { Adds: null } ? (NoRemedyReason.ByOtherMeans, $"nothing that is known here mends it")
            : (NoRemedyReason.NothingFound, (Wording)$"no place was found for a box that would surely mend it");
        return new(reason, default, new[] { cause.RuleId }, text);
    }

    /// <summary>Boxes to add at studs that stand, first the nearest ones; where none of them does, as the rule placed them.</summary>
    private AddBox? AtStuds(Cause cause, Items<PlacedBox> adds, bool elsewhere)
    {
        for (int nth = 0; nth <= MostStudsToTry; nth++)
        {
            Items<PlacedBox> placed = nth == MostStudsToTry ? adds : adds.Select(box => Nailed(box, nth));
            if ((nth == MostStudsToTry || placed != adds) && (!elsewhere || Allowed(ref placed)) && Adding(placed) is var added && trials.Mends(added, cause, [-1]))
            {
                return added;
            }
        }

        return null;
    }

    /// <summary>Boxes to add, in words: where in a ceiling one goes matters where that isn't the place that comes to mind.</summary>
    private AddBox Adding(Items<PlacedBox> placed, bool isElsewhere = false)
    {
        Items<Wording> boxes = placed.Select(one => isElsewhere && one.Box is { At: null, Plan: { } plan } ? InPlan(Described(one), plan) : Described(one));
        return new(placed, boxes.Count == 1 ? $"add {boxes[0]:boxes}" : (Wording)$"add {boxes.Count:count} boxes: {Wording.Apart(boxes):boxes}");
    }

    /// <summary>Boxes to add at the nearest heights that every rule allows where they go, with slack where there is any.</summary>
    private bool Allowed(ref Items<PlacedBox> placed)
    {
        Items<PlacedBox> moved = placed.Select(one => heights.For(one) is { } height ? new PlacedBox(one.Address, one.Box.WithHeight(height)) : one);
        bool isOther = moved != placed;
        placed = moved;
        return isOther;
    }

    /// <summary>Why none can be added: the rules that leave no height where it would go, else what would be found with it.</summary>
    private NoneFound NoneAdded(Cause cause, Items<PlacedBox> added)
    {
        foreach (PlacedBox placed in added)
        {
            if (placed.Box.At is { } at && state.SiteFor(placed.Address, placed.Box) is { } site && ConflictingRules.At(site, at, null) is { Count: > 0 } rules)
            {
                return OpenAt(site, at, rules) is { } open
                    ? new(NoRemedyReason.NotKnown, default, rules, $"find out first: {FactText.Of(open):facts}, without which {Wording.And(rules.Select(Wording.Name)):rules} can't tell a height for {Wording.Term(placed.Box.Purpose.Name):purpose} box on {placed.Address:wall}")
                    : new(NoRemedyReason.NothingFound, default, rules, $"no height was found for {Described(placed):box}: {NoneLeft(rules):rules}");
            }
        }

        Items<string> brings = trials.Brings(Adding(added));
        return new(NoRemedyReason.NothingFound, default, brings.Count == 0 ? new[] { cause.RuleId } : brings, brings.Count == 0 ? $"no place was found where one more would bring no other finding"
            : (Wording)$"no place was found where one more would bring no other finding ({brings:rules})");
    }

    /// <summary>What would have to be known, where rules leave no height for certain but may leave one; null where they leave none.</summary>
    private static MissingFacts? OpenAt(StatedSite site, Distance at, Items<string> rules)
    {
        AllowedHeights all = AllowedHeights.Anything;
        foreach (StatedPlacement placement in site.Placements)
        {
            all = rules.Contains(placement.Rule.Id) ? all & SlabJudge.At(placement.Slabs, at.Ticks) : all;
        }

        return all.Possible.IsEmpty || all.Needs == MissingFacts.None ? null : all.Needs;
    }

    /// <summary>A box to add, nailed to the nearest, the second nearest… stud that has room for it; as it is where studs are only assumed, or it is held otherwise.</summary>
    private PlacedBox Nailed(PlacedBox placed, int nth)
    {
        List<Distance> studs = places.StudsFor(placed);
        return nth < studs.Count ? new(placed.Address, placed.Box with { At = studs[nth], Mounting = state.HeldAt(placed, studs[nth]) }) : placed;
    }

    /// <summary>The island or the like that a box with a height is set into where it is listed under the floor; null for any other.</summary>
    private Freestanding? IslandUnder(PlacedBox placed)
    {
        SurfaceAddress address = SurfaceAddress.Read(placed.Address);
        if (address.Surface != DwellingBoxes.Floor || placed.Box is not { Plan: { } at, Height: not null })
        {
            return null;
        }

        foreach (Room room in state.Dwelling.Rooms)
        {
            foreach (Freestanding one in room.Id == address.Space ? room.Freestanding : default)
            {
                if (one.Corners.Exists(point => point.Right <= at.Right) && one.Corners.Exists(point => point.Right >= at.Right) && one.Corners.Exists(point => point.Into <= at.Into) && one.Corners.Exists(point => point.Into >= at.Into))
                {
                    return one;
                }
            }
        }

        return null;
    }

    private Wording InPlan(Wording box, PlanPoint plan) =>
        $"{box}, {Printed.Of(plan.Right, state.Options.Units):right} to the right of the left end of the first wall and {Printed.Of(plan.Into, state.Options.Units):into} into the room";

    private Wording Described(PlacedBox placed)
    {
        Wording box = $"{Wording.Term(placed.Box.Purpose.Name):purpose} box on {placed.Address:wall}";
        if (IslandUnder(placed) is { } island && placed.Box.Plan is { } plan)
        {
            // Listed under the floor, it is in what stands there.
            box = InPlan($"{Wording.Term(placed.Box.Purpose.Name):purpose} box in {SurfaceAddress.Of(SurfaceAddress.Read(placed.Address).Space, island.Id):island}", plan);
        }

        box = placed.Box.At is { } at ? OnStud($"{box}, {Printed.Of(at, state.Options.Units):place} from its left end", placed.Box.Mounting) : box;
        box = placed.Box.Height is { } height ? $"{box}, {Printed.Exactly(height, state.Options.Units):height}" : box;
        return placed.Box.Controls is { Count: > 0 } controls ? $"{box}, to control {Wording.And(controls.Select(Wording.Name)):controlled}" : box;
    }
}
