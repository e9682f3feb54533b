using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The rows of a mark sheet, rounded to what can be marked but for those that have to stay exact.</summary>
internal sealed class RoundedMarks
{
    private readonly LayoutState state;
    private readonly MarkOptions options;
    private readonly MarkWords words;
    private readonly List<(int Box, MarkRow Row, bool IsRounded)> rows = [];

    /// <param name="state">The dwelling and what the rules state of it.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <param name="words">What there is to say of boxes besides.</param>
    public RoundedMarks(LayoutState state, MarkOptions options, MarkWords words)
    {
        this.state = state;
        this.options = options;
        this.words = words;
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].Surface.Kind == BoxSurface.Wall && state.SitesOf(box).Length > 0 && state.HasHeight(box) && state.Boxes[box] is { IsExisting: false, Source.Measured: null })
            {
                rows.Add(RowOf(box, true));
            }
        }
    }

    /// <summary>Whether any box is marked where it isn't to the tick.</summary>
    public bool AreAny => rows.Exists(row => row.IsRounded);

    /// <summary>A row for every box on a wall that is still to be set, in the order in which they are marked.</summary>
    public Items<MarkRow> InOrder()
    {
        List<(int Box, MarkRow Row, bool IsRounded)> sorted = [.. rows];
        sorted.Sort((a, b) => state.Boxes[a.Box].Surface.Index is var one && state.Boxes[b.Box].Surface.Index is var other && one != other
            ? one.CompareTo(other)
            : (a.Row.FromLeftCorner ?? Distance.MaxValue) is var left && (b.Row.FromLeftCorner ?? Distance.MaxValue) is var right && left != right
                ? left.CompareTo(right)
                : string.CompareOrdinal(a.Row.BoxId, b.Row.BoxId));
        return new(sorted.ConvertAll(row => row.Row));
    }

    /// <summary>The dwelling with each box at its mark that is marked elsewhere than it is. Others stay as they are described: rounding is what is tried out, and not how a mark reads.</summary>
    public Dwelling ReadBack()
    {
        Dictionary<string, MarkRow> marks = new(StringComparer.Ordinal);
        foreach ((int box, MarkRow row, bool isRounded) in rows)
        {
            if (isRounded)
            {
                marks[row.BoxId] = row;
            }
        }

        return state.Dwelling.WithBoxes(box => marks.TryGetValue(box.Id, out MarkRow? row) && row.Mark is { } mark ? box with { Height = mark, At = row.FromLeftCorner ?? box.At } : box);
    }

    /// <summary>Marks boxes where they are to the tick.</summary>
    /// <returns>Whether any of them was rounded.</returns>
    public bool KeepExact(HashSet<string> ids) => KeepExact(row => ids.Contains(row.BoxId));

    /// <summary>Marks every box where it is to the tick.</summary>
    public void KeepExact() => KeepExact(_ => true);

    private bool KeepExact(Predicate<MarkRow> which)
    {
        bool any = false;
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].IsRounded && which(rows[i].Row))
            {
                rows[i] = RowOf(rows[i].Box, false);
                any = true;
            }
        }

        return any;
    }

    private (int Box, MarkRow Row, bool IsRounded) RowOf(int box, bool rounded)
    {
        MarkRow row = MarkOf.Box(state, box, options, rounded, out bool isRounded);
        return (box, words.On(row), isRounded);
    }
}
