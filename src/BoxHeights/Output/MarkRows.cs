using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Which boxes a mark sheet has rows for, in which order, and which it has to leave out.</summary>
internal static class MarkRows
{
    /// <summary>A row for every box on a wall that is still to be set, in the order in which they are marked.</summary>
    /// <param name="state">The dwelling and what the rules state of it.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <param name="unrounded">Boxes whose marks have to be exact.</param>
    public static Items<MarkRow> Of(LayoutState state, MarkOptions options, HashSet<string> unrounded)
    {
        List<(ResolvedSurface Surface, MarkRow Row)> rows = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].Surface is { Kind: BoxSurface.Wall } surface && state.SitesOf(box).Length > 0 && state.HasHeight(box)
                && state.Boxes[box] is { IsExisting: false, Source.Measured: null })
            {
                rows.Add((surface, MarkOf.Box(state, box, options, !unrounded.Contains(state.Boxes[box].Source.Id))));
            }
        }

        rows.Sort((a, b) => a.Surface.Index != b.Surface.Index
            ? a.Surface.Index.CompareTo(b.Surface.Index)
            : (a.Row.FromLeftCorner ?? Distance.MaxValue) is var left && (b.Row.FromLeftCorner ?? Distance.MaxValue) is var right && left != right
                ? left.CompareTo(right)
                : string.CompareOrdinal(a.Row.BoxId, b.Row.BoxId));
        return new(rows.ConvertAll(row => row.Row));
    }

    /// <summary>Boxes on walls that are set already, and how that is known.</summary>
    public static Items<LeftOutBox> SetAlready(LayoutState state)
    {
        List<LeftOutBox> found = [];
        foreach (ResolvedBox box in state.Boxes)
        {
            if (box.IsOnWall && (box.IsExisting || box.Source.Measured is not null))
            {
                found.Add(new(box.Source.Id, box.IsExisting ? "was there before" : "set, and measured " + box.Source.Measured!.Height.Exactly(state.Options.Units)));
            }
        }

        return new(found);
    }

    /// <summary>Boxes on walls that should have a mark and can't.</summary>
    public static Items<LeftOutBox> LeftOut(LayoutState state)
    {
        List<LeftOutBox> found = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].IsOnWall && state.SitesOf(box).Length == 0)
            {
                found.Add(new(state.Boxes[box].Source.Id, "a fault of the description keeps it from being marked"));
            }
        }

        return new(found);
    }
}
