using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Names rooms and boxes in a plan of many rooms: a box stands in its room, and so needs no room in its label.</summary>
internal sealed class StoreyNames(SvgPage page, PageNotes notes, List<PlanRoom> rooms)
{
    private readonly List<(PlanRoom Room, (long X, long Y)[] Corners, PageRect Around)> outlines = OutlinesOf(rooms);

    /// <summary>The first box whose label leaves something out; null where none does.</summary>
    private (string Label, string Room, string Id)? shortened;

    public void Rooms()
    {
        foreach ((PlanRoom room, _, PageRect around) in outlines)
        {
            string name = SvgText.Isolated(room.Room.Id);
            notes.Inside(name, name, around, "room-name", bold: true);
        }
    }

    public void Boxes()
    {
        foreach (PlanRoom room in rooms)
        {
            foreach ((BoxView box, _) in room.AllBoxes())
            {
                if (room.Seen(box) is { } at)
                {
                    string name = SvgText.Isolated(box.Id);
                    string own = ShortOf(box.Id, room.Room);
                    shortened ??= own == box.Id ? null : (own, room.Room.Id, box.Id);
                    notes.Around(SvgText.Isolated(own), own == box.Id ? name + " in " + SvgText.Isolated(room.Room.Id) : name, at, "box-name", 3, place => IsBeside(room, place));
                }
            }
        }
    }

    /// <summary>Says how labels are read, where they aren't ids.</summary>
    public void Explain()
    {
        if (shortened is { } one)
        {
            page.Paragraph(
                "Boxes whose ids begin with their room's are labeled by the rest: " + SvgText.Isolated(one.Label) + " in " + SvgText.Isolated(one.Room) + " is " + SvgText.Isolated(one.Id) + ".", "labels");
            page.Gap();
        }
    }

    /// <summary>What of a box's id its room doesn't say already; all of it where another box of the room is called so.</summary>
    private static string ShortOf(string id, RoomView room)
    {
        if (id.Length < room.Id.Length + 2 || !id.StartsWith(room.Id, StringComparison.Ordinal) || char.IsLetterOrDigit(id[room.Id.Length]))
        {
            return id;
        }

        string rest = id.Substring(room.Id.Length + 1);
        foreach (Items<BoxView> some in new[] { room.WallBoxes, room.Overhead, room.InFloor })
        {
            if (some.Exists(box => box.Id == rest))
            {
                return id;
            }
        }

        return rest;
    }

    /// <summary>Whether a label would stand in its box's room, or outside of all: in another room it would be taken for a box of that.</summary>
    private bool IsBeside(PlanRoom own, PageRect place)
    {
        (long x, long y) = (place.Left + (place.Width / 2), place.Top + (place.Height / 2));
        PageRect middle = new(x, y, 1, 1);
        foreach ((PlanRoom room, (long X, long Y)[] corners, PageRect around) in outlines)
        {
            if (room != own && around.Overlaps(middle) && IsWithin(corners, x, y))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a line to the right of a point crosses an outline an odd number of times.</summary>
    private static bool IsWithin((long X, long Y)[] corners, long x, long y)
    {
        bool within = false;
        for (int i = 0; i < corners.Length; i++)
        {
            ((long x1, long y1), (long x2, long y2)) = (corners[i], corners[(i + 1) % corners.Length]);
            within ^= (y1 > y) != (y2 > y) && x < x1 + ((decimal)(x2 - x1) * (y - y1) / (y2 - y1));
        }

        return within;
    }

    private static List<(PlanRoom Room, (long X, long Y)[] Corners, PageRect Around)> OutlinesOf(List<PlanRoom> rooms)
    {
        List<(PlanRoom Room, (long X, long Y)[] Corners, PageRect Around)> outlines = [];
        foreach (PlanRoom room in rooms)
        {
            if (room.Room.Walls.Count > 0)
            {
                (long X, long Y)[] corners = room.AtAll(room.Room.Walls.Select(wall => wall.Start));
                outlines.Add((room, corners, PlanFrame.Round(corners)));
            }
        }

        return outlines;
    }
}
