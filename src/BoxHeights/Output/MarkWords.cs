using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What a mark sheet says of each box besides its mark: where it was before the report was carried out, and which finding stops it.</summary>
internal sealed class MarkWords
{
    private readonly Dictionary<string, int> stops = new(StringComparer.Ordinal);
    private readonly MendedDwelling? mended;

    /// <param name="report">The report that the crew has: its causes are what numbers count.</param>
    /// <param name="mended">The report carried out; null where boxes are marked as they are described.</param>
    public MarkWords(Evaluation report, MendedDwelling? mended)
    {
        this.mended = mended;
        foreach (Finding finding in (mended?.Evaluation ?? report).Findings)
        {
            // A habit that is missed is told in the report, and no reason not to set the box.
            if (finding.Box >= 0 && !stops.ContainsKey(finding.Subject) && (finding.Verdict == Verdict.Unknown || finding.Severity > Severity.Note) && report.NumberOf(finding) is > 0 and int number)
            {
                stops.Add(finding.Subject, number);
            }
        }
    }

    /// <summary>Which finding stops a box; empty where none does.</summary>
    public string StopOf(string box) => stops.TryGetValue(box, out int stop) ? "stop: see " + stop : "";

    /// <summary>How a box was before the report was carried out; empty where it stays.</summary>
    public string WasOf(string box) => mended?.Find(box)?.Was ?? "";

    /// <summary>A row with what there is to say of its box.</summary>
    public MarkRow On(MarkRow row)
    {
        List<string> notes = [];
        if (WasOf(row.BoxId) is { Length: > 0 } was)
        {
            notes.Add(was);
        }

        if (row.Note.Length > 0)
        {
            notes.Add(row.Note);
        }

        row = row with { Note = string.Join("; ", notes) };
        return StopOf(row.BoxId) is { Length: > 0 } stop ? row with { Stop = stop, Mark = null, FromLevelLine = null } : row;
    }
}
