namespace BoxHeights;

/// <summary>Says how studs are only assumed to stand: whatever rests on them says so.</summary>
internal static class AssumedStuds
{
    /// <summary>A layout that nobody has seen, in words.</summary>
    public static Wording Text(StudLayout layout, LengthUnits units)
    {
        if (layout.Faces.Count > 0)
        {
            return $"studs assumed where they are listed";
        }

        PrintedQuantity spacing = Printed.Exactly(layout.Spacing ?? Distance.Zero, units);
        Wording studs = layout.From == WallEnd.Left ? $"studs assumed at {spacing} on center from the left end" : (Wording)$"studs assumed at {spacing} on center from the right end";
        return layout.FirstFace is { } first ? $"{studs}, the first at {Printed.Exactly(first, units):first}" : studs;
    }

    /// <summary>The same of a wall face; null where its studs are known.</summary>
    public static Wording? Of(ResolvedSurface surface, LengthUnits units) => surface.StudLayout is { Known: StudKnowledge.Assumed } layout ? Text(layout, units) : null;

    /// <summary>Words with what they rest on in brackets behind them, where studs are only assumed.</summary>
    public static Wording Added(Wording words, ResolvedSurface surface, LengthUnits units) => Of(surface, units) is { } studs ? $"{words} ({studs})" : words;
}
