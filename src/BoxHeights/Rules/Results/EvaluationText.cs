using System;
using System.Collections.Generic;
using System.Text;

namespace BoxHeights;

/// <summary>An evaluation as plain text: what couldn't be judged, causes and what to do, what is met, what no rule looks at.</summary>
internal static class EvaluationText
{
    // What more there is goes to the end: the first causes are to be seen on the first screen.
    private const int MostOnTop = 3;

    public static string Of(Evaluation evaluation)
    {
        StringBuilder text = new();
        Items<Cause> causes = evaluation.Causes;
        text.Append(evaluation.Dwelling.Name).Append(": ")
            .Append(causes.Count > 0 ? causes.Count + (causes.Count == 1 ? " cause, " : " causes, ") + Counted(evaluation.Findings.Count) + Weighed(evaluation.Findings)
                : evaluation.HasJudged ? Counted(0) : "no boxes: nothing was judged").Append(".\n");
        IReadOnlyList<Judgement> told = evaluation.Told();
        AppendFaults(text, causes);
        IReadOnlyList<string> kept = CoverageText.Rest(told, severity => severity == Severity.Violation);
        CoverageText.Append(text, kept, 0, MostOnTop, "Not judged here:");
        Dictionary<string, int> said = new(StringComparer.Ordinal);
        int number = 0;
        foreach (Cause cause in causes)
        {
            text.Append('\n').Append(++number).Append(". ").Append(cause.NotJudgedBecause is not null ? "NOT JUDGED" : cause.Findings[0].Fault is not null ? "FAULT" : cause.Verdict == Verdict.Unknown ? "UNKNOWN" : cause.Severity == Severity.Violation ? "VIOLATION" : cause.Severity == Severity.Advice ? "ADVICE" : "NOTE")
                .Append("  ").Append(cause.Title).Append('\n');
            if (cause.Subjects.Count > 1 && cause.NotJudgedBecause is null)
            {
                AppendByRoom(text, cause);
            }

            if (cause.AlsoMissed.Count > 0 && cause.NotJudgedBecause is null)
            {
                text.Append("   also missed: ").Append(cause.AlsoMissed).Append('\n');
            }

            foreach (Remedy remedy in cause.Remedies)
            {
                bool again = said.TryGetValue(remedy.Text, out int before);
                text.Append("   do: ").Append(again ? "as said under " + before : remedy.Text).Append('\n');
                if (!again)
                {
                    said.Add(remedy.Text, number);
                }
            }
        }

        CoverageText.Append(text, kept, MostOnTop, int.MaxValue, "Nor were these judged:");
        CoverageText.Append(text, CoverageText.Rest(told, severity => severity != Severity.Violation), 0, int.MaxValue, "Of advice and habits, not judged here:");
        CoverageText.AppendMet(text, told);
        CoverageText.AppendUntouched(text, evaluation.Dwelling);
        CoverageText.AppendNeverLookedAt(text, evaluation, told);
        return text.ToString();
    }

    /// <summary>Which parts of the description are at fault, in one line.</summary>
    private static void AppendFaults(StringBuilder text, Items<Cause> causes)
    {
        SortedSet<string> parts = new(StringComparer.Ordinal);
        foreach (Cause cause in causes)
        {
            parts.UnionWith(cause.IsFault ? cause.Subjects : default);
        }

        if (parts.Count > 0)
        {
            text.Append("Mend the description first, since all else may change with it: ").Append(CoverageText.Listed(parts)).Append(".\n");
        }
    }

    /// <summary>How many findings weigh what, the weightiest first: " (2 violations, 1 not judged, 3 notes)".</summary>
    private static string Weighed(Items<Finding> findings)
    {
        (string One, string Several, int Count)[] all =
        [
            ("violation", "violations", 0), ("not judged", "not judged", 0), ("fault of the description", "faults of the description", 0), ("unknown", "unknown", 0), ("advice", "advice", 0), ("note", "notes", 0),
        ];
        foreach (Finding finding in findings)
        {
            int kind = finding.IsViolation ? 0 : finding.NotJudgedBecause is not null ? 1 : finding.Fault is not null ? 2
                : finding.Verdict == Verdict.Unknown ? 3 : finding.Severity == Severity.Advice ? 4 : 5;
            all[kind].Count++;
        }

        List<string> words = [];
        foreach ((string one, string several, int count) in all)
        {
            if (count > 0)
            {
                words.Add(count + " " + (count == 1 ? one : several));
            }
        }

        return " (" + string.Join(", ", words) + ")";
    }

    /// <summary>How many findings there are, in words.</summary>
    public static string Counted(int findings) => findings == 0 ? "no findings" : findings + (findings == 1 ? " finding" : " findings");

    /// <summary>Who shares a cause, a line for each room or outside face: the way in which a crew walks.</summary>
    private static void AppendByRoom(StringBuilder text, Cause cause)
    {
        List<string> rooms = [];
        Dictionary<string, List<string>> boxes = new(StringComparer.Ordinal);
        HashSet<(string Room, string Subject)> seen = [];
        foreach (Finding finding in cause.Findings)
        {
            string room = SurfaceAddress.Read(finding.Address).Space;
            if (!boxes.ContainsKey(room))
            {
                rooms.Add(room);
            }

            List<string> here = boxes.ListOf(room);
            if (seen.Add((room, finding.Subject)))
            {
                here.Add(finding.Subject);
            }
        }

        foreach (string room in rooms)
        {
            text.Append("   in ").Append(room).Append(": ").Append(string.Join(", ", boxes[room])).Append('\n');
        }
    }
}
