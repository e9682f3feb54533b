using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>The boards of a wall with what is cut out of them for boxes and openings, each measured from the board's lower left corner.</summary>
/// <remarks>
/// A course that lies across runs over the whole wall: where its sheets are butted end to end isn't described. Its left end is taken at the wall's framing face, its lower edge
/// at the seam under it, the lowest one's at the subfloor or the stated gap. Upright sheets run from there to the ceiling. Drawn from <see cref="Evaluation.Wall"/>; a box
/// whose place isn't known exactly is listed and not drawn, one whose size isn't stated has the usual size of its kind, and says so.
/// </remarks>
public sealed class BoardCutouts
{
    private readonly WallView wall;
    private readonly string house;

    private BoardCutouts(WallView wall, string house)
    {
        this.wall = wall;
        this.house = house;
        Boards = BoardsOf(wall);
    }

    /// <summary>The boards, from the lowest up or from the left; none where it isn't known how the board is hung, or not exactly.</summary>
    public Items<WallArea> Boards { get; }

    /// <summary>The boards.</summary>
    public override string ToString() => Boards.Count == 0 ? "no boards" : "boards " + Boards;

    /// <summary>The cutouts of a wall.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="address">The wall's address.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wall.</exception>
    public static BoardCutouts For(Evaluation evaluation, string address) =>
        new((evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Wall(address), evaluation.Dwelling.Name);

    /// <summary>The cutouts of a wall; null where its measures are larger than anything in a house.</summary>
    internal static BoardCutouts? TryFor(Evaluation evaluation, string address)
    {
        try
        {
            return For(evaluation, address);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>What is cut out of a board, openings first.</summary>
    /// <param name="board">Its place among <see cref="Boards"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such board.</exception>
    public Items<BoardCutout> On(int board)
    {
        WallArea edges = Board(board);
        List<BoardCutout> found = [];
        foreach ((string id, WallArea? area, BoxView? box) in Holes())
        {
            if (area is { IsExact: true, Bottom: { } bottom, Top: { } top } hole)
            {
                (Distance left, Distance right) = (Distance.Max(edges.Left.From, hole.Left.From), Distance.Min(edges.Right.From, hole.Right.From));
                (Distance low, Distance high) = (Distance.Max(edges.Bottom!.Value.From, bottom.From), Distance.Min(edges.Top!.Value.From, top.From));
                if (left < right && low < high)
                {
                    bool isWhole = left == hole.Left.From && right == hole.Right.From && low == bottom.From && high == top.From;
                    found.Add(new(
                        wall.Address, board, id, box is not null, left - edges.Left.From, right - edges.Left.From, low - edges.Bottom!.Value.From, high - edges.Bottom!.Value.From)
                    {
                        IsRound = box is { IsRound: true },
                        IsSplit = box is not null && !isWhole,
                        IsUsualSize = box is { Body: not { IsExact: true } },
                    });
                }
            }
        }

        return new(found);
    }

    /// <summary>Boxes and openings whose size or place isn't known exactly, so that nothing can be cut for them yet.</summary>
    public Items<string> NotYet
    {
        get
        {
            List<string> names = [];
            foreach ((string id, WallArea? area, _) in Holes())
            {
                if (area is not { IsExact: true })
                {
                    names.Add(id);
                }
            }

            return new(names);
        }
    }

    /// <summary>A board with the usual options.</summary>
    /// <param name="board">Its place among <see cref="Boards"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such board.</exception>
    public string ToSvg(int board) => ToSvg(board, PictureOptions.Default);

    /// <summary>A board.</summary>
    /// <param name="board">Its place among <see cref="Boards"/>.</param>
    /// <param name="options">How it is drawn.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such board.</exception>
    public string ToSvg(int board, PictureOptions options)
    {
        WallArea edges = Board(board);
        (Distance wide, Distance low, Distance high) = (edges.Right.From - edges.Left.From, edges.Bottom!.Value.From, edges.Top!.Value.From);
        SvgPage page = new(options ?? throw new ArgumentNullException(nameof(options)), "board");
        LengthUnits units = options.Units ?? wall.Units;
        string Text(Distance distance) => Printed.About(distance, units);
        string title = SvgText.Title(house, wall.Address) + ", board " + NameOf(board) + ", " + Text(wide) + " by " + Text(high - low);
        page.Paragraph(title, "title", bold: true);
        page.Paragraph("from the room; cutouts are measured from the board's lower left corner: left, right, bottom, top", "subtitle");
        page.Gap();
        ElevationFrame frame = ElevationFrame.Within(
            wide, low, high, page.Margin, page.Cursor + page.Line, page.TextWidth, (options.DrawingHeight ?? Math.Max(60, options.Width * 5 / 10)) * 1000L);
        PageNotes notes = new(page, new(new(page.Margin, page.Cursor, page.TextWidth, frame.Area.Height + (4 * page.Line))));
        page.Open("course", (board + 1).ToString(CultureInfo.InvariantCulture), wall.Address);
        page.Rectangle(frame.Area, Look.Board, "board");
        List<(string Name, PageRect At, string Note)> names = [];
        foreach (BoardCutout cut in On(board))
        {
            PageRect at = frame.Rect(cut.Left, cut.Right, low + cut.Bottom, low + cut.Top);
            page.Open(cut.IsBox ? "box" : "opening", cut.Id);
            page.Rectangle(at, Look.Cutout, "cutout", cut.IsRound);
            page.Close();
            notes.Placer.Block(at);
            names.Add((cut.Id, at, SvgText.Isolated(cut.Id) + ": " + Text(cut.Left) + ", " + Text(cut.Right) + ", " + Text(cut.Bottom) + ", " + Text(cut.Top) + cut.Remark));
        }

        page.Close();
        foreach ((string name, PageRect at, string note) in names)
        {
            notes.Around(SvgText.Isolated(name), note, at, "name");
        }

        notes.PlaceMarks();
        page.Cursor = Math.Max(frame.Area.Bottom, notes.Lowest) + (page.Line / 2);
        PageFoot.ScaleBar(page, units, frame.Scale);
        notes.Write();
        foreach ((_, _, string note) in names)
        {
            page.Paragraph(note, "cutout-size");
        }

        if (names.Exists(one => one.Note.EndsWith(BoardCutout.Usual, StringComparison.Ordinal)))
        {
            page.Paragraph("Usual size: the box's own isn't stated, so measure it first.", "cutout-size");
        }

        foreach (string name in NotYet)
        {
            page.Paragraph("Not yet: " + SvgText.Isolated(name) + ", whose size or place isn't known exactly.", "not-yet");
        }

        page.Gap();
        PageFoot.Legend(page);
        PageFoot.Caution(page);
        return page.ToSvg(
            title,
            title + ". " + names.Count + " cutouts. " + Scope.Caution,
            ("data-scale", frame.Scale.ToString(CultureInfo.InvariantCulture)),
            ("data-left", SvgPage.Number(frame.X(-edges.Left.From))),
            ("data-subfloor", SvgPage.Number(frame.Zero)));
    }

    /// <summary>What a board is called on its wall.</summary>
    internal string NameOf(int board) =>
        (board + 1) + " of " + Boards.Count + (wall.Boards!.Layout.Hung == BoardDirection.Horizontal ? " from below" : " from the left");

    private WallArea Board(int board) =>
        board >= 0 && board < Boards.Count ? Boards[board] : throw new ArgumentOutOfRangeException(nameof(board), board, "The wall has " + Boards.Count + " boards whose edges are known.");

    private IEnumerable<(string Id, WallArea? Area, BoxView? Box)> Holes()
    {
        foreach (OpeningView opening in wall.Openings)
        {
            yield return (opening.Id!, opening.Area, null);
        }

        foreach (BoxView box in wall.Boxes)
        {
            if (box.Surface == BoxSurface.Wall)
            {
                yield return (box.Id, box.UsualBody, box);
            }
        }
    }

    private static Items<WallArea> BoardsOf(WallView wall)
    {
        if (wall.Boards is not { } boards || wall.FinishedCeiling is not { IsExact: true } ceiling)
        {
            return default;
        }

        Distance floor = wall.Subfloor + (boards.Layout.FloorGap ?? Distance.Zero);
        return boards.Layout.Hung == BoardDirection.Horizontal ? Across(wall, boards, floor, ceiling.From) : Upright(wall, boards.Layout, floor, ceiling.From);
    }

    private static Items<WallArea> Across(WallView wall, BoardView boards, Distance floor, Distance ceiling)
    {
        List<Distance> edges = [floor, ceiling];
        foreach (DistanceRange seam in boards.Seams)
        {
            if (!seam.IsExact)
            {
                return default;
            }

            if (seam.From > floor && seam.From < ceiling)
            {
                edges.Add(seam.From);
            }
        }

        edges.Sort();
        List<WallArea> found = [];
        for (int i = 1; i < edges.Count; i++)
        {
            if (edges[i - 1] < edges[i])
            {
                found.Add(new(Distance.Zero, wall.Length, edges[i - 1], edges[i]));
            }
        }

        return new(found);
    }

    /// <summary>Upright sheets from the end where hanging starts; the last width is that of all that follow.</summary>
    private static Items<WallArea> Upright(WallView wall, BoardLayout layout, Distance floor, Distance ceiling)
    {
        if (layout.Widths.Count == 0 || ceiling <= floor)
        {
            return default;
        }

        List<WallArea> found = [];
        Distance at = Distance.Zero;
        for (int sheet = 0; at < wall.Length && sheet < WallFraming.MostWorkedThrough; sheet++)
        {
            Distance end = Distance.Min(wall.Length, at + layout.Widths[Math.Min(sheet, layout.Widths.Count - 1)]);
            found.Add(layout.From == BoardOrigin.Right ? new(wall.Length - end, wall.Length - at, floor, ceiling) : new(at, end, floor, ceiling));
            at = end;
        }

        found.Sort((a, b) => a.Left.From.CompareTo(b.Left.From));
        return new(found);
    }
}
