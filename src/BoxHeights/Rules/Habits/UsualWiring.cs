namespace BoxHeights.Rules;

/// <summary>Which cables usually enter a box, so that a plan's boxes are large enough. A set without such a row has boxes planned without cables.</summary>
public sealed record UsualWiring : HabitRule
{
    /// <summary>Describes the custom.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is done, in one plain phrase.</param>
    /// <param name="citation">Where the custom comes from.</param>
    /// <param name="devices">Devices that it speaks of.</param>
    public UsualWiring(string id, string summary, Citation citation, Items<DeviceKind> devices)
        : base(id, summary, citation) => Devices = devices;

    /// <summary>Devices that it speaks of.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>Purposes of boxes that it speaks of; every purpose where none is named.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Cables that enter once, however many devices are in the box.</summary>
    public Items<CableType> Feed { get; init; }

    /// <summary>Cables that enter for each of the devices.</summary>
    public Items<CableType> Each { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Devices + (Purposes.Count == 0 ? "" : " for " + Purposes) + ": " + Feed + (Each.Count == 0 ? "" : ", and for each " + Each);
}
