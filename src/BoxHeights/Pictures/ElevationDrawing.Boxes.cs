using System.Collections.Generic;

namespace BoxHeights;

/// <content>Boxes, their names, their heights and distances, and findings at their places.</content>
internal sealed partial class ElevationDrawing
{
    private void Boxes()
    {
        foreach (BoxView box in wall.Boxes)
        {
            page.Open("box", box.Id, box.Address);
            if (box.Plate is { } plate)
            {
                Area(plate, Look.Plate, "plate", box.IsAlongAssumed);
            }

            if (box.Operable is { } parts && box.Body is not null)
            {
                Area(parts, Look.Operable, "operable");
            }

            if (box.Body is { } body)
            {
                Area(body, Look.Box, "body", box.IsAlongAssumed, box.IsRound);
                Gangs(box, body);
            }
            else if (box is { Along: { } along, Center: { } center })
            {
                // Of a box whose size isn't known only the center is: a cross.
                (long x, long y, long arm) = (frame.X(along), frame.Y(center.From), page.Size / 3);
                page.Segment(x - arm, y, x + arm, y, Look.Box, "center");
                page.Segment(x, y - arm, x, y + arm, Look.Box, "center");
            }

            page.Close();
            if (Seen(box) is { } at)
            {
                notes.Placer.Block(at);
            }
        }
    }

    /// <summary>The walls between the gangs of a box, as far as it is known exactly.</summary>
    private void Gangs(BoxView box, WallArea body)
    {
        for (int gang = 1; gang < box.Gangs && body.IsExact && !box.Source.OnItsSide; gang++)
        {
            Distance at = body.Left.From + Distance.FromTicks((body.Right.From - body.Left.From).Ticks / box.Gangs * gang);
            page.Segment(frame.X(at), frame.Y(body.Bottom!.Value.From), frame.X(at), frame.Y(body.Top!.Value.From), Look.Plate, "gang");
        }
    }

    /// <summary>What is seen of a box on the page; null where it isn't known where it is.</summary>
    private PageRect? Seen(BoxView box)
    {
        if ((box.Plate ?? box.Body) is { Bottom: { } bottom, Top: { } top } area)
        {
            return frame.Rect(area.Left.From, area.Right.To, bottom.From, top.To);
        }

        return box is { Along: { } along, Center: { } center } ? frame.Rect(along, along, center.From, center.To) : null;
    }

    private void NameBoxes()
    {
        foreach (BoxView box in wall.Boxes)
        {
            string name = SvgText.Isolated(box.Id);
            string where = box.Along is { } along ? "center " + Text(along) + " from the left" : "where along the wall isn't known";
            if (Seen(box) is { } at)
            {
                notes.Around(name, name + ": " + HeightOf(box) + ", " + where, at, "box-name", 4);
            }
            else
            {
                notes.Note(name + ": " + HeightOf(box) + ", " + where + (box.IsBroken ? "; a fault keeps it from being judged" : ""), new(frame.Area.Left, frame.Area.Bottom, 1, 1));
            }
        }
    }

    private string HeightOf(BoxView box) => LineOf(box) is { } line ? Above(line) + " " + EdgeText.Print(box.Height?.Edge) : box.Height is { } height ? Printed.Of(height, units).ToString() : "no height";

    /// <summary>The line of a box that its height is measured to, above the storey's subfloor.</summary>
    private static DistanceRange? LineOf(BoxView box) => box.Height?.Edge switch
    {
        Edge.Bottom => box.Body?.Bottom,
        Edge.Top => box.Body?.Top,
        _ => box.Center,
    };

    /// <summary>Each height once, at the wall's left side, with a thin line to the boxes that have it.</summary>
    private void Heights()
    {
        List<(string Text, DistanceRange Up, Distance To, List<string> Boxes)> marks = [];
        foreach (BoxView box in wall.Boxes)
        {
            if (LineOf(box) is not { } up)
            {
                continue;
            }

            string text = HeightOf(box);
            Distance to = (box.Plate ?? box.Body)?.Left.From ?? box.Along ?? Distance.Zero;
            int known = marks.FindIndex(mark => mark.Text == text);
            if (known < 0)
            {
                marks.Add((text, up, to, [box.Id]));
            }
            else
            {
                marks[known].Boxes.Add(box.Id);
                marks[known] = (text, up, Distance.Max(marks[known].To, to), marks[known].Boxes);
            }
        }

        marks.Sort((a, b) => b.Up.From.CompareTo(a.Up.From));
        foreach ((string text, DistanceRange up, Distance to, List<string> boxes) in marks)
        {
            long y = frame.Y(up.From);
            if (Beside(text, y, toLeft: true))
            {
                page.Leader(frame.Area.Left, y, frame.X(to), y);
            }
            else
            {
                notes.Note(text + ": " + string.Join(", ", boxes.ConvertAll(SvgText.Isolated)), new(frame.Area.Left, y, 1, 1));
            }
        }
    }

    /// <summary>Each center's distance from the left end, in the rows under the wall.</summary>
    private void Alongs()
    {
        List<(Distance Along, List<string> Boxes)> marks = [];
        foreach (BoxView box in wall.Boxes)
        {
            if (box.Along is { } along)
            {
                int known = marks.FindIndex(mark => mark.Along == along);
                if (known < 0)
                {
                    marks.Add((along, [box.Id]));
                }
                else
                {
                    marks[known].Boxes.Add(box.Id);
                }
            }
        }

        marks.Sort((a, b) => a.Along.CompareTo(b.Along));
        foreach ((Distance along, List<string> boxes) in marks)
        {
            string text = Text(along);
            PageRect size = page.SizeOf(text);
            long x = frame.X(along);
            long start = frame.Area.Bottom + (page.Size / 4);
            if (notes.TryLabel(text, Places(), "along", out PageRect placed))
            {
                page.Leader(x, frame.Area.Bottom, x, placed.Top);
                notes.Placer.Block(new(x - 500, start, 1000, placed.Top - start));
            }
            else
            {
                notes.Note(text + " from the left: " + string.Join(", ", boxes.ConvertAll(SvgText.Isolated)), new(x, frame.Area.Bottom, 1, 1));
            }

            IEnumerable<PageRect> Places()
            {
                for (int row = 0; row < Rows - 1; row++)
                {
                    // A line that leads to a lower row crosses no label above it.
                    PageRect lead = new(x - 500, start, 1000, row * size.Height);
                    if (row == 0 || notes.Placer.IsFree(lead))
                    {
                        yield return new(x - (size.Width / 2), start + (row * size.Height), size.Width, size.Height);
                    }
                }
            }
        }
    }

    private void MarkFindings()
    {
        Dictionary<(string, long, long), List<string>> marks = [];
        List<(PageRect Thing, List<string> Texts)> inOrder = [];
        foreach (FindingPlace place in wall.Findings)
        {
            foreach (WallArea area in place.Areas)
            {
                Distance bottom = area.Bottom?.From ?? wall.Subfloor;
                PageRect thing = frame.Rect(area.Left.From, area.Right.To, bottom, Distance.Max(bottom, area.Top?.To ?? bottom));
                (string, long, long) key = (place.Box?.Id ?? "", thing.Left, thing.Top);
                if (!marks.TryGetValue(key, out List<string>? texts))
                {
                    marks.Add(key, texts = []);
                    inOrder.Add((thing, texts));
                }

                string number = PageFoot.MarkOf(wall.Findings, place.Number);
                if (!texts.Contains(number))
                {
                    texts.Add(number);
                }
            }
        }

        foreach ((PageRect thing, List<string> texts) in inOrder)
        {
            string text = string.Join(" ", texts);
            PageRect size = page.SizeOf(text);
            if (notes.TryLabel(text, LabelPlacer.Around(thing, size.Width, size.Height, page.Size / 5, 6), "finding-mark", out PageRect placed))
            {
                notes.Lead(placed, thing);
            }
        }
    }
}
