namespace BoxHeights;

/// <summary>What is cut out of one board for a box or an opening, from the board's left and lower edges.</summary>
[Told]
public sealed partial record BoardCutout
{
    /// <summary>The address of the wall.</summary>
    public string Address { get; }

    /// <summary>The place of the board among <see cref="BoardCutouts.Boards"/>.</summary>
    public int Board { get; }

    /// <summary>The id of the box or opening.</summary>
    public string Id { get; }

    /// <summary>Whether it is a box.</summary>
    public bool IsBox { get; }

    /// <summary>Its left edge, from the board's left edge.</summary>
    public Distance Left { get; }

    /// <summary>Its right edge, from the board's left edge.</summary>
    public Distance Right { get; }

    /// <summary>Its lower edge, from the board's lower edge.</summary>
    public Distance Bottom { get; }

    /// <summary>Its upper edge, from the board's lower edge.</summary>
    public Distance Top { get; }

    /// <summary>Whether what is cut is round.</summary>
    public bool IsRound { get; internal init; }

    /// <summary>Whether a box lies across a seam, so that a second board is cut for it.</summary>
    public bool IsSplit { get; internal init; }

    /// <summary>Whether the box's own size isn't stated, so that it is the usual size of its kind: measure the box first.</summary>
    public bool IsUsualSize { get; internal init; }

    internal const string Usual = "; usual size";

    internal string Remark => (IsSplit ? Seam : "") + (IsUsualSize ? Usual : "");

    /// <summary>The remark as a cell of its own, without what is said of all.</summary>
    internal string RemarkWithout(bool usualSize) => ((IsSplit ? Seam : "") + (IsUsualSize && !usualSize ? Usual : "")) is { Length: > 0 } said ? said.Substring(2) : "";

    private const string Seam = "; across a seam: cut both boards";

    /// <summary>The board, what is cut out of it and where.</summary>
    public override string ToString() => Address + ", board " + Board + ": " + Id + ", " + Left + " to " + Right + " along, " + Bottom + " to " + Top + " up";
}
