using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a rule set says of a dwelling: findings, their causes and remedies, checks with margins, and what wasn't looked at.</summary>
/// <remarks>Immutable and thread-safe. It is an aid for planning and never an approval: local codes, the authority having jurisdiction and licensed practice decide.</remarks>
public sealed class Evaluation
{
    private readonly LayoutState state;
    private readonly RemedyFinder finder;
    private Items<Cause>? causes;

    internal Evaluation(LayoutEvaluator evaluator, LayoutState state)
    {
        this.state = state;
        state.Evaluation = () => this;
        List<Finding> found = new(state.JudgeAll());
        state.CollectInto(found);
        Findings = new(found);
        finder = new(evaluator, this, state);
        foreach (Finding finding in found)
        {
            HasViolations |= finding.Outcome == Outcome.Fails && finding.Severity == Severity.Violation;
            HasUnknowns |= finding.Outcome == Outcome.Unknown;
        }
    }

    /// <summary>The dwelling that was evaluated.</summary>
    public Dwelling Dwelling => state.Dwelling;

    /// <summary>Every finding: faults of the description first, then box by box in the dwelling's order, group by group, and what rooms and the whole dwelling lack.</summary>
    public Items<Finding> Findings { get; }

    /// <summary>The findings grouped by what they share, the heaviest first.</summary>
    public Items<Cause> Causes
    {
        get
        {
            lock (finder)
            {
                return causes ??= Cause.Group(Findings, state, RemediesOf);
            }
        }
    }

    /// <summary>Whether something isn't met that a document of the rule set asks for.</summary>
    public bool HasViolations { get; }

    /// <summary>Whether something can't be decided from the description.</summary>
    public bool HasUnknowns { get; }

    /// <summary>Whether there is no finding at all. See <see cref="NotChecked"/> for what wasn't looked at.</summary>
    public bool IsClean => Findings.Count == 0;

    /// <summary>Identifies the rows that were applied.</summary>
    public string RuleSetFingerprint => state.Rules.Set.Fingerprint;

    /// <summary>Every check of every box by every rule that speaks of it, one box after another.</summary>
    public IEnumerable<Check> Checks
    {
        get
        {
            for (int box = 0; box < state.Boxes.Length; box++)
            {
                foreach (Check check in ChecksOf(box))
                {
                    yield return check;
                }
            }
        }
    }

    /// <summary>What wasn't looked at: subjects that no rule here speaks of, and rules that lacked what they need.</summary>
    public Items<string> NotChecked
    {
        get
        {
            List<string> all = [.. Scope.NotCovered];
            foreach (Rule rule in state.Rules.Set.Rules)
            {
                if (rule.LeavesOut is { } part)
                {
                    all.Add(rule.Id + ": " + part);
                }
            }

            SortedDictionary<string, SortedSet<string>> where = new(StringComparer.Ordinal);
            for (int box = 0; box < state.Boxes.Length; box++)
            {
                StatedSite[] sites = state.SitesOf(box);
                if (sites.Length == 0)
                {
                    Add("a fault of the description keeps it from being judged", state.Boxes[box].Source.Id);
                    continue;
                }

                if (!HasKnownDevice(state.Boxes[box].Source))
                {
                    Add("rules about devices: none that is known here is stated", state.Boxes[box].Source.Id);
                }

                foreach ((string rule, string why) in sites[0].NotJudged)
                {
                    Add(rule + ": " + why, state.Boxes[box].Surface.Address);
                }
            }

            for (int s = 0; s < state.Spaces.Count; s++)
            {
                if (state.Spaces[s].NotJudgedBecause is { } why)
                {
                    Add(state.Spaces[s].Rule.Id + ": " + why, state.Spaces[s].View.Id);
                }
            }

            foreach (KeyValuePair<string, SortedSet<string>> one in where)
            {
                all.Add(one.Key + " (" + string.Join(", ", one.Value) + ")");
            }

            return new(all);

            void Add(string what, string subject)
            {
                if (!where.TryGetValue(what, out SortedSet<string>? subjects))
                {
                    where.Add(what, subjects = new(StringComparer.Ordinal));
                }

                subjects.Add(subject);
            }
        }
    }

    /// <summary>The findings about a box, a wall, a room or another part of the dwelling, and all that it holds.</summary>
    /// <param name="id">A box's id, or an address such as "kitchen" or "kitchen/north".</param>
    public Items<Finding> For(string id)
    {
        if (id is null)
        {
            throw new ArgumentNullException(nameof(id));
        }

        List<Finding> found = [];
        foreach (Finding finding in Findings)
        {
            if (finding.Subject == id || finding.Address == id || finding.Address.StartsWith(id + "/", StringComparison.Ordinal))
            {
                found.Add(finding);
            }
        }

        return new(found);
    }

    /// <summary>The causes, remedies and what wasn't looked at, as plain text.</summary>
    public string ToText()
    {
        StringBuilder text = new();
        text.Append(Dwelling.Name).Append(": ").Append(Causes.Count == 0 ? "no findings." : Causes.Count + (Causes.Count == 1 ? " cause, " : " causes, ") + Findings.Count + (Findings.Count == 1 ? " finding." : " findings.")).Append('\n');
        int number = 0;
        foreach (Cause cause in Causes)
        {
            text.Append('\n').Append(++number).Append(". ").Append(cause.Outcome == Outcome.Unknown ? "UNKNOWN" : cause.Severity == Severity.Violation ? "VIOLATION" : cause.Severity == Severity.Advice ? "ADVICE" : "NOTE")
                .Append("  ").Append(cause.Title).Append('\n');
            if (cause.Subjects.Count > 1)
            {
                AppendByRoom(text, cause);
            }

            if (cause.AlsoMissed.Count > 0)
            {
                text.Append("   also missed: ").Append(cause.AlsoMissed).Append('\n');
            }

            foreach (Remedy remedy in cause.Remedies)
            {
                text.Append("   do: ").Append(remedy.Text).Append('\n');
            }
        }

        text.Append("\nNot checked: ").Append(string.Join("; ", NotChecked)).Append(".\n").Append(Scope.Caution).Append('\n');
        return text.ToString();
    }

    /// <summary>Who shares a cause, a line for each room or outside face: the way in which a crew walks.</summary>
    private static void AppendByRoom(StringBuilder text, Cause cause)
    {
        List<(string Room, List<string> Boxes)> rooms = [];
        foreach (Finding finding in cause.Findings)
        {
            string room = finding.Address.Split('/')[0];
            int at = rooms.FindIndex(one => one.Room == room);
            if (at < 0)
            {
                at = rooms.Count;
                rooms.Add((room, []));
            }

            if (!rooms[at].Boxes.Contains(finding.Subject))
            {
                rooms[at].Boxes.Add(finding.Subject);
            }
        }

        foreach ((string room, List<string> boxes) in rooms)
        {
            text.Append("   in ").Append(room).Append(": ").Append(string.Join(", ", boxes)).Append('\n');
        }
    }

    /// <summary>How many findings there are, and the first of them.</summary>
    public override string ToString() => Findings.Count == 0 ? "no findings" : Findings.Count + (Findings.Count == 1 ? " finding: " : " findings: ") + Findings[0].Message;

    private static bool HasKnownDevice(DeviceBox box)
    {
        foreach (DeviceKind device in box.Devices)
        {
            if (device.IsKnown)
            {
                return true;
            }
        }

        return false;
    }

    internal Cause? CauseOf(Finding finding)
    {
        foreach (Cause cause in Causes)
        {
            foreach (Finding one in cause.Findings)
            {
                if (one.IsAbout(finding))
                {
                    return cause;
                }
            }
        }

        return null;
    }

    /// <summary>Looking for remedies states rules at further sites, which the state remembers: one cause at a time.</summary>
    private Items<Remedy> RemediesOf(Cause cause)
    {
        lock (state)
        {
            return finder.For(cause);
        }
    }

    private IEnumerable<Check> ChecksOf(int box)
    {
        StatedSite[] sites = state.SitesOf(box);
        if (sites.Length == 0)
        {
            yield break;
        }

        string id = state.Boxes[box].Source.Id;
        if (state.HasReading(box))
        {
            Place place = state.PlaceOf(box);
            for (int p = 0; p < sites[0].Placements.Length; p++)
            {
                Check check = CheckOf(box, p, place);
                if (!state.Yields(box, p, check.Verdict))
                {
                    yield return check;
                }
            }
        }

        for (int i = 0; i < sites[0].Limits.Length; i++)
        {
            StatedLimit limit = sites[0].Limits[i];
            LimitJudgement judged = state.JudgeLimit(box, i);
            if (!judged.IsSilent)
            {
                yield return new(limit.Rule.Id, id, judged.Verdict, judged.Margin, judged.Verdict == Verdict.Unknown ? judged.Needs : Facts.None, limit.DisputedBy(state.PlaceOf(box)));
            }
        }
    }

    private Check CheckOf(int box, int placement, in Place place)
    {
        StatedPlacement stated = state.SitesOf(box)[0].Placements[placement];
        Judgement judged = SlabJudge.Judge(stated.Slabs, place);
        Verdict verdict = state.VerdictOf(box, placement, place);
        List<string> disputed = [];
        foreach ((string reading, Slab[] slabs) in stated.Readings)
        {
            if (SlabJudge.Verdict(slabs, place) != verdict)
            {
                disputed.Add(reading);
            }
        }

        Facts needs = verdict != Verdict.Unknown ? Facts.None : state.SitesOf(box).Length > 1 ? judged.Needs | Facts.EdgeMeant : judged.Needs;
        return new(stated.Rule.Id, state.Boxes[box].Source.Id, verdict, Distance.FromTicks(judged.Margin), needs, new(disputed));
    }
}
