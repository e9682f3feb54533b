using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A box in a ceiling that is still to be set, by two tapes from walls.</summary>
public sealed record CeilingRow
{
    internal CeilingRow(string room, string boxId, BoxPurpose purpose)
    {
        Room = room;
        BoxId = boxId;
        Purpose = purpose;
    }

    /// <summary>The room's id.</summary>
    public string Room { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>The tapes: from the nearest wall, and from the nearest that runs across it; none where its place isn't known.</summary>
    public Items<WallTape> Tapes { get; internal init; }

    /// <summary>How far its middle is from that of the nearest joist; null where it isn't known where joists are.</summary>
    public Distance? FromJoist { get; internal init; }

    /// <summary>"stop: see 3" where something about it is open that nothing mends; else empty.</summary>
    public string Stop { get; internal init; } = "";

    /// <summary>What the report sets otherwise, and how it was.</summary>
    public string Note { get; internal init; } = "";
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

    public static void Add(TextTable table, CeilingRow row, LengthUnits units)
    {
        bool isStopped = row.Stop.Length > 0;
        table.Add(
            HeadingOf(row.Room), row.BoxId, row.Purpose.Name, isStopped ? "" : row.Tapes.Count > 0 ? Of(row.Tapes[0], units) : "where isn't known",
            !isStopped && row.Tapes.Count > 1 ? Of(row.Tapes[1], units) : "", row.FromJoist is { } off ? Printed.OnTape(off, units) : "", row.Stop, row.Note);
    }

    /// <summary>A tape as it is called out: "36 in from north".</summary>
    public static string Of(WallTape tape, LengthUnits units) => Printed.OnTape(tape.Away, units) + " from " + SurfaceAddress.Read(tape.Address).Surface;
}
