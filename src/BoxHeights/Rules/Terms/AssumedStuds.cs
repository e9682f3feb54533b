namespace BoxHeights;

/// <summary>Says how studs are only assumed to stand: whatever rests on them says so.</summary>
internal static class AssumedStuds
{
    /// <summary>A layout that nobody has seen, in words.</summary>
    public static string Text(StudLayout layout, LengthUnits units) => "studs assumed " + (layout.Faces.Count > 0
        ? "where they are listed"
        : "at " + (layout.Spacing ?? Distance.Zero).Exactly(units) + " on center from the " + (layout.From == WallEnd.Left ? "left" : "right") + " end"
            + (layout.FirstFace is { } first ? ", the first at " + first.Exactly(units) : ""));

    /// <summary>The same of a wall face, in brackets; empty where its studs are known.</summary>
    public static string InBrackets(ResolvedSurface surface, LengthUnits units) =>
        surface.StudLayout is { Known: StudKnowledge.Assumed } layout ? " (" + Text(layout, units) + ")" : "";
}
