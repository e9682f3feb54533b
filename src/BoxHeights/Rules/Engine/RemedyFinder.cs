using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Looks for what mends a cause: the stick before the box, up or down before sideways, with slack before without. Every remedy is tried before it is offered.</summary>
internal sealed class RemedyFinder
{
    private readonly LayoutEvaluator evaluator;
    private readonly Evaluation evaluation;
    private readonly LayoutState state;
    private readonly PlacesToTry places;

    public RemedyFinder(LayoutEvaluator evaluator, Evaluation evaluation, LayoutState state)
    {
        this.evaluator = evaluator;
        this.evaluation = evaluation;
        this.state = state;
        places = new(state);
    }

    public Items<Remedy> For(Cause cause)
    {
        Finding first = cause.Findings[0];
        if (first.Space is { } lacking)
        {
            return Added(cause, lacking);
        }

        if (first.Box < 0 || (first.Needs & Facts.BrokenPart) != 0)
        {
            return default;
        }

        Rule? rule = state.Rules.Set.Find(cause.RuleId);
        if (rule is LimitRule)
        {
            return OtherBox(cause);
        }

        List<Remedy> found = [];
        if (rule is FramingFit)
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

            if (!stick.Contains(finding.Box))
            {
                stick.Add(finding.Box);
            }
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
        foreach ((BoxHeight height, bool slack) in places.HeightsFor(boxes, levelOnly))
        {
            MoveBoxes move = Move(boxes, height, null, slack);
            if (Mends(move, cause, toMend))
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
            foreach (Distance? along in places.PlacesFor(box))
            {
                foreach ((BoxHeight height, bool slack) in places.HeightsFor(one, false, along))
                {
                    Remedy move = Move(one, height, along, slack);
                    if (Mends(move, cause, one))
                    {
                        return move;
                    }
                }
            }
        }

        Items<string> conflicting = Conflict.At(state, box, cause.RuleId);
        string id = state.Boxes[box].Source.Id;
        return new NoneFound(conflicting, IsFixed(box)
            ? id + " has to stay where it is"
            : cause.Outcome == Outcome.Unknown
                ? "find out first: " + FactText.Of(cause.Findings[0].Needs)
                : "no place for " + id + " was found straight up or down, or along its wall: "
                    + string.Join(" and ", conflicting) + (conflicting.Count == 1 ? " leaves none" : " leave none together"));
    }

    /// <summary>A box that nothing holds where it is goes to a stud, or gets something to be nailed to.</summary>
    private List<Remedy> Held(Cause cause, int box)
    {
        Remedy move = Aside(cause, box) ?? Single(cause, box);
        DeviceBox source = state.Boxes[box].Source;
        if (source.At is not { } at || source.Mounting?.How != MountingMethod.Stud)
        {
            return [move];
        }

        AddBlocking block = new(source.Id, BlockingText.For(source.Id, state.Boxes[box].Surface.Framing!, at, state.SizeOf(box), state.Options.Units));
        return !Mends(block, cause, [box]) ? [move] : move is MoveBoxes ? [move, block] : [block];
    }

    /// <summary>The nearest place along the wall that mends it at the height that the box has.</summary>
    private MoveBoxes? Aside(Cause cause, int box)
    {
        if (IsFixed(box) || state.HeightOf(box) is not { } height)
        {
            return null;
        }

        List<int> one = [box];
        foreach (Distance? along in places.PlacesFor(box))
        {
            MoveBoxes move = Move(one, height, along, true);
            if (along is not null && Mends(move, cause, one))
            {
                return move;
            }
        }

        return null;
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

    private MoveBoxes Move(List<int> boxes, BoxHeight height, Distance? along, bool slack)
    {
        Items<string> ids = new(boxes.ConvertAll(box => state.Boxes[box].Source.Id));
        string text = boxes.Count == 1
            ? "set " + ids[0] + " " + height + (along is { } place ? ", " + Printed.Of(place, state.Options.Units) + " from the left end of its wall" : "")
            : "set the stick " + height + " for " + boxes.Count + " boxes: " + ids;
        text += slack ? "" : " (no slack)";
        return new(ids, height, along, slack, text);
    }

    private Items<Remedy> Added(Cause cause, SpaceAnswer lacking)
    {
        if (lacking.Cure.Count == 0)
        {
            return default;
        }

        AddBox added = new(lacking.Cure, "add " + string.Join(" and ", lacking.Cure.Select(Described)));
        return Mends(added, cause, [-1]) ? new Remedy[] { added } : default;
    }

    private string Described(PlacedBox placed) =>
        placed.Box.Purpose + " box on " + placed.Address
        + (placed.Box.At is { } at ? ", " + Printed.Of(at, state.Options.Units) + " from its left end" : "")
        + (placed.Box.Height is { } height ? ", " + height : "");

    /// <summary>What a limit asks for: another box.</summary>
    private Items<Remedy> OtherBox(Cause cause)
    {
        Finding first = cause.Findings[0];
        BoxTraits traits = state.SitesOf(first.Box)[0].Site.Box;
        LimitRule rule = (LimitRule)state.Rules.Set.Find(cause.RuleId);
        if (rule.Mend(traits, state.Options.Catalog) is not { Volume: { } volume })
        {
            return new Remedy[] { new NoneFound(new[] { cause.RuleId }, rule.Otherwise) };
        }

        ResizeBox larger = new(cause.Subjects, volume, "take a box marked at least " + volume + " for " + cause.Subjects);
        List<int> boxes = [];
        foreach (Finding finding in cause.Findings)
        {
            boxes.Add(finding.Box);
        }

        return Mends(larger, cause, boxes)
            ? new Remedy[] { larger }
            : new Remedy[] { new NoneFound(new[] { cause.RuleId }, cause.Outcome == Outcome.Unknown ? "find out first: " + FactText.Of(first.Needs) : "no standard box mends it without another finding") };
    }

    /// <summary>Whether a remedy, carried out, clears the finding of every box and adds none.</summary>
    private bool Mends(Remedy remedy, Cause cause, List<int> boxes)
    {
        Evaluation after = evaluator.Evaluate(remedy.ApplyTo(state.Dwelling));
        foreach (Finding finding in after.Findings)
        {
            foreach (Finding mended in cause.Findings)
            {
                if (mended.IsAbout(finding) && boxes.Contains(mended.Box))
                {
                    return false;
                }
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
}
