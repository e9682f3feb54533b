using System;
using System.Collections.Generic;
using System.Text;

namespace BoxHeights;

/// <summary>Lights, fans and alarms in the ceilings of a house, each by two tapes from walls, and the middle of each room.</summary>
/// <remarks>It is cut from the mended dwelling (<see cref="Evaluation.Mend"/>), so that it agrees with the marks. Nothing here is an approval.</remarks>
public sealed partial class CeilingPlan
{
    private readonly Dwelling dwelling;
    private readonly LengthUnits units;
    private readonly List<(string Room, Items<WallTape> Middle)> middles;

    private CeilingPlan(Dwelling dwelling, LengthUnits units, Items<CeilingRow> rows, List<(string Room, Items<WallTape> Middle)> middles)
    {
        this.dwelling = dwelling;
        this.units = units;
        this.middles = middles;
        Rows = rows;
    }

    /// <summary>The boxes in ceilings that are still to be set, room by room.</summary>
    public Items<CeilingRow> Rows { get; }

    /// <summary>The ceiling plan of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static CeilingPlan For(Evaluation evaluation)
    {
        MendedDwelling mended = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mend();
        List<(string, Items<WallTape>)> middles = [];
        foreach (ResolvedSurface surface in mended.Evaluation.State.Surfaces)
        {
            if (surface is { Kind: BoxSurface.Ceiling, Space: { IsUntouched: false } space } && space.Plan?.RoomCenter is { } middle)
            {
                middles.Add((space.Id, WallTape.To(space, middle)));
            }
        }

        return new(mended.Dwelling, evaluation.State.Options.Units, CeilingRows.Of(mended.Evaluation.State, new(evaluation, mended)), middles);
    }

    /// <summary>The tapes to the middle of a room: of the rectangle round its walls, where that lies within it; none where the room doesn't close.</summary>
    /// <param name="room">The room's id.</param>
    public Items<WallTape> MiddleOf(string room)
    {
        foreach ((string id, Items<WallTape> middle) in middles)
        {
            if (id == room)
            {
                return middle;
            }
        }

        return default;
    }

    /// <summary>The plan as Markdown: a heading and a table for each room.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Ceiling plan: " + dwelling.Name, "Tapes are held square off the framing face of the wall, to the middle of the box.");
        Table().AppendMarkdown(text);
        return text.ToString();
    }

    /// <summary>The plan as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>How many boxes it shows.</summary>
    public override string ToString() => Rows.Count + " boxes in the ceilings of " + dwelling.Name;

    /// <summary>The rows as every form of the paper shows them: each room's boxes, then its middle.</summary>
    internal TextTable Table()
    {
        TextTable table = CeilingRows.NewTable();
        for (int i = 0; i < Rows.Count; i++)
        {
            CeilingRows.Add(table, Rows[i], units);
            if ((i + 1 == Rows.Count || Rows[i + 1].Room != Rows[i].Room) && MiddleOf(Rows[i].Room) is { Count: 2 } middle)
            {
                table.Add(CeilingRows.HeadingOf(Rows[i].Room), "", "middle of the room", CeilingRows.Of(middle[0], units), CeilingRows.Of(middle[1], units), "", "");
            }
        }

        return table;
    }
}
