using System;
using System.Collections.Generic;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What several findings share: one rule, one stick, one storey. It has one remedy, and lists who shares it.</summary>
/// <remarks>A habit that a box misses along with a firmer rule is no cause of its own: it joins that rule's, whose remedy mends both.</remarks>
public sealed partial class Cause
{
    private readonly Func<Cause, CancellationToken, Items<Remedy>> findRemedies;
    private Items<Remedy>? remedies;

    internal Cause(Items<Finding> findings, Func<Cause, CancellationToken, Items<Remedy>> findRemedies)
    {
        Findings = findings;
        List<string> subjects = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (Finding finding in findings)
        {
            if (seen.Add(finding.Subject))
            {
                subjects.Add(finding.Subject);
            }
        }

        Subjects = new(subjects);
        this.findRemedies = findRemedies;
    }

    /// <summary>The findings of the rule, in the dwelling's order, then those of habits that are missed along with it.</summary>
    public Items<Finding> Findings { get; }

    /// <summary>The ids of the boxes, or the address of the part at fault.</summary>
    public Items<string> Subjects { get; }

    /// <summary>The id of the rule.</summary>
    public string RuleId => Findings[0].RuleId;

    /// <summary>Why nothing could be judged of it, in one phrase; null where something was. What keeps several rules from judging is one cause.</summary>
    public string? NotJudgedBecause => Findings[0].NotJudgedBecause;

    /// <summary>The ids of the habits that are missed along with the rule, or of the other rules that couldn't be judged for the same reason.</summary>
    public Items<string> AlsoMissed => Findings.Select(finding => finding.RuleId).Distinct().Where(id => id != RuleId);

    /// <summary>Whether the rule isn't met, or can't be decided.</summary>
    public Verdict Verdict => Findings[0].Verdict;

    /// <summary>How much the heaviest of the findings weighs.</summary>
    public Severity Severity
    {
        get
        {
            Severity most = Severity.Note;
            foreach (Finding finding in Findings)
            {
                most = finding.Severity > most ? finding.Severity : most;
            }

            return most;
        }
    }

    /// <summary>Where the rule comes from.</summary>
    public Citation Citation => Findings[0].Citation;

    /// <summary>What would mend it, best first: <see cref="FindRemedies"/>, for as long as that takes.</summary>
    /// <remarks>Those that change one box are ways to choose from; those of other boxes belong together. <see cref="BestRemedies"/> makes that choice, and <see cref="Finding.Remedies"/> are those of one box.</remarks>
    public Items<Remedy> Remedies => FindRemedies(CancellationToken.None);

    /// <summary>Looks for what would mend it, best first: once, and for at most <see cref="EvaluatorOptions.MostTriesForACause"/> tries. What isn't looked at says so.</summary>
    /// <param name="cancellationToken">Ends it early; asked for again, they are looked for then.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public Items<Remedy> FindRemedies(CancellationToken cancellationToken)
    {
        lock (findRemedies)
        {
            return remedies ??= NotJudgedBecause is null ? findRemedies(this, cancellationToken) : default(Items<Remedy>);
        }
    }

    /// <summary>The first of <see cref="Remedies"/> for each of its boxes; empty where nothing mends it. Each was tried by itself: <see cref="Evaluation.Mend()"/> tries them together, of all causes.</summary>
    public Items<Remedy> BestRemedies
    {
        get
        {
            HashSet<string> mended = new(StringComparer.Ordinal);
            List<Remedy> best = [];
            foreach (Remedy remedy in Remedies)
            {
                List<string> touched = remedy.TouchedIds();
                if (touched.Count > 0 && !mended.Overlaps(touched))
                {
                    mended.UnionWith(touched);
                    best.Add(remedy);
                }
            }

            return new(best);
        }
    }

    /// <summary>Why nothing is offered that mends it; null where something is. Looks for <see cref="Remedies"/>, for as long as that takes; where boxes differ in it, the first of them decides.</summary>
    public NoRemedyReason? NoRemedy
    {
        get
        {
            if (NotJudgedBecause is not null)
            {
                return NoRemedyReason.NotJudged;
            }

            Items<Remedy> all = Remedies;
            return all.Count == 0 ? NoRemedyReason.FaultyDescription
                : all.Exists(remedy => remedy is not NoneFound) ? null
                : ((NoneFound)all[0]).Reason;
        }
    }

    /// <summary>The cause in one line, without the ids.</summary>
    public string Title => Findings[0].Words.Format(Wording);

    /// <summary>The same as data.</summary>
    public Wording Wording => Findings[0].Unjudged is { } why
        ? $"{CoverageText.Listed(Subjects):subjects}: {why} ({(AlsoMissed.Count == 0 ? RuleId : RuleId + ", " + AlsoMissed):rules})"
        : Subjects.Count == 1 ? Findings[0].Wording
        : (Wording)$"{Subjects.Count:count} boxes share this: {Findings[0].Text.Body(Findings[0]):body}";

    /// <summary>The cause in one line, without the ids.</summary>
    public override string ToString() => Title;

    /// <summary>Whether it is about something in the description that can't be; a kind that nobody knows is only a note.</summary>
    internal bool IsFault => Findings[0].Fault is { Kind: not LayoutFaultKind.UnknownKind };

    /// <summary>Whether something is lacking, so that its remedy adds boxes.</summary>
    internal bool IsLack => Findings[0].Space is { Moved: null };

    /// <summary>Groups findings by what they share.</summary>
    internal static Items<Cause> Group(Items<Finding> findings, LayoutState state, Func<Cause, CancellationToken, Items<Remedy>> findRemedies)
    {
        Dictionary<string, List<Finding>> shared = new(StringComparer.Ordinal);
        List<List<Finding>> inOrder = [];
        List<(Finding Habit, Finding Firm)> habits = [];
        Dictionary<int, Finding> firmest = FirstFirm(findings, state);
        foreach (Finding finding in findings)
        {
            if (IsHabit(finding, state) && firmest.TryGetValue(finding.Box, out Finding? firm))
            {
                habits.Add((finding, firm));
                continue;
            }

            string key = KeyOf(finding, state);
            if (!shared.TryGetValue(key, out List<Finding>? list))
            {
                shared.Add(key, list = []);
                inOrder.Add(list);
            }

            list.Add(finding);
        }

        foreach ((Finding habit, Finding firm) in habits)
        {
            shared[KeyOf(firm, state)].Add(habit);
        }

        List<Cause> causes = inOrder.ConvertAll(list => new Cause(new(list), findRemedies));

        // What is wrong with the description comes first, then what it kept from being judged: all else may change with it.
        List<Cause> sorted = causes.FindAll(cause => cause.IsFault);
        sorted.AddRange(causes.FindAll(cause => cause.NotJudgedBecause is not null));
        causes.RemoveAll(cause => cause.IsFault || cause.NotJudgedBecause is not null);
        foreach (Severity severity in new[] { Severity.Violation, Severity.Advice, Severity.Note })
        {
            sorted.AddRange(causes.FindAll(cause => cause.Severity == severity && cause.Verdict == Verdict.Fails));
            sorted.AddRange(causes.FindAll(cause => cause.Severity == severity && cause.Verdict == Verdict.Unknown));
        }

        return new(sorted);
    }

    private static bool IsHabit(Finding finding, LayoutState state) => finding.Box >= 0 && state.Rules.Set.Row(finding.RuleId) is { YieldsWhenForced: true };

    /// <summary>What first asks for each box to be moved with more weight than a habit has.</summary>
    private static Dictionary<int, Finding> FirstFirm(Items<Finding> findings, LayoutState state)
    {
        Dictionary<int, Finding> first = [];
        foreach (Finding finding in findings)
        {
            if (finding.Box >= 0 && !first.ContainsKey(finding.Box) && finding.Verdict == Verdict.Fails
                && finding.Limit is null && !IsHabit(finding, state))
            {
                first.Add(finding.Box, finding);
            }
        }

        return first;
    }

    /// <summary>What isn't known is shared by a room; what isn't met is shared by those that were set with one stick.</summary>
    private static string KeyOf(Finding finding, LayoutState state)
    {
        if (finding.NotJudgedBecause is { } why)
        {
            return "not judged|" + why;
        }

        if (finding.Space is { } space)
        {
            return finding.RuleId + "|" + finding.Verdict + "|" + space.Subject;
        }

        if (finding.Box < 0)
        {
            return finding.RuleId + "|" + finding.Subject + "|" + finding.Fault!.Kind + "|" + finding.Fault.Message;
        }

        ResolvedBox box = state.Boxes[finding.Box];
        if (finding.Verdict == Verdict.Unknown && finding.Needs == MissingFacts.BrokenPart)
        {
            return "broken|" + box.Surface.Address;
        }

        string who = finding.Verdict == Verdict.Unknown && finding.Needs == MissingFacts.FloorFinish
            ? box.Surface.Space.Id + "|" + box.Source.Purpose + "|" + finding.Height
            : finding.Group >= 0 && state.Groups[finding.Group].Rule.IsForEachAlone

                // What two boxes do to each other is shared by no third that stands elsewhere.
                ? finding.Subject
            : finding.Limit is not null
                ? finding.Measured + " of " + finding.Allowed
                : box.Surface.Space.StoreyId + "|" + box.Source.Purpose + "|" + finding.Height + "|" + finding.HeightMargin + "|" + finding.Text.Things();
        return finding.RuleId + "|" + finding.Verdict + "|" + finding.Needs + "|" + who;
    }
}
