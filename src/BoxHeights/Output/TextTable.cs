using System.Collections.Generic;
using System.Text;

namespace BoxHeights;

/// <summary>The one way in which reports write a table: grouped under headings in Markdown, flat with the group as first column in CSV.</summary>
internal sealed class TextTable(string groupColumn, params string[] columns)
{
    private readonly List<(string Group, string[] Cells)> rows = [];

    /// <summary>A report's heading, with the caution that each of them carries and what its numbers mean.</summary>
    public static void AppendTitle(StringBuilder text, string title, string explanation) =>
        text.Append("# ").Append(OneLine(title)).Append("\n\n").Append(Scope.Caution).Append(' ').Append(explanation).Append('\n');

    /// <summary>A list under a heading; nothing where nothing is listed.</summary>
    public static void AppendList(StringBuilder text, string heading, IEnumerable<LeftOutBox> boxes) => AppendLines(text, heading, new Items<LeftOutBox>(boxes).Select(box => box.ToString()));

    /// <summary>Lines under a heading; nothing where there are none.</summary>
    public static void AppendLines(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        string before = "\n## " + heading + "\n\n";
        foreach (string line in lines)
        {
            text.Append(before).Append("- ").Append(OneLine(line)).Append('\n');
            before = "";
        }
    }

    /// <summary>Text that stays on its line and in its cell.</summary>
    public static string OneLine(string text) => text.Replace("\r", "").Replace('\n', ' ').Replace("|", "\\|");

    /// <summary>Each run of rows of one group, with the columns that say something in it.</summary>
    public IEnumerable<(string Group, string[] Columns, List<string[]> Rows)> Tables()
    {
        foreach ((string group, List<string[]> run) in Groups())
        {
            List<int> said = [];
            for (int column = 0; column < columns.Length; column++)
            {
                if (run.Exists(cells => cells[column].Length > 0))
                {
                    said.Add(column);
                }
            }

            string[] Of(string[] cells) => said.ConvertAll(column => cells[column]).ToArray();
            yield return (group, Of(columns), run.ConvertAll(Of));
        }
    }

    private IEnumerable<(string Group, List<string[]> Rows)> Groups()
    {
        List<string[]> run = [];
        for (int i = 0; i < rows.Count; i++)
        {
            run.Add(rows[i].Cells);
            if (i + 1 == rows.Count || rows[i + 1].Group != rows[i].Group)
            {
                yield return (rows[i].Group, run);
                run = [];
            }
        }
    }

    public void Add(string group, params string[] cells) => rows.Add((group, cells));

    /// <summary>A heading and a table for each run of rows of one group.</summary>
    public void AppendMarkdown(StringBuilder text)
    {
        foreach ((string group, string[] said, List<string[]> run) in Tables())
        {
            text.Append("\n## ").Append(OneLine(group)).Append("\n\n| ").Append(string.Join(" | ", said)).Append(" |\n|");
            foreach (string _ in said)
            {
                text.Append("---|");
            }

            text.Append('\n');
            foreach (string[] cells in run)
            {
                text.Append('|');
                foreach (string cell in cells)
                {
                    text.Append(' ').Append(OneLine(cell)).Append(" |");
                }

                text.Append('\n');
            }
        }
    }

    /// <summary>After RFC 4180, with a header line.</summary>
    public string ToCsv()
    {
        StringBuilder text = new();
        AppendRecord(text, groupColumn, columns);
        foreach ((string group, string[] cells) in rows)
        {
            AppendRecord(text, group, cells);
        }

        return text.ToString();
    }

    private static void AppendRecord(StringBuilder text, string first, string[] others)
    {
        text.Append(Quoted(first));
        foreach (string cell in others)
        {
            text.Append(',').Append(Quoted(cell));
        }

        text.Append("\r\n");
    }

    private static string Quoted(string cell) =>
        cell.IndexOfAny([',', '"', '\r', '\n']) < 0 ? cell : "\"" + cell.Replace("\"", "\"\"") + "\"";
}
