using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights;

/// <summary>A picture on its way to SVG: shapes are written as they come, labels above them all, and what is under the drawing in lines.</summary>
internal sealed partial class SvgPage
{
    private readonly StringBuilder shapes = new();
    private readonly StringBuilder labels = new();
    private readonly StringBuilder clips = new();
    private readonly HashSet<string> ids = [];
    private readonly List<Look> used = [];
    private readonly string kind;

    public SvgPage(PictureOptions options, string kind)
    {
        Options = options;
        this.kind = kind;
        Palette = Palette.Of(options.Theme);
        Width = options.Width * 1000L;
        Size = options.FontSize * 1000L;
        Margin = Size;
        Cursor = Margin;
    }

    public PictureOptions Options { get; }

    /// <summary>Whether a user unit is a tenth of a millimeter on paper, whatever a viewer takes one for.</summary>
    public bool IsTenthsOfMillimeters { get; init; }

    public Palette Palette { get; }

    public long Width { get; }

    /// <summary>The size of letters.</summary>
    public long Size { get; }

    /// <summary>From one line of text to the next.</summary>
    public long Line => Size * 13 / 10;

    public long Margin { get; }

    /// <summary>Where the next line of text or the next drawing starts.</summary>
    public long Cursor { get; set; }

    /// <summary>How wide a line of text may be.</summary>
    public long TextWidth => Width - (2 * Margin);

    /// <summary>What the legend explains, in the order of first use.</summary>
    public IReadOnlyList<Look> Used => used;

    /// <summary>A number of thousandths, written as a decimal.</summary>
    public static string Number(long thousandths)
    {
        string sign = thousandths < 0 ? "-" : "";
        long all = thousandths < 0 ? -thousandths : thousandths;
        string part = (all % 1000).ToString("000", CultureInfo.InvariantCulture).TrimEnd('0');
        return sign + (all / 1000).ToString(CultureInfo.InvariantCulture) + (part.Length == 0 ? "" : "." + part);
    }

    /// <summary>Opens a group for one thing, by which a host finds it: a class, an id and its name and address as data.</summary>
    public void Open(string what, string? name = null, string? address = null)
    {
        shapes.Append("<g class=\"").Append(Options.IdPrefix).Append('-').Append(what).Append('"');
        if (name is not null)
        {
            shapes.Append(" id=\"").Append(NewId(what + "-" + SvgText.AsId(name))).Append('"');
            Attribute(shapes, "data-id", name);
        }

        if (address is not null)
        {
            Attribute(shapes, "data-address", address);
        }

        shapes.Append(">\n");
    }

    /// <summary>Opens a group of which only what lies within an outline is seen.</summary>
    public void OpenWithin(string what, IReadOnlyList<(long X, long Y)> outline)
    {
        shapes.Append("<g class=\"").Append(Options.IdPrefix).Append('-').Append(what).Append("\" clip-path=\"url(#").Append(ClipOf(outline)).Append(")\">\n");
    }

    public void Close() => shapes.Append("</g>\n");

    public void Rectangle(in PageRect at, Look look, string part = "", bool isRound = false) => Rectangle(shapes, at, look, part, mentions: true, isRound);

    /// <summary>A line through points; joined to its start where it is closed.</summary>
    public void Path(IReadOnlyList<(long X, long Y)> points, Look look, bool closed = false, string part = "") => Path(shapes, points, look, closed, part, mentions: true);

    public void Segment(long x1, long y1, long x2, long y2, Look look, string part = "") => Path([(x1, y1), (x2, y2)], look, false, part);

    /// <summary>A quarter turn from one point to another.</summary>
    public void Arc((long X, long Y) from, (long X, long Y) to, long radius, bool clockwise, Look look)
    {
        Begin(shapes, "path", look, "", true, noFill: true);
        shapes.Append(" d=\"M").Append(Number(from.X)).Append(' ').Append(Number(from.Y)).Append(" A").Append(Number(radius)).Append(' ').Append(Number(radius))
            .Append(" 0 0 ").Append(clockwise ? '1' : '0').Append(' ').Append(Number(to.X)).Append(' ').Append(Number(to.Y)).Append("\"/>\n");
    }

    /// <summary>A line of text over everything drawn, with paper behind it where it stands in the drawing.</summary>
    public void Label(in PageRect at, string text, string part, bool bold = false, bool onPaper = true)
    {
        if (onPaper)
        {
            labels.Append("<rect fill=\"").Append(Palette.Paper).Append("\" fill-opacity=\"0.8\"");
            Place(labels, at);
            labels.Append("/>\n");
        }

        labels.Append("<text class=\"").Append(Options.IdPrefix).Append('-').Append(part).Append("\" x=\"").Append(Number(at.Left)).Append("\" y=\"").Append(Number(at.Top + (Size * 98 / 100))).Append('"');
        labels.Append(bold ? " font-weight=\"bold\"" : "").Append('>');
        SvgText.AppendEscaped(labels, text);
        labels.Append("</text>\n");
    }

    /// <summary>A thin line from a label to what it names.</summary>
    public void Leader(long x1, long y1, long x2, long y2) => Path(shapes, [(x1, y1), (x2, y2)], Look.Dimension, false, "leader", mentions: false);

    /// <summary>How large a label's rectangle is.</summary>
    public PageRect SizeOf(string text, bool bold = false) => new(0, 0, TextMeasure.Width(text, bold ? BoldSize : Size) + (Size / 3), Line);

    /// <summary>The size of letters that are as wide as bold ones.</summary>
    private long BoldSize => Size * 11 / 10;

    /// <summary>The picture.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="description">The same in more words, for those who don't see it.</param>
    /// <param name="data">Attributes of the whole: names and values.</param>
    public string ToSvg(string title, string description, params (string Name, string Value)[] data)
    {
        StringBuilder svg = new();
        string height = Number(Cursor + Margin);
        string onPaper = IsTenthsOfMillimeters ? "mm" : "";
        long unit = IsTenthsOfMillimeters ? 10 : 1;
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"").Append(Number(Width / unit)).Append(onPaper).Append("\" height=\"").Append(Number((Cursor + Margin) / unit)).Append(onPaper)
            .Append("\" viewBox=\"0 0 ").Append(Number(Width)).Append(' ').Append(height).Append("\" role=\"img\" aria-labelledby=\"").Append(Options.IdPrefix).Append("-title ")
            .Append(Options.IdPrefix).Append("-desc\" class=\"").Append(Options.IdPrefix).Append('-').Append(kind).Append('"');
        foreach ((string name, string value) in data)
        {
            Attribute(svg, name, value);
        }

        svg.Append(">\n<title id=\"").Append(Options.IdPrefix).Append("-title\">");
        SvgText.AppendEscaped(svg, title);
        svg.Append("</title>\n<desc id=\"").Append(Options.IdPrefix).Append("-desc\">");
        SvgText.AppendEscaped(svg, description);
        svg.Append("</desc>\n<defs>\n").Append(clips).Append("</defs>\n<rect width=\"").Append(Number(Width)).Append("\" height=\"").Append(height)
            .Append("\" fill=\"").Append(Palette.Paper).Append("\"/>\n").Append(shapes)
            .Append("<g font-family=\"sans-serif\" font-size=\"").Append(Number(Size)).Append("\" fill=\"").Append(Palette.Text).Append("\">\n").Append(labels).Append("</g>\n</svg>\n");
        return svg.ToString();
    }

    private void Rectangle(StringBuilder to, in PageRect at, Look look, string part, bool mentions, bool isRound = false)
    {
        Begin(to, "rect", look, part, mentions, noFill: false);
        Place(to, at);
        if (isRound || look == Look.Plate)
        {
            // A plate's corners are rounded, so that it is told from what else is outlined.
            to.Append(" rx=\"").Append(Number(System.Math.Min(at.Width, at.Height) / (isRound ? 2 : 5))).Append('"');
        }

        to.Append("/>\n");
        Hatch(to, look, at, isRound ? Octagon(at) : null);
    }

    /// <summary>Lines that fill something round end at an octagon within it.</summary>
    private static (long X, long Y)[] Octagon(in PageRect at)
    {
        (long x, long y) = (at.Width * 293 / 1000, at.Height * 293 / 1000);
        return
        [
            (at.Left + x, at.Top), (at.Right - x, at.Top), (at.Right, at.Top + y), (at.Right, at.Bottom - y),
            (at.Right - x, at.Bottom), (at.Left + x, at.Bottom), (at.Left, at.Bottom - y), (at.Left, at.Top + y),
        ];
    }

    private void Path(StringBuilder to, IReadOnlyList<(long X, long Y)> points, Look look, bool closed, string part, bool mentions)
    {
        string path = Data(points) + (closed ? " Z" : "");
        Begin(to, "path", look, part, mentions, noFill: !closed);
        to.Append(" d=\"").Append(path).Append("\"/>\n");
        if (closed)
        {
            Hatch(to, look, PlanFrame.Round([.. points]), points);
        }
    }

    /// <summary>The lines of a look's pattern over a rectangle; only what of them lies within an outline where one is given.</summary>
    private void Hatch(StringBuilder to, Look look, in PageRect at, IReadOnlyList<(long X, long Y)>? within)
    {
        if (Palette.Of(look) is not { Pattern: not FillPattern.None } ink)
        {
            return;
        }

        int before = to.Length;
        to.Append("<path fill=\"none\" stroke=\"").Append(Palette.PatternOf(look)).Append("\" stroke-width=\"");
        string dashes = Hatching.DashesOf(ink.Pattern);
        to.Append(dashes.Length == 0 ? "0.7\"" : "1\" stroke-dasharray=\"" + dashes + "\"");
        if (within is not null)
        {
            to.Append(" clip-path=\"url(#").Append(ClipOf(within)).Append(")\"");
        }

        to.Append(" d=\"");
        int empty = to.Length;
        Hatching.Append(to, ink.Pattern, at);
        to.Append("\"/>\n");
        to.Length = to.Length - empty > 4 ? to.Length : before;
    }

    /// <summary>The id of an outline beyond which nothing is seen.</summary>
    private string ClipOf(IReadOnlyList<(long X, long Y)> outline)
    {
        string id = NewId("clip");
        clips.Append("<clipPath id=\"").Append(id).Append("\"><path d=\"").Append(Data(outline)).Append(" Z\"/></clipPath>\n");
        return id;
    }

    private static string Data(IReadOnlyList<(long X, long Y)> points)
    {
        StringBuilder path = new();
        foreach ((long x, long y) in points)
        {
            path.Append(path.Length == 0 ? "M" : " L").Append(Number(x)).Append(' ').Append(Number(y));
        }

        return path.ToString();
    }

    private void Begin(StringBuilder to, string element, Look look, string part, bool mentions, bool noFill)
    {
        Ink ink = Palette.Of(look);
        if (mentions && !used.Contains(look))
        {
            used.Add(look);
        }

        to.Append('<').Append(element);
        if (part.Length > 0)
        {
            to.Append(" class=\"").Append(Options.IdPrefix).Append('-').Append(part).Append('"');
        }

        to.Append(" fill=\"").Append(noFill ? "none" : ink.Fill ?? "none").Append('"');
        if (ink.Stroke is { } stroke)
        {
            to.Append(" stroke=\"").Append(stroke).Append("\" stroke-width=\"").Append(Number(ink.Width)).Append('"');
            to.Append(ink.Dash.Length == 0 ? "" : " stroke-dasharray=\"" + ink.Dash + "\"");
        }
    }

    private static void Place(StringBuilder to, in PageRect at) => to.Append(" x=\"").Append(Number(at.Left)).Append("\" y=\"").Append(Number(at.Top))
        .Append("\" width=\"").Append(Number(at.Width)).Append("\" height=\"").Append(Number(at.Height)).Append('"');

    private static void Attribute(StringBuilder to, string name, string value)
    {
        to.Append(' ').Append(name).Append("=\"");
        SvgText.AppendEscaped(to, value);
        to.Append('"');
    }

    private string NewId(string name)
    {
        string id = Options.IdPrefix + "-" + name;
        string free = id;
        for (int again = 2; !ids.Add(free); again++)
        {
            free = id + "--" + again.ToString(CultureInfo.InvariantCulture);
        }

        return free;
    }
}
