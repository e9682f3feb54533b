using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A box in a floor, or on a thing that stands free on it (an island, a peninsula), that is still to be set: by two tapes from walls.</summary>
[Told]
public sealed partial record FloorRow : TapedRow
{
    /// <summary>The id of what stands where it is: an island, a peninsula; empty in the open floor.</summary>
    public string On { get; internal init; } = "";

    /// <summary>Its height, as it is described; null for one that is flush with the floor, or where that isn't stated.</summary>
    public BoxHeight? Height { get; internal init; }

    /// <summary>The box and its tapes: what the row says.</summary>
    public override string ToString() => InOneLine;
}

/// <summary>Which boxes in floors and on islands a sheet of marks has rows for, and how they are printed.</summary>
internal static class FloorRows
{
    /// <summary>A row for every box that is listed in a room's floor and still to be set, room by room.</summary>
    public static Items<FloorRow> Of(LayoutState state, MarkWords words)
    {
        List<FloorRow> rows = [];
        foreach (ResolvedBox box in state.Boxes)
        {
            if (box is { IsExisting: false, Surface: { Kind: BoxSurface.Floor, Space: { } space }, Source: { Measured: null } source })
            {
                rows.Add(new(space.Id, source.Id, source.Purpose)
                {
                    On = source.Plan is { } at ? StandingAt(space, at) : "",
                    Tapes = source.Plan is { } plan ? WallTape.To(space, plan) : default,
                    Height = source.Height,
                    Stop = words.StopOf(source.Id),
                    Note = words.WasOf(source.Id),
                });
            }
        }

        return new(rows);
    }

    private static string StandingAt(ResolvedSpace space, PlanPoint plan)
    {
        foreach (Freestanding one in space.Room?.Freestanding ?? default)
        {
            if (PlanOutline.TryOf(one.Corners, out PlanOutline? outline) && outline.Holds(plan))
            {
                return one.Id;
            }
        }

        return "";
    }

    /// <summary>The rows as every paper shows them.</summary>
    public static TextTable Table(Items<FloorRow> rows, LengthUnits units)
    {
        TextTable table = new("room", "box", "for", "on", "one tape", "another tape", "height", "stop", "note");
        foreach (FloorRow row in rows)
        {
            table.Add(
                row.Room + ": in the floor, or on what stands on it", row.BoxId, row.Purpose.Name, row.On, row.Tape(0, units), row.Tape(1, units),
                row.IsStopped ? "" : row.Height?.Exactly(units) ?? "", row.Stop, row.Note);
        }

        return table;
    }
}
