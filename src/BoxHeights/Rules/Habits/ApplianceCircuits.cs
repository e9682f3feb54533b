namespace BoxHeights.Rules;

/// <summary>On how many circuits the receptacles of a room's counters are planned, and what protects each circuit. Without such a row each receptacle protects itself.</summary>
/// <remarks>Which box is on which circuit isn't described in a dwelling: the plan says it with its reasons, and in what the boxes hold.</remarks>
[Row(nameof(Purposes), nameof(Rooms), nameof(Circuits))]
public sealed partial record ApplianceCircuits : HabitRule
{
    /// <summary>Purposes of the boxes that share the circuits.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Kinds of rooms that it speaks of.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <summary>How many circuits there are; 1 or more.</summary>
    public int Circuits { get; init => field = Guard.Count(value, nameof(Circuits)); }

    /// <summary>What the first box of a circuit holds, which protects all that it feeds; as it is planned where none is named.</summary>
    public DeviceKind? Protecting { get; init; }

    /// <summary>What a box holds that is fed through another.</summary>
    public DeviceKind? Onward { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Purposes + " in " + Rooms + " on " + Circuits + " circuits" + (Protecting is { } first ? ", " + first + " first" : "") + (Onward is { } onward ? ", then " + onward : "");
}
