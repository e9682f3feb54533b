using System.Collections.Generic;
using System.Threading;

namespace BoxHeights;

/// <summary>The sheet on top: what couldn't be judged, what is wrong and what to do, and what is left.</summary>
internal static class FirstSheet
{
    public static void Write(HtmlPage page, Evaluation report, MendedDwelling mended, CancellationToken cancellation)
    {
        page.Begin(report.Dwelling.Name, "first");
        page.Paragraph(report.Findings.Count == 0
            ? "Nothing was found in what could be judged."
            : report.Causes.Count + (report.Causes.Count == 1 ? " cause, " : " causes, ") + report.Findings.Count + (report.Findings.Count == 1 ? " finding; " : " findings; ")
                + mended.Boxes.Count + " boxes are set otherwise on these sheets, " + mended.Left.Count + " causes stay open.");
        page.List("Couldn't be judged here", report.NotJudged);
        List<string[]> causes = [];
        for (int i = 0; i < report.Causes.Count; i++)
        {
            Cause cause = report.Causes[i];
            causes.Add([(i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), cause.Severity.ToString().ToLowerInvariant(), cause.Title, string.Join("; ", cause.FindRemedies(cancellation).Select(remedy => remedy.Text))]);
        }

        page.Table("What was found, and what to do", ["see", "weight", "finding", "do"], causes);
        page.List("Set otherwise on these sheets", mended.Boxes.Select(box => box.ToString()));
        page.List("Still open: settle these first", mended.Left.Select(cause => cause.Title));
        page.End();
    }
}
