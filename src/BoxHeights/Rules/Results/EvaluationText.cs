using System;
using System.Collections.Generic;
using System.Text;

namespace BoxHeights;

/// <summary>An evaluation as plain text: causes, what to do, what wasn't looked at.</summary>
internal static class EvaluationText
{
    public static string Of(Evaluation evaluation)
    {
        StringBuilder text = new();
        Items<Cause> causes = evaluation.Causes;
        text.Append(evaluation.Dwelling.Name).Append(": ")
            .Append(causes.Count > 0 ? causes.Count + (causes.Count == 1 ? " cause, " : " causes, ") + Counted(evaluation.Findings.Count)
                : evaluation.HasJudged ? Counted(0) : "no boxes: nothing was judged").Append(".\n");
        Dictionary<string, int> said = new(StringComparer.Ordinal);
        int number = 0;
        foreach (Cause cause in causes)
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
                bool again = said.TryGetValue(remedy.Text, out int before);
                text.Append("   do: ").Append(again ? "as said under " + before : remedy.Text).Append('\n');
                if (!again)
                {
                    said.Add(remedy.Text, number);
                }
            }
        }

        text.Append("\nNot checked: ").Append(string.Join("; ", evaluation.NotChecked)).Append(".\n").Append(Scope.Caution).Append('\n');
        return text.ToString();
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
            string room = finding.Address.Split('/')[0];
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
