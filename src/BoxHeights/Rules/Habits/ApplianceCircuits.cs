namespace BoxHeights.Rules;

/// <summary>On how many circuits the receptacles of a room's counters are planned, and what protects each circuit. Without such a row each receptacle protects itself.</summary>
/// <remarks>Which box is on which circuit isn't described in a dwelling: the plan says it with its reasons, and in what the boxes hold.</remarks>
public sealed record ApplianceCircuits : HabitRule
{
    /// <summary>Describes the custom.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is done, in one plain phrase.</param>
    /// <param name="citation">Where it comes from.</param>
    /// <param name="purposes">Purposes of the boxes that share the circuits.</param>
    /// <param name="rooms">Kinds of rooms that it speaks of.</param>
    /// <param name="circuits">How many circuits there are, 1 or more.</param>
    public ApplianceCircuits(string id, string summary, Citation citation, Items<BoxPurpose> purposes, Items<RoomKind> rooms, int circuits)
        : base(id, summary, citation)
    {
        Purposes = purposes;
        Rooms = rooms;
        Circuits = circuits > 0 ? circuits : throw new System.ArgumentOutOfRangeException(nameof(circuits), circuits, "It is 1 or more.");
    }

    /// <summary>Purposes of the boxes that share the circuits.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Kinds of rooms that it speaks of.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <summary>How many circuits there are.</summary>
    public int Circuits { get; }

    /// <summary>What the first box of a circuit holds, which protects all that it feeds; as it is planned where none is named.</summary>
    public DeviceKind? Protecting { get; init; }

    /// <summary>What a box holds that is fed through another.</summary>
    public DeviceKind? Onward { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Purposes + " in " + Rooms + " on " + Circuits + " circuits" + (Protecting is { } first ? ", " + first + " first" : "") + (Onward is { } onward ? ", then " + onward : "");
}
