using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>Prints measures as they are read on site: whole fractions as they are, anything finer rounded to what a tape shows, and never in the wrong direction.</summary>
internal static class Printed
{
    private static readonly Distance OnTheTape = Distance.FromInches(0, 1, 16);
    private static readonly Distance Fractions = Distance.FromInches(0, 1, 128);
    private static readonly Distance Tenth = Distance.FromMillimeters(0.1m);

    public static string Of(Distance distance, LengthUnits units) => Text(IsWhole(distance, units) ? distance : distance.RoundNearest(Step(units)), units);

    /// <summary>So near an end of the scale that there is nothing to round to.</summary>
    private static bool IsPastRounding(Distance distance) => distance > Distance.MaxValue - OnTheTape || distance < Distance.MinValue + OnTheTape;

    /// <summary>A volume as boxes are marked: cubic inches as they are, or cubic centimeters to a tenth.</summary>
    public static string Of(Volume volume, LengthUnits units, Round round = Round.Nearest)
    {
        if (units != LengthUnits.Millimeters)
        {
            return volume.ToString();
        }

        decimal tenths = volume.CubicCentimeters * 10m;
        tenths = round switch { Round.Up => decimal.Ceiling(tenths), Round.Down => decimal.Floor(tenths), _ => decimal.Round(tenths, MidpointRounding.AwayFromZero) };
        return (tenths / 10m).ToString("0.#", CultureInfo.InvariantCulture) + " cm3";
    }

    /// <summary>A distance in units that it wasn't given in: what they can't show exactly is rounded, and says so.</summary>
    public static string About(Distance distance, LengthUnits units) => (IsWhole(distance, units) ? "" : "about ") + Of(distance, units);

    /// <summary>A distance exactly and with its sign, plus as well as minus.</summary>
    public static string Signed(Distance distance, LengthUnits units) => (distance < Distance.Zero ? "" : "+") + distance.Exactly(units);

    /// <summary>A height in words, its distance as it is read on site.</summary>
    public static string Of(BoxHeight height, LengthUnits units) =>
        Of(height.Value.Abs(), units) + " " + EdgeText.Print(height.Edge) + " " + DatumText.Print(height.Datum, height.Value < Distance.Zero);

    /// <summary>How far off a box is, as it is called across a room: "3/8 low", "10 mm high".</summary>
    public static string HighOrLow(Distance off, LengthUnits units)
    {
        if (off == Distance.Zero)
        {
            return "level";
        }

        string amount = OffBy(off, units);
        amount = amount.EndsWith(" in", System.StringComparison.Ordinal) ? amount.Substring(0, amount.Length - 3) : amount;
        return amount + (off < Distance.Zero ? " low" : " high");
    }

    /// <summary>How far off something is, never too little.</summary>
    public static string OffBy(Quantity margin, LengthUnits units)
    {
        Quantity off = margin.Abs();
        return off.Kind == QuantityKind.Volume ? Of(off.AsVolume(), units, Round.Up)
            : off.Kind != QuantityKind.Distance ? off.ToString(units)
            : off.AsDistance() is var distance && IsWhole(distance, units) ? Text(distance, units)
            : Text(distance.RoundUp(Step(units)), units);
    }

    /// <summary>How much something differs or is out by, where that may not be known exactly; the most of it never too little.</summary>
    public static string OffBy(in DistanceRange range, LengthUnits units) => (range.IsExact ? "" : Of(range.From, units) + " to ") + OffBy(range.To, units);

    /// <summary>What is allowed, each stretch no wider than it is; a stretch that would be rounded away is printed as it is.</summary>
    /// <param name="allowed">The amounts.</param>
    /// <param name="units">How to print them.</param>
    /// <param name="below">Whether they are told of something that lies below what they are taken from, so that it has to be said which of them lie above.</param>
    public static string Allowed(QuantitySet allowed, LengthUnits units, bool below = false)
    {
        if (allowed is { Kind: QuantityKind.Volume, Most: { } most, Least: null })
        {
            return "at most " + Of(most.AsVolume(), units, Round.Down);
        }

        if (allowed.Kind != QuantityKind.Distance)
        {
            return allowed.ToString(units);
        }

        DistanceSet exact = allowed.AsDistances();
        DistanceSet rounded = DistanceSet.Empty;
        for (int i = 0; i < exact.Count; i++)
        {
            DistanceRange one = exact[i];
            Distance low = one.From == Distance.MinValue || IsWhole(one.From, units) ? one.From : one.From.RoundUp(Step(units));
            Distance high = one.To == Distance.MaxValue || IsWhole(one.To, units) ? one.To : one.To.RoundDown(Step(units));
            rounded |= low <= high ? DistanceSet.Between(low, high) : DistanceSet.Between(one.From, one.To);
        }

        return Directed(rounded, below, Format(units));
    }

    /// <summary>A limit that isn't to be passed: rounded down to what a tape shows.</summary>
    public static string NoMoreThan(Distance limit, LengthUnits units) => Text(limit.RoundDown(Step(units)), units);

    /// <summary>A limit that is to be reached: rounded up to what a tape shows.</summary>
    public static string NoLessThan(Distance limit, LengthUnits units) => Text(limit.RoundUp(Step(units)), units);

    /// <summary>How far above something a place lies, or below it: never with a sign.</summary>
    public static string AboveOrBelow(Distance above, LengthUnits units) => Of(above.Abs(), units) + (above < Distance.Zero ? " below" : " above");

    /// <summary>Heights that may lie above and below what they are taken from, without signs: those below are counted down.</summary>
    private static string Directed(in DistanceSet set, bool below, string format)
    {
        bool anyAbove = false;
        bool anyBelow = false;
        for (int i = 0; i < set.Count; i++)
        {
            foreach (Distance end in new[] { set[i].From, set[i].To })
            {
                bool isEnd = end != Distance.MinValue && end != Distance.MaxValue;
                anyAbove |= isEnd && end > Distance.Zero;
                anyBelow |= isEnd && end < Distance.Zero;
            }
        }

        if (!anyBelow)
        {
            return set.ToString(format) + (below && set.Count > 0 && !set.IsAll ? " above" : "");
        }

        if (!anyAbove)
        {
            return Mirrored(set).ToString(format) + " below";
        }

        string words = "";
        for (int i = 0; i < set.Count; i++)
        {
            DistanceRange one = set[i];
            words += (i == 0 ? "" : " or ")
                + (one.From == Distance.MinValue ? "no higher than " + Place(one.To)
                : one.To == Distance.MaxValue ? "no lower than " + Place(one.From)
                : Place(one.From) + " to " + Place(one.To));
        }

        return words;

        string Place(Distance end) => end.Abs().ToString(format) + (end < Distance.Zero ? " below" : " above");
    }

    private static DistanceSet Mirrored(in DistanceSet set)
    {
        DistanceSet mirrored = DistanceSet.Empty;
        for (int i = 0; i < set.Count; i++)
        {
            DistanceRange one = set[i];
            mirrored |= DistanceSet.Between(
                one.To == Distance.MaxValue ? Distance.MinValue : -one.To,
                one.From == Distance.MinValue ? Distance.MaxValue : -one.From);
        }

        return mirrored;
    }

    private static bool IsWhole(Distance distance, LengthUnits units) => IsPastRounding(distance) || distance.IsMultipleOf(units == LengthUnits.Millimeters ? Tenth : Fractions);

    private static Distance Step(LengthUnits units) => units == LengthUnits.Millimeters ? Tenth : OnTheTape;

    private static string Text(Distance distance, LengthUnits units) => distance.ToString(Format(units));

    private static string Format(LengthUnits units) => units == LengthUnits.Millimeters ? "mm" : "in";
}

/// <summary>Which way something that can't be shown exactly is rounded.</summary>
internal enum Round
{
    Nearest,
    Down,
    Up,
}
