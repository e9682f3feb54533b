namespace BoxHeights.Rules;

/// <summary>An appliance that is plugged in out of reach and goes on by a switch nearby: a disposal under its sink. It is planned only where the set has such a row.</summary>
[Row(nameof(Things), nameof(Outlets), nameof(Switch), nameof(Within))]
public sealed partial record SwitchedAppliance : HabitRule
{
    /// <summary>The appliances.</summary>
    public Items<FixtureKind> Things { get; init; }

    /// <summary>Purposes of the boxes that they are plugged into, of which the switch controls a part.</summary>
    public Items<BoxPurpose> Outlets { get; init; }

    /// <summary>The box of the switch, with its cables and without its place.</summary>
    public DeviceBox Switch { get; init => field = Guard.NotNull(value, nameof(Switch)); }

    /// <summary>How far along the wall the outlet may be from the appliance, and the switch from either.</summary>
    public Distance Within { get; init; }

    /// <summary>How much of the outlet is switched.</summary>
    public SwitchedPart Part { get; init; } = SwitchedPart.Half;

    /// <summary>What the outlet's box is entered by besides, for the switch.</summary>
    public Items<CableType> Leg { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Things.Select(kind => kind.Name);

    /// <inheritdoc/>
    public override string Numbers => Things + " at " + Outlets + ", " + Part + " switched by " + Switch.Devices + " within " + Within + (Leg.Count == 0 ? "" : ", with " + Leg);
}
