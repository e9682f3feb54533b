using System;
using System.Collections.Generic;
using System.Text;

namespace BoxHeights;

/// <summary>For the drywallers: every board of a house with what is cut out of it, from two of its edges, and the boxes that force a second cut.</summary>
/// <remarks>It is cut from the mended dwelling (<see cref="Evaluation.Mend()"/>), so that it agrees with the marks. See <see cref="BoardCutouts"/>. Nothing here is an approval.</remarks>
public sealed partial class CutoutList
{
    private readonly Dwelling dwelling;
    private readonly List<BoardCutouts> walls;

    private CutoutList(Dwelling dwelling, List<BoardCutouts> walls)
    {
        this.dwelling = dwelling;
        this.walls = walls;
        List<BoardCutout> rows = [];
        foreach (BoardCutouts wall in walls)
        {
            for (int board = 0; board < wall.Boards.Count; board++)
            {
                rows.AddRange(wall.On(board));
            }

            Boards += wall.Boards.Count;
        }

        Rows = new(rows);
    }

    /// <summary>The cutouts, wall by wall and board by board.</summary>
    public Items<BoardCutout> Rows { get; }

    /// <summary>How many boards there are on walls whose board is described.</summary>
    public int Boards { get; }

    /// <summary>The cutouts of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static CutoutList For(Evaluation evaluation)
    {
        Evaluation mended = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mend().Evaluation;
        List<BoardCutouts> walls = [];
        foreach (Room room in mended.Dwelling.Rooms)
        {
            foreach (Wall wall in room.Walls)
            {
                if (!room.Untouched && mended.IsResolved && BoardCutouts.For(mended, room.Id + "/" + wall.Id) is { Boards.Count: > 0 } cutouts)
                {
                    walls.Add(cutouts);
                }
            }
        }

        return new(mended.Dwelling, walls);
    }

    /// <summary>The list as Markdown: a heading and a table for each room.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Cutouts: " + dwelling.Name, Explained);
        Table().AppendMarkdown(text);
        TextTable.AppendList(text, "Not yet", NotYet());
        return text.ToString();
    }

    /// <summary>The list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>How many cutouts there are.</summary>
    public override string ToString() => Rows.Count + " cutouts in " + Boards + " boards of " + dwelling.Name;

    /// <summary>What the list counts, and from where its numbers are measured.</summary>
    internal string Explained => Boards + " boards. Each cutout from the left edge and the lower edge of its board, as seen from the room: from where to where. \"Usual size\": the box's own isn't stated, so measure it first.";

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("room", "wall", "board", "for", "from the left edge", "from the lower edge", "remark");
        foreach (BoardCutouts wall in walls)
        {
            for (int board = 0; board < wall.Boards.Count; board++)
            {
                foreach (BoardCutout cut in wall.On(board))
                {
                    SurfaceAddress on = SurfaceAddress.Read(cut.Address);
                    table.Add(
                        on.Space, on.Surface!, wall.NameOf(board), cut.Id, Text(cut.Left) + " to " + Text(cut.Right), Text(cut.Bottom) + " to " + Text(cut.Top),
                        cut.Remark.Length == 0 ? "" : cut.Remark.Substring(2));
                }
            }
        }

        return table;
    }

    /// <summary>What nothing can be cut for yet.</summary>
    internal Items<LeftOutBox> NotYet()
    {
        List<LeftOutBox> found = [];
        foreach (BoardCutouts wall in walls)
        {
            foreach (string id in wall.NotYet)
            {
                found.Add(new(id, "its size or place isn't known exactly"));
            }
        }

        return new(found);
    }

    private string Text(Distance distance) => Printed.Of(distance, dwelling.Units);
}
