using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights.Rules;

/// <summary>Tries remedies out. One that changes boxes where they are is tried in a layout of its own, in which only what it touches is judged again.</summary>
internal sealed class Trials
{
    private readonly LayoutState state;
    private readonly Dictionary<(string RuleId, string Subject), List<Finding>> known = [];
    private readonly Dictionary<string, List<Finding>> ofBoxes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> boxesOf;
    private readonly List<string> brought = [];
    private LayoutState? changed;
    private CancellationToken cancellation;
    private Items<string> changing;
    private int inNeedBrings;
    private int triesLeft;
    private HashSet<string>? namesOfParts;
    private Dictionary<string, List<int>>? foundIn;

    public Trials(Items<Finding> findings, LayoutState state)
    {
        this.state = state;
        foreach (Finding finding in findings)
        {
            known.ListOf(KeyOf(finding)).Add(finding);
            if (finding.Box >= 0)
            {
                ofBoxes.ListOf(finding.RuleId).Add(finding);
            }
        }

        boxesOf = new(state.Boxes.Count, StringComparer.Ordinal);
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            boxesOf.ListOf(state.Boxes[box].Source.Id).Add(box);
        }
    }

    /// <summary>Whether more was to be tried than may be: then nothing more is, and what is left wasn't looked at.</summary>
    public bool IsExhausted => triesLeft < 0;

    /// <summary>The boxes of a room or face that something is found of, by themselves or beside others.</summary>
    public IReadOnlyCollection<int> FoundIn(string space)
    {
        if (foundIn is null)
        {
            foundIn = new(StringComparer.Ordinal);
            foreach (List<Finding> about in ofBoxes.Values)
            {
                foreach (Finding one in about)
                {
                    foundIn.ListOf(state.Boxes[one.Box].Surface.Space.Id).Add(one.Box);
                }
            }
        }

        return foundIn.TryGetValue(space, out List<int>? boxes) ? boxes : [];
    }

    /// <summary>Begins to try for a cause.</summary>
    public void Begin(CancellationToken cancels)
    {
        cancellation = cancels;
        triesLeft = state.Options.Caps.MostTriesForACause;
        InNeed = null;
        MayBring = null;
        if (changed is not null)
        {
            changed.Cancellation = cancels;
        }
    }

    private bool MayTry()
    {
        cancellation.ThrowIfCancellationRequested();
        return triesLeft >= 0 && --triesLeft >= 0;
    }

    /// <summary>The most that what a remedy brings may weigh, where nothing mends a violation without; null where it may bring nothing. What it brings it says.</summary>
    public Severity? MayBring { get; set; }

    /// <summary>Whether a remedy, carried out, clears a cause's findings about some boxes and adds none but what it may bring.</summary>
    public bool Mends(Remedy remedy, Cause cause, List<int> boxes) =>
        remedy is AddBox more ? Mends(more, cause) : LeftAfter(remedy, boxes) is { } left && Clears(cause, boxes, left);

    /// <summary>Of the remedies that were tried for the cause and clear what is lacking, but add findings which what is required doesn't wait for, the first that brings the least; null where there was none.</summary>
    public AddBox? InNeed { get; private set; }

    private bool Mends(AddBox remedy, Cause cause)
    {
        if (!MayTry())
        {
            return false;
        }

        int brings = 0;
        bool clears = With(remedy, cause.Findings, found => LeftOf(new Items<Finding>(found).Where(finding => !IsNew(finding) || !state.GivesWay(finding) || (brings = Math.Max(brings, WeightOf(finding))) == 0))) is { } left && Clears(cause, [-1], left);
        if (clears && brings > 0 && (InNeed is null || brings < inNeedBrings))
        {
            (InNeed, inNeedBrings) = (remedy, brings);
        }

        return clears && brings == 0;
    }

    /// <summary>How boxes look together weighs less than a box that is amiss by itself.</summary>
    private static int WeightOf(Finding finding) => finding.Group >= 0 ? 1 : 1 + (int)finding.Severity;

    /// <summary>The same in the whole dwelling, evaluated anew with the remedy: what is lacking may be judged by boxes that a trial of a move doesn't judge it with.</summary>
    public bool MendsInAll(Remedy remedy, Cause cause) => MayTry() && LeftOf(FoundWith(remedy)) is { } left && Clears(cause, [-1], left);

    private bool MayBeBrought(Finding finding) => finding.Severity <= MayBring && state.GivesWay(finding);

    /// <summary>Whether what is left is nothing of a cause's about some boxes, but for what may be brought.</summary>
    public bool Clears(Cause cause, List<int> boxes, HashSet<(string RuleId, string Subject)> left)
    {
        HashSet<int> mended = [.. boxes];
        return !cause.Findings.Exists(finding => mended.Contains(finding.Box) && left.Contains(KeyOf(finding)) && !MayBeBrought(finding));
    }

    /// <summary>The ids of the rules that a remedy which adds boxes would bring findings of.</summary>
    public Items<string> Brings(AddBox remedy) => With(remedy, default, found => new Items<Finding>(found).Where(IsNew).Select(finding => finding.RuleId).Distinct());

    /// <summary>A box to add in a ceiling where nothing is found of it, or where it is offered if that is nowhere; any other as it is.</summary>
    public PlacedBox Well(PlacedBox offered) => MayTry() ? CeilingPlaces.Well(Changed, offered) : offered;

    /// <summary>
    /// Reads what is found with boxes added, while they are there. What is short of a violation and found alike of a box that is set alike is no new one: mending that mends both.
    /// Nor is it that one isn't level with others that violate something where they are.
    /// </summary>
    private T With<T>(AddBox remedy, Items<Finding> asked, Func<IEnumerable<Finding>, T> read)
    {
        Dictionary<string, DeviceBox> added = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in remedy.Placed)
        {
            added[placed.Box.Id] = placed.Box;
        }

        using LayoutState.Trial? trial = ChangesOnlyWhatItTouches(remedy) ? Changed.With(remedy.Placed, asked: asked) : null;
        return read(NotOfTheirLike(trial?.Findings ?? FoundWith(remedy), added));
    }

    /// <summary>Not the first box of its kind, which changes what is asked of other spaces; not one with the id of a room; nor any where a rule may look at all boxes. Then the dwelling is evaluated with them.</summary>
    private bool ChangesOnlyWhatItTouches(AddBox remedy)
    {
        bool isSo = state.Rules.LooksAtOwnBoxesOnly;
        foreach (PlacedBox placed in remedy.Placed)
        {
            isSo &= !state.Spaces.IsFirstOfItsKind(placed) && !(namesOfParts ??= DwellingAddresses.NamesOfParts(state.Dwelling)).Contains(placed.Box.Id);
        }

        return isSo;
    }

    /// <summary>All that is found in the dwelling with a remedy carried out.</summary>
    private List<Finding> FoundWith(Remedy remedy)
    {
        Dwelling dwelling = remedy.ApplyTo(state.Dwelling);
        LayoutState layout = state.Like(dwelling, cancellation) ?? new(dwelling, state.Rules, state.Options, cancellation);
        layout.JudgeEntered(isTrial: true);
        List<Finding> found = [];
        layout.CollectInto(found);
        return found;
    }

    /// <summary>The layout in which remedies are tried out.</summary>
    private LayoutState Changed => changed ??= state.Copy(cancellation);

    private IEnumerable<Finding> NotOfTheirLike(IEnumerable<Finding> found, Dictionary<string, DeviceBox> added)
    {
        foreach (Finding finding in found)
        {
            if (finding.IsViolation || finding.Space is not null || !added.TryGetValue(finding.Subject, out DeviceBox? box) || !(IsFoundOfItsLike(finding, box) || (finding.Group >= 0 && AreWrong(box.Purpose))))
            {
                yield return finding;
            }
        }
    }

    /// <summary>Whether most boxes of a purpose violate something where they are: to be level with them is no good.</summary>
    private bool AreWrong(BoxPurpose purpose)
    {
        HashSet<int> wrong = [];
        foreach (List<Finding> about in ofBoxes.Values)
        {
            foreach (Finding one in about)
            {
                if (one.IsViolation && one.Limit is null && state.Boxes[one.Box].Source.Purpose == purpose)
                {
                    wrong.Add(one.Box);
                }
            }
        }

        return wrong.Count * 2 > state.Boxes.FindAll(box => box.Source.Purpose == purpose).Count;
    }

    private bool IsFoundOfItsLike(Finding finding, DeviceBox box) =>
        (ofBoxes.TryGetValue(finding.RuleId, out List<Finding>? about) ? about : []).Exists(one => one.Height == finding.Height && state.Boxes[one.Box].Source.Purpose == box.Purpose && one.Verdict >= finding.Verdict && one.Severity >= finding.Severity);

    /// <summary>What is found after a remedy about what it touches and about some boxes more; null where it adds a finding, or makes one worse, that it may not bring.</summary>
    public HashSet<(string RuleId, string Subject)>? LeftAfter(Remedy remedy, List<int> boxes)
    {
        brought.Clear();
        changing = remedy.ChangedIds;
        HashSet<(string, string)>? left = Tried(remedy, boxes);
        changing = default;
        if (left is not null)
        {
            remedy.Bring(new Items<string>(brought).Distinct());
        }

        return left;
    }

    private HashSet<(string RuleId, string Subject)>? Tried(Remedy remedy, List<int> boxes)
    {
        if (!MayTry())
        {
            return null;
        }

        if (remedy.ChangedIds.Count == 0)
        {
            return LeftOf(FoundWith(remedy));
        }

        List<int> moved = [];
        foreach (string id in remedy.ChangedIds)
        {
            moved.AddRange(boxesOf[id]);
        }

        LayoutState layout = Changed;
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
                ? LeftAround(layout, moved, boxes, remedy is MoveBoxes)
                : LeftOf(FoundWith(remedy));
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
    private HashSet<(string RuleId, string Subject)>? LeftAround(LayoutState layout, List<int> changed, List<int> toMend, bool onlyMoved)
    {
        HashSet<int> boxes = [.. changed, .. toMend];
        List<Finding> found = [];
        foreach (int box in boxes)
        {
            layout.JudgePlacement(box);
            layout.CollectOwn(box, found);
        }

        if (found.Exists(one => IsNew(one) && !MayBeBrought(one)))
        {
            return null;
        }

        HashSet<int> spaces = [];
        foreach (int box in onlyMoved ? [] : changed)
        {
            state.Spaces.AddJudgedWith(box, spaces);
        }

        layout.JudgeTogether(boxes, found, spaces, onlyMoved);
        return LeftOf(found);
    }

    private HashSet<(string RuleId, string Subject)>? LeftOf(IEnumerable<Finding> found)
    {
        HashSet<(string RuleId, string Subject)> left = [];
        foreach (Finding finding in found)
        {
            if (IsNew(finding) && !MayBeBrought(finding))
            {
                return null;
            }

            if (MayBeBrought(finding) && (IsNew(finding) || IsLeftOfPlace(finding)))
            {
                brought.Add(finding.RuleId);
            }

            left.Add(KeyOf(finding));
        }

        return left;
    }

    /// <summary>Whether a finding is of where a box is that the remedy sets elsewhere: the new place is left amiss.</summary>
    private bool IsLeftOfPlace(Finding finding) => finding is { Limit: null, Space: null } && changing.Contains(finding.Subject);

    private bool IsNew(Finding finding) => !known.TryGetValue(KeyOf(finding), out List<Finding>? before)
        || !before.Exists(one => one.IsAbout(finding) && one.Verdict >= finding.Verdict && one.Severity >= finding.Severity);

    private static (string RuleId, string Subject) KeyOf(Finding finding) => (finding.RuleId, finding.Subject);
}
