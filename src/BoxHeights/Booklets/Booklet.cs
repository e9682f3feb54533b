using System;

namespace BoxHeights;

/// <summary>Everything that a crew carries for one dwelling, in one page of HTML: no network, no script, prints on Letter and A4.</summary>
/// <remarks>
/// First what matters most; then a sheet for each room and outside face with plan, walls and marks, the story pole, the order, what to look at before the inspection, and the
/// rules with their sources. Rooms are shown as they end when the report is carried out (<see cref="Evaluation.Mend"/>). It is an aid for planning, never an approval.
/// </remarks>
public sealed class Booklet
{
    private readonly Evaluation report;

    private Booklet(Evaluation report) => this.report = report;

    /// <summary>The booklet of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static Booklet For(Evaluation evaluation) => new(evaluation ?? throw new ArgumentNullException(nameof(evaluation)));

    /// <summary>The booklet in black and white, as it is printed.</summary>
    public string ToHtml() => ToHtml(PictureOptions.Default);

    /// <summary>The booklet.</summary>
    /// <param name="pictures">How its pictures are drawn; each gets ids of its own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pictures"/> is null.</exception>
    public string ToHtml(PictureOptions pictures)
    {
        _ = pictures ?? throw new ArgumentNullException(nameof(pictures));
        MendedDwelling mended = report.Mend();
        MarkSheet marks = MarkSheet.For(report);
        StoryPole pole = StoryPole.For(marks);
        HtmlPage page = new(report.Dwelling.Name);
        FirstSheet.Write(page, report, mended);
        RoomSheets sheets = new(page, mended.Evaluation, marks, pictures);
        foreach (Room room in mended.Dwelling.Rooms)
        {
            sheets.Write(room);
        }

        foreach (OutsideFace face in mended.Dwelling.Outside)
        {
            sheets.Write(face);
        }

        page.Begin("Story pole", "pole");
        page.Picture(PolePicture.For(pole).ToSvg(pictures.WithIdPrefix("pole")));
        page.Table(pole.Table());
        page.List("Not on the pole", pole.LeftOut);
        page.End();
        page.Begin("Order list", "order");
        page.Table(OrderList.For(report).Table());
        page.End();
        RulesSheet.Write(page, report);
        return page.ToString();
    }

    /// <summary>What it is of.</summary>
    public override string ToString() => "Booklet of " + report.Dwelling.Name;
}
