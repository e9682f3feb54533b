using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights;

/// <summary>Writes one HTML document of several sheets: headings, tables with repeated heads, lists and pictures; text stays text.</summary>
internal sealed class HtmlPage
{
    /// <summary>Prints in black on white, on any paper; a sheet begins a page, and neither a row nor a picture is torn.</summary>
    private const string Style =
        "body{font:14px/1.4 sans-serif;color:#111;background:#fff;margin:0 auto;max-width:60rem;padding:0 1rem}"
        + "table{border-collapse:collapse;width:100%;margin:.5rem 0}th,td{border:1px solid #767676;padding:.2rem .4rem;text-align:left;vertical-align:top;overflow-wrap:break-word}"
        + "th{background:#eee;vertical-align:bottom}.n{white-space:nowrap}svg{max-width:100%;height:auto;display:block;margin:.5rem 0}figure,.t{margin:0;overflow-x:auto}"
        + ".caution{font-size:.85em;border-top:1px solid #767676;padding-top:.3rem}nav ul{columns:14rem;padding-left:1.2rem}"
        + "@media print{body{max-width:none;padding:0;font-size:9.5pt}nav{display:none}section{break-before:page}section:first-of-type{break-before:auto}h1,h2,h3{break-after:avoid}"
        + "th,td{padding:.08rem .3rem}h1,h2{margin:0 0 .3rem}h3{margin:.7rem 0 .2rem}svg{margin:.2rem 0;max-height:228mm}.caution{break-before:avoid}.wide{page:wide}.wide svg{max-height:158mm}tr,figure,.short{break-inside:avoid}.t{overflow:visible}thead{display:table-header-group}}@page{margin:12mm}@page wide{size:landscape}"
        + "@media screen and (max-width:40rem){table{font-size:.85em}figure svg{max-width:none}}";

    /// <summary>Measures and words that aren't broken.</summary>
    private const int MostUnbroken = 14;

    /// <summary>The same of what a row is about, where the table has few columns: items to order, ids of rules.</summary>
    private const int MostUnbrokenName = 40;

    private const int FewColumns = 4;

    /// <summary>A table of so few rows isn't torn.</summary>
    private const int FewRows = 12;

    private readonly StringBuilder body = new();
    private readonly StringBuilder contents = new();
    private readonly string title;
    private int pictures;

    public HtmlPage(string title) => this.title = title;

    /// <summary>A number that no other picture has.</summary>
    public string NextPicture() => (++pictures).ToString(CultureInfo.InvariantCulture);

    /// <summary>Begins a sheet.</summary>
    /// <param name="heading">What stands over it.</param>
    /// <param name="id">Its name in the page.</param>
    /// <param name="isWide">Whether it is printed on paper laid on its side.</param>
    public void Begin(string heading, string id, bool isWide = false)
    {
        bool first = contents.Length == 0;
        contents.Append("<li><a href=\"#").Append(id).Append("\">");
        Say(contents, heading);
        contents.Append("</a></li>\n");
        body.Append("<section id=\"").Append(id).Append(isWide ? "\" class=\"wide\">\n" : "\">\n");
        Heading(first ? "h1" : "h2", heading);
    }

    /// <summary>Ends a sheet: each carries the caution, since sheets are pinned up one by one.</summary>
    public void End()
    {
        body.Append("<p class=\"caution\">");
        Say(body, Scope.Caution);
        body.Append("</p>\n</section>\n");
    }

    /// <summary>What is written so far, without the document around it.</summary>
    public string Body => body.ToString();

    /// <summary>A word on its own.</summary>
    public void Word(string text)
    {
        body.Append("<span>");
        Say(body, text);
        body.Append("</span>");
    }

    /// <summary>Lines as they are.</summary>
    public void Lines(string text)
    {
        body.Append("<pre>");
        SvgText.AppendLines(body, text);
        body.Append("</pre>\n");
    }

    public void Paragraph(string text)
    {
        body.Append("<p>");
        Say(body, text);
        body.Append("</p>\n");
    }

    /// <summary>A list under a heading; nothing where nothing is listed.</summary>
    public void List(string heading, IEnumerable<string> lines)
    {
        int before = body.Length;
        Heading("h3", heading);
        body.Append("<ul>\n");
        bool any = false;
        foreach (string line in lines)
        {
            any = true;
            body.Append("<li>");
            Say(body, line);
            body.Append("</li>\n");
        }

        body.Append("</ul>\n");
        body.Length = any ? body.Length : before;
    }

    /// <summary>A table under a heading; nothing where it has no row.</summary>
    public void Table(string heading, string[] columns, IReadOnlyList<string[]> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        Heading("h3", heading);
        body.Append(rows.Count <= FewRows ? "<div class=\"t short\"><table>\n<thead>" : "<div class=\"t\"><table>\n<thead>");
        Row("th scope=\"col\"", "th", columns);
        body.Append("</thead>\n<tbody>\n");
        foreach (string[] row in rows)
        {
            Row("td", "td", row);
        }

        body.Append("</tbody>\n</table></div>\n");
    }

    /// <summary>A picture as it is.</summary>
    public void Picture(string svg)
    {
        // Within a document of its own a picture needs no declaration.
        int start = svg.IndexOf("<svg", System.StringComparison.Ordinal);
        body.Append("<figure>").Append(svg, start, svg.Length - start).Append("</figure>\n");
    }

    /// <summary>A paper's table: one for each run of rows of a group, under its name.</summary>
    public void Table(TextTable paper)
    {
        foreach ((string group, string[] columns, List<string[]> rows) in paper.Tables())
        {
            Table(group, columns, rows);
        }
    }

    /// <summary>Boxes that a paper leaves out, and why.</summary>
    public void List(string heading, Items<LeftOutBox> boxes) => List(heading, boxes.Select(box => box.ToString()));

    /// <summary>The whole document.</summary>
    public override string ToString()
    {
        StringBuilder all = new();
        all.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        Say(all, title);
        return all.Append("</title>\n<style>").Append(Style).Append("</style>\n</head>\n<body>\n<nav aria-label=\"Sheets\"><ul>\n").Append(contents).Append("</ul></nav>\n<main>\n")
            .Append(body).Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>A heading; none where it says nothing.</summary>
    private void Heading(string level, string text)
    {
        if (text.Length == 0)
        {
            return;
        }

        body.Append('<').Append(level).Append('>');
        Say(body, text);
        body.Append("</").Append(level).Append(">\n");
    }

    private void Row(string open, string close, string[] cells)
    {
        body.Append("<tr>");
        for (int i = 0; i < cells.Length; i++)
        {
            int unbroken = i == 0 && cells.Length <= FewColumns ? MostUnbrokenName : MostUnbroken;
            body.Append('<').Append(open).Append(close == "td" && cells[i].Length <= unbroken ? " class=\"n\">" : ">");
            Say(body, cells[i]);
            body.Append("</").Append(close).Append('>');
        }

        body.Append("</tr>\n");
    }

    private static void Say(StringBuilder to, string text) => SvgText.AppendEscaped(to, SvgText.Mixed(text));
}
