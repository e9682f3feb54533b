using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What to put right: the boxes that were measured on a walk and aren't clearly where they were planned.</summary>
/// <remarks>
/// The height planned is the drawing's where it names an edge, else the one the box was to be set to; boxes without either, or not measured, aren't
/// looked at. Where the two heights go to different edges the size of the box comes in, with the range that boxes of its kind have.
/// Nothing here is an approval.
/// </remarks>
public sealed partial class PunchList
{
    private readonly Dwelling dwelling;

    private PunchList(Dwelling dwelling, Distance tolerance, List<PunchRow> rows, List<string> clearlyIn)
    {
        this.dwelling = dwelling;
        Tolerance = tolerance;
        Rows = new(rows);
        ClearlyIn = new(clearlyIn);
    }

    /// <summary>How far off the planned height a box may be, up or down, itself allowed.</summary>
    public Distance Tolerance { get; }

    /// <summary>What isn't clearly in: room by room, as the dwelling lists them.</summary>
    public Items<PunchRow> Rows { get; }

    /// <summary>The boxes that are clearly within the tolerance.</summary>
    public Items<string> ClearlyIn { get; }

    /// <summary>The punch list of an evaluated dwelling, with the tolerance of the set's row on heights that the drawing asks for; where it has none, with the slack that remedies keep in height.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the list takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static PunchList For(Evaluation evaluation)
    {
        foreach (PlacementRule rule in (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).State.Rules.Placement)
        {
            if (rule.OffTheDrawing is { } within)
            {
                return For(evaluation, within);
            }
        }

        return For(evaluation, evaluation.State.Options.HeightMargin);
    }

    /// <summary>The punch list of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose options and units the list takes.</param>
    /// <param name="tolerance">How far off the planned height a box may be, up or down, itself allowed; not negative.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> is negative.</exception>
    public static PunchList For(Evaluation evaluation, Distance tolerance)
    {
        LayoutState state = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).State;
        Guard.NotNegative(tolerance, nameof(tolerance));
        List<PunchRow> rows = [];
        List<string> clearlyIn = [];
        foreach (ResolvedBox box in state.Boxes)
        {
            if (box.Source.Measured is not { } measured || PlannedFor(box.Source) is not { } planned)
            {
                continue;
            }

            PunchRow row = Compare(new(box.Surface.Address, box.Source, planned, measured.Height, box.Spread), box, tolerance, state.Options);
            if (row.AsBuilt == AsBuilt.ClearlyIn)
            {
                clearlyIn.Add(row.BoxId);
            }
            else
            {
                rows.Add(row);
            }
        }

        return new(evaluation.Dwelling, tolerance, rows, clearlyIn);
    }

    /// <summary>The punch list as Markdown: a heading and a table for each room.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(
            text, "Punch list: " + dwelling.Name, Rows.Count + ClearlyIn.Count == 0 ? "No box has both a planned and a measured height: there is nothing to compare."
                : "Tolerance " + Tolerance.Exactly(dwelling.Units) + " up or down; boxes measured clearly within it: " + ClearlyIn.Count + ".");
        Table().AppendMarkdown(text);
        return text.ToString();
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The punch list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("room", "surface", "box", "for", "planned", "measured", "tape", "line");
        foreach (PunchRow row in Rows)
        {
            SurfaceAddress at = SurfaceAddress.Read(row.Address);
            table.Add(
                at.Space, at.Surface!, row.BoxId, row.Purpose.Name, row.Planned.Exactly(dwelling.Units), row.Measured.Exactly(dwelling.Units),
                row.Within.Exactly(dwelling.Units), row.Line);
        }

        return table;
    }

    private static BoxHeight? PlannedFor(DeviceBox box) =>
        box.Specified is { Edge: not null } asked ? asked : box.Height ?? box.Specified;

    private static PunchRow Compare(PunchRow row, ResolvedBox box, Distance tolerance, SettledOptions options)
    {
        if (row.Planned.Edge is not { } planned)
        {
            return NotCompared(row, "the edge that the planned height goes to isn't stated");
        }

        if (row.Measured.Edge is not { } measured)
        {
            return NotCompared(row, "the edge that was measured to isn't stated");
        }

        if (!box.TryOffset(row.Planned.Datum, row.Measured.Datum, options.Catalog, out DistanceRange datums, out Datum? becauseOf))
        {
            return NotCompared(row, Reasons.NotKnown(becauseOf));
        }

        // From the edge measured up to the edge planned: none, half a box or a whole one, either way.
        int halves = (int)planned - (int)measured;
        BoxSize size = ResolvedBox.SizeOf(box.Source, options.Catalog);
        if (halves != 0 && !size.IsStated)
        {
            return NotCompared(row, Reasons.NoSize);
        }

        DistanceRange off = datums + (row.Measured.Value - row.Planned.Value);
        for (int half = 0; half < Math.Abs(halves); half++)
        {
            off = halves > 0 ? off + HalfOf(size) : off - HalfOf(size);
        }

        DistanceRange read = new(off.From - row.Within, off.To + row.Within);
        DistanceRange allowed = new(-tolerance, tolerance);
        if (allowed.Contains(read))
        {
            return row with { Off = off, AsBuilt = AsBuilt.ClearlyIn, Line = row.BoxId + ": as planned" };
        }

        if (!allowed.Overlaps(read))
        {
            return row with { Off = off, AsBuilt = AsBuilt.ClearlyOut, Line = row.BoxId + ": " + Said(off, options.Units) };
        }

        return off.IsExact
            ? row with { Off = off, AsBuilt = AsBuilt.WithinTapeError, Line = row.BoxId + ": " + Printed.HighOrLow(off.From, options.Units) + ", within the tape's error of the tolerance: measure again" }
            : NotCompared(row with { Off = off }, datums.IsExact ? Reasons.BoxRange : Reasons.NotKnown(becauseOf));
    }

    private static DistanceRange HalfOf(BoxSize size) => new(EvenSize.Half(size.HeightRange.From), EvenSize.Half(size.HeightRange.To));

    /// <summary>All of a range is on one side here: the nearer end is what is surely off.</summary>
    private static string Said(DistanceRange off, LengthUnits units) =>
        off.IsExact ? Printed.HighOrLow(off.From, units).ToString() : "at least " + Printed.HighOrLow(off.From > Distance.Zero ? off.From : off.To, units);

    private static PunchRow NotCompared(PunchRow row, string why) =>
        row with { AsBuilt = AsBuilt.NotCompared, Line = row.BoxId + ": not compared: " + why };
}
