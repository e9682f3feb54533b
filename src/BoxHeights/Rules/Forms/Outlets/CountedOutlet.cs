using System;

namespace BoxHeights.Rules;

/// <summary>Which boxes are counted where a row requires so many: of any kind, receptacles, lights, switches or alarms.</summary>
/// <remarks>
/// A box whose devices aren't stated is taken at its purpose's word, and where along its wall it is doesn't matter. <see cref="ServingReceptacles"/> are what serves
/// a stretch of wall or counter from where it stands, and there such a box is a doubt.
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

    /// <summary>Whether boxes don't count that serve one appliance, are wholly switched or sit in a ceiling.</summary>
    public bool IsForGeneralUse { get; init; }

    /// <summary>Whose ratings count; null where any does.</summary>
    public ServingReceptacles? RatedAs { get; init; }

    /// <summary>Whether boxes in cabinets count.</summary>
    public bool InCabinets { get; init; }

    /// <summary>Whether only receptacles count of which a switch controls some part.</summary>
    public bool OnlySwitched { get; init; }

    /// <summary>The highest that the center of one may be, itself allowed; null for any height.</summary>
    public Level? Highest { get; init; }

    /// <summary>The names of kinds that it speaks of.</summary>
    internal Items<string> KindsNamed => KindNames.Joined(Devices.Select(kind => kind.Name), Purposes.Select(kind => kind.Name));

    /// <summary>What counts, in words.</summary>
    public string Numbers => Name + " (" + Devices + (Purposes.Count == 0 ? "" : ", or for " + Purposes) + ")"
        + (IsForGeneralUse ? ", for general use" : "") + (RatedAs is { } rated ? ", of " + rated.Ratings : "") + (InCabinets ? ", in cabinets too" : "") + (OnlySwitched ? ", switched" : "")
        + (Highest is { } high ? ", center at most " + high : "");

    /// <summary>Whether a box counts, wherever it is along its wall.</summary>
    internal Verdict Of(SpaceBox box, out Facts needs) => Of(box, Highest, out needs);

    /// <summary>The same with another highest.</summary>
    internal Verdict Of(SpaceBox box, Level? highest, out Facts needs)
    {
        needs = Facts.None;
        if (!IsOne(box.Traits.Source) || (!InCabinets && box.Traits.Surface == BoxSurface.Cabinet) || (IsForGeneralUse && box.Traits.Surface == BoxSurface.Ceiling))
        {
            return Verdict.Fails;
        }

        Verdict rated = RatingOf(box.Traits.Source);
        needs = rated == Verdict.Unknown ? Facts.Devices : Facts.None;
        return highest is not { } high || box.Traits.Surface == BoxSurface.Floor ? rated
            : rated.And(box.IsWithin(TargetLine.Center, high.Datum, Distance.MinValue, high.Offset, ref needs));
    }

    bool IBoxKind.IsOne(DeviceBox box) => IsOne(box);

    private bool IsOne(DeviceBox box)
    {
        if ((OnlySwitched && box.Switched is null or SwitchedPart.None) || (IsForGeneralUse && !ServesGenerally(box)) || RatingOf(box) == Verdict.Fails)
        {
            return false;
        }

        bool isKnown = false;
        foreach (DeviceKind device in box.Devices)
        {
            if (Devices.Contains(device))
            {
                return true;
            }

            isKnown |= device.IsKnown;
        }

        return !isKnown && Purposes.Contains(box.Purpose);
    }

    private static bool ServesGenerally(DeviceBox box) => box.Dedicated is null && box.Switched != SwitchedPart.All;

    private Verdict RatingOf(DeviceBox box) => box.Rating is { } rating && RatedAs is { } counts ? counts.OfRating(rating) : Verdict.Passes;
}
