namespace BoxHeights;

/// <summary>A box that is still to be set by two tapes from walls: in a ceiling, in a floor, on what stands free.</summary>
public abstract record TapedRow
{
    private protected TapedRow(string room, string boxId, BoxPurpose purpose)
    {
        Room = room;
        BoxId = boxId;
        Purpose = purpose;
    }

    /// <summary>The room's id.</summary>
    public string Room { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>The tapes: from the nearest wall, and from the nearest that runs across it; none where its place isn't known.</summary>
    public Items<WallTape> Tapes { get; internal init; }

    /// <summary>"stop: see 3" where something about it is open that nothing mends; else empty.</summary>
    public string Stop { get; internal init; } = "";

    /// <summary>What the report sets otherwise, and how it was.</summary>
    public string Note { get; internal init; } = "";

    internal bool IsStopped => Stop.Length > 0;

    /// <summary>One of its tapes as it is called out; nothing where the box isn't to be set yet, or there is no such tape.</summary>
    internal string Tape(int which, LengthUnits units) => IsStopped ? "" : which < Tapes.Count ? Called(Tapes[which], units) : which == 0 ? "where isn't known" : "";

    /// <summary>A tape as it is called out: "36 in from north".</summary>
    internal static string Called(WallTape tape, LengthUnits units) => Printed.OnTape(tape.Away, units) + " from " + SurfaceAddress.Read(tape.Address).Surface;

    /// <summary>The box and its tapes.</summary>
    private protected string InOneLine => BoxId + " (" + Room + "): " + (Stop.Length > 0 ? Stop : Tapes.Count == 0 ? "no tapes" : Tapes.ToString());
}
