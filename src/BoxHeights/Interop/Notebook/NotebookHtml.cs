using System.Collections;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Interop;

/// <summary>What a notebook shows of a value: a measure as a word, findings and papers as tables, an evaluation as its first page, walls and rooms as pictures.</summary>
internal static class NotebookHtml
{
    private static readonly string[] FindingColumns = ["weight", "what", "finding", "source"];
    private static readonly string[] CauseColumns = ["weight", "finding", "do"];
    private static readonly string[] RoomColumns = ["room", "for", "storey", "walls", "boxes"];

    public static string Plainly(object value) => value switch
    {
        Evaluation evaluation => evaluation.ToText(),
        WallElevation elevation => elevation.Wall.ToString(),
        RoomPicture picture => picture.Room.ToString(),
        StoreyPicture picture => picture.Storey.ToString(),
        PolePicture => "story pole",
        Dwelling dwelling => dwelling.Name,
        _ => value.ToString() ?? "",
    };

    public static string Of(object value)
    {
        HtmlPage page = new("");
        Write(page, value);
        if (page.Body.Length == 0)
        {
            // A cell that shows nothing looks as if it had failed.
            page.Word("none");
        }

        return page.Body;
    }

    private static void Write(HtmlPage page, object value)
    {
        switch (value)
        {
            case Evaluation evaluation:
                FirstSheet.Write(page, evaluation, evaluation.Mend(), default);
                break;
            case Finding finding:
                page.Table("", FindingColumns, [Row(finding)]);
                break;
            case Cause cause:
                page.Table("", CauseColumns, [Row(cause)]);
                break;
            case MendedDwelling mended:
                page.Lines(mended.ToText());
                break;
            case RoomPlan plan:
                page.Lines(plan.ToText());
                break;
            case Dwelling dwelling:
                Write(page, dwelling);
                break;
            case WallElevation elevation:
                page.Picture(elevation.ToSvg(Named(elevation.Wall.Address)));
                break;
            case WallView wall:
                page.Picture(WallElevation.Of(wall, Named(wall.Address)));
                break;
            case FaceView face:
                foreach (WallView wall in face.Walls)
                {
                    Write(page, wall);
                }

                break;
            case RoomPicture picture:
                page.Picture(picture.ToSvg(Named(picture.Room.Id)));
                break;
            case RoomView room:
                page.Picture(RoomPicture.Of(room, Named(room.Id)));
                break;
            case StoreyPicture storey:
                page.Picture(storey.ToSvg(Named(storey.Storey.Id)));
                break;
            case PolePicture pole:
                page.Picture(pole.ToSvg(Named("pole")));
                break;
            case MarkSheet marks:
                RoomSheets.Marks(page, marks);
                break;
            case StoryPole pole:
                page.Table(pole.Table());
                page.Table(pole.NotYetTable());
                page.List("Not on the pole", pole.LeftOut);
                break;
            case OrderList order:
                page.Table(order.Table());
                break;
            case PunchList punch:
                page.Table(punch.Table());
                break;
            case PreInspection list:
                page.List("What to look for", list.Key());
                page.Table(list.Table());
                break;
            case CutoutList cutouts:
                page.Table(cutouts.Table());
                page.List(CutoutList.SlopeHeading, cutouts.Slopes());
                page.List("Not yet", cutouts.NotYet());
                break;
            case CeilingPlan ceilings:
                page.Table(ceilings.Table());
                break;
            case IEnumerable list and not string:
                Write(page, list);
                break;
            default:
                page.Word(value.ToString() ?? "");
                break;
        }
    }

    private static void Write(HtmlPage page, Dwelling dwelling)
    {
        Dictionary<string, int> boxes = new(System.StringComparer.Ordinal);
        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            string room = SurfaceAddress.Read(placed.Address).Space;
            boxes[room] = (boxes.TryGetValue(room, out int before) ? before : 0) + 1;
        }

        List<string[]> rows = [];
        foreach (Room room in dwelling.Rooms)
        {
            rows.Add([room.Id, room.Kind.Name, room.Storey, Count(room.Walls.Count), Count(boxes.TryGetValue(room.Id, out int count) ? count : 0)]);
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            rows.Add([face.Id, "outside", "", Count(face.Walls.Count), Count(boxes.TryGetValue(face.Id, out int count) ? count : 0)]);
        }

        page.Table(dwelling.Name, RoomColumns, rows);
    }

    /// <summary>A list: findings and causes as tables, whatever else line by line.</summary>
    private static void Write(HtmlPage page, IEnumerable list)
    {
        List<string[]> findings = [];
        List<string[]> causes = [];
        List<string> others = [];
        foreach (object one in list)
        {
            switch (one)
            {
                case Finding finding:
                    findings.Add(Row(finding));
                    break;
                case Cause cause:
                    causes.Add(Row(cause));
                    break;
                default:
                    others.Add(Plainly(one));
                    break;
            }
        }

        page.Table("", FindingColumns, findings);
        page.Table("", CauseColumns, causes);
        page.List("", others);
        if (page.Body.Length == 0)
        {
            page.Word("none");
        }
    }

    private static string[] Row(Finding finding) =>
        [EvaluationText.WeightOf(finding).ToLowerInvariant(), finding.Subject, finding.OwnBodyIn(null), finding.Citation?.ToString() ?? ""];

    private static string[] Row(Cause cause) =>
        [cause.Severity.ToString().ToLowerInvariant(), cause.Title, string.Join("; ", cause.Remedies.Select(remedy => remedy.Text))];

    /// <summary>Pictures of several walls may stand in one notebook: each has ids of its own.</summary>
    private static PictureOptions Named(string address) => PictureOptions.Default.WithIdPrefix("bh-" + SvgText.AsId(address));

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
