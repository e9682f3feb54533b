using System;

namespace BoxHeights.Rules;

/// <summary>Which boxes count as an outlet, wherever a row asks for some: receptacles, lights, switches or alarms. Row data; a number that isn't given leaves boxes free.</summary>
/// <remarks>
/// A box whose devices aren't stated is taken at its purpose's word (<see cref="Purposes"/>), or where it stands decides what is served, may or may not be one
/// (<see cref="UnstatedMayBeOne"/>): then a wall is neither served nor bare for its sake.
/// </remarks>
public sealed record CountedOutlet : IBoxKind
{
    /// <summary>Names what counts.</summary>
    /// <param name="name">What one is called: "receptacle", "light".</param>
    /// <param name="devices">Boxes that hold one of these count.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public CountedOutlet(string name, Items<DeviceKind> devices)
    {
        Name = name ?? throw new ArgumentNullException(nameof(name));
        Devices = devices;
    }

    /// <summary>What one is called.</summary>
    public string Name { get; init; }

    /// <summary>Devices that count.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>Purposes that count where no device of a known kind is stated.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Whether a box may be one whose devices aren't stated, or of a kind that isn't known. Boxes for <see cref="NeverFor"/> never are.</summary>
    public bool UnstatedMayBeOne { get; init; }

    /// <summary>Purposes for which a box whose devices aren't stated is none.</summary>
    public Items<BoxPurpose> NeverFor { get; init; }

    /// <summary>Surfaces on which boxes count. One in the side of an island is listed under the floor and sits on the cabinet.</summary>
    public Items<BoxSurface> Surfaces { get; init; } = new[] { BoxSurface.Wall, BoxSurface.Ceiling, BoxSurface.Floor };

    /// <summary>Whether boxes on the side of an island, a peninsula or a bar count, where that side counts as wall.</summary>
    public bool OnDividers { get; init; }

    /// <summary>How far from the wall that it serves one in the floor may be, itself allowed.</summary>
    public Distance? InFloorWithin { get; init; }

    /// <summary>The lowest voltage that counts, of boxes whose rating is stated.</summary>
    public int? LowestVolts { get; init; }

    /// <summary>The highest voltage that counts.</summary>
    public int? HighestVolts { get; init; }

    /// <summary>The current ratings that count; any where none is named.</summary>
    public Items<int> Amperes { get; init; }

    /// <summary>Purposes that serve something else.</summary>
    public Items<BoxPurpose> ExceptPurposes { get; init; }

    /// <summary>Whether boxes that serve one appliance alone don't count.</summary>
    public bool ExceptDedicated { get; init; }

    /// <summary>Whether receptacles don't count all of which a switch controls.</summary>
    public bool ExceptSwitched { get; init; }

    /// <summary>Whether only receptacles count of which a switch controls some part.</summary>
    public bool OnlySwitched { get; init; }

    /// <summary>In rooms of these kinds a box whose purpose is the counter serves its counter alone.</summary>
    public Items<RoomKind> CountersApartIn { get; init; }

    /// <summary>The highest that one may be, itself allowed; of those in a floor it isn't asked.</summary>
    public Level? Highest { get; init; }

    /// <summary>The line of the box that <see cref="Highest"/> is measured to.</summary>
    public TargetLine Line { get; init; } = TargetLine.Center;

    /// <summary>Whether the center of one is over its counter. A box whose purpose is the counter is taken at its word: other rows speak of its height.</summary>
    public bool OverCounter { get; init; }

    /// <summary>How far above its counter it is at most then, itself allowed; null for however far.</summary>
    public Distance? AboveCounter { get; init; }

    /// <summary>The names of kinds that it speaks of.</summary>
    internal Items<string> KindsNamed => KindNames.Joined(Devices.Select(kind => kind.Name), Purposes.Select(kind => kind.Name));

    /// <summary>What counts, in words.</summary>
    public string Numbers => Name + " (" + Devices + (Purposes.Count == 0 ? "" : ", or for " + Purposes) + ")"
        + (AsksForARating ? ", of " + LowestVolts + " to " + HighestVolts + " V, " + Amperes + " A" : "")
        + (UnstatedMayBeOne ? ", perhaps one of unstated devices" + (NeverFor.Count == 0 ? "" : " but for " + NeverFor) : "")
        + ", on " + string.Join(", ", Surfaces).ToLowerInvariant() + (OnDividers ? " or dividers" : "")
        + (InFloorWithin is { } floor ? " within " + floor + " of the wall" : "")
        + (ExceptPurposes.Count == 0 ? "" : "; not for " + ExceptPurposes) + (ExceptDedicated ? "; not serving one appliance" : "")
        + (ExceptSwitched ? "; not wholly switched" : "") + (OnlySwitched ? "; switched" : "")
        + (CountersApartIn.Count == 0 ? "" : "; not those of counters in " + CountersApartIn)
        + (Highest is { } high ? "; " + Line.Words() + " at most " + high : "")
        + (OverCounter ? "; above the counter" + (AboveCounter is { } above ? " by at most " + above : "") : "");

    private bool AsksForARating => LowestVolts is not null || HighestVolts is not null || Amperes.Count > 0;

    /// <summary>Whether a box counts, wherever along its wall it is: passes if it surely does.</summary>
    internal Verdict Of(SpaceBox box, out MissingFacts needs) => Of(box, Highest, out needs);

    /// <summary>The same with another highest.</summary>
    internal Verdict Of(SpaceBox box, Level? highest, out MissingFacts needs)
    {
        needs = MissingFacts.None;
        BoxTraits traits = box.Traits;
        if (!(Surfaces.Contains(traits.Surface) || (OnDividers && traits.Surface == BoxSurface.Cabinet && traits.IsListedFlat))
            || (traits.Purpose == BoxPurpose.Counter && CountersApartIn.Contains(box.Room)))
        {
            return Verdict.Fails;
        }

        Verdict kind = KindOf(traits.Source);
        needs = kind == Verdict.Unknown ? MissingFacts.Devices : MissingFacts.None;
        return kind == Verdict.Fails || traits.Surface == BoxSurface.Floor ? kind : kind.And(HeightOf(box, highest, ref needs));
    }

    /// <summary>Whether a box may count, wherever it is and whatever is found out about it.</summary>
    internal bool MayBe(BoxTraits box) => KindOf(box.Source) != Verdict.Fails;

    bool IBoxKind.IsOne(DeviceBox box) => KindOf(box) != Verdict.Fails;

    private Verdict KindOf(DeviceBox box)
    {
        if ((OnlySwitched && box.Switched is null or SwitchedPart.None) || (ExceptSwitched && box.Switched == SwitchedPart.All)
            || (ExceptDedicated && box.Dedicated is not null) || ExceptPurposes.Contains(box.Purpose))
        {
            return Verdict.Fails;
        }

        bool isUnknown = box.Devices.Count == 0;
        bool isKnown = false;
        foreach (DeviceKind device in box.Devices)
        {
            if (Devices.Contains(device))
            {
                return RatingOf(box);
            }

            isKnown |= device.IsKnown;
            isUnknown |= !device.IsKnown;
        }

        return UnstatedMayBeOne ? (isUnknown && !NeverFor.Contains(box.Purpose) ? RatingOf(box).And(Verdict.Unknown) : Verdict.Fails)
            : !isKnown && Purposes.Contains(box.Purpose) ? RatingOf(box)
            : Verdict.Fails;
    }

    private Verdict RatingOf(DeviceBox box) =>
        box.Rating is { } rating && AsksForARating ? ReceptacleRating.Read(rating).Within(LowestVolts ?? 0, HighestVolts ?? int.MaxValue, Amperes) : Verdict.Passes;

    private Verdict HeightOf(SpaceBox box, Level? highest, ref MissingFacts needs)
    {
        Verdict verdict = highest is { } high ? box.IsWithin(Line, high.Datum, Distance.MinValue, high.Offset, ref needs) : Verdict.Passes;
        if (!OverCounter || box.Traits.Purpose == BoxPurpose.Counter)
        {
            return verdict;
        }

        if (box.CounterTop is not { } top)
        {
            needs |= MissingFacts.ObstructionHeight;
            return verdict.And(Verdict.Unknown);
        }

        return verdict.And(box.IsWithin(TargetLine.Center, top.Datum, top.Offset, AboveCounter is { } above ? top.Offset + above : Distance.MaxValue, ref needs));
    }
}
