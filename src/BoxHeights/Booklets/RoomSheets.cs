namespace BoxHeights;

/// <summary>A sheet for a room or an outside face: its plan, its walls that have something on them, and its marks.</summary>
internal sealed class RoomSheets(HtmlPage page, Evaluation mended, MarkSheet marks, PictureOptions pictures)
{
    /// <summary>The plan of a room with more boxes than these takes twice the height, so that their names find room.</summary>
    private const int ManyBoxes = 10;

    private int count;

    /// <summary>What a sheet of marks holds: a table for each edge, the ceiling, the floor, what is set already and what isn't marked.</summary>
    public static void Marks(HtmlPage page, MarkSheet sheet)
    {
        page.Table(sheet.Table());
        page.Table(CeilingRows.Table(sheet.Overhead, sheet.Units));
        page.Table(FloorRows.Table(sheet.InFloor, sheet.Units));
        page.List("Set already", sheet.SetAlready);
        page.List("Not marked", sheet.LeftOut);
    }

    public void Write(Room room)
    {
        page.Begin(room.Id, "room-" + ++count);
        if (room.Walls.Count > 0 && mended.IsResolved)
        {
            RoomPicture plan = RoomPicture.For(mended, room.Id);
            int boxes = plan.Room.WallBoxes.Count + plan.Room.Overhead.Count + plan.Room.InFloor.Count;
            page.Picture(plan.ToSvg(boxes > ManyBoxes ? Named().WithDrawingHeight(pictures.DrawingHeight * 2) : Named()));
        }

        Walls(room.Id, room.Walls);
        Marks(page, marks.ForRoom(room.Id));
        page.End();
    }

    public void Write(OutsideFace face)
    {
        page.Begin(face.Id, "room-" + ++count);
        Walls(face.Id, face.Walls);
        Marks(page, marks.ForRoom(face.Id));
        page.End();
    }

    /// <summary>A wall without a box has nothing to mark.</summary>
    private void Walls(string owner, Items<Wall> walls)
    {
        foreach (Wall wall in walls)
        {
            if (wall.Boxes.Count > 0 && mended.IsResolved)
            {
                page.Picture(WallElevation.For(mended, SurfaceAddress.Of(owner, wall.Id)).ToSvg(Named()));
            }
        }
    }

    private PictureOptions Named() => pictures.WithIdPrefix("p" + page.NextPicture());
}
