using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>The boards of a wall with what is cut out of them for boxes and openings, each measured from the board's lower left corner.</summary>
/// <remarks>
/// The boards are <see cref="WallView.Sheets"/>. Drawn from <see cref="Evaluation.Wall"/>; a box whose place isn't known exactly is listed and not drawn, one whose size isn't
/// stated has the usual size of its kind, and says so.
/// </remarks>
public sealed class BoardCutouts
{
    private readonly WallView wall;
    private readonly string house;

    private BoardCutouts(WallView wall, string house)
    {
        this.wall = wall;
        this.house = house;
    }

    /// <summary>The boards, from the lowest up and from the left; none unless it is known exactly how the board is hung.</summary>
    public Items<WallArea> Boards => wall.Sheets;

    /// <summary>The wall's address.</summary>
    internal string Address => wall.Address;

    /// <summary>Whether it is stated how board is hung, so that the boards are those of the wall and not one in the place of all.</summary>
    internal bool IsHungKnown => wall.Build.Boards is { Layout.Widths.Count: > 0 };

    /// <summary>Whether its seams can't be told because its top isn't level.</summary>
    internal bool IsUnderASlope => !IsHungKnown && wall.Wall.Top.Count > 0;

    /// <summary>The boards.</summary>
    public override string ToString() => Boards.Count == 0 ? "no boards" : "boards " + Boards;

    /// <summary>The cutouts of a wall.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="address">The wall's address.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wall.</exception>
    public static BoardCutouts For(Evaluation evaluation, string address) =>
        new((evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Wall(address), evaluation.Dwelling.Name);

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

    /// <summary>The upper edge of a board that the top of its wall cuts since it isn't level, from left to right, along the wall and above the storey's subfloor; none for a board that stays whole.</summary>
    /// <param name="board">Its place among <see cref="Boards"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such board.</exception>
    public Items<ProfilePoint> SlopeOn(int board) => BoardSheets.SlopeOn(wall, Board(board));

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
        string Text(Distance distance) => Printed.About(distance, units).ToString();
        string title = SvgText.Title(house, wall.Address) + ", board " + NameOf(board) + ", " + Text(wide) + " by " + Text(high - low);
        page.Paragraph(title, "title", bold: true);
        page.Paragraph("from the room; cutouts are measured from the board's lower left corner: left, right, bottom, top", "subtitle");
        page.Gap();
        ElevationFrame frame = ElevationFrame.Within(
            wide, low, high, page.Margin, page.Cursor + page.Line, page.TextWidth, (options.DrawingHeight ?? Math.Max(60, options.Width * 5 / 10)) * 1000L);
        PageNotes notes = new(page, new(new(page.Margin, page.Cursor, page.TextWidth, frame.Area.Height + (4 * page.Line))));
        page.Open("course", (board + 1).ToString(CultureInfo.InvariantCulture), wall.Address);
        if (SlopeOn(board) is { Count: > 0 } slope)
        {
            List<(long X, long Y)> corners = [(frame.Area.Left, frame.Area.Bottom), .. slope.Select(point => (frame.X(point.Along - edges.Left.From), frame.Y(point.Up.From))), (frame.Area.Right, frame.Area.Bottom)];
            page.Path(corners, Look.Board, closed: true, "board");
        }
        else
        {
            page.Rectangle(frame.Area, Look.Board, "board");
        }

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

        if (SlopeInWords(board, Text) is { } sloped)
        {
            page.Paragraph("Cut to the slope: " + sloped + ".", "slope");
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

    /// <summary>How a board's upper edge is cut, from its left and lower edges; null where it stays whole.</summary>
    internal string? SlopeInWords(int board, Func<Distance, string> text)
    {
        WallArea edges = Board(board);
        return SlopeOn(board) is { Count: > 0 } slope
            ? string.Join(", ", slope.Select(point => text(point.Up.From - edges.Bottom!.Value.From) + " up at " + text(point.Along - edges.Left.From)))
            : null;
    }

    /// <summary>What a board is called on its wall: its course where that is one board, else its sheet, too.</summary>
    internal string NameOf(int board)
    {
        List<Distance?> courses = [];
        List<int> inCourse = [];
        for (int i = 0; i < Boards.Count; i++)
        {
            bool isOfLast = wall.Boards!.Layout.Hung == BoardDirection.Horizontal && courses.Count > 0 && courses[courses.Count - 1] == Boards[i].Bottom?.From;
            if (!isOfLast)
            {
                courses.Add(Boards[i].Bottom?.From);
                inCourse.Add(0);
            }

            inCourse[inCourse.Count - 1]++;
        }

        int course = 0;
        int sheet = board;
        while (sheet >= inCourse[course])
        {
            sheet -= inCourse[course++];
        }

        string of = (course + 1) + " of " + courses.Count + (wall.Boards!.Layout.Hung == BoardDirection.Horizontal ? " from below" : " from the left");
        return inCourse[course] == 1 ? of : of + ", sheet " + (sheet + 1) + " of " + inCourse[course];
    }

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
}
