using System;
using System.Collections.Generic;
using System.Text;
using System.Threading;

namespace BoxHeights;

/// <summary>Lights, fans and alarms in the ceilings of a house, each by two tapes from walls, the middle of each room, and lines for lights evenly apart.</summary>
/// <remarks>It is cut from the mended dwelling (<see cref="Evaluation.Mend()"/>), so that it agrees with the marks. Nothing here is an approval.</remarks>
public sealed partial class CeilingPlan
{
    private const int MostLines = 3;

    private readonly Dwelling dwelling;
    private readonly LengthUnits units;
    private readonly List<ResolvedSpace> spaces;

    private CeilingPlan(Dwelling dwelling, LengthUnits units, Items<CeilingRow> rows, List<ResolvedSpace> spaces)
    {
        this.dwelling = dwelling;
        this.units = units;
        this.spaces = spaces;
        Rows = rows;
    }

    /// <summary>The boxes in ceilings that are still to be set, room by room.</summary>
    public Items<CeilingRow> Rows { get; }

    /// <summary>The ceiling plan of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static CeilingPlan For(Evaluation evaluation) => For(evaluation, CancellationToken.None);

    /// <summary>The ceiling plan of an evaluated dwelling, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static CeilingPlan For(Evaluation evaluation, CancellationToken cancellationToken)
    {
        MendedDwelling mended = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mended(cancellationToken);
        List<ResolvedSpace> spaces = [];
        foreach (ResolvedSurface surface in mended.Evaluation.State.Surfaces)
        {
            if (surface is { Kind: BoxSurface.Ceiling, Space: { IsUntouched: false } space })
            {
                spaces.Add(space);
            }
        }

        return new(mended.Dwelling, evaluation.State.Options.Units, CeilingRows.Of(mended.Evaluation.State, new(evaluation, mended)), spaces);
    }

    /// <summary>The tapes to the middle of a room: of the rectangle round its walls, where that lies within it; none where the room doesn't close.</summary>
    /// <param name="room">The room's id.</param>
    public Items<WallTape> MiddleOf(string room) => spaces.Find(space => space.Id == room) is { Plan.RoomCenter: { } middle } of ? WallTape.To(of, middle) : default;

    /// <summary>Lines of even spacing for recessed lights, across the joists over a room, each with the bay between joists that it falls in.</summary>
    /// <param name="room">The room's id.</param>
    /// <param name="count">How many lines, from 1 to 100.</param>
    /// <returns>None where nothing is said of the room's joists, or it doesn't close.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> isn't from 1 to 100.</exception>
    public Items<CeilingLine> LinesIn(string room, int count)
    {
        _ = count is >= 1 and <= 100 ? count : throw new ArgumentOutOfRangeException(nameof(count), count, "It is from 1 to 100.");
        return spaces.Find(space => space.Id == room) is { } of ? CeilingLine.In(of, count) : default;
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
                table.Add(CeilingRows.HeadingOf(Rows[i].Room), "", "middle of the room", TapedRow.Called(middle[0], units), TapedRow.Called(middle[1], units), "", "", "");
            }
        }

        foreach (ResolvedSpace space in spaces)
        {
            for (int count = 1; count <= MostLines && space.Room!.Joists is { } joists; count++)
            {
                if (LinesIn(space.Id, count) is { Count: > 0 } lines)
                {
                    string from = joists.Runs == JoistRun.Along ? " from " + space.Room.Walls[0].Id : " from the left end of " + space.Room.Walls[0].Id;
                    table.Add(
                        space.Id + ": lines for lights evenly apart", count.ToString(System.Globalization.CultureInfo.InvariantCulture) + (count == 1 ? " line" : " lines"), "",
                        string.Join(", ", lines.Select(line => Printed.OnTape(line.Even, units))) + from,
                        joists.First is null ? "" : "between joists: " + string.Join(", ", lines.Select(line => Printed.OnTape(line.BetweenJoists!.Value, units))), "", "", "");
                }
            }
        }

        return table;
    }
}
