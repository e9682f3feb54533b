namespace BoxHeights;

/// <summary>How a box that was measured lies to the height planned for it.</summary>
public enum AsBuilt
{
    /// <summary>Within the tolerance, however the tape was read.</summary>
    ClearlyIn = 0,

    /// <summary>So near the end of the tolerance that the tape can't tell.</summary>
    WithinTapeError = 1,

    /// <summary>Outside the tolerance, however the tape was read.</summary>
    ClearlyOut = 2,

    /// <summary>The two heights can't be compared.</summary>
    NotCompared = 3,
}

/// <summary>One line of a punch list: a box that isn't clearly where it was planned.</summary>
public sealed record PunchRow
{
    internal PunchRow(string address, DeviceBox box, BoxHeight planned, BoxHeight measured, Distance within)
    {
        Address = address;
        BoxId = box.Id;
        Purpose = box.Purpose;
        Planned = planned;
        Measured = measured;
        Within = within;
    }

    /// <summary>The surface: "room/wall", "room/ceiling" or "room/floor".</summary>
    public string Address { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>The height planned for it.</summary>
    public BoxHeight Planned { get; }

    /// <summary>The height read from the tape.</summary>
    public BoxHeight Measured { get; }

    /// <summary>How far off the tape's reading may be, up or down.</summary>
    public Distance Within { get; }

    /// <summary>From the height planned up to the height read, negative where the box is low; a range where it depends on a floor or on the box's size; null where it can't be told.</summary>
    public DistanceRange? Off { get; internal init; }

    /// <summary>How the two lie to each other.</summary>
    public AsBuilt AsBuilt { get; internal init; }

    /// <summary>The line as it is called out: "W1: 3/8 low".</summary>
    public string Line { get; internal init; } = "";

    /// <summary>The line as it is called out, or how the two lie to each other.</summary>
    public override string ToString() => Line.Length > 0 ? Line : BoxId + ": " + AsBuilt;
}
