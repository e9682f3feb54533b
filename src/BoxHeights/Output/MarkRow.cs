namespace BoxHeights;

/// <summary>One mark on a stud: which box, where along the wall, and how high.</summary>
[Told]
public sealed partial record MarkRow
{
    /// <summary>The wall: "room/wall".</summary>
    public string Address { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>From the left corner of the wall (framing face) to the box's center; null where it isn't known.</summary>
    public Distance? FromLeftCorner { get; init; }

    /// <summary>What the box is nailed to as one sees it there: "stud 4, left side", "king, right of pantry-door", "layout mark 144 in, right side"; else how far it is from the nearest.</summary>
    /// <remarks>Along a stair the tread comes first, and how far above it. Where studs are only assumed it is the one that the box is near to, named as such; empty where nothing is known to stand.</remarks>
    public string Stud { get; init; } = "";

    /// <summary>"stop: see 3" where something about the box is open that nothing mends: by its number in <see cref="Evaluation.Causes"/> and <see cref="Evaluation.ToText()"/>, counted from 1; else empty. Such a box has no mark.</summary>
    public string Stop { get; init; } = "";

    /// <summary>The height above the room's subfloor; null where it can't be told.</summary>
    public BoxHeight? Mark { get; init; }

    /// <summary>The same height from the level line, plus above it; null where there is no line.</summary>
    public Distance? FromLevelLine { get; init; }

    /// <summary>
    /// From the face of the framing out to the front edge of the box or its ring: as stated, or flush with the finished surface where that is known;
    /// null where neither is.
    /// </summary>
    public Distance? StandsOut { get; init; }

    /// <summary>What the report sets otherwise and how it was, and what was rounded to be marked; or why there is no mark.</summary>
    /// <remarks>"Strong" or "shy" stands instead of what was rounded where that is asked for: the exact height is a little more, or a little less.</remarks>
    public string Note { get; init; } = "";

    /// <summary>The box, where along its wall and how high: what the row says.</summary>
    public override string ToString() => BoxId + " (" + Address + "): " + Stated.Joined(FromLeftCorner?.ToString(), Mark is { } mark ? mark.ToString() : Stop.Length > 0 ? Stop : "no mark");
}
