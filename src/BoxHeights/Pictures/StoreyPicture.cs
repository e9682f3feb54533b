using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>A storey from above, to scale: the rooms that are said where they lie, with openings, what stands in them and their boxes.</summary>
/// <remarks>Drawn from <see cref="Evaluation.Storey"/>; it works nothing out of its own, and is no approval. A box whose id begins with its room's is labeled by the rest, in its room or outside of all. See <see cref="WallElevation"/> for what the SVG is like.</remarks>
public sealed partial class StoreyPicture
{
    private readonly string house;
    private readonly LengthUnits units;

    private StoreyPicture(Evaluation evaluation, StoreyView storey)
    {
        house = evaluation.Dwelling.Name;
        units = evaluation.Dwelling.Units;
        Storey = storey;
    }

    /// <summary>The storey.</summary>
    public StoreyView Storey { get; }

    /// <summary>Whether its rooms together are so much wider than deep that paper laid on its side shows them larger.</summary>
    internal bool IsWide
    {
        get
        {
            PageRect ticks = PlanFrame.Round(Points().ConvertAll(point => (point.Right.Ticks, point.Into.Ticks)).ToArray());
            return ticks.Width > ticks.Height / 4 * 5;
        }
    }

    /// <summary>A picture of a storey.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="storey">The storey's id.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such storey.</exception>
    public static StoreyPicture For(Evaluation evaluation, string storey) =>
        new(evaluation ?? throw new ArgumentNullException(nameof(evaluation)), evaluation.Storey(storey));

    /// <summary>The same as <see cref="ToSvg()"/>.</summary>
    public override string ToString() => ToSvg();

    /// <summary>The picture with the usual options.</summary>
    public string ToSvg() => ToSvg(PictureOptions.Default);

    /// <summary>The picture.</summary>
    /// <param name="options">How it is drawn.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    public string ToSvg(PictureOptions options)
    {
        SvgPage page = new(options ?? throw new ArgumentNullException(nameof(options)), "storey");
        string title = SvgText.Title(house, Storey.Id) + ", from above";
        page.Paragraph(title, "title", bold: true);
        page.Gap();
        PlanFrame frame = PlanFrame.Around(Points(), page, options);
        PageNotes notes = new(page, new(frame.Labels));
        List<PlanRoom> rooms = [];
        foreach (PlacedRoomView placed in Storey.Rooms)
        {
            rooms.Add(new(placed.Room, page, notes, point => frame.At(placed.OnStorey(point)), frame.Scale));
        }

        StoreyNames names = new(page, notes, rooms);
        foreach (PlanRoom room in rooms)
        {
            Draw(room, page, options);
        }

        if (options.Shows(PictureLayers.Boxes))
        {
            rooms.ForEach(room => room.SwitchLegs(box => PlaceOf(rooms, box)));
            rooms.ForEach(room => room.Boxes());
        }

        if (options.Shows(PictureLayers.Names))
        {
            names.Rooms();
        }

        if (options.Shows(PictureLayers.Boxes))
        {
            names.Boxes();
        }

        notes.PlaceMarks();
        page.Cursor = Math.Max(frame.Bottom, notes.Lowest) + (page.Line / 2);
        PageFoot.ScaleBar(page, options.Units ?? units, frame.Scale);
        notes.Write();
        names.Explain();
        if (Storey.NotPlaced.Count > 0)
        {
            page.Paragraph("Not drawn, since it isn't said where they lie: " + string.Join(", ", Storey.NotPlaced.Select(SvgText.Isolated)) + ".", "not-placed");
            page.Gap();
        }

        if (options.Shows(PictureLayers.Legend))
        {
            PageFoot.Legend(page);
        }

        PageFoot.Caution(page);
        (long x, long y) = frame.At(default);
        return page.ToSvg(
            title,
            title + ". " + Storey.Rooms.Count + " rooms. " + Scope.Caution,
            ("data-scale", frame.Scale.ToString(CultureInfo.InvariantCulture)),
            ("data-left", SvgPage.Number(x)),
            ("data-top", SvgPage.Number(y)));
    }

    /// <summary>Every point of the storey that has to be on the page.</summary>
    private List<PlanPoint> Points()
    {
        List<PlanPoint> points = [];
        foreach (PlacedRoomView placed in Storey.Rooms)
        {
            points.AddRange(PlanRoom.Points(placed.Room).ConvertAll(placed.OnStorey));
        }

        points.AddRange(points.Count == 0 ? [default] : Array.Empty<PlanPoint>());
        return points;
    }

    private static void Draw(PlanRoom room, SvgPage page, PictureOptions options)
    {
        page.Open("room", room.Room.Id, room.Room.Id);
        if (options.Shows(PictureLayers.Things))
        {
            room.Shapes();
        }

        room.Walls();
        if (options.Shows(PictureLayers.Openings))
        {
            room.Openings();
        }

        page.Close();
    }

    /// <summary>Where a box of any of the rooms is: a switch may control a light of the next.</summary>
    private static (long X, long Y)? PlaceOf(List<PlanRoom> rooms, string box)
    {
        foreach (PlanRoom room in rooms)
        {
            if (room.PlaceOf(box) is { } place)
            {
                return place;
            }
        }

        return null;
    }
}
