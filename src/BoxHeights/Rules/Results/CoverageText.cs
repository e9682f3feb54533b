using System;
using System.Collections.Generic;
using System.Text;
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
        SortedDictionary<string, SortedSet<string>> where = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            if (one.State == Judged.NotJudged)
            {
                SubjectsOf(where, one.RuleId + ": " + one.Why).Add(one.Where);
            }
        }

        List<string> lines = [];
        foreach (KeyValuePair<string, SortedSet<string>> one in where)
        {
            lines.Add(one.Key + " (" + string.Join(", ", one.Value) + ")");
        }

        return new(lines);
    }

    /// <summary>What couldn't be judged and has no finding of its own, a line for each reason.</summary>
    /// <param name="told">The judgements.</param>
    /// <param name="which">Of which weight, taking the weightiest rule that a reason keeps from judging.</param>
    public static IReadOnlyList<string> Rest(IReadOnlyList<Judgement> told, Predicate<Severity> which)
    {
        SortedDictionary<string, SortedSet<string>> subjects = new(StringComparer.Ordinal);
        Dictionary<string, SortedSet<string>> rules = new(StringComparer.Ordinal);
        Dictionary<string, Severity> weight = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            if (one is { State: Judged.NotJudged, Finding: null, Why: { } why })
            {
                SubjectsOf(subjects, why).Add(one.Where);
                SubjectsOf(rules, why).Add(one.RuleId);
                weight[why] = weight.TryGetValue(why, out Severity most) && most > one.Severity ? most : one.Severity;
            }
        }

        List<string> lines = [];
        foreach (KeyValuePair<string, SortedSet<string>> one in subjects)
        {
            if (which(weight[one.Key]))
            {
                lines.Add(Listed(one.Value) + ": " + one.Key + " (" + Listed(rules[one.Key]) + ")");
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
    public static void Append(StringBuilder text, IReadOnlyList<string> lines, int from, int to, string heading)
    {
        for (int i = from; i < Math.Min(lines.Count, to); i++)
        {
            text.Append(i == from ? "\n" + heading + "\n" : "").Append("   ").Append(lines[i]).Append('\n');
        }
    }

    /// <summary>How often rules are met, and who is let off.</summary>
    public static void AppendMet(StringBuilder text, IReadOnlyList<Judgement> told)
    {
        SortedDictionary<string, int> met = new(StringComparer.Ordinal);
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
        foreach (KeyValuePair<string, int> one in met)
        {
            counts.Add(one.Key + " " + one.Value);
        }

        text.Append("\nMet: ").Append(times == 0 ? "nothing was found to be met" : times + (times == 1 ? " time, by " : " times, by ") + counts.Count + (counts.Count == 1 ? " rule" : " rules") + (counts.Count > MostListed ? "" : ": " + string.Join(", ", counts))).Append(".\n");
        if (letOff.Count > 0)
        {
            text.Append("Let off: ").Append(Listed(letOff)).Append(".\n");
        }
    }

    /// <summary>What is no part of the work: rooms and outside faces, and boxes elsewhere.</summary>
    public static void AppendUntouched(StringBuilder text, Dwelling dwelling)
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
            text.Append("No part of this work, so that nothing is asked of it: ").Append(Listed(untouched)).Append(".\n");
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
    public static void AppendNeverLookedAt(StringBuilder text, Evaluation evaluation, IReadOnlyList<Judgement> told)
    {
        HashSet<string> spoke = new(StringComparer.Ordinal);
        foreach (Judgement one in told)
        {
            spoke.Add(one.RuleId);
        }

        List<string> parts = [];
        foreach (Rule rule in evaluation.Rules.Rules)
        {
            if (rule.LeavesOut is not null && spoke.Contains(rule.Id))
            {
                parts.Add(rule.Id);
            }
        }

        text.Append("Not looked at by any rule here: ").Append(string.Join("; ", evaluation.NotChecked)).Append(".\n");
        if (parts.Count > 0)
        {
            text.Append("Applied in part, as each of them says: ").Append(string.Join(", ", parts)).Append(".\n");
        }

        text.Append(Scope.Caution).Append('\n');
    }

    /// <summary>A list as a line holds it: the first few, and how many more there are.</summary>
    public static string Listed(IReadOnlyCollection<string> all)
    {
        StringBuilder text = new();
        int number = 0;
        foreach (string one in all)
        {
            if (number == MostListed && all.Count > MostListed + 1)
            {
                return text.Append(" and ").Append(all.Count - MostListed).Append(" more").ToString();
            }

            text.Append(number++ == 0 ? "" : ", ").Append(one);
        }

        return text.ToString();
    }

    private static SortedSet<string> SubjectsOf(IDictionary<string, SortedSet<string>> lists, string key)
    {
        if (!lists.TryGetValue(key, out SortedSet<string>? list))
        {
            lists[key] = list = new(StringComparer.Ordinal);
        }

        return list;
    }
}
