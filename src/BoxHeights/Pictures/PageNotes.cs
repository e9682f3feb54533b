using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Labels of a drawing: each where there is room for it, else as a numbered note under the drawing, with a small mark at the spot where that has room.</summary>
internal sealed class PageNotes(SvgPage page, LabelPlacer placer)
{
    private const int FewNotes = 6;
    private const int MostColumns = 3;
    private const int FarRings = 60;

    private readonly List<(string Text, PageRect Thing, Predicate<PageRect>? IsFit)> notes = [];

    public LabelPlacer Placer { get; } = placer;

    /// <summary>The lower end of the lowest label.</summary>
    public long Lowest { get; private set; }

    /// <summary>Puts a label at the first free place.</summary>
    /// <param name="text">The label.</param>
    /// <param name="places">Where it may stand.</param>
    /// <param name="part">What it is.</param>
    /// <param name="placed">Where it stands.</param>
    /// <param name="isFit">Which of the places it may take; every one unless given.</param>
    /// <param name="bold">Whether it is told from other labels by its weight.</param>
    public bool TryLabel(string text, IEnumerable<PageRect> places, string part, out PageRect placed, Predicate<PageRect>? isFit = null, bool bold = false)
    {
        if (!Placer.TryTake(places, out placed, isFit))
        {
            return false;
        }

        page.Label(placed, text, part, bold);
        Lowest = Math.Max(Lowest, placed.Bottom);
        return true;
    }

    /// <summary>A label around a thing, or a note about it.</summary>
    /// <param name="text">The label.</param>
    /// <param name="note">What the note says where there is no room: the label, and where the thing is in words.</param>
    /// <param name="thing">The thing.</param>
    /// <param name="part">What the label is.</param>
    /// <param name="rings">How far off to look.</param>
    /// <param name="isFit">Which places it may take; every one unless given.</param>
    public void Around(string text, string note, in PageRect thing, string part, int rings = 3, Predicate<PageRect>? isFit = null)
    {
        PageRect size = page.SizeOf(text);
        if (!TryLabel(text, LabelPlacer.Around(thing, size.Width, size.Height, page.Size / 5, rings), part, out PageRect placed, isFit))
        {
            Note(note, thing, isFit);
        }
        else
        {
            LeadFromAfar(placed, thing);
        }
    }

    /// <summary>A line from a label that is too far off what it names to be seen to belong to it.</summary>
    private void LeadFromAfar(in PageRect placed, in PageRect thing)
    {
        if (!placed.Overlaps(new(thing.Left - page.Size, thing.Top - (page.Size / 2), thing.Width + (2 * page.Size), thing.Height + page.Size)))
        {
            Lead(placed, thing);
        }
    }

    /// <summary>A thin line between a label and the middle of what it names.</summary>
    public void Lead(in PageRect label, in PageRect thing) =>
        page.Leader(label.Left + (label.Width / 2), label.Top + (label.Height / 2), thing.Left + (thing.Width / 2), thing.Top + (thing.Height / 2));

    /// <summary>A label along a line: under it or over it, in its middle or toward its ends, or a row or two further off.</summary>
    public void Along(string text, string note, in PageRect line, string part)
    {
        if (!TryLabel(text, Places(line, page.SizeOf(text), page.Size / 5), part, out _))
        {
            Note(note, line);
        }

        static IEnumerable<PageRect> Places(PageRect line, PageRect size, long gap)
        {
            for (long off = gap; off <= gap + (2 * size.Height); off += size.Height)
            {
                foreach (long across in new[] { 4L, 1L, 7L, 2L, 6L })
                {
                    yield return new(line.Left + ((line.Width - size.Width) * across / 8), line.Bottom + off, size.Width, size.Height);
                    yield return new(line.Left + ((line.Width - size.Width) * across / 8), line.Top - off - size.Height, size.Width, size.Height);
                }
            }
        }
    }

    /// <summary>A label within a thing, or a note about it.</summary>
    public void Inside(string text, string note, in PageRect thing, string part, bool bold = false)
    {
        PageRect size = page.SizeOf(text, bold);
        if (thing.Width < size.Width || !TryLabel(text, Rows(thing, size), part, out _, null, bold))
        {
            Note(note, thing);
        }
    }

    /// <summary>A numbered note, whose mark comes near a thing once all labels have their places.</summary>
    public void Note(string text, in PageRect thing, Predicate<PageRect>? isFit = null) => notes.Add((text, thing, isFit));

    /// <summary>Puts the marks of the notes where there is still room for them: beside their things, or further off with a line.</summary>
    public void PlaceMarks()
    {
        for (int i = 0; i < notes.Count; i++)
        {
            PageRect size = page.SizeOf(MarkOf(i));
            IEnumerable<PageRect> places = LabelPlacer.Around(notes[i].Thing, size.Width, size.Height, page.Size / 5, FarRings);
            if ((notes[i].IsFit is { } isFit && Placer.TryTake(places, out PageRect placed, isFit)) || Placer.TryTake(places, out placed))
            {
                page.Label(placed, MarkOf(i), "note-mark");
                LeadFromAfar(placed, notes[i].Thing);
                Lowest = Math.Max(Lowest, placed.Bottom);
            }
        }
    }

    /// <summary>Writes the notes under the drawing.</summary>
    public void Write()
    {
        if (Columns is > 1 and var columns)
        {
            WriteIn(columns);
        }
        else
        {
            for (int i = 0; i < notes.Count; i++)
            {
                page.Item(MarkOf(i), notes[i].Text, "note");
            }
        }

        if (notes.Count > 0)
        {
            page.Gap();
        }
    }

    /// <summary>How many columns they take: several where they are many, and short enough for a line each, so that a drawing with its notes stays on a sheet.</summary>
    private int Columns
    {
        get
        {
            long widest = 1;
            for (int i = 0; i < notes.Count; i++)
            {
                widest = Math.Max(widest, page.WidthOfItem(MarkOf(i), notes[i].Text));
            }

            return notes.Count <= FewNotes ? 1 : (int)Math.Min(MostColumns, page.TextWidth / widest);
        }
    }

    /// <summary>One below another, column by column.</summary>
    private void WriteIn(int columns)
    {
        int rows = (notes.Count + columns - 1) / columns;
        long top = page.Cursor;
        for (int i = 0; i < notes.Count; i++)
        {
            page.ItemAt(i / rows * (page.TextWidth / columns), top + (i % rows * page.Line), MarkOf(i), notes[i].Text, "note");
        }

        page.Cursor = top + (rows * page.Line);
    }

    private static string MarkOf(int note) => "n" + (note + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Places within a thing: in its middle, then up and down from there, then to both sides.</summary>
    private static IEnumerable<PageRect> Rows(PageRect thing, PageRect size)
    {
        long middle = thing.Top + ((thing.Height - size.Height) / 2);
        foreach (long across in new[] { 2L, 1L, 3L })
        {
            long x = thing.Left + ((thing.Width - size.Width) * across / 4);
            for (long off = 0; off + size.Height <= (thing.Height + size.Height) / 2; off += size.Height * 3 / 4)
            {
                yield return new(x, middle - off, size.Width, size.Height);
                yield return new(x, middle + off, size.Width, size.Height);
            }
        }
    }
}
