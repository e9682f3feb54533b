using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights.Rules;

/// <summary>Looks for what mends a cause: the stick before the box, up or down before sideways, with slack before without. Every remedy is tried before it is offered.</summary>
internal sealed partial class RemedyFinder
{
    private readonly LayoutState state;
    private readonly Trials trials;
    private readonly PlacesToTry places;
    private readonly HeightsToTry heights;
    private readonly BoxesSetTogether sticks;
    private readonly Dictionary<(List<int> Boxes, Severity? Brings), List<(MoveBoxes Move, HashSet<(string RuleId, string Subject)> Left)>> tried = [];

    public RemedyFinder(Items<Finding> findings, LayoutState state)
    {
        this.state = state;
        trials = new(findings, state);
        places = new(state);
        heights = new(state, trials);
        sticks = new(state);
    }

    public Items<Remedy> For(Cause cause, CancellationToken cancellation)
    {
        trials.Begin(cancellation);
        Items<Remedy> found = Found(cause);
        foreach (Remedy remedy in found)
        {
            remedy.Words = state.Options.Words;
        }

        return found;
    }

    private Items<Remedy> Found(Cause cause)
    {
        Finding first = cause.Findings[0];
        if (first.Space is { } lacking)
        {
            return lacking.Moved is { } moved ? SetRight(cause, moved) : Added(cause, lacking);
        }

        // What is wrong with the description is said in the finding: there is nothing to build otherwise.
        if (first.Box < 0 || (first.Needs & MissingFacts.BrokenPart) != 0)
        {
            return default;
        }

        if (first.Limit is { } limit)
        {
            LimitRemedies limits = new(state, trials, NotLookedAt);
            return InNeed(cause, limits.For(cause, limit, cause.Findings), boxes => limits.For(cause, limit, cause.Findings.Where(finding => boxes.Contains(finding.Box))));
        }

        Items<string> toAsk = cause.Findings.Where(IsToAsk).Select(finding => state.Boxes[finding.Box].Source.Id).Distinct();
        List<Remedy> found = toAsk.Count == 0 ? [] : [new NoneFound(NoRemedyReason.NotKnown, toAsk, new[] { cause.RuleId }, $"find out first: {FactText.Of(MissingFacts.EdgeMeant):facts}")];
        if ((WhatHoldsInstead(cause) & ~HeldInstead.PackedStud) != HeldInstead.Nothing)
        {
            // A habit that a box misses as well is in the cause too: each box once.
            HashSet<int> held = [];
            foreach (Finding finding in cause.Findings)
            {
                if (held.Add(finding.Box) && !IsToAsk(finding))
                {
                    found.AddRange(Held(cause, finding.Box));
                }
            }

            return new(found);
        }

        foreach (List<int> stick in sticks.Of(cause.Findings.Where(finding => !IsToAsk(finding))))
        {
            List<Remedy> mended = ByStick(cause, stick, first.Group >= 0);
            found.AddRange(InNeed(cause, new(mended), left => new(left.Count == stick.Count ? ByStick(cause, left, first.Group >= 0) : OneByOne(cause, left))));
        }

        return new(found);
    }

    /// <summary>Whether somebody meant a height that may be right, and didn't say to which edge of the box: that is asked, and nothing set otherwise before.</summary>
    private static bool IsToAsk(Finding finding) => finding.Verdict == Verdict.Unknown && (finding.Needs & MissingFacts.EdgeMeant) != 0;

    /// <summary>A violation doesn't wait for advice: for the boxes for which nothing was found, what mends them and brings the least, which it says.</summary>
    private Items<Remedy> InNeed(Cause cause, Items<Remedy> found, Func<List<int>, Items<Remedy>> find)
    {
        for (Severity most = Severity.Note; most < cause.Severity && cause.Severity == Severity.Violation; most++)
        {
            List<int> left = [];
            foreach (Remedy remedy in found.Where(IsNone))
            {
                left.AddRange(((NoneFound)remedy).Ids.Select(id => state.Boxes.FindIndex(box => box.Source.Id == id)));
            }

            if (left.Count == 0)
            {
                break;
            }

            trials.MayBring = most;
            Items<Remedy> needed = find(left);
            trials.MayBring = null;
            if (needed.Exists(remedy => remedy is not NoneFound))
            {
                found = new([.. found.Where(remedy => !IsNone(remedy)), .. needed]);
            }
        }

        return found;

        static bool IsNone(Remedy remedy) => remedy is NoneFound { Reason: NoRemedyReason.NothingFound };
    }

    private List<Remedy> ByStick(Cause cause, List<int> boxes, bool levelOnly)
    {
        List<int> whole = levelOnly ? boxes.FindAll(sticks.IsFree) : sticks.SetWith(boxes[0]);

        // What is in the way of a few, or stands beside one, is no reason to set all others otherwise.
        bool areFew = !levelOnly && (boxes.Count * 2 <= whole.Count || (boxes.Count == 1 && state.Rules.Set.Row(cause.RuleId) is { MendsAside: true }));
        List<Remedy>? alone = areFew ? OneByOne(cause, boxes) : null;
        if (alone?.TrueForAll(remedy => remedy is not NoneFound) == true && InOne(cause, alone, boxes) is { } few)
        {
            return few;
        }

        if (whole.Count > 0 && Together(cause, whole, boxes, levelOnly) is { } move)
        {
            return [move];
        }

        if (levelOnly && boxes.Count > 1 && cause.Verdict == Verdict.Unknown && !trials.IsExhausted)
        {
            // Each by itself would be level with the others only as long as those stay.
            return [NonePlaced(cause, new(boxes.ConvertAll(box => state.Boxes[box].Source.Id)), new[] { cause.RuleId }, !boxes.Exists(sticks.IsFree))];
        }

        // One level for all boxes of the purpose may do where one stick alone would leave the others behind.
        List<int> level = sticks.LevelWith(boxes[0]);
        return !levelOnly && level.Count > whole.Count && boxes.TrueForAll(sticks.IsFree) && (Together(cause, level, boxes, false) ?? OnOneLevel(cause, level, whole, boxes)) is { } all
            ? [all]
            : alone ?? OneByOne(cause, boxes);
    }

    /// <summary>Moves of single boxes, those to one height as one move; null where that doesn't do, so that they don't belong together.</summary>
    private List<Remedy>? InOne(Cause cause, List<Remedy> alone, List<int> boxes)
    {
        if (alone.Count < 2 || alone[0] is not MoveBoxes { Along: null } first || !alone.TrueForAll(remedy => remedy is MoveBoxes { Along: null } one && one.Height == first.Height && one.HasSlack == first.HasSlack))
        {
            return alone;
        }

        MoveBoxes move = Move(boxes, first.Height, null, first.HasSlack);
        return trials.Mends(move, cause, boxes) ? [move] : null;
    }

    /// <summary>A stick, and with it whatever else on its level may be set so: what is kept from that height stays where it is.</summary>
    private MoveBoxes? OnOneLevel(Cause cause, List<int> level, List<int> stick, List<int> toMend)
    {
        HashSet<int> set = [.. stick];
        foreach ((BoxHeight height, bool slack) in heights.For(stick, false))
        {
            List<int> all = level.FindAll(box => set.Contains(box) || (state.HeightOf(box) != height && heights.Allows(box, height)));
            MoveBoxes move = Move(all, height, null, slack);
            if (trials.Mends(move, cause, toMend))
            {
                return move;
            }
        }

        return null;
    }

    private MoveBoxes? Together(Cause cause, List<int> boxes, List<int> toMend, bool levelOnly)
    {
        if (levelOnly || !toMend.TrueForAll(sticks.IsFree))
        {
            foreach ((BoxHeight height, bool slack) in heights.For(boxes, levelOnly))
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
            if (trials.Clears(cause, toMend, left))
            {
                return move;
            }
        }

        return null;
    }

    /// <summary>The moves of a whole stick or level that add no finding: many causes ask for the same.</summary>
    private List<(MoveBoxes Move, HashSet<(string RuleId, string Subject)> Left)> Tried(List<int> boxes)
    {
        if (!tried.TryGetValue((boxes, trials.MayBring), out List<(MoveBoxes, HashSet<(string, string)>)>? moves))
        {
            moves = [];
            foreach ((BoxHeight height, bool slack) in heights.For(boxes, false))
            {
                MoveBoxes move = Move(boxes, height, null, slack);
                if (trials.LeftAfter(move, boxes) is { } left)
                {
                    moves.Add((move, left));
                }
            }

            if (!trials.IsExhausted)
            {
                tried[(boxes, trials.MayBring)] = moves;
            }
        }

        return moves;
    }

    /// <summary>Each box by itself; those that there is nothing for share a line where they share the reason.</summary>
    private List<Remedy> OneByOne(Cause cause, List<int> boxes)
    {
        List<Remedy> found = [];
        List<(Items<string> Conflicting, bool Stays, List<string> Ids)> none = [];
        List<string> unseen = [];
        foreach (int box in boxes)
        {
            if (Alone(cause, box) is { } remedy)
            {
                found.Add(remedy);
                continue;
            }

            if (trials.IsExhausted)
            {
                unseen.Add(state.Boxes[box].Source.Id);
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

        if (unseen.Count > 0)
        {
            found.Add(NotLookedAt(cause, new(unseen)));
        }

        return found;
    }

    /// <summary>Boxes that nothing was found for before so much was tried as may be.</summary>
    private NoneFound NotLookedAt(Cause cause, Items<string> ids) => new(NoRemedyReason.OutOfTries, ids, new[] { cause.RuleId }, ids.Count == 0
        ? $"after {state.Options.Caps.MostTriesForACause:tries} tries not all remedies were looked at: {nameof(EvaluatorOptions.MostTriesForACause):option} of the evaluator's options raises that"
        : (Wording)$"after {state.Options.Caps.MostTriesForACause:tries} tries not all remedies for {ids} were looked at: {nameof(EvaluatorOptions.MostTriesForACause):option} of the evaluator's options raises that");

    private NoneFound NonePlaced(Cause cause, Items<string> ids, Items<string> conflicting, bool stays)
    {
        bool one = ids.Count == 1;
        Wording left = ids.Exists(id => OverCounter.Decides(state, state.Boxes.FindIndex(box => box.Source.Id == id))) ? $"{NoneLeft(conflicting):rules} over the counter" : NoneLeft(conflicting);
        NoRemedyReason reason = stays ? NoRemedyReason.Stays : cause.Verdict == Verdict.Unknown ? NoRemedyReason.NotKnown : NoRemedyReason.NothingFound;
        return new(reason, ids, conflicting, stays ? (one ? $"{ids} has to stay where it is" : (Wording)$"{ids} have to stay where they are")
            : cause.Verdict == Verdict.Unknown ? $"find out first: {cause.Findings[0].Facts:facts}"
            : one ? $"no place for {ids} was found straight up or down, or along its wall: {left:rules}"
            : (Wording)$"no place for {ids} was found straight up or down, or along their walls: {left:rules}");
    }

    private static Wording NoneLeft(Items<string> rules) =>
        rules.Count == 1 ? $"{rules:rule} leaves none" : (Wording)$"{Wording.And(rules.Select(Wording.Name)):rules} leave none together";

    private MoveBoxes? Single(Cause cause, int box)
    {
        List<int> one = [box];
        foreach (Distance? along in sticks.IsFree(box) ? places.PlacesFor(box) : [])
        {
            foreach ((BoxHeight height, bool slack) in heights.For(one, false, along))
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
        Wording set = Printed.Exactly(height, state.Options.Units);
        Mounting? held = along is { } there ? state.Boxes[boxes[0]].HeldAt(there, state.Options.Catalog) : null;
        Wording move = boxes.Count > 1 ? $"set the stick {set:height} for {boxes.Count:count} boxes: {ids}"
            : OnStud(along is { } place ? $"set {ids:id} {set:height}, {Printed.Of(place, state.Options.Units):place} from the left end of its wall" : (Wording)$"set {ids:id} {set:height}", held);
        return new(ids, height, along, held, slack, slack ? move : $"{move} (no slack)");
    }

    /// <summary>The same with the stud and side that it is nailed to, where those are known.</summary>
    public static Wording OnStud(Wording move, Mounting? held) =>
        held is not { Stud: { } stud, Side: { } side } ? move
        : side == StudSide.Left ? $"{move}, on the left side of stud {stud}" : (Wording)$"{move}, on the right side of stud {stud}";
}
