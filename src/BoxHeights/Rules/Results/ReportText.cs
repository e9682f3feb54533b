using System.Text;

namespace BoxHeights;

/// <summary>Takes the lines of a report and puts each into a language.</summary>
internal sealed class ReportText(WordingFormatter words)
{
    private readonly StringBuilder text = new();

    /// <summary>An empty line.</summary>
    public ReportText Line()
    {
        text.Append('\n');
        return this;
    }

    /// <summary>A line.</summary>
    public ReportText Line(Wording line)
    {
        text.Append(words.Format(line)).Append('\n');
        return this;
    }

    /// <summary>A line under another.</summary>
    public ReportText Indented(Wording line)
    {
        text.Append("   ");
        return Line(line);
    }

    public override string ToString() => text.ToString();
}
