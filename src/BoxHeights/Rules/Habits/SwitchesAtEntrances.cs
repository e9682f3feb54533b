namespace BoxHeights.Rules;

/// <summary>How entrances get their switches where a plan is made. A set without such a row has none planned.</summary>
[Row(nameof(Box))]
public sealed partial record SwitchesAtEntrances : HabitRule
{
    /// <summary>The box of a switch that alone serves its light.</summary>
    public DeviceBox Box { get; init => field = Guard.NotNull(value, nameof(Box)); }

    /// <summary>The device at the first and the last of several entrances; null for that of <see cref="Box"/>.</summary>
    public DeviceKind? AtEnds { get; init; }

    /// <summary>The device at those between; null for that of <see cref="Box"/>.</summary>
    public DeviceKind? Between { get; init; }

    /// <summary>Devices that are lights, which the switches control.</summary>
    public Items<DeviceKind> Lights { get; init; }

    /// <summary>Purposes of lights that are switched by themselves, beside the first way in, and not with the rest of the room.</summary>
    public Items<BoxPurpose> Alone { get; init; }

    /// <summary>How far from where it would be looked for, or from the opening itself, a switch still serves an entrance.</summary>
    public Distance WithinReach { get; init; }

    /// <summary>How much wall is wanted between plate and casing.</summary>
    public Distance CasingGap { get; init; }

    /// <summary>How far beyond an open leaf or panel its plate is set.</summary>
    public Distance BeyondLeaf { get; init; }

    /// <summary>What studs take beside an opening or a corner where none are stated.</summary>
    public Distance StudsBeside { get; init; }

    /// <summary>The board on the wall round a corner where its thickness isn't stated.</summary>
    public Distance Board { get; init; }

    /// <summary>By how much one piece of lumber packs a stud out; null where studs aren't packed out.</summary>
    public Distance? Pack { get; init; }

    /// <summary>What such a piece is called.</summary>
    public string PackName { get; init; } = "piece";

    /// <summary>The heights over the floor at which switches are set: what surely ends below them or starts above isn't in their way. Null where everything is.</summary>
    public DistanceRange? Heights { get; init; }

    /// <summary>Rooms that one walks into and not through, the most private last. A door to one of them is a way into rooms of its kind and of those that come after it in this list, and into no others.</summary>
    public Items<RoomKind> Inward { get; init; }

    /// <summary>Rooms that one walks through: the door there that is farthest from all ways in gets a switch too.</summary>
    public Items<RoomKind> Passages { get; init; }

    /// <summary>How far that door has to be from each way in, straight in plan; null where no door gets one for that.</summary>
    public Distance? FarEnd { get; init; }

    /// <summary>A way in this near to another, straight in plan from middle to middle, goes by that one's switch where two others are left; null where each has its own.</summary>
    public Distance? FewSteps { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Said(("of each entrance", WithinReach), ("off casing", CasingGap), ("beyond leaves", BeyondLeaf), ("for studs", StudsBeside), ("of board", Board), ("for each " + PackName + " packed on", Pack))
        + (Heights is { } heights ? "; between " + heights.From + " and " + heights.To : "") + "; " + Box.Devices + (AtEnds is { } ends ? ", " + ends + " at the first and last of several" : "") + (Between is { } between ? ", " + between + " between" : "")
        + (FarEnd is { } far ? "; at doors " + far + " from all ways into " + Passages : "")
        + (FewSteps is { } near ? "; of more than two, those within " + near + " of another go by that" : "")
        + (Lights.Count == 0 ? "" : "; for " + Lights) + (Alone.Count == 0 ? "" : ", by itself for " + Alone);
}
