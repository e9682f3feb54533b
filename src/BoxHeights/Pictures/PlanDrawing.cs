using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>Draws a room in plan, with its findings and names.</summary>
internal sealed class PlanDrawing
{
    private readonly RoomView room;
    private readonly string house;
    private readonly PictureOptions options;
    private readonly LengthUnits units;
    private readonly SvgPage page;
    private readonly PageNotes notes;
    private readonly PlanFrame frame;
    private readonly PlanRoom drawn;

    public PlanDrawing(RoomView room, string house, PictureOptions options)
    {
        this.room = room;
        this.house = house;
        this.options = options;
        units = options.Units ?? room.Units;
        page = new(options, "room");
        page.Paragraph(Title, "title", bold: true);
        page.Paragraph("from above; the first wall at the top", "subtitle");
        page.Gap();
        frame = PlanFrame.Around(PlanRoom.Points(room), page, options);
        notes = new(page, new(frame.Labels));
        drawn = new(room, page, notes, frame.At, frame.Scale);
    }

    private string Title => SvgText.Title(house, room.Id) + (room.Id == room.Room.Kind.Name ? "" : ", " + SvgText.Isolated(room.Room.Kind.Name));

    public string Draw()
    {
        bool Shows(PictureLayers layer) => options.Shows(layer);
        page.Open("plan", room.Id, room.Id);
        if (Shows(PictureLayers.Things))
        {
            drawn.Shapes();
        }

        drawn.Walls();
        if (Shows(PictureLayers.Openings))
        {
            drawn.Openings();
        }

        if (Shows(PictureLayers.Coverage))
        {
            drawn.Coverage();
        }

        if (Shows(PictureLayers.Findings))
        {
            drawn.Unserved();
        }

        if (Shows(PictureLayers.Boxes))
        {
            drawn.SwitchLegs(drawn.PlaceOf);
            drawn.Boxes();
        }

        if (Shows(PictureLayers.Findings))
        {
            MarkFindings();
        }

        if (Shows(PictureLayers.Boxes))
        {
            NameBoxes();
        }

        if (Shows(PictureLayers.Boxes) && Shows(PictureLayers.Dimensions))
        {
            drawn.Tapes(Text);
        }

        if (Shows(PictureLayers.Names))
        {
            NameWalls();
            NameThings();
        }

        page.Close();
        notes.PlaceMarks();
        page.Cursor = Math.Max(frame.Bottom, notes.Lowest) + (page.Line / 2);
        PageFoot.ScaleBar(page, units, frame.Scale);
        notes.Write();
        if (room.Walls.Count < room.Room.Walls.Count)
        {
            page.Paragraph("Its walls aren't drawn: a measure of them is larger than anything in a house.", "left-out");
            page.Gap();
        }

        if (Shows(PictureLayers.Findings))
        {
            PageFoot.Findings(page, room.Findings);
        }

        if (Shows(PictureLayers.Legend))
        {
            PageFoot.Legend(page);
        }

        PageFoot.Caution(page);
        (long x, long y) = frame.At(default);
        return page.ToSvg(
            Title,
            Title + ". " + room.Walls.Count + " walls, " + (room.WallBoxes.Count + room.Overhead.Count + room.InFloor.Count) + " boxes, " + EvaluationText.Counted(room.Findings.Count) + ". " + Scope.Caution,
            ("data-address", room.Id),
            ("data-scale", frame.Scale.ToString(CultureInfo.InvariantCulture)),
            ("data-left", SvgPage.Number(x)),
            ("data-top", SvgPage.Number(y)));
    }

    private string Text(Distance distance) => Printed.About(distance, units).ToString();

    private void MarkFindings()
    {
        Dictionary<string, List<string>> marks = new(StringComparer.Ordinal);
        foreach (FindingPlace place in room.Findings)
        {
            List<string> texts = marks.ListOf(place.Finding.Subject);
            string mark = PageFoot.MarkOf(room.Findings, place.Number);
            if (!texts.Contains(mark))
            {
                texts.Add(mark);
            }
        }

        foreach ((BoxView box, _) in drawn.AllBoxes())
        {
            if (marks.TryGetValue(box.Id, out List<string>? texts) && drawn.Seen(box) is { } at)
            {
                Mark(texts, at);
            }
        }

        foreach (FindingPlace place in room.Findings)
        {
            foreach (WallStretch stretch in place.Finding.Stretches)
            {
                if (drawn.WallOf(stretch.Address) is { } wall)
                {
                    (long x, long y) = drawn.At(wall.At(stretch.Left + Distance.FromTicks((stretch.Right - stretch.Left).Ticks / 2)));
                    Mark([PageFoot.MarkOf(room.Findings, place.Number)], new(x, y, 1, 1));
                }
            }
        }
    }

    private void Mark(List<string> texts, PageRect at)
    {
        string text = string.Join(" ", texts);
        PageRect size = page.SizeOf(text);
        if (notes.TryLabel(text, LabelPlacer.Around(at, size.Width, size.Height, page.Size / 5, 6), "finding-mark", out PageRect placed))
        {
            notes.Lead(placed, at);
        }
    }

    private void NameBoxes()
    {
        foreach ((BoxView box, _) in drawn.AllBoxes())
        {
            string name = SvgText.Isolated(box.Id);
            string where = box.Along is { } along ? SvgText.Isolated(box.Address) + ", " + Text(along) + " from its left"
                : box.Plan is { } plan ? Text(plan.Right) + " right and " + Text(plan.Into) + " in" : SvgText.Isolated(box.Address) + ", where isn't known";
            if (drawn.Seen(box) is { } at)
            {
                notes.Around(name, name + ": " + where, at, "box-name", 3);
            }
            else
            {
                notes.Note(name + ": " + where, frame.Corner);
            }
        }
    }

    private void NameWalls()
    {
        foreach (PlanWall wall in room.Walls)
        {
            string name = SvgText.Isolated(wall.Wall.Id) + " " + Text(wall.Wall.Length);
            (long x1, long y1) = drawn.At(wall.Start);
            (long x2, long y2) = drawn.At(wall.End);
            PageRect line = new(Math.Min(x1, x2), Math.Min(y1, y2), Math.Max(1, Math.Abs(x2 - x1)), Math.Max(1, Math.Abs(y2 - y1)));
            if (line.Width >= line.Height)
            {
                notes.Along(name, name, line, "wall-name");
            }
            else
            {
                notes.Around(name, name, new(line.Left, line.Top + (line.Height / 2), 1, 1), "wall-name");
            }
        }
    }

    private void NameThings()
    {
        foreach (PlanShape shape in room.Shapes)
        {
            string name = SvgText.Thing(shape.Source is Counter, shape.Kind, shape.Id);
            (long X, long Y)[] corners = drawn.AtAll(shape.Corners);
            if (corners.Length == 0)
            {
                continue;
            }

            PageRect around = PlanFrame.Round(corners);
            string note = name + " (" + SvgText.Isolated(shape.Address) + ")";
            if (shape.IsClosed || around.Height > around.Width)
            {
                notes.Inside(name, note, around, "name");
            }
            else
            {
                notes.Along(name, note, around, "name");
            }
        }
    }
}
