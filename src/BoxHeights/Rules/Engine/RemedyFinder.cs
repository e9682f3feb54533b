using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Looks for what mends a cause: the stick before the box, up or down before sideways, with slack before without. Every remedy is tried before it is offered.</summary>
internal sealed partial class RemedyFinder
{
    /// <summary>How many studs an added box is tried at.</summary>
    private const int MostStudsToTry = 4;

    private readonly LayoutState state;
    private readonly Trials trials;
    private readonly PlacesToTry places;
    private readonly BoxesSetTogether sticks;
    private readonly Dictionary<List<int>, List<(MoveBoxes Move, HashSet<(string RuleId, string Subject)> Left)>> tried = [];

    public RemedyFinder(LayoutEvaluator evaluator, Items<Finding> findings, LayoutState state)
    {
        this.state = state;
        trials = new(evaluator, findings, state);
        places = new(state);
        sticks = new(state);
    }

    public Items<Remedy> For(Cause cause)
    {
        Finding first = cause.Findings[0];
        if (first.Space is { } lacking)
        {
            return lacking.Moved is { } moved ? SetRight(cause, moved) : Added(cause, lacking);
        }

        if (first.Box < 0 || (first.Needs & Facts.BrokenPart) != 0)
        {
            return default;
        }

        if (first.Limit is { } limit)
        {
            return new LimitRemedies(state, trials.Mends).For(cause, limit);
        }

        List<Remedy> found = [];
        if ((WhatHoldsInstead(cause) & ~HeldInstead.PackedStud) != HeldInstead.Nothing)
        {
            // A habit that a box misses as well is in the cause too: each box once.
            HashSet<int> held = [];
            foreach (Finding finding in cause.Findings)
            {
                if (held.Add(finding.Box))
                {
                    found.AddRange(Held(cause, finding.Box));
                }
            }

            return new(found);
        }

        foreach (List<int> stick in sticks.Of(cause))
        {
            found.AddRange(ByStick(cause, stick, first.Group >= 0));
        }

        return new(found);
    }

    private List<Remedy> ByStick(Cause cause, List<int> boxes, bool levelOnly)
    {
        List<int> whole = levelOnly ? boxes.FindAll(sticks.IsFree) : sticks.SetWith(boxes[0]);

        // What is in the way of a few, or stands beside one, is no reason to set all others otherwise.
        bool areFew = !levelOnly && (boxes.Count * 2 <= whole.Count || (boxes.Count == 1 && state.Rules.Set.Find(cause.RuleId) is { MendsAside: true }));
        List<Remedy>? alone = areFew ? OneByOne(cause, boxes) : null;
        if (alone?.TrueForAll(remedy => remedy is not NoneFound) == true)
        {
            return alone;
        }

        if (whole.Count > 0 && Together(cause, whole, boxes, levelOnly) is { } move)
        {
            return [move];
        }

        // One level for all boxes of the purpose may do where one stick alone would leave the others behind.
        List<int> level = sticks.LevelWith(boxes[0]);
        return !levelOnly && level.Count > whole.Count && boxes.TrueForAll(sticks.IsFree) && Together(cause, level, boxes, false) is { } all
            ? [all]
            : alone ?? OneByOne(cause, boxes);
    }

    private MoveBoxes? Together(Cause cause, List<int> boxes, List<int> toMend, bool levelOnly)
    {
        if (levelOnly || !toMend.TrueForAll(sticks.IsFree))
        {
            foreach ((BoxHeight height, bool slack) in places.HeightsFor(boxes, levelOnly))
            {
                MoveBoxes move = Move(boxes, height, null, slack);
                if (trials.Mends(move, cause, toMend))
                {
                    return move;
                }
            }

            return null;
        }

        foreach ((MoveBoxes move, HashSet<(string, string)> left) in Tried(boxes))
        {
            if (Trials.Clears(cause, toMend, left))
            {
                return move;
            }
        }

        return null;
    }

    /// <summary>The moves of a whole stick or level that add no finding: many causes ask for the same.</summary>
    private List<(MoveBoxes Move, HashSet<(string RuleId, string Subject)> Left)> Tried(List<int> boxes)
    {
        if (!tried.TryGetValue(boxes, out List<(MoveBoxes, HashSet<(string, string)>)>? moves))
        {
            tried[boxes] = moves = [];
            foreach ((BoxHeight height, bool slack) in places.HeightsFor(boxes, false))
            {
                MoveBoxes move = Move(boxes, height, null, slack);
                if (trials.LeftAfter(move, boxes) is { } left)
                {
                    moves.Add((move, left));
                }
            }
        }

        return moves;
    }

    /// <summary>Each box by itself; those that there is nothing for share a line where they share the reason.</summary>
    private List<Remedy> OneByOne(Cause cause, List<int> boxes)
    {
        List<Remedy> found = [];
        List<(Items<string> Conflicting, bool Stays, List<string> Ids)> none = [];
        foreach (int box in boxes)
        {
            if (Alone(cause, box) is { } remedy)
            {
                found.Add(remedy);
                continue;
            }

            Items<string> conflicting = ConflictingRules.At(state, box, cause.RuleId);
            int like = none.FindIndex(one => one.Conflicting == conflicting && one.Stays != sticks.IsFree(box));
            if (like < 0)
            {
                like = none.Count;
                none.Add((conflicting, !sticks.IsFree(box), []));
            }

            none[like].Ids.Add(state.Boxes[box].Source.Id);
        }

        foreach ((Items<string> conflicting, bool stays, List<string> ids) in none)
        {
            found.Add(NonePlaced(cause, new(ids), conflicting, stays));
        }

        return found;
    }

    private static NoneFound NonePlaced(Cause cause, Items<string> ids, Items<string> conflicting, bool stays)
    {
        bool one = ids.Count == 1;
        return new(ids, conflicting, stays
            ? ids + (one ? " has to stay where it is" : " have to stay where they are")
            : cause.Outcome == Outcome.Unknown
                ? "find out first: " + FactText.Of(cause.Findings[0].Needs)
                : "no place for " + ids + " was found straight up or down, or along " + (one ? "its wall: " : "their walls: ")
                    + string.Join(" and ", conflicting) + (conflicting.Count == 1 ? " leaves none" : " leave none together"));
    }

    private MoveBoxes? Single(Cause cause, int box)
    {
        List<int> one = [box];
        foreach (Distance? along in sticks.IsFree(box) ? places.PlacesFor(box) : [])
        {
            foreach ((BoxHeight height, bool slack) in places.HeightsFor(one, false, along))
            {
                MoveBoxes move = Move(one, height, along, slack);
                if (trials.Mends(move, cause, one))
                {
                    return move;
                }
            }
        }

        return null;
    }

    private MoveBoxes Move(List<int> boxes, BoxHeight height, Distance? along, bool slack)
    {
        Items<string> ids = new(boxes.ConvertAll(box => state.Boxes[box].Source.Id));
        string set = height.Exactly(state.Options.Units);
        Mounting? held = along is { } there ? state.Boxes[boxes[0]].HeldAt(there, state.Options.Catalog) : null;
        string text = boxes.Count == 1
            ? "set " + ids[0] + " " + set + (along is { } place ? ", " + Printed.Of(place, state.Options.Units) + " from the left end of its wall" : "") + OnStud(held)
            : "set the stick " + set + " for " + boxes.Count + " boxes: " + ids;
        text += slack ? "" : " (no slack)";
        return new(ids, height, along, held, slack, text);
    }

    private static string OnStud(Mounting? held) =>
        held is { Stud: { } stud, Side: { } side } ? ", on the " + (side == StudSide.Left ? "left" : "right") + " side of stud " + stud : "";

    /// <summary>A box to where its neighbors ask for it, on the steps that marks have.</summary>
    private Items<Remedy> SetRight(Cause cause, DeviceBox moved)
    {
        int box = Array.FindIndex(state.Boxes, one => one.Source.Id == moved.Id);
        if (!sticks.IsFree(box) || moved is not { At: { } at, Height: { } height })
        {
            return default;
        }

        Distance? along = at == state.AtOf(box) ? null : at.RoundNearest(state.Options.AlongStep);
        MoveBoxes move = Move([box], height.WithValue(height.Value.RoundNearest(state.Options.HeightStep)), along, true);
        return trials.LeftAfter(move, [box]) is { } left && Trials.Clears(cause, [-1], left) ? new Remedy[] { move } : Items<Remedy>.None;
    }

    private Items<Remedy> Added(Cause cause, SpaceAnswer lacking)
    {
        if (lacking.Cure.Count == 0)
        {
            return default;
        }

        // At studs that stand, first the nearest ones; where none of them does, as the rule placed them.
        for (int nth = 0; nth <= MostStudsToTry; nth++)
        {
            Items<PlacedBox> placed = nth == MostStudsToTry ? lacking.Cure : lacking.Cure.Select(box => Nailed(box, nth));
            AddBox added = new(placed, "add " + string.Join(" and ", placed.Select(Described)));
            if ((nth == MostStudsToTry || placed != lacking.Cure) && trials.Mends(added, cause, [-1]))
            {
                return new Remedy[] { added };
            }
        }

        return default;
    }

    /// <summary>A box to add, nailed to the nearest, the second nearest… stud that has room for it; as it is where studs are only assumed, or it is held otherwise.</summary>
    private PlacedBox Nailed(PlacedBox placed, int nth)
    {
        List<Distance> studs = places.StudsFor(placed);
        return nth < studs.Count ? new(placed.Address, placed.Box with { At = studs[nth], Mounting = state.HeldAt(placed, studs[nth]) }) : placed;
    }

    private string Described(PlacedBox placed) =>
        placed.Box.Purpose + " box on " + placed.Address
        + (placed.Box.At is { } at ? ", " + Printed.Of(at, state.Options.Units) + " from its left end" + OnStud(placed.Box.Mounting) : "")
        + (placed.Box.Height is { } height ? ", " + height.Exactly(state.Options.Units) : "");
}
