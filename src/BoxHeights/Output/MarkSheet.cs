using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The marks for the helper: for every box on a wall, where along it and how high above the subfloor.</summary>
/// <remarks>
/// They are those of the mended dwelling (<see cref="Evaluation.Mend"/>): a box that the report sets otherwise is marked where it ends, with where it was; one that
/// nothing mends isn't marked, and says which finding stops it. So the sheet never contradicts the report.
/// Heights are rounded once, to what can be marked, and inward: a mark read back says the same of every rule as the exact height does.
/// Nothing here is an approval.
/// </remarks>
public sealed class MarkSheet
{
    private readonly Dwelling dwelling;
    private readonly string title;

    private MarkSheet(Dwelling dwelling, SettledOptions options, string title, Items<MarkRow> rows, Items<LeftOutBox> leftOut)
    {
        this.dwelling = dwelling;
        this.title = title;
        Options = options;
        Rows = rows;
        LeftOut = leftOut;
    }

    /// <summary>The marks: room by room, wall by wall, from left to right.</summary>
    public Items<MarkRow> Rows { get; }

    /// <summary>The options by which it is rounded and printed.</summary>
    internal SettledOptions Options { get; }

    /// <summary>Boxes on walls that should have a mark and can't, and why. Boxes that are set already (existing or measured) need none.</summary>
    public Items<LeftOutBox> LeftOut { get; }

    /// <summary>The marks of an evaluated dwelling, each box to the edge that it is described by.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the sheet takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static MarkSheet For(Evaluation evaluation) => For(evaluation, MarkOptions.Default);

    /// <summary>The marks of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the sheet takes.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static MarkSheet For(Evaluation evaluation, MarkOptions options)
    {
        _ = evaluation ?? throw new ArgumentNullException(nameof(evaluation));
        MendedDwelling? mended = (options ?? throw new ArgumentNullException(nameof(options))).AsDescribed ? null : evaluation.Mend();
        Evaluation exact = mended?.Evaluation ?? evaluation;
        LayoutState state = exact.State;
        MarkWords words = new(evaluation, mended);
        HashSet<string> unrounded = new(StringComparer.Ordinal);
        while (true)
        {
            MarkSheet sheet = new(exact.Dwelling, state.Options, exact.Dwelling.Name, MarkRows.Of(state, options, unrounded).Select(words.On), MarkRows.LeftOut(state));

            // Groups are judged together, so rounding is tried out on the whole sheet; boxes that it would tell another story of stay exact.
            int before = unrounded.Count;
            if (!Differs(exact, exact.Again(sheet.ToDwelling()), unrounded))
            {
                return sheet;
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
                    return sheet;
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
        _ = room ?? throw new ArgumentNullException(nameof(room));
        List<MarkRow> rows = [];
        foreach (MarkRow row in Rows)
        {
            if (SurfaceAddress.Read(row.Address).IsPartOf(room))
            {
                rows.Add(row);
            }
        }

        List<LeftOutBox> leftOut = [];
        foreach (LeftOutBox box in LeftOut)
        {
            if (dwelling.FindBox(box.BoxId) is { } placed && SurfaceAddress.Read(placed.Address).IsPartOf(room))
            {
                leftOut.Add(box);
            }
        }

        return new(dwelling, Options, dwelling.Name + ", " + room, new(rows), new(leftOut));
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
        TextTable.AppendTitle(text, "Marks: " + title, "Heights are above the subfloor of the room; distances from the left corner, left as you face the wall, framing face to box center; stands out: from the framing out to the front edge of box or ring; stop: not to be marked before that finding of the report is settled.");
        Table().AppendMarkdown(text);
        TextTable.AppendList(text, "Not marked", LeftOut);
        return text.ToString();
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The marks as comma-separated values after RFC 4180, with a header line; distances as <see cref="Distance.Parse(string)"/> reads them.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("wall", "box", "for", "from left corner", "stud", "stop", "mark", "edge", "from level line", "stands out", "note");
        foreach (MarkRow row in Rows)
        {
            table.Add(
                row.Address,
                row.BoxId,
                row.Purpose.Name,
                row.FromLeftCorner is { } along ? along.Exactly(Options.Units) : "",
                row.Stud,
                row.Stop,
                row.Mark is { } mark ? mark.Value.Exactly(Options.Units) : "",
                row.Mark is { Edge: { } edge } ? EdgeText.Print(edge) : "",
                row.FromLevelLine is { } line ? Printed.Signed(line, Options.Units) : "",
                row.StandsOut is { } front ? front.Exactly(Options.Units) : "",
                row.Note);
        }

        return table;
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
