namespace BoxHeights.Rules;

/// <summary>Which boxes a document takes for an outlet that serves a wall or a counter: row data.</summary>
public sealed record OutletsThatCount
{
    // A box whose devices aren't stated may hold a receptacle, unless its purpose says otherwise.
    private static readonly Items<BoxPurpose> NeverReceptacles = new[]
    {
        BoxPurpose.Switch, BoxPurpose.BedSwitch, BoxPurpose.Light, BoxPurpose.VanityLight, BoxPurpose.StairLight, BoxPurpose.BedLight, BoxPurpose.Alarm, BoxPurpose.Thermostat,
        BoxPurpose.Doorbell, BoxPurpose.Media,
    };

    /// <summary>Devices that count where their rating isn't stated.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>The lowest voltage that counts.</summary>
    public int LowestVolts { get; init; }

    /// <summary>The highest voltage that counts.</summary>
    public int HighestVolts { get; init; }

    /// <summary>The current ratings that count.</summary>
    public Items<int> Amperes { get; init; }

    /// <summary>Purposes that serve something else.</summary>
    public Items<BoxPurpose> ExceptPurposes { get; init; }

    /// <summary>Whether boxes in or on a cabinet count: on the side of an island they do.</summary>
    public bool OnCabinets { get; init; }

    /// <summary>Whether boxes that serve one appliance alone don't count.</summary>
    public bool ExceptDedicated { get; init; }

    /// <summary>How far above the finished floor one may be, itself allowed; null where it doesn't matter.</summary>
    public Distance? Highest { get; init; }

    /// <summary>The line of the box that <see cref="Highest"/> is measured to.</summary>
    public TargetLine Line { get; init; } = TargetLine.Center;

    /// <summary>How far above its counter one may be, itself allowed, its center counting; null for walls. A box whose purpose is the counter is taken at its word: other rows speak of its height.</summary>
    public Distance? AboveCounter { get; init; }

    /// <summary>How far from the wall one in the floor may be, itself allowed; null where those don't count.</summary>
    public Distance? InFloorWithin { get; init; }

    /// <summary>What counts, in words.</summary>
    public string Numbers => Devices + " of " + Ratings
        + (Highest is { } high ? ", " + Line.Words() + " at most " + high + " above the floor" : "")
        + (AboveCounter is { } above ? ", above the counter by at most " + above : "")
        + (InFloorWithin is { } floor ? ", or in the floor within " + floor + " of the wall" : "")
        + (ExceptPurposes.Count == 0 ? "" : "; not for " + ExceptPurposes)
        + (OnCabinets ? "; on cabinets too" : "")
        + (ExceptDedicated ? "; not serving one appliance" : "");

    /// <summary>The ratings that count, in words.</summary>
    internal string Ratings => LowestVolts + " to " + HighestVolts + " V, " + Amperes + " A";

    /// <summary>Whether a rating counts; unknown where it can't be read.</summary>
    internal Verdict OfRating(string rating) => ReceptacleRating.Read(rating).Within(LowestVolts, HighestVolts, Amperes);

    /// <summary>Whether a box counts, wherever along its wall it is: passes if it surely does.</summary>
    internal Verdict Judge(SpaceBox box, out Facts needs)
    {
        needs = Facts.None;
        Verdict verdict = Kind(box.Traits);
        if (verdict == Verdict.Unknown)
        {
            needs = Facts.Devices;
        }

        if (verdict == Verdict.Fails || box.Traits.Surface == BoxSurface.Floor)
        {
            return box.Traits.Surface == BoxSurface.Floor && InFloorWithin is null ? Verdict.Fails : verdict;
        }

        return Worse(verdict, Height(box, ref needs));
    }

    private Verdict Kind(BoxTraits box)
    {
        if (box.Surface == BoxSurface.Ceiling || (box.Surface == BoxSurface.Cabinet && !OnCabinets) || box.Switched == SwitchedPart.All || (ExceptDedicated && box.IsDedicated)
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

        return device == Verdict.Fails || box.Rating is not { } rating ? device : Worse(device, OfRating(rating));
    }

    private Verdict Height(SpaceBox box, ref Facts needs)
    {
        Verdict verdict = Verdict.Passes;
        if (Highest is { } highest)
        {
            verdict = Within(box, Line, Datum.FinishedFloor, Distance.MinValue, highest, ref needs);
        }

        if (AboveCounter is { } above && box.Traits.Purpose != BoxPurpose.Counter)
        {
            if (box.CounterTop is not { } top)
            {
                needs |= Facts.ObstructionHeight;
                return Worse(verdict, Verdict.Unknown);
            }

            verdict = Worse(verdict, Within(box, TargetLine.Center, top.Datum, top.Offset, above == Distance.MaxValue ? above : top.Offset + above, ref needs));
        }

        return verdict;
    }

    internal static Verdict Within(SpaceBox box, TargetLine line, Datum datum, Distance low, Distance high, ref Facts needs)
    {
        if (!box.TryHeightOf(line, datum, out DistanceRange height, out Facts missing))
        {
            needs |= missing == Facts.None ? Facts.Datum : missing;
            return Verdict.Unknown;
        }

        if (height.From >= low && height.To <= high)
        {
            return Verdict.Passes;
        }

        bool some = height.To >= low && height.From <= high;
        needs |= some ? missing : Facts.None;
        return some ? Verdict.Unknown : Verdict.Fails;
    }

    private static Verdict Worse(Verdict one, Verdict other) => one > other ? one : other;
}
