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
    private readonly EvaluatorOptions print;

    private readonly string title;

    private MarkSheet(Dwelling dwelling, EvaluatorOptions print, string title, Items<MarkRow> rows, Items<LeftOutBox> leftOut)
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
            MarkSheet sheet = new(dwelling, state.Options, dwelling.Name, RowsOf(state, options, unrounded), LeftOutOf(state));

            // Groups are judged together, so rounding is tried out on the whole sheet; boxes that it would tell another story of stay exact.
            int before = unrounded.Count;
            if (!Differs(exact, evaluator.Evaluate(sheet.ToDwelling()), unrounded))
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
        TextTable.AppendTitle(text, "Marks: " + title, "Heights are above the subfloor of the room; distances from the left corner, framing face to box center.");
        Table().AppendMarkdown(text);
        TextTable.AppendList(text, "Not marked", LeftOut);
        return text.ToString();
    }

    /// <summary>The marks as comma-separated values after RFC 4180, with a header line; distances as <see cref="Distance.Parse(string)"/> reads them.</summary>
    public string ToCsv() => Table().ToCsv();

    private TextTable Table()
    {
        TextTable table = new("wall", "box", "for", "from left corner", "stud", "mark", "to", "from level line", "note");
        foreach (MarkRow row in Rows)
        {
            table.Add(
                row.Address,
                row.BoxId,
                row.Purpose.Name,
                row.FromLeftCorner is { } along ? Printed.Exactly(along, print.Units) : "",
                row.Stud,
                row.Mark is { } mark ? Printed.Exactly(mark.Value, print.Units) : "",
                row.Mark is { Edge: { } edge } ? EdgeText.Print(edge) : "",
                row.FromLevelLine is { } line ? Printed.Signed(line, print.Units) : "",
                row.Note);
        }

        return table;
    }

    private static Items<LeftOutBox> LeftOutOf(LayoutState state)
    {
        List<LeftOutBox> found = [];
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            if (state.Boxes[box].IsOnWall && state.SitesOf(box).Length == 0)
            {
                found.Add(new(state.Boxes[box].Source.Id, "a fault of the description keeps it from being marked"));
            }
        }

        return new(found);
    }

    private static Items<MarkRow> RowsOf(LayoutState state, MarkOptions options, HashSet<string> unrounded)
    {
        List<(ResolvedSurface Surface, MarkRow Row)> rows = [];
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            if (state.Boxes[box].Surface is { Kind: BoxSurface.Wall } surface && state.SitesOf(box).Length > 0 && state.HasReading(box)
                && state.Boxes[box].Source is { Existing: false, Measured: null })
            {
                rows.Add((surface, RowOf(state, box, options, !unrounded.Contains(state.Boxes[box].Source.Id))));
            }
        }

        rows.Sort((a, b) => a.Surface.Index != b.Surface.Index
            ? a.Surface.Index.CompareTo(b.Surface.Index)
            : (a.Row.FromLeftCorner ?? Distance.MaxValue) is var left && (b.Row.FromLeftCorner ?? Distance.MaxValue) is var right && left != right
                ? left.CompareTo(right)
                : string.CompareOrdinal(a.Row.BoxId, b.Row.BoxId));
        return new(rows.ConvertAll(row => row.Row));
    }

    private static MarkRow RowOf(LayoutState state, int box, MarkOptions options, bool rounded)
    {
        ResolvedBox resolved = state.Boxes[box];
        MarkRow row = new(resolved.Surface.Address, resolved.Source);
        BoxHeight height = state.HeightOf(box)!.Value;
        Edge edge = options.Edge ?? height.Edge ?? Edge.Center;
        Distance? at = state.AtOf(box);
        row = row with { FromLeftCorner = at, Stud = StudOf(state, box, at) };
        if (height.Edge is null)
        {
            return row with { Note = "no mark: " + height.Value + " names no edge" };
        }

        Levels levels = state.SitesOf(box)[0].Site.Levels;
        if (!levels.TryOffset(Datum.Subfloor, height.Datum, out DistanceRange datum))
        {
            return row with { Note = "no mark: where its height is taken from isn't known" };
        }

        BoxSize size = state.SitesOf(box)[0].Site.Box.Size;
        if (edge != height.Edge && !size.IsStated)
        {
            edge = height.Edge.Value;
        }

        Distance toEdge = edge == height.Edge ? height.Value : height.AtEdge(edge, size).Value;
        DistanceRange exact = datum + toEdge;
        if (!exact.IsExact)
        {
            return row with { Note = "no mark yet: " + exact + ", until the " + DatumText.Name(height.Datum) + " is settled" };
        }

        (Distance mark, Distance? along) = rounded ? Markable(state, box, edge, exact.From, at) : (exact.From, at);
        string note = options.StrongAndShy && mark != exact.From ? (exact.From > mark ? "strong" : "shy") : "";
        return row with
        {
            FromLeftCorner = along,
            Mark = BoxHeight.To(edge, mark, Datum.Subfloor),
            FromLevelLine = levels.TryOffset(Datum.LevelLine, Datum.Subfloor, out DistanceRange below) && below.IsExact ? mark + below.From : null,
            Note = edge != height.Edge && !size.HeightRange.IsExact ? Joined(note, "for a box " + size.Height + " tall") : note,
        };
    }

    private static string Joined(string one, string other) => one.Length == 0 ? other : one + ", " + other;

    /// <summary>The nearest place that can be marked at which every placement rule says what it says of the exact place.</summary>
    private static (Distance Mark, Distance? Along) Markable(LayoutState state, int box, Edge edge, Distance exact, Distance? at)
    {
        EvaluatorOptions options = state.Options;

        // A box that is placed by its stud is where its stud is: nothing to round.
        bool byStud = state.Boxes[box].Source.At is null;
        foreach (Distance? along in at is { } place && !byStud ? Near(place, options.AlongStep, state.Boxes[box].Surface.Length) : [at])
        {
            foreach (Distance? mark in Near(exact, options.HeightStep, Distance.MaxValue))
            {
                if (SaysTheSame(state, box, edge, mark!.Value, along))
                {
                    return (mark.Value, along);
                }
            }
        }

        return (exact, at);
    }

    /// <summary>The multiples of a step around a distance, nearest first, and at last the distance itself.</summary>
    private static IEnumerable<Distance?> Near(Distance exact, Distance step, Distance most)
    {
        Distance down = exact.RoundDown(step);
        Distance up = exact.RoundUp(step);
        bool downFirst = exact - down <= up - exact;
        foreach (Distance rounded in downFirst ? new[] { down, up } : new[] { up, down })
        {
            if (rounded >= Distance.Zero && rounded <= most)
            {
                yield return rounded;
            }
        }

        yield return exact;
    }

    private static bool SaysTheSame(LayoutState state, int box, Edge edge, Distance mark, Distance? along)
    {
        StatedSite site = state.SiteOf(box, edge, Datum.Subfloor, along);
        Place marked = along is { } place ? new(place.Ticks, place.Ticks, mark) : new(0, state.Boxes[box].Surface.Length.Ticks, mark);
        Place now = state.PlaceOf(box);
        for (int p = 0; p < site.Placements.Length; p++)
        {
            if (SlabJudge.Verdict(site.Placements[p].Slabs, marked) != state.VerdictOf(box, p, now))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The stud and its side where the box is nailed to one that is known; else the nearest, named as no more than that.</summary>
    private static string StudOf(LayoutState state, int box, Distance? at)
    {
        ResolvedBox resolved = state.Boxes[box];
        BoxTraits traits = state.SitesOf(box)[0].Site.Box;
        if (at is not { } place || traits.Surface != BoxSurface.Wall || resolved.Surface.Studs is not { } studs || studs.Nearest(place) is not { } nearest)
        {
            return "";
        }

        bool nailed = traits.Mounting is null or MountingMethod.Stud
            && studs.TryCenter(nearest.Stud, nearest.Side, traits.Size.Width, out Distance center)
            && (center - place).Abs() <= state.Options.AlongStep;
        return studs.Known == StudKnowledge.Assumed ? "near stud " + nearest.Stud + " (assumed layout)"
            : nailed ? "stud " + nearest.Stud + ", " + (nearest.Side == StudSide.Left ? "left" : "right") + " side"
            : "near stud " + nearest.Stud;
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
                foreach (Finding other in others.For(finding.Subject))
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
