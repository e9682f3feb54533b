namespace BoxHeights;

/// <summary>What is drawn alike: a line, a fill and a pattern. The legend explains each that a picture uses.</summary>
internal enum Look
{
    Outline,
    Stud,
    King,
    Jack,
    Cripple,
    Corner,
    NotSure,
    Assumed,
    Range,
    NoCavity,
    Opening,
    Casing,
    DoorLeaf,
    Seam,
    Counter,
    Finish,
    Covering,
    Fixture,
    Platform,
    Freestanding,
    Box,
    Plate,
    Operable,
    Overhead,
    InFloor,
    Allowed,
    AllowedLine,
    MaybeAllowed,
    RoomLine,
    Grade,
    Nosing,
    Dimension,
    Uncovered,
    Served,
    SwitchLeg,
    WallLine,
    Gap,
    Swing,
    Window,
    Doorway,
    Board,
    Cutout,
}

/// <summary>The patterns that fills are told apart by.</summary>
internal enum FillPattern
{
    None,
    Hatch,
    BackHatch,
    Cross,
    Rows,
    Columns,
    Tiles,
    Dots,
    FewDots,
    WideHatch,
    WideBackHatch,

    /// <summary>From corner to corner: as a void is drawn.</summary>
    Diagonals,
}

/// <summary>How a look is drawn.</summary>
/// <param name="stroke">The color of its line; null for none.</param>
/// <param name="width">The width of its line, in thousandths of a user unit.</param>
/// <param name="dash">The dashes of its line; empty for none.</param>
/// <param name="fill">The color under its pattern; null for none.</param>
/// <param name="pattern">Its pattern.</param>
internal readonly struct Ink(string? stroke, long width, string dash, string? fill, FillPattern pattern)
{
    public string? Stroke { get; } = stroke;

    public long Width { get; } = width;

    public string Dash { get; } = dash;

    public string? Fill { get; } = fill;

    public FillPattern Pattern { get; } = pattern;
}
