using System;
using System.Collections.Generic;
using System.Text;
using System.Threading;

namespace BoxHeights;

/// <summary>For the drywallers: every board of a house with what is cut out of it, from two of its edges, and the boxes that force a second cut.</summary>
/// <remarks>It is cut from the mended dwelling (<see cref="Evaluation.Mend()"/>), so that it agrees with the marks. See <see cref="BoardCutouts"/>. Nothing here is an approval.</remarks>
public sealed partial class CutoutList
{
    private readonly Dwelling dwelling;
    private readonly List<BoardCutouts> walls;
    private readonly bool allUsual;

    private CutoutList(Dwelling dwelling, List<BoardCutouts> walls)
    {
        this.dwelling = dwelling;
        this.walls = walls;
        List<BoardCutout> rows = [];
        foreach (BoardCutouts wall in walls)
        {
            for (int board = 0; board < wall.Boards.Count; board++)
            {
                List<BoardCutout> cut = [.. wall.On(board)];
                cut.Sort((a, b) => a.Left != b.Left ? a.Left.CompareTo(b.Left) : a.Bottom != b.Bottom ? a.Bottom.CompareTo(b.Bottom) : string.CompareOrdinal(a.Id, b.Id));
                rows.AddRange(cut);
            }

            Boards += wall.IsHungKnown ? wall.Boards.Count : 0;
            Whole += wall.IsHungKnown ? 0 : 1;
        }

        Rows = new(rows);
        allUsual = Rows.Count > 0 && rows.TrueForAll(row => !row.IsBox || row.IsUsualSize);
    }

    /// <summary>How many walls are told as one sheet, since how their board is hung isn't stated.</summary>
    private int Whole { get; }

    /// <summary>The cutouts, wall by wall and board by board, from the left.</summary>
    public Items<BoardCutout> Rows { get; }

    /// <summary>How many boards there are on walls of which it is stated how board is hung.</summary>
    public int Boards { get; }

    /// <summary>The cutouts of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static CutoutList For(Evaluation evaluation) => For(evaluation, CancellationToken.None);

    /// <summary>The cutouts of an evaluated dwelling, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static CutoutList For(Evaluation evaluation, CancellationToken cancellationToken)
    {
        Evaluation mended = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mended(cancellationToken).Evaluation;
        List<BoardCutouts> walls = [];
        foreach (Room room in mended.Dwelling.Rooms)
        {
            foreach (Wall wall in room.Walls)
            {
                cancellationToken.ThrowIfCancellationRequested();
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
        TextTable.AppendLines(text, SlopeHeading, Slopes());
        TextTable.AppendList(text, "Not yet", NotYet());
        return text.ToString();
    }

    /// <summary>The list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    private const string WholeWall = "whole wall";

    /// <summary>How many cutouts there are.</summary>
    public override string ToString() => Rows.Count + " cutouts in " + Boards + " boards of " + dwelling.Name;

    /// <summary>What the list counts, and from where its numbers are measured.</summary>
    internal string Explained => (Boards == 0 ? "" : Boards + (Boards == 1 ? " board. " : " boards. "))
        + "Each cutout from the left edge and the lower edge of its board, as seen from the room: from where to where."
        + (Whole == 0 ? "" : " \"" + WholeWall + "\": how board is hung isn't stated" + (walls.Exists(wall => wall.IsUnderASlope) ? " or begins at a top that isn't level" : "") + ", so it is told as one sheet from the wall's left corner; boards aren't counted there.")
        + (allUsual ? " No box states its size, so all have the usual size of their kind: measure one of each first." : " \"Usual size\": the box's own isn't stated, so measure it first.")
        + " Boxes in ceilings are in the ceiling plan.";

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("room", "wall", "board", "for", "from the left edge", "from the lower edge", "remark");
        foreach (BoardCutout cut in Rows)
        {
            SurfaceAddress on = SurfaceAddress.Read(cut.Address);
            BoardCutouts wall = walls.Find(one => one.Address == cut.Address)!;
            table.Add(
                on.Space, on.Surface!, wall.IsHungKnown ? wall.NameOf(cut.Board) : WholeWall, cut.Id, Text(cut.Left) + " to " + Text(cut.Right), Text(cut.Bottom) + " to " + Text(cut.Top),
                cut.RemarkWithout(allUsual));
        }

        return table;
    }

    internal const string SlopeHeading = "Cut to the slope";

    /// <summary>Boards whose upper edge is cut since the top of their wall isn't level: its corners from the left, each from the board's lower and left edges.</summary>
    internal Items<string> Slopes()
    {
        List<string> found = [];
        foreach (BoardCutouts wall in walls)
        {
            for (int board = 0; board < wall.Boards.Count; board++)
            {
                if (wall.SlopeInWords(board, Text) is { } cut)
                {
                    found.Add(wall.Address + ", " + (wall.IsHungKnown ? wall.NameOf(board) : WholeWall) + ": " + cut);
                }
            }
        }

        return new(found);
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

    private string Text(Distance distance) => Printed.OnTape(distance, dwelling.Units);
}
