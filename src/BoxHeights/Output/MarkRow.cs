namespace BoxHeights;

/// <summary>One mark on a stud: which box, where along the wall, and how high.</summary>
public sealed record MarkRow
{
    internal MarkRow(string address, DeviceBox box)
    {
        Address = address;
        BoxId = box.Id;
        Purpose = box.Purpose;
    }

    /// <summary>The wall: "room/wall".</summary>
    public string Address { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>From the left corner of the wall (framing face) to the box's center; null where it isn't known.</summary>
    public Distance? FromLeftCorner { get; init; }

    /// <summary>The stud and its side where studs are measured or declared; else the nearest stud of the assumed layout, named as such.</summary>
    public string Stud { get; init; } = "";

    /// <summary>The height above the room's subfloor; null where it can't be told.</summary>
    public BoxHeight? Mark { get; init; }

    /// <summary>The same height from the level line, plus above it; null where there is no line.</summary>
    public Distance? FromLevelLine { get; init; }

    /// <summary>
    /// From the face of the framing out to the front edge of the box or its ring: as stated, or flush with the finished surface where that is known;
    /// null where neither is.
    /// </summary>
    public Distance? SetFor { get; init; }

    /// <summary>"strong" or "shy" where the exact height is a little more or less and that is asked for, or why there is no mark.</summary>
    public string Note { get; init; } = "";
}
