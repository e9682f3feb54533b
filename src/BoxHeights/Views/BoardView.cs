namespace BoxHeights;

/// <summary>How a wall's board is hung, with its seams above the storey's subfloor.</summary>
[Told]
public sealed partial class BoardView
{
    /// <summary>Where its seams are.</summary>
    public override string ToString() => Seams.Count == 0 ? "no seams" : "seams at " + Seams;

    /// <summary>The layout of its courses.</summary>
    public BoardLayout Layout { get; }

    /// <summary>The horizontal seams above the storey's subfloor, in hanging order; none for boards that run vertically, and where they are counted from a ceiling of unknown height or from a top that isn't level.</summary>
    public Items<DistanceRange> Seams { get; }

    /// <summary>Whether the layout is the storey's.</summary>
    public bool IsInherited { get; }

    /// <summary>Whether nothing is said of the wall's board, and this is one of the ways in which it is commonly hung.</summary>
    public bool IsAssumed { get; }
}
