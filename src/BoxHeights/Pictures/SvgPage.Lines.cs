using System.Collections.Generic;

namespace BoxHeights;

/// <content>What is under the drawing: text in lines, what markers stand for, and the swatches of the legend.</content>
internal sealed partial class SvgPage
{
    /// <summary>Lines of text across the page, below everything so far.</summary>
    public void Paragraph(string text, string part, bool bold = false, long indent = 0)
    {
        foreach (string line in TextMeasure.Wrap(text, TextWidth - indent - (Size / 3), bold ? BoldSize : Size))
        {
            PageRect size = SizeOf(line);
            Label(new(Margin + indent, Cursor, size.Width, size.Height), line, part, bold, onPaper: false);
            Cursor += Line;
        }
    }

    /// <summary>A marker and what it stands for, set off from it: beside it, or under one that takes much of the page.</summary>
    public void Item(string marker, string text, string part)
    {
        long indent = TextMeasure.Width(marker + "  ", Size);
        if (indent > TextWidth / 3)
        {
            Paragraph(marker, part + "-number", bold: true);
            Paragraph(text, part, false, Size * 2);
            return;
        }

        PageRect size = SizeOf(marker);
        Label(new(Margin, Cursor, size.Width, size.Height), marker, part + "-number", bold: true, onPaper: false);
        Paragraph(text, part, false, indent);
    }

    /// <summary>How much of a line a marker takes with what it stands for, and the space behind it.</summary>
    public long WidthOfItem(string marker, string text) => TextMeasure.Width(marker + "  ", Size) + SizeOf(text).Width + (Size * 2);

    /// <summary>The same in one line, somewhere on the page.</summary>
    public void ItemAt(long left, long top, string marker, string text, string part)
    {
        PageRect size = SizeOf(marker);
        PageRect said = SizeOf(text);
        Label(new(Margin + left, top, size.Width, size.Height), marker, part + "-number", bold: true, onPaper: false);
        Label(new(Margin + left + TextMeasure.Width(marker + "  ", Size), top, said.Width, said.Height), text, part, onPaper: false);
    }

    public void Gap() => Cursor += Line / 2;

    /// <summary>Swatches of looks, several to a line.</summary>
    public void Swatches(IEnumerable<(Look Look, string Text)> entries)
    {
        long x = Margin;
        long swatch = Size * 2;
        foreach ((Look look, string text) in entries)
        {
            long room = TextWidth - swatch - Size;
            List<string> lines = TextMeasure.Wrap(text, room, Size);
            long width = 0;
            foreach (string line in lines)
            {
                width = System.Math.Max(width, SizeOf(line).Width);
            }

            if (x > Margin && x + swatch + Size + width > Width - Margin)
            {
                x = Margin;
                Cursor += Line * 12 / 10;
            }

            PageRect at = new(x, Cursor + (Line / 6), look == Look.Stud ? swatch / 4 : swatch, Size * 9 / 10);
            bool isLine = Palette.Of(look) is { Fill: null, Pattern: FillPattern.None } && look is not (Look.Outline or Look.Casing or Look.Plate or Look.Operable or Look.NotSure or Look.Assumed);
            if (isLine)
            {
                Path(shapes, [(at.Left, at.Top + (at.Height / 2)), (at.Right, at.Top + (at.Height / 2))], look, false, "swatch", mentions: false);
            }
            else
            {
                Rectangle(shapes, at, look, "swatch", mentions: false);
            }

            foreach (string line in lines)
            {
                PageRect size = SizeOf(line);
                Label(new(x + swatch + (Size / 2), Cursor, size.Width, size.Height), line, "legend", onPaper: false);
                Cursor += Line;
            }

            Cursor -= Line;
            x = lines.Count > 1 ? Width : x + swatch + Size + width + Size;
        }

        Cursor += Line * 12 / 10;
    }
}
