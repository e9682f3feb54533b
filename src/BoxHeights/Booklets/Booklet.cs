using System;
using System.Threading;

namespace BoxHeights;

/// <summary>Everything that a crew carries for one dwelling, in one page of HTML: no network, no script, prints on Letter and A4.</summary>
/// <remarks>
/// First what matters most; then a sheet for each room and outside face with plan, walls and marks, the ceiling plan, the story pole, the order, cutouts for the drywallers, what
/// to look at before the inspection, what the signs mean, and the rules with their sources. Rooms are shown as they end when the report is carried out (<see cref="Evaluation.Mend()"/>). It is an aid for planning, never an approval.
/// </remarks>
public sealed class Booklet
{
    /// <summary>What a page of either paper is wide between its margins, in user units of 1/96 in.</summary>
    private const int PageWidth = 700;

    /// <summary>The same of paper laid on its side.</summary>
    private const int WidePageWidth = 960;

    private const int HalfAPage = 235;

    /// <summary>How high a storey may be drawn, so that its notes stand on the page with it.</summary>
    private const int StoreyOnAPage = 560;

    private const int StoreyOnAWidePage = 450;

    private readonly Evaluation report;

    private Booklet(Evaluation report) => this.report = report;

    /// <summary>The booklet of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static Booklet For(Evaluation evaluation) => new(evaluation ?? throw new ArgumentNullException(nameof(evaluation)));

    /// <summary>The booklet in black and white, as it is printed.</summary>
    public string ToHtml() => ToHtml(PictureOptions.Default);

    /// <summary>The booklet.</summary>
    /// <param name="pictures">How its pictures are drawn, but that none is wider than a page or so high that two don't stand on one; each gets ids of its own, and one legend is for all.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pictures"/> is null.</exception>
    public string ToHtml(PictureOptions pictures) => ToHtml(pictures, CancellationToken.None);

    /// <summary>The booklet, unless somebody gives up.</summary>
    /// <param name="pictures">How its pictures are drawn.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pictures"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public string ToHtml(PictureOptions pictures, CancellationToken cancellationToken)
    {
        PictureOptions sheet = (pictures ?? throw new ArgumentNullException(nameof(pictures))).WithWidth(Math.Min(pictures.Width, PageWidth)).WithDrawingHeight(pictures.DrawingHeight ?? HalfAPage)
            .WithLayers(pictures.Layers & ~PictureLayers.Legend);
        MendedDwelling mended = report.Mended(cancellationToken);
        MarkSheet marks = MarkSheet.For(report, MarkOptions.Default, cancellationToken);
        StoryPole pole = StoryPole.For(marks);
        HtmlPage page = new(report.Dwelling.Name);
        FirstSheet.Write(page, report, mended, cancellationToken);
        foreach (Storey storey in mended.Dwelling.Storeys)
        {
            cancellationToken.ThrowIfCancellationRequested();
            StoreyPicture plan = StoreyPicture.For(mended.Evaluation, storey.Id);
            if (plan.Storey.Rooms.Count > 1)
            {
                page.Begin(storey.Id + ", from above", "storey-" + page.NextPicture(), plan.IsWide);
                page.Picture(plan.ToSvg(sheet.WithIdPrefix("p" + page.NextPicture()).WithWidth(Math.Min(pictures.Width, plan.IsWide ? WidePageWidth : PageWidth))
                    .WithDrawingHeight(pictures.DrawingHeight ?? (plan.IsWide ? StoreyOnAWidePage : StoreyOnAPage))));
                page.End();
            }
        }

        RoomSheets sheets = new(page, mended.Evaluation, marks, sheet);
        foreach (Room room in mended.Dwelling.Rooms)
        {
            cancellationToken.ThrowIfCancellationRequested();
            sheets.Write(room);
        }

        foreach (OutsideFace face in mended.Dwelling.Outside)
        {
            cancellationToken.ThrowIfCancellationRequested();
            sheets.Write(face);
        }

        page.Begin("Ceiling plan", "ceilings");
        page.Table(CeilingPlan.For(report, cancellationToken).Table());
        page.End();
        page.Begin("Story pole", "pole");
        foreach (string stand in PolePicture.For(pole).Apart(sheet.WithIdPrefix("pole-")))
        {
            page.Picture(stand);
        }

        page.Table(pole.Table());
        page.Table(pole.NotYetTable());
        page.List("Not on the pole", pole.LeftOut);
        page.End();
        page.Begin("Order list", "order");
        OrderList order = OrderList.For(report, cancellationToken);
        page.Paragraph(OrderList.Explained);
        page.Table(order.Table());
        page.List(OrderList.NotCountedHeading, order.NotCounted);
        page.End();
        CutoutList cutouts = CutoutList.For(report, cancellationToken);
        page.Begin("Cutouts", "cutouts");
        page.Paragraph(cutouts.Explained);
        page.Table(cutouts.Table());
        page.List(CutoutList.SlopeHeading, cutouts.Slopes());
        page.List("Not yet", cutouts.NotYet());
        page.End();
        PreInspection inspection = PreInspection.For(mended.Evaluation);
        page.Begin("Before the inspection", "inspection");
        page.List("What to look for", inspection.Key());
        page.Table(inspection.Table());
        page.List("Nothing listed", inspection.NotListed);
        page.End();
        page.Begin("What the signs mean", "signs");
        page.Picture(LegendPicture.ToSvg(sheet.WithIdPrefix("signs")));
        page.End();
        RulesSheet.Write(page, report);
        return page.ToString();
    }

    /// <summary>What it is of.</summary>
    public override string ToString() => "Booklet of " + report.Dwelling.Name;
}
