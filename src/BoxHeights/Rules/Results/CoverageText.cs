using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Says how far an evaluation reached: what it couldn't judge and why, and what it found to be met.</summary>
internal static class CoverageText
{
    // More than a line holds is no list to read.
    private const int MostListed = 6;

    /// <summary>What couldn't be judged, a line for each rule and reason: "closet-light: its walls don't close (closet)".</summary>
    public static Items<string> NotJudged(IReadOnlyList<Judgement> told)
    {
        Dictionary<string, HashSet<string>> where = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            if (one.State == Judged.NotJudged)
            {
                SubjectsOf(where, one.RuleId + ": " + one.Why).Add(one.Where);
            }
        }

        List<string> lines = [];
        foreach (string what in InOrder(where.Keys))
        {
            lines.Add(what + " (" + string.Join(", ", InOrder(where[what])) + ")");
        }

        return new(lines);
    }

    /// <summary>What couldn't be judged and has no finding of its own, a line for each reason.</summary>
    /// <param name="told">The judgements.</param>
    /// <param name="which">Of which weight, taking the weightiest rule that a reason keeps from judging.</param>
    public static IReadOnlyList<Wording> Rest(IReadOnlyList<Judgement> told, Predicate<Severity> which)
    {
        Dictionary<string, HashSet<string>> subjects = new(StringComparer.Ordinal);
        Dictionary<string, HashSet<string>> rules = new(StringComparer.Ordinal);
        Dictionary<string, Severity> weight = new(StringComparer.Ordinal);
        Dictionary<string, Wording> reasons = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            if (one is { State: Judged.NotJudged, Finding: null, Why: { } why, Reason: { } reason })
            {
                reasons[why] = reason;
                SubjectsOf(subjects, why).Add(one.Where);
                SubjectsOf(rules, why).Add(one.RuleId);
                weight[why] = weight.TryGetValue(why, out Severity most) && most > one.Severity ? most : one.Severity;
            }
        }

        List<Wording> lines = [];
        foreach (string why in InOrder(subjects.Keys))
        {
            if (which(weight[why]))
            {
                lines.Add($"{Listed(InOrder(subjects[why])):subjects}: {reasons[why]:why} ({Listed(InOrder(rules[why])):rules})");
            }
        }

        return lines;
    }

    /// <summary>Some lines under a heading; nothing where there are none.</summary>
    /// <param name="text">Takes them.</param>
    /// <param name="lines">All of them.</param>
    /// <param name="from">How many are passed over.</param>
    /// <param name="to">How many there are at most before and among them.</param>
    /// <param name="heading">What goes before them.</param>
    public static void Append(ReportText text, IReadOnlyList<Wording> lines, int from, int to, Wording heading)
    {
        for (int i = from; i < Math.Min(lines.Count, to); i++)
        {
            if (i == from)
            {
                text.Line().Line(heading);
            }

            text.Indented(lines[i]);
        }
    }

    /// <summary>How often rules are met, and who is let off.</summary>
    public static void AppendMet(ReportText text, IReadOnlyList<Judgement> told)
    {
        Dictionary<string, int> met = new(StringComparer.Ordinal);
        int times = 0;
        SortedSet<string> letOff = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            if (one.State == Judged.Met)
            {
                met[one.RuleId] = met.TryGetValue(one.RuleId, out int before) ? before + 1 : 1;
                times++;
            }
            else if (one.State == Judged.LetOff)
            {
                letOff.Add(one.Subject + " (" + one.RuleId + ")");
            }
        }

        List<string> counts = [];
        foreach (string id in InOrder(met.Keys))
        {
            counts.Add(id + " " + met[id]);
        }

        Wording often = times == 1 ? $"1 time" : (Wording)$"{times} times";
        Wording rules = counts.Count == 1 ? $"1 rule" : (Wording)$"{counts.Count:count} rules";
        text.Line().Line(times == 0 ? $"Met: nothing was found to be met."
            : counts.Count > MostListed ? $"Met: {often:times}, by {rules}."
            : (Wording)$"Met: {often:times}, by {rules}: {string.Join(", ", counts):counts}.");
        if (letOff.Count > 0)
        {
            text.Line($"Let off: {Listed(letOff):boxes}.");
        }
    }

    /// <summary>What is no part of the work: rooms and outside faces, and boxes elsewhere.</summary>
    public static void AppendUntouched(ReportText text, Dwelling dwelling)
    {
        List<string> untouched = [];
        HashSet<string> whole = new(StringComparer.Ordinal);
        foreach (Room room in dwelling.Rooms)
        {
            Note(room.Id, room.Untouched);
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Note(face.Id, face.Untouched);
        }

        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            if (placed.Box.Untouched == true && !whole.Contains(SurfaceAddress.Read(placed.Address).Space))
            {
                untouched.Add(placed.Box.Id);
            }
        }

        if (untouched.Count > 0)
        {
            text.Line($"No part of this work, so that nothing is asked of it: {Listed(untouched):parts}.");
        }

        void Note(string id, bool isUntouched)
        {
            if (isUntouched && whole.Add(id))
            {
                untouched.Add(id);
            }
        }
    }

    /// <summary>What no rule looks at, and the rules that judged something by a part of their text only.</summary>
    public static void AppendNeverLookedAt(ReportText text, RuleSet rules, IReadOnlyList<Judgement> told)
    {
        HashSet<string> spoke = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            spoke.Add(one.RuleId);
        }

        List<string> parts = [];
        foreach (Rule rule in rules.Rows)
        {
            if (rule.LeavesOut is not null && spoke.Contains(rule.Id))
            {
                parts.Add(rule.Id);
            }
        }

        text.Line($"Not looked at by any rule here: {Wording.Apart(new Items<string>(Scope.NotCoveredBy(rules)).Select(Wording.Term)):all}.");
        if (parts.Count > 0)
        {
            text.Line($"Applied in part, as each of them says: {string.Join(", ", parts):rules}.");
        }

        text.Line(Wording.Term(Scope.Caution));
    }

    /// <summary>A list as a line holds it: the first few, and how many more there are.</summary>
    public static Wording Listed(IReadOnlyCollection<string> all) => all.Count > MostListed + 1
        ? $"{string.Join(", ", FirstOf(all)):first} and {all.Count - MostListed:count} more"
        : Wording.Name(string.Join(", ", all));

    private static List<string> FirstOf(IEnumerable<string> all)
    {
        List<string> first = [];
        foreach (string one in all)
        {
            if (first.Count == MostListed)
            {
                break;
            }

            first.Add(one);
        }

        return first;
    }

    // Sorted when they are told: sets that stay sorted are made of a hundred methods to compile, for each sort of thing that is in them.
    private static List<string> InOrder(IEnumerable<string> some)
    {
        List<string> all = [.. some];
        all.Sort(StringComparer.Ordinal);
        return all;
    }

    private static HashSet<string> SubjectsOf(Dictionary<string, HashSet<string>> lists, string key)
    {
        if (!lists.TryGetValue(key, out HashSet<string>? list))
        {
            lists[key] = list = new(StringComparer.Ordinal);
        }

        return list;
    }
}
