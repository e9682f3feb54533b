using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Tries remedies out. One that changes boxes where they are is tried in a layout of its own, in which only what it touches is judged again.</summary>
internal sealed class Trials
{
    private readonly LayoutEvaluator evaluator;
    private readonly LayoutState state;
    private readonly Dictionary<(string RuleId, string Subject), List<Finding>> known = [];
    private readonly Dictionary<string, List<int>> boxesOf = new(StringComparer.Ordinal);
    private LayoutState? changed;

    public Trials(LayoutEvaluator evaluator, Items<Finding> findings, LayoutState state)
    {
        this.evaluator = evaluator;
        this.state = state;
        foreach (Finding finding in findings)
        {
            known.ListOf(KeyOf(finding)).Add(finding);
        }

        for (int box = 0; box < state.Boxes.Length; box++)
        {
            boxesOf.ListOf(state.Boxes[box].Source.Id).Add(box);
        }
    }

    /// <summary>Whether a remedy, carried out, clears a cause's findings about some boxes and adds none.</summary>
    public bool Mends(Remedy remedy, Cause cause, List<int> boxes) => LeftAfter(remedy, boxes) is { } left && Clears(cause, boxes, left);

    /// <summary>Whether what is left is nothing of a cause's about some boxes.</summary>
    public static bool Clears(Cause cause, List<int> boxes, HashSet<(string RuleId, string Subject)> left)
    {
        HashSet<int> mended = [.. boxes];
        foreach (Finding finding in cause.Findings)
        {
            if (mended.Contains(finding.Box) && left.Contains(KeyOf(finding)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>What is found after a remedy that adds boxes; null where it adds a finding. What is short of a violation and found alike of a box that is set alike is no new one: mending that mends both.</summary>
    private HashSet<(string RuleId, string Subject)>? LeftAfter(AddBox remedy)
    {
        Dictionary<string, DeviceBox> added = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in remedy.Placed)
        {
            added[placed.Box.Id] = placed.Box;
        }

        List<Finding> found = [.. evaluator.Evaluate(remedy.ApplyTo(state.Dwelling)).Findings];
        return LeftOf(found.FindAll(finding => finding.IsViolation || finding.Space is not null || !added.TryGetValue(finding.Subject, out DeviceBox? box) || !IsFoundOfItsLike(finding, box)));
    }

    private bool IsFoundOfItsLike(Finding finding, DeviceBox box)
    {
        foreach (List<Finding> about in known.Values)
        {
            foreach (Finding one in about)
            {
                if (one.RuleId == finding.RuleId && one.Box >= 0 && one.Height == finding.Height && state.Boxes[one.Box].Source.Purpose == box.Purpose
                    && one.Outcome >= finding.Outcome && one.Severity >= finding.Severity)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>What is found after a remedy about what it touches and about some boxes more; null where it adds a finding, or makes one worse.</summary>
    public HashSet<(string RuleId, string Subject)>? LeftAfter(Remedy remedy, List<int> boxes)
    {
        if (remedy is AddBox more)
        {
            return LeftAfter(more);
        }

        if (remedy.Changes.Count == 0)
        {
            return LeftOf(evaluator.Evaluate(remedy.ApplyTo(state.Dwelling)).Findings);
        }

        List<int> moved = [];
        foreach (string id in remedy.Changes)
        {
            moved.AddRange(boxesOf[id]);
        }

        LayoutState layout = changed ??= evaluator.StateOf(state.Dwelling);
        try
        {
            foreach (int box in moved)
            {
                layout.Describe(box, remedy.Changed(state.Boxes[box].Source));
                if (layout.Boxes[box].IsBroken)
                {
                    return null;
                }
            }

            // A rule of a caller's own may part boxes by what a remedy changes: then groups have to be made anew.
            return moved.TrueForAll(box => layout.Groups.Holds(box, layout))
                ? LeftAround(layout, [.. moved, .. boxes])
                : LeftOf(evaluator.Evaluate(remedy.ApplyTo(state.Dwelling)).Findings);
        }
        catch (OverflowException)
        {
            return null;
        }
        finally
        {
            foreach (int box in moved)
            {
                layout.Describe(box, state.Boxes[box].Source);
            }
        }
    }

    /// <summary>Boxes by themselves first: most of what doesn't do shows there, without judging a storey.</summary>
    private HashSet<(string RuleId, string Subject)>? LeftAround(LayoutState layout, HashSet<int> boxes)
    {
        List<Finding> found = [];
        foreach (int box in boxes)
        {
            layout.JudgePlacement(box);
            layout.CollectOwn(box, found);
        }

        if (found.Exists(IsNew))
        {
            return null;
        }

        layout.JudgeTogether(boxes, found);
        return LeftOf(found);
    }

    private HashSet<(string RuleId, string Subject)>? LeftOf(IEnumerable<Finding> found)
    {
        HashSet<(string RuleId, string Subject)> left = [];
        foreach (Finding finding in found)
        {
            if (IsNew(finding))
            {
                return null;
            }

            left.Add(KeyOf(finding));
        }

        return left;
    }

    private bool IsNew(Finding finding) => !known.TryGetValue(KeyOf(finding), out List<Finding>? before)
        || !before.Exists(one => one.IsAbout(finding) && one.Outcome >= finding.Outcome && one.Severity >= finding.Severity);

    private static (string RuleId, string Subject) KeyOf(Finding finding) => (finding.RuleId, finding.Subject);
}
