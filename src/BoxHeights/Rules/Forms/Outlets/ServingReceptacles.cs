namespace BoxHeights.Rules;

/// <summary>Which receptacles a document takes to serve a wall, a counter or an island from where they stand: row data.</summary>
/// <remarks>
/// It speaks of general receptacles alone, and of their place: over a counter, in the floor before a wall. A box whose devices aren't stated may hold one, so that
/// in doubt the wall is neither served nor bare. <see cref="CountedOutlet"/> counts boxes of any kind in a room, takes a box's purpose for its word, and asks nothing
/// of where along a wall they are.
/// </remarks>
public sealed record ServingReceptacles
{
    // A box whose devices aren't stated may hold a receptacle, unless its purpose says otherwise.
    private static readonly Items<BoxPurpose> NeverReceptacles = new[]
    {
        BoxPurpose.Switch, BoxPurpose.BedSwitch, BoxPurpose.Light, BoxPurpose.VanityLight, BoxPurpose.StairLight, BoxPurpose.BedLight, BoxPurpose.Alarm, BoxPurpose.Thermostat,
        BoxPurpose.Doorbell, BoxPurpose.Media,
    };

    /// <summary>Devices that count where their rating isn't stated.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>The lowest voltage that counts; null where none is too low.</summary>
    public int? LowestVolts { get; init; }

    /// <summary>The highest voltage that counts; null where none is too high.</summary>
    public int? HighestVolts { get; init; }

    /// <summary>The current ratings that count; any where none is named.</summary>
    public Items<int> Amperes { get; init; }

    /// <summary>Purposes that serve something else.</summary>
    public Items<BoxPurpose> ExceptPurposes { get; init; }

    /// <summary>Whether boxes in or on a cabinet count: on the side of an island they do.</summary>
    public bool OnCabinets { get; init; }

    /// <summary>Whether boxes on the side of an island, a peninsula or a bar count, where that side counts as wall. They are listed under the floor and sit on the cabinet.</summary>
    public bool OnDividers { get; init; }

    /// <summary>In rooms of these kinds a box whose purpose is the counter serves its counter alone.</summary>
    public Items<RoomKind> CountersApartIn { get; init; }

    /// <summary>Whether boxes that serve one appliance alone don't count.</summary>
    public bool ExceptDedicated { get; init; }

    /// <summary>How far above the finished floor one may be, itself allowed; null where it doesn't matter.</summary>
    public Distance? Highest { get; init; }

    /// <summary>The line of the box that <see cref="Highest"/> is measured to.</summary>
    public TargetLine Line { get; init; } = TargetLine.Center;

    /// <summary>How far above its counter the center of one may be, itself allowed; MaxValue for however far, null for walls.</summary>
    /// <remarks>A box whose purpose is the counter is taken at its word: other rows speak of its height.</remarks>
    public Distance? AboveCounter { get; init; }

    /// <summary>How far from the wall one in the floor may be, itself allowed; null where those don't count.</summary>
    public Distance? InFloorWithin { get; init; }

    /// <summary>What counts, in words.</summary>
    public string Numbers => Devices + " of " + Ratings
        + (Highest is { } high ? ", " + Line.Words() + " at most " + high + " above the floor" : "")
        + (AboveCounter is { } above ? ", above the counter" + (above == Distance.MaxValue ? "" : " by at most " + above) : "")
        + (InFloorWithin is { } floor ? ", or in the floor within " + floor + " of the wall" : "")
        + (ExceptPurposes.Count == 0 ? "" : "; not for " + ExceptPurposes)
        + (OnCabinets ? "; on cabinets too" : "") + (OnDividers ? "; on dividers too" : "")
        + (CountersApartIn.Count == 0 ? "" : "; not those of counters in " + CountersApartIn)
        + (ExceptDedicated ? "; not serving one appliance" : "");

    /// <summary>The ratings that count, in words.</summary>
    internal string Ratings => (LowestVolts is null && HighestVolts is null ? "any voltage" : LowestVolts + " to " + HighestVolts + " V") + (Amperes.Count == 0 ? "" : ", " + Amperes + " A");

    /// <summary>Whether a rating counts; unknown where it can't be read.</summary>
    internal Verdict OfRating(string rating) => ReceptacleRating.Read(rating).Within(LowestVolts, HighestVolts, Amperes);

    /// <summary>Whether a box counts, wherever along its wall it is: passes if it surely does.</summary>
    internal Verdict Judge(SpaceBox box, out Facts needs)
    {
        needs = Facts.None;
        Verdict verdict = box.Traits.Purpose == BoxPurpose.Counter && CountersApartIn.Contains(box.Room) ? Verdict.Fails : Kind(box.Traits);
        if (verdict == Verdict.Unknown)
        {
            needs = Facts.Devices;
        }

        if (verdict == Verdict.Fails || box.Traits.Surface == BoxSurface.Floor)
        {
            return box.Traits.Surface == BoxSurface.Floor && InFloorWithin is null ? Verdict.Fails : verdict;
        }

        return verdict.And(Height(box, ref needs));
    }

    private Verdict Kind(BoxTraits box)
    {
        if (box.Surface == BoxSurface.Ceiling || (box.Surface == BoxSurface.Cabinet && !OnCabinets && !(OnDividers && box.IsListedFlat)) || box.Switched == SwitchedPart.All || (ExceptDedicated && box.IsDedicated)
            || ExceptPurposes.Contains(box.Purpose))
        {
            return Verdict.Fails;
        }

        Verdict device = box.Devices.Count == 0 && !NeverReceptacles.Contains(box.Purpose) ? Verdict.Unknown : Verdict.Fails;
        foreach (DeviceKind kind in box.Devices)
        {
            device = Devices.Contains(kind) ? Verdict.Passes
                : device == Verdict.Fails && !kind.IsKnown && !NeverReceptacles.Contains(box.Purpose) ? Verdict.Unknown
                : device;
        }

        return device == Verdict.Fails || box.Rating is not { } rating ? device : device.And(OfRating(rating));
    }

    private Verdict Height(SpaceBox box, ref Facts needs)
    {
        Verdict verdict = Verdict.Passes;
        if (Highest is { } highest)
        {
            verdict = box.IsWithin(Line, Datum.FinishedFloor, Distance.MinValue, highest, ref needs);
        }

        if (AboveCounter is { } above && box.Traits.Purpose != BoxPurpose.Counter)
        {
            if (box.CounterTop is not { } top)
            {
                needs |= Facts.ObstructionHeight;
                return verdict.And(Verdict.Unknown);
            }

            verdict = verdict.And(box.IsWithin(TargetLine.Center, top.Datum, top.Offset, above == Distance.MaxValue ? above : top.Offset + above, ref needs));
        }

        return verdict;
    }
}
