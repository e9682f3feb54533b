using System;
using System.Collections.Generic;
using System.Text;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The marks for the helper: for every box on a wall, where along it and how high above the subfloor.</summary>
/// <remarks>
/// They are those of the mended dwelling (<see cref="Evaluation.Mend()"/>): a box that the report sets otherwise is marked where it ends, with where it was; one that
/// nothing mends isn't marked, and says which finding stops it. So the sheet never contradicts the report.
/// Heights are rounded once, to what can be marked, and inward: a mark read back says the same of every rule as the exact height does.
/// Nothing here is an approval.
/// </remarks>
[Told]
public sealed partial class MarkSheet
{
    /// <summary>The dwelling that it is cut from.</summary>
    internal Dwelling Dwelling { get; }

    /// <summary>The units in which it is printed.</summary>
    public LengthUnits Units { get; }

    /// <summary>What it says on top: the dwelling's name, and the room's where it is one room's.</summary>
    public string Title { get; }

    /// <summary>The parts that its boxes are.</summary>
    internal PartsCatalog Catalog { get; private init; } = PartsCatalog.Generic;

    /// <summary>The marks: room by room, wall by wall, from left to right.</summary>
    public Items<MarkRow> Rows { get; }

    /// <summary>Boxes on walls that should have a mark and can't, and why. Boxes that are set already (existing or measured) need none.</summary>
    public Items<LeftOutBox> LeftOut { get; }

    /// <summary>Boxes on walls that are set already, and how that is known.</summary>
    public Items<LeftOutBox> SetAlready { get; }

    /// <summary>Boxes in ceilings, by two tapes from walls.</summary>
    public Items<CeilingRow> Overhead { get; }

    /// <summary>Boxes in floors and on islands, by two tapes from walls.</summary>
    public Items<FloorRow> InFloor { get; }

    /// <summary>The marks of an evaluated dwelling, each box to the edge that it is described by.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the sheet takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static MarkSheet For(Evaluation evaluation) => For(evaluation, MarkOptions.Default);

    /// <summary>The marks of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the sheet takes.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static MarkSheet For(Evaluation evaluation, MarkOptions options) => For(evaluation, options, CancellationToken.None);

    /// <summary>The marks of an evaluated dwelling, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the sheet takes.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> or <paramref name="options"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static MarkSheet For(Evaluation evaluation, MarkOptions options, CancellationToken cancellationToken)
    {
        _ = evaluation ?? throw new ArgumentNullException(nameof(evaluation));
        MendedDwelling? mended = (options ?? throw new ArgumentNullException(nameof(options))).AsDescribed ? null : evaluation.Mended(cancellationToken);
        Evaluation exact = mended?.Evaluation ?? evaluation;
        LayoutState state = exact.State;
        MarkWords words = new(evaluation, mended);
        lock (state.Gate)
        {
            RoundedMarks marks = new(state, options, words);
            HashSet<string> unlike = new(StringComparer.Ordinal);

            // Groups are judged together, so rounding is tried out on the whole sheet; boxes that it would tell another story of stay exact.
            while (marks.AreAny && Differs(exact, exact.WithBoxesOf(marks.ReadBack(), cancellationToken, isTrial: true), unlike))
            {
                if (!marks.KeepExact(unlike))
                {
                    // Another box of a group may be the one whose rounding shows: then all stay exact.
                    marks.KeepExact();
                }
            }

            return new(
                exact.Dwelling, state.Options.Units, exact.Dwelling.Name, marks.InOrder(),
                MarkRows.LeftOut(state), MarkRows.SetAlready(state), CeilingRows.Of(state, words), FloorRows.Of(state, words))
            {
                Catalog = state.Options.Catalog,
            };
        }
    }

    /// <summary>The part of the sheet that is pinned up in one room, or outside: its rows alone.</summary>
    /// <param name="room">The id of a room or an outside face.</param>
    /// <returns>A sheet without rows where nothing is marked there.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="room"/> is null.</exception>
    public MarkSheet ForRoom(string room)
    {
        _ = room ?? throw new ArgumentNullException(nameof(room));
        bool IsThere(string box) => Dwelling.FindBox(box) is { } placed && SurfaceAddress.Read(placed.Address).IsPartOf(room);
        return new(
            Dwelling, Units, Dwelling.Name + ", " + room, Rows.Where(row => SurfaceAddress.Read(row.Address).IsPartOf(room)),
            LeftOut.Where(box => IsThere(box.BoxId)), SetAlready.Where(box => IsThere(box.BoxId)), Overhead.Where(row => IsThere(row.BoxId)), InFloor.Where(row => IsThere(row.BoxId)))
        {
            Catalog = Catalog,
        };
    }

    /// <summary>The dwelling as the marks say: each marked box at its mark.</summary>
    public Dwelling ToDwelling()
    {
        Dictionary<string, MarkRow> marks = new(StringComparer.Ordinal);
        foreach (MarkRow row in Rows)
        {
            marks[row.BoxId] = row;
        }

        return Dwelling.WithBoxes(box => marks.TryGetValue(box.Id, out MarkRow? row) && row.Mark is { } mark
            ? box with { Height = mark, At = row.FromLeftCorner ?? box.At }
            : box);
    }

    /// <summary>The marks as Markdown: for each room a table for each edge that boxes are marked to, in the order in which one walks along its walls; then its ceiling, its floor and what stands on it.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Marks: " + Title, "Heights are above the subfloor of the room, to the edge of the box in the heading; distances from the left corner, left as you face the wall, framing face to box center; stands out: from the framing out to the front edge of box or ring; stop: not to be marked before that finding of the report is settled.");
        Table().AppendMarkdown(text);
        CeilingRows.Table(Overhead, Units).AppendMarkdown(text);
        FloorRows.Table(InFloor, Units).AppendMarkdown(text);
        TextTable.AppendList(text, "Set already", SetAlready);
        TextTable.AppendList(text, "Not marked", LeftOut);
        return text.ToString();
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The marks as comma-separated values after RFC 4180, with a header line; distances as <see cref="Distance.Parse(string)"/> reads them.</summary>
    public string ToCsv()
    {
        TextTable table = new("wall", "box", "for", "from left corner", "at", "stop", "mark", "edge", "from level line", "stands out", "note");
        foreach (MarkRow row in Rows)
        {
            table.Add(
                row.Address, row.BoxId, row.Purpose.Name, Text(row.FromLeftCorner), row.Stud, row.Stop, Text(row.Mark?.Value), row.Mark is { Edge: { } edge } ? EdgeText.Print(edge) : "",
                LineOf(row), Text(row.StandsOut), row.Note);
        }

        return table.ToCsv();
    }

    /// <summary>The rows as a crew reads them: one edge to a table, since who switches between edges with a pencil in hand marks the wrong one.</summary>
    internal TextTable Table()
    {
        List<(string Heading, List<MarkRow> Rows)> sheets = [];
        foreach (MarkRow row in Rows)
        {
            string heading = SurfaceAddress.Read(row.Address).Space + ": "
                + (row.Mark is { Edge: { } edge } ? EdgeText.Print(edge).Replace("to ", "to the ") + " of the box" : row.Stop.Length > 0 ? "not to be marked yet" : "no mark");
            int known = sheets.FindIndex(sheet => sheet.Heading == heading);
            if (known < 0)
            {
                sheets.Add((heading, [row]));
            }
            else
            {
                sheets[known].Rows.Add(row);
            }
        }

        TextTable table = new("sheet", "wall", "box", "for", "from left corner", "at", "mark", "from level line", "stands out", "note");
        foreach ((string heading, List<MarkRow> rows) in sheets)
        {
            foreach (MarkRow row in rows)
            {
                table.Add(
                    heading, SurfaceAddress.Read(row.Address).Surface!, row.BoxId, row.Purpose.Name, OnTape(row.FromLeftCorner), row.Stud,
                    row.Mark is { } mark ? Text(mark.Value) : row.Stop, LineOf(row), Text(row.StandsOut), row.Note);
            }
        }

        return table;
    }

    private string Text(Distance? distance) => distance is { } some ? some.Exactly(Units) : "";

    /// <summary>For a hand with a tape: where a stud stands needs no hundredth of a millimeter.</summary>
    private string OnTape(Distance? distance) => distance is { } some ? Printed.OnTape(some, Units) : "";

    private string LineOf(MarkRow row) => row.FromLevelLine is { } line ? Printed.Signed(line, Units) : "";

    /// <summary>Whether two evaluations say different things, and of which boxes.</summary>
    private static bool Differs(Evaluation exact, Evaluation marked, HashSet<string> boxes)
    {
        bool differs = false;
        AddMissing(exact, marked);
        AddMissing(marked, exact);
        return differs;

        void AddMissing(Evaluation some, Evaluation others)
        {
            Dictionary<(string, string, LayoutFault?), List<Finding>> about = [];
            foreach (Finding other in others.Findings)
            {
                about.ListOf(other.About).Add(other);
            }

            foreach (Finding finding in some.Findings)
            {
                bool same = about.TryGetValue(finding.About, out List<Finding>? alike) && alike.Exists(other => other.Verdict == finding.Verdict);
                if (!same)
                {
                    differs = true;
                    boxes.Add(finding.Subject);
                }
            }
        }
    }
}
