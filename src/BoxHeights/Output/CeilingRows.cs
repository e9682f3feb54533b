using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A box in a ceiling that is still to be set, by two tapes from walls.</summary>
[Told]
public sealed partial record CeilingRow : TapedRow
{
    /// <summary>How far its middle is from that of the nearest joist; null where it isn't known where joists are.</summary>
    public Distance? FromJoist { get; internal init; }

    /// <summary>The box and its tapes: what the row says.</summary>
    public override string ToString() => InOneLine;
}

/// <summary>Which boxes in ceilings papers have rows for, and how they are printed.</summary>
internal static class CeilingRows
{
    /// <summary>A row for every box in a ceiling that is still to be set, room by room.</summary>
    public static Items<CeilingRow> Of(LayoutState state, MarkWords words)
    {
        List<CeilingRow> rows = [];
        foreach (ResolvedBox box in state.Boxes)
        {
            if (box is { IsExisting: false, Surface: { Kind: BoxSurface.Ceiling, Space: { } space }, Source: { Measured: null } source })
            {
                rows.Add(new(space.Id, source.Id, source.Purpose)
                {
                    Tapes = source.Plan is { } plan ? WallTape.To(space, plan) : default,
                    FromJoist = OffJoist(space, source),
                    Stop = words.StopOf(source.Id),
                    Note = words.WasOf(source.Id),
                });
            }
        }

        return new(rows);
    }

    private static Distance? OffJoist(ResolvedSpace space, DeviceBox box) =>
        space.Room?.Joists is { } joists && box.Plan is { } plan && joists.Nearest(joists.Across(plan)) is { } joist ? (joists.Across(plan) - joist).Abs() : null;

    /// <summary>The rows as every paper shows them.</summary>
    public static TextTable Table(Items<CeilingRow> rows, LengthUnits units)
    {
        TextTable table = NewTable();
        foreach (CeilingRow row in rows)
        {
            Add(table, row, units);
        }

        return table;
    }

    public static TextTable NewTable() => new("room", "box", "for", "one tape", "another tape", "from the joist", "stop", "note");

    public static string HeadingOf(string room) => room + ": in the ceiling";

    public static void Add(TextTable table, CeilingRow row, LengthUnits units) => table.Add(
        HeadingOf(row.Room), row.BoxId, row.Purpose.Name, row.Tape(0, units), row.Tape(1, units), row.FromJoist is { } off ? Printed.OnTape(off, units) : "", row.Stop, row.Note);
}
