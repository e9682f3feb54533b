namespace BoxHeights.Rules;

/// <summary>A thing to look at before a wall is closed, and the boxes that it is looked at. It is put on a list to tick off by eye and tape: the library sees none of it.</summary>
[Row(nameof(Order))]
public sealed partial record InspectionItem : HabitRule
{
    /// <summary>Its place on the list of a box, lowest first.</summary>
    public int Order { get; init; }

    /// <summary>The distance asked for; null where none is.</summary>
    public Distance? Limit { get; init; }

    /// <summary>The widest and tallest plastic box of one gang that a cable may enter without a clamp; null where none may.</summary>
    public PlateSize? UnclampedUpTo { get; init; }

    /// <summary>Whether it is about boxes that a cable may enter without a clamp (true), or about all others (false); null for both.</summary>
    public bool? Unclamped { get; init; }

    /// <summary>Whether it is about boxes that are cut into a finished surface (true), or about all others (false); null for both.</summary>
    public bool? CutIn { get; init; }

    /// <summary>It is about openings that are smaller than this either way; null for all.</summary>
    public Distance? OpeningUnder { get; init; }

    /// <summary>Whether it is about boxes whose cables run through framing alone.</summary>
    public bool InFraming { get; init; }

    /// <summary>Whether what is nearer than the distance asked for needs a steel plate on the framing.</summary>
    public bool ElsePlate { get; init; }

    /// <summary>It is about boxes in finished surfaces that burn, don't, or may; where none is named, about every box, on a surface's face too.</summary>
    public Items<SurfaceBurns> Surfaces { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Summary + (UnclampedUpTo is { } largest ? "; cables enter without a clamp up to " + largest : "") + (OpeningUnder is { } small ? "; openings under " + small : "") + (ElsePlate ? "; else a plate" : "");
}

/// <summary>Whether the finished surface that a box opens through burns.</summary>
public enum SurfaceBurns
{
    /// <summary>Board, plaster, tile, stone or masonry.</summary>
    No = 0,

    /// <summary>It isn't stated, or where the box is isn't.</summary>
    NotKnown = 1,

    /// <summary>Wood or another that burns.</summary>
    Yes = 2,
}
