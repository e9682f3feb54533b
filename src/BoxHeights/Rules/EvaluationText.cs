using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights;

/// <summary>An evaluation as plain text: what couldn't be judged, causes and what to do, what is met, what no rule looks at.</summary>
internal static class EvaluationText
{
    // What more there is goes to the end: the first causes are to be seen on the first screen.
    private const int MostOnTop = 3;

    public static string Of(Evaluation evaluation, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        ReportText text = new(evaluation.Words);
        Items<Cause> causes = evaluation.Causes;
        Wording name = Wording.Name(evaluation.Dwelling.Name);
        text.Line(causes.Count > 0 ? $"{name}: {Counted(causes.Count, evaluation.Findings.Count):count} ({Weighed(evaluation.Findings):weights})."
            : evaluation.HasJudged ? $"{name}: {Counted(0):count}."
            : (Wording)$"{name}: no boxes: nothing was judged.");
        IReadOnlyList<Judgement> told = evaluation.Told();
        AppendFaults(text, causes);
        IReadOnlyList<Wording> kept = CoverageText.Rest(told, severity => severity == Severity.Violation);
        CoverageText.Append(text, kept, 0, MostOnTop, $"Not judged here:");
        Dictionary<string, int> said = new(StringComparer.Ordinal);
        int number = 0;
        foreach (Cause cause in causes)
        {
            text.Line().Line($"{++number:number}. {Weight(cause):weight}  {cause.Wording:cause}");
            if (cause.Subjects.Count > 1 && cause.NotJudgedBecause is null)
            {
                AppendByRoom(text, cause);
            }

            if (cause.AlsoMissed.Count > 0 && cause.NotJudgedBecause is null)
            {
                text.Indented($"also missed: {cause.AlsoMissed:rules}");
            }

            foreach (Remedy remedy in cause.FindRemedies(cancellation))
            {
                bool again = said.TryGetValue(remedy.Text, out int before);
                text.Indented(again ? $"do: as said under {before:number}" : (Wording)$"do: {remedy.Wording:remedy}");
                if (!again)
                {
                    said.Add(remedy.Text, number);
                }
            }
        }

        CoverageText.Append(text, kept, MostOnTop, int.MaxValue, $"Nor were these judged:");
        CoverageText.Append(text, CoverageText.Rest(told, severity => severity != Severity.Violation), 0, int.MaxValue, $"Of advice and habits, not judged here:");
        CoverageText.AppendMet(text, told);
        CoverageText.AppendUntouched(text, evaluation.Dwelling);
        CoverageText.AppendNeverLookedAt(text, evaluation.Rules, told);
        return text.ToString();
    }

    /// <summary>How many findings there are, in words.</summary>
    public static Wording Counted(int findings) => findings == 0 ? $"no findings" : findings == 1 ? $"1 finding" : (Wording)$"{findings} findings";

    private static Wording Counted(int causes, int findings) => causes == 1 ? $"1 cause, {Counted(findings):findings}" : (Wording)$"{causes} causes, {Counted(findings):findings}";

    private static Wording Weight(Cause cause) =>
        cause.NotJudgedBecause is not null ? $"NOT JUDGED"
        : cause.Findings[0].Fault is not null ? $"FAULT"
        : cause.Verdict == Verdict.Unknown ? $"UNKNOWN"
        : cause.Severity == Severity.Violation ? $"VIOLATION"
        : cause.Severity == Severity.Advice ? $"ADVICE" : (Wording)$"NOTE";

    /// <summary>What one finding weighs, in the report's word for it.</summary>
    public static string WeightOf(Finding finding) =>
        finding.Unjudged is not null ? "NOT JUDGED"
        : finding.Fault is not null ? "FAULT"
        : finding.Verdict == Verdict.Unknown ? "UNKNOWN"
        : finding.Severity == Severity.Violation ? "VIOLATION"
        : finding.Severity == Severity.Advice ? "ADVICE" : "NOTE";

    /// <summary>Which parts of the description are at fault, in one line.</summary>
    private static void AppendFaults(ReportText text, Items<Cause> causes)
    {
        SortedSet<string> parts = new(StringComparer.Ordinal);
        foreach (Cause cause in causes)
        {
            parts.UnionWith(cause.IsFault ? cause.Subjects : default);
        }

        if (parts.Count > 0)
        {
            text.Line($"Mend the description first, since all else may change with it: {CoverageText.Listed(parts):parts}.");
        }
    }

    /// <summary>How many findings weigh what, the weightiest first: " (2 violations, 1 not judged, 3 notes)".</summary>
    private static Wording Weighed(Items<Finding> findings)
    {
        int[] counts = new int[6];
        foreach (Finding finding in findings)
        {
            counts[finding.IsViolation ? 0 : finding.NotJudgedBecause is not null ? 1 : finding.Fault is not null ? 2
                : finding.Verdict == Verdict.Unknown ? 3 : finding.Severity == Severity.Advice ? 4 : 5]++;
        }

        List<Wording> words = [];
        for (int kind = 0; kind < counts.Length; kind++)
        {
            if (counts[kind] > 0)
            {
                words.Add(Weighed(kind, counts[kind]));
            }
        }

        return Wording.Listed(words);
    }

    private static Wording Weighed(int kind, int count) => (kind, count) switch
    {
        (0, 1) => $"1 violation",
        (0, _) => $"{count} violations",
        (1, _) => $"{count} not judged",
        (2, 1) => $"1 fault of the description",
        (2, _) => $"{count} faults of the description",
        (3, _) => $"{count} unknown",
        (4, _) => $"{count} advice",
        (_, 1) => $"1 note",
        _ => (Wording)$"{count} notes",
    };

    /// <summary>Who shares a cause, a line for each room or outside face: the way in which a crew walks.</summary>
    private static void AppendByRoom(ReportText text, Cause cause)
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
            text.Indented($"in {room}: {string.Join(", ", boxes[room]):boxes}");
        }
    }
}
