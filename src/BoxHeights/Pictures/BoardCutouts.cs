using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>The courses of board on a wall with what is cut out of them for boxes and openings, each measured from its lower left corner.</summary>
/// <remarks>
/// A course runs over the whole wall: where sheets are butted end to end isn't described. Its left end is taken at the wall's framing face, its lower edge at the seam under it,
/// the lowest course's at the subfloor or the stated gap. Drawn from <see cref="Evaluation.Wall"/>; a box whose place isn't known exactly is listed and not drawn.
/// </remarks>
public sealed class BoardCutouts
{
    private readonly WallView wall;
    private readonly string house;

    private BoardCutouts(WallView wall, string house)
    {
        this.wall = wall;
        this.house = house;
        Courses = CoursesOf(wall);
    }

    /// <summary>The lower and the upper edge of each course above the storey's subfloor, from the lowest up; none unless it is known exactly how the board is hung.</summary>
    public Items<DistanceRange> Courses { get; }

    /// <summary>The courses of board.</summary>
    public override string ToString() => Courses.Count == 0 ? "no courses" : "courses " + Courses;

    /// <summary>The cutouts of a wall.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="address">The wall's address.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wall.</exception>
    public static BoardCutouts For(Evaluation evaluation, string address) =>
        new((evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Wall(address), evaluation.Dwelling.Name);

    /// <summary>A course with the usual options.</summary>
    /// <param name="course">Its place among <see cref="Courses"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such course.</exception>
    public string ToSvg(int course) => ToSvg(course, PictureOptions.Default);

    /// <summary>A course.</summary>
    /// <param name="course">Its place among <see cref="Courses"/>.</param>
    /// <param name="options">How it is drawn.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such course.</exception>
    public string ToSvg(int course, PictureOptions options)
    {
        DistanceRange edges = course >= 0 && course < Courses.Count ? Courses[course] : throw new ArgumentOutOfRangeException(nameof(course), course, "The wall has " + Courses.Count + " courses whose edges are known.");
        SvgPage page = new(options ?? throw new ArgumentNullException(nameof(options)), "board");
        LengthUnits units = options.Units ?? wall.Units;
        string Text(Distance distance) => Printed.About(distance, units);
        string title = SvgText.Isolated(house) + ": board on " + SvgText.Isolated(wall.Address) + ", course " + (course + 1) + " of " + Courses.Count + " from below, " + Text(edges.Width) + " high";
        page.Paragraph(title, "title", bold: true);
        page.Paragraph("from the room; cutouts are measured from the course's lower left corner: left, right, bottom, top", "subtitle");
        page.Gap();
        ElevationFrame frame = ElevationFrame.Within(
            wall.Length, edges.From, edges.To, page.Margin, page.Cursor + page.Line, page.TextWidth, (options.DrawingHeight ?? Math.Max(60, options.Width * 5 / 10)) * 1000L);
        PageNotes notes = new(page, new(new(page.Margin, page.Cursor, page.TextWidth, frame.Area.Height + (4 * page.Line))));
        page.Open("course", (course + 1).ToString(CultureInfo.InvariantCulture), wall.Address);
        page.Rectangle(frame.Area, Look.Board, "board");
        List<(string Name, PageRect At, string Note)> names = [];
        List<string> notYet = [];
        foreach ((string name, WallArea? area, bool isBox, bool isRound) in Holes())
        {
            if (area is not { IsExact: true, Bottom: { } bottom, Top: { } top } hole)
            {
                notYet.Add(name);
                continue;
            }

            (Distance low, Distance high) = (Distance.Max(edges.From, bottom.From), Distance.Min(edges.To, top.From));
            if (low < high)
            {
                PageRect at = frame.Rect(hole.Left.From, hole.Right.From, low, high);
                page.Open(isBox ? "box" : "opening", name);
                page.Rectangle(at, Look.Cutout, "cutout", isRound);
                page.Close();
                notes.Placer.Block(at);
                names.Add((name, at, SvgText.Isolated(name) + ": " + Text(hole.Left.From) + ", " + Text(hole.Right.From) + ", " + Text(low - edges.From) + ", " + Text(high - edges.From)));
            }
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

        foreach (string name in notYet)
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
            ("data-left", SvgPage.Number(frame.X(Distance.Zero))),
            ("data-subfloor", SvgPage.Number(frame.Zero)));
    }

    private IEnumerable<(string Name, WallArea? Area, bool IsBox, bool IsRound)> Holes()
    {
        foreach (OpeningView opening in wall.Openings)
        {
            yield return (opening.Id!, opening.Area, false, false);
        }

        foreach (BoxView box in wall.Boxes)
        {
            if (box.Surface == BoxSurface.Wall)
            {
                yield return (box.Id, box.Body, true, box.IsRound);
            }
        }
    }

    private static Items<DistanceRange> CoursesOf(WallView wall)
    {
        if (wall.Boards is not { Layout.Hung: BoardDirection.Horizontal } boards || wall.FinishedCeiling is not { IsExact: true } ceiling)
        {
            return default;
        }

        List<Distance> edges = [wall.Subfloor + (boards.Layout.FloorGap ?? Distance.Zero), ceiling.From];
        foreach (DistanceRange seam in boards.Seams)
        {
            if (!seam.IsExact)
            {
                return default;
            }

            if (seam.From > edges[0] && seam.From < ceiling.From)
            {
                edges.Add(seam.From);
            }
        }

        edges.Sort();
        List<DistanceRange> courses = [];
        for (int i = 1; i < edges.Count; i++)
        {
            if (edges[i - 1] < edges[i])
            {
                courses.Add(new(edges[i - 1], edges[i]));
            }
        }

        return new(courses);
    }
}
