namespace BoxHeights.Rules;

/// <summary>Which cables usually enter a box, so that a plan's boxes are large enough. Without such a row they are planned without cables.</summary>
[Row(nameof(Devices))]
public sealed partial record UsualWiring : HabitRule
{
    /// <summary>Devices that it speaks of.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>Purposes of boxes that it speaks of; every purpose where none is named.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Kinds of rooms that it speaks of; every room and outside face where none is named.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <summary>Cables that enter once, however many devices are in the box.</summary>
    public Items<CableType> Feed { get; init; }

    /// <summary>Cables that enter for each of the devices.</summary>
    public Items<CableType> Each { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Devices + (Purposes.Count == 0 ? "" : " for " + Purposes) + (Rooms.Count == 0 ? "" : " in " + Rooms) + ": " + Feed + (Each.Count == 0 ? "" : ", and for each " + Each);
}
