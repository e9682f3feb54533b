using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The marks for the helper: for every box on a wall, where along it and how high above the subfloor.</summary>
/// <remarks>
/// Heights are rounded once, to what can be marked, and inward: a mark read back says the same of every rule as the exact height does.
/// Nothing here is an approval.
/// </remarks>
public sealed class MarkSheet
{
    private readonly Dwelling dwelling;
    private readonly SettledOptions print;

    private readonly string title;

    private MarkSheet(Dwelling dwelling, SettledOptions print, string title, Items<MarkRow> rows, Items<LeftOutBox> leftOut)
    {
        this.dwelling = dwelling;
        this.title = title;
        this.print = print;
        Rows = rows;
        LeftOut = leftOut;
    }

    /// <summary>The marks: room by room, wall by wall, from left to right.</summary>
    public Items<MarkRow> Rows { get; }

    /// <summary>Boxes on walls that should have a mark and can't, and why. Boxes that are set already (existing or measured) need none.</summary>
    public Items<LeftOutBox> LeftOut { get; }

    /// <summary>The marks of a dwelling with the usual options.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="rules">The rules that rounding must respect.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static MarkSheet For(Dwelling dwelling, RuleSet rules) => For(dwelling, rules, MarkOptions.Default);

    /// <summary>The marks of a dwelling.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="rules">The rules that rounding must respect.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static MarkSheet For(Dwelling dwelling, RuleSet rules, MarkOptions options)
    {
        if (options is null)
        {
            throw new ArgumentNullException(nameof(options));
        }

        LayoutEvaluator evaluator = new(rules);
        LayoutState state = evaluator.StateOf(dwelling);
        Evaluation exact = new(evaluator, state);
        HashSet<string> unrounded = new(StringComparer.Ordinal);
        while (true)
        {
            MarkSheet sheet = new(dwelling, state.Options, dwelling.Name, MarkRows.Of(state, options, unrounded), MarkRows.LeftOut(state));

            // Groups are judged together, so rounding is tried out on the whole sheet; boxes that it would tell another story of stay exact.
            int before = unrounded.Count;
            if (!Differs(exact, evaluator.Evaluate(sheet.ToDwelling()), unrounded))
            {
                return sheet.Holding(exact);
            }

            // Another box of a group may be the one whose rounding shows: then all stay exact.
            if (unrounded.Count == before)
            {
                foreach (ResolvedBox box in state.Boxes)
                {
                    unrounded.Add(box.Source.Id);
                }

                if (unrounded.Count == before)
                {
                    return sheet.Holding(exact);
                }
            }
        }
    }

    /// <summary>The part of the sheet that is pinned up in one room, or outside: its rows alone.</summary>
    /// <param name="room">The id of a room or an outside face.</param>
    /// <returns>A sheet without rows where nothing is marked there.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="room"/> is null.</exception>
    public MarkSheet ForRoom(string room)
    {
        string address = (room ?? throw new ArgumentNullException(nameof(room))) + "/";
        List<MarkRow> rows = [];
        foreach (MarkRow row in Rows)
        {
            if (row.Address.StartsWith(address, StringComparison.Ordinal))
            {
                rows.Add(row);
            }
        }

        List<LeftOutBox> leftOut = [];
        foreach (LeftOutBox box in LeftOut)
        {
            if (dwelling.FindBox(box.BoxId) is { } placed && placed.Address.StartsWith(address, StringComparison.Ordinal))
            {
                leftOut.Add(box);
            }
        }

        return new(dwelling, print, dwelling.Name + ", " + room, new(rows), new(leftOut));
    }

    /// <summary>The dwelling as the marks say: each marked box at its mark.</summary>
    public Dwelling ToDwelling()
    {
        Dictionary<string, MarkRow> marks = new(StringComparer.Ordinal);
        foreach (MarkRow row in Rows)
        {
            marks[row.BoxId] = row;
        }

        return dwelling.WithBoxes(box => marks.TryGetValue(box.Id, out MarkRow? row) && row.Mark is { } mark
            ? box with { Height = mark, At = row.FromLeftCorner ?? box.At }
            : box);
    }

    /// <summary>The marks as Markdown: a heading and a table for each wall.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Marks: " + title, "Heights are above the subfloor of the room; distances from the left corner, left as you face the wall, framing face to box center; set for: from the framing out to the front edge of box or ring.");
        Table().AppendMarkdown(text);
        TextTable.AppendList(text, "Not marked", LeftOut);
        return text.ToString();
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The marks as comma-separated values after RFC 4180, with a header line; distances as <see cref="Distance.Parse(string)"/> reads them.</summary>
    public string ToCsv() => Table().ToCsv();

    private TextTable Table()
    {
        TextTable table = new("wall", "box", "for", "from left corner", "stud", "hold", "mark", "to", "from level line", "set for", "note");
        foreach (MarkRow row in Rows)
        {
            table.Add(
                row.Address,
                row.BoxId,
                row.Purpose.Name,
                row.FromLeftCorner is { } along ? along.Exactly(print.Units) : "",
                row.Stud,
                row.Hold,
                row.Mark is { } mark ? mark.Value.Exactly(print.Units) : "",
                row.Mark is { Edge: { } edge } ? EdgeText.Print(edge) : "",
                row.FromLevelLine is { } line ? Printed.Signed(line, print.Units) : "",
                row.SetFor is { } front ? front.Exactly(print.Units) : "",
                row.Note);
        }

        return table;
    }

    /// <summary>The sheet with a word at each box that isn't to be marked where it is described: what is set wrong on purpose is cut twice.</summary>
    private MarkSheet Holding(Evaluation exact)
    {
        Dictionary<string, int> numbers = new(StringComparer.Ordinal);
        for (int cause = exact.Causes.Count - 1; cause >= 0; cause--)
        {
            foreach (Finding finding in exact.Causes[cause].Findings)
            {
                if (finding.IsViolation)
                {
                    numbers[finding.Subject] = cause + 1;
                }
            }
        }

        return new(dwelling, print, title, Rows.Select(row => numbers.TryGetValue(row.BoxId, out int number) ? row with { Hold = "don't mark: see finding " + number } : row), LeftOut);
    }

    /// <summary>Whether two evaluations say different things, and of which boxes.</summary>
    private static bool Differs(Evaluation exact, Evaluation marked, HashSet<string> boxes)
    {
        bool differs = false;
        AddMissing(exact, marked);
        AddMissing(marked, exact);
        return differs;

        void AddMissing(Evaluation some, Evaluation others)
        {
            foreach (Finding finding in some.Findings)
            {
                bool same = false;
                foreach (Finding other in others.About(finding.Subject))
                {
                    same |= other.IsAbout(finding) && other.Outcome == finding.Outcome;
                }

                if (!same)
                {
                    differs = true;
                    boxes.Add(finding.Subject);
                }
            }
        }
    }
}
