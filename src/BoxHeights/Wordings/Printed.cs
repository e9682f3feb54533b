using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights;

/// <summary>Prints measures as they are read on site: whole fractions as they are, anything finer rounded to what a tape shows, and never in the wrong direction.</summary>
internal static class Printed
{
    private static readonly Distance OnTheTape = Distance.FromInches(0, 1, 16);
    private static readonly Distance Fractions = Distance.FromInches(0, 1, 128);
    private static readonly Distance Millimeter = Distance.FromMillimeters(1);
    private static readonly Distance Tenth = Distance.FromMillimeters(0.1m);

    public static PrintedQuantity Of(Distance distance, LengthUnits units) => new(distance, units, Rounding.Nearest);

    /// <summary>A distance to be found with a tape, which shows no tenth of a millimeter.</summary>
    public static PrintedQuantity OnTape(Distance distance, LengthUnits units) => Of(units == LengthUnits.Millimeters && !IsPastRounding(distance) ? distance.RoundNearest(Millimeter) : distance, units);

    /// <summary>A volume as boxes are marked: cubic inches as they are, or cubic centimeters to a tenth.</summary>
    public static PrintedQuantity Of(Volume volume, LengthUnits units, Rounding rounding = Rounding.Nearest) => new(volume, units, rounding);

    /// <summary>An amount as it is stated, for what isn't read off a tape.</summary>
    public static PrintedQuantity Exactly(Quantity quantity, LengthUnits units) => new(quantity, units, Rounding.None);

    /// <summary>A limit that isn't to be passed: rounded down to what a tape shows.</summary>
    public static PrintedQuantity NoMoreThan(Distance limit, LengthUnits units) => new(limit, units, Rounding.Down);

    /// <summary>A limit that is to be reached: rounded up to what a tape shows.</summary>
    public static PrintedQuantity NoLessThan(Distance limit, LengthUnits units) => new(limit, units, Rounding.Up);

    /// <summary>How far off something is, never too little.</summary>
    public static PrintedQuantity OffBy(Quantity margin, LengthUnits units) => new(margin.Abs(), units, Rounding.Up);

    /// <summary>How much something differs or is out by, where that may not be known exactly; the most of it never too little.</summary>
    public static Wording OffBy(in DistanceRange range, LengthUnits units) => range.IsExact ? $"{OffBy(range.To, units):most}" : (Wording)$"{Of(range.From, units):least} to {OffBy(range.To, units):most}";

    /// <summary>A distance in units that it wasn't given in: what they can't show exactly is rounded, and says so.</summary>
    public static Wording About(Distance distance, LengthUnits units) => IsWhole(distance, units) ? $"{Of(distance, units):distance}" : (Wording)$"about {Of(distance, units):distance}";

    /// <summary>A distance exactly and with its sign, plus as well as minus.</summary>
    public static string Signed(Distance distance, LengthUnits units) => (distance < Distance.Zero ? "" : "+") + distance.Exactly(units);

    /// <summary>A height in words, its distance as it is read on site.</summary>
    public static Wording Of(BoxHeight height, LengthUnits units) => Worded(height, Of(height.Value.Abs(), units));

    /// <summary>A height in words, as it is stated.</summary>
    public static Wording Exactly(BoxHeight height, LengthUnits units) => Worded(height, Exactly(height.Value.Abs(), units));

    /// <summary>A line in words, as it is stated.</summary>
    public static Wording Exactly(Level level, LengthUnits units) => level.Offset == Distance.Zero ? Wording.Term(DatumText.Name(level.Datum))
        : $"{Exactly(level.Offset.Abs(), units):distance} {Wording.Term(DatumText.Print(level.Datum, level.Offset < Distance.Zero)):datum}";

    /// <summary>A distance that may not be known exactly, as it is stated.</summary>
    public static Wording Exactly(in DistanceRange range, LengthUnits units) =>
        range.IsExact ? $"{Exactly(range.From, units):distance}" : (Wording)$"{Exactly(range.From, units):least} to {Exactly(range.To, units):most}";

    /// <summary>How far off a box is, as it is called across a room: "3/8 low", "10 mm high".</summary>
    public static Wording HighOrLow(Distance off, LengthUnits units)
    {
        if (off == Distance.Zero)
        {
            return $"level";
        }

        string amount = OffBy(off, units);
        amount = amount.EndsWith(" in", System.StringComparison.Ordinal) ? amount.Substring(0, amount.Length - 3) : amount;
        return off < Distance.Zero ? $"{amount} low" : (Wording)$"{amount} high";
    }

    /// <summary>What is allowed, each stretch no wider than it is; a stretch that would be rounded away is printed as it is.</summary>
    /// <param name="allowed">The amounts.</param>
    /// <param name="units">How to print them.</param>
    /// <param name="below">Whether they are told of something that lies below what they are taken from, so that it has to be said which of them lie above.</param>
    public static Wording Allowed(QuantitySet allowed, LengthUnits units, bool below = false)
    {
        if (allowed.Kind == QuantityKind.Distance)
        {
            return Directed(Inward(allowed.AsDistances(), units), below, units);
        }

        return (allowed.Least, allowed.Most) switch
        {
            (null, null) => allowed.IsEmpty ? $"nothing" : (Wording)$"anything",
            (null, { } most) => $"at most {new PrintedQuantity(most, units, Rounding.Down):most}",
            ({ } least, null) => $"at least {new PrintedQuantity(least, units, Rounding.Up):least}",
            ({ } least, { } most) => $"{new PrintedQuantity(least, units, Rounding.Up):least} to {new PrintedQuantity(most, units, Rounding.Down):most}",
        };
    }

    /// <summary>How far above something a place lies, or below it: never with a sign.</summary>
    public static Wording AboveOrBelow(Distance above, LengthUnits units) =>
        above < Distance.Zero ? $"{Of(above.Abs(), units):distance} below" : (Wording)$"{Of(above, units):distance} above";

    /// <summary>The text of a quantity.</summary>
    public static string Text(in PrintedQuantity printed) => printed.Quantity.IsUnbounded || printed.Rounding == Rounding.None ? printed.Quantity.ToString(printed.Units) : printed.Quantity.Kind switch
    {
        QuantityKind.Distance => Rounded(printed.Quantity.AsDistance(), printed.Units, printed.Rounding).ToString(Format(printed.Units)),
        QuantityKind.Volume when printed.Units == LengthUnits.Millimeters => Tenths(printed.Quantity.AsVolume().CubicCentimeters, printed.Rounding).ToString("0.#", CultureInfo.InvariantCulture) + " cm3",
        _ => printed.Quantity.ToString(printed.Units),
    };

    /// <summary>Each stretch rounded so that it is no wider.</summary>
    private static DistanceSet Inward(DistanceSet exact, LengthUnits units)
    {
        DistanceSet rounded = DistanceSet.Empty;
        for (int i = 0; i < exact.Count; i++)
        {
            DistanceRange one = exact[i];
            Distance low = one.From == Distance.MinValue ? one.From : Rounded(one.From, units, Rounding.Up);
            Distance high = one.To == Distance.MaxValue ? one.To : Rounded(one.To, units, Rounding.Down);
            rounded |= low <= high ? DistanceSet.Between(low, high) : DistanceSet.Between(one.From, one.To);
        }

        return rounded;
    }

    /// <summary>Heights that may lie above and below what they are taken from, without signs: those below are counted down.</summary>
    private static Wording Directed(in DistanceSet set, bool below, LengthUnits units)
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
            return below && set.Count > 0 && !set.IsAll ? $"{Stretches(set, false, units):heights} above" : Stretches(set, false, units);
        }

        return anyAbove ? Stretches(set, true, units) : $"{Stretches(Mirrored(set), false, units):depths} below";
    }

    private static Wording Stretches(in DistanceSet set, bool isDirected, LengthUnits units)
    {
        if (set.IsEmpty || set.IsAll)
        {
            return set.IsEmpty ? $"nothing" : (Wording)$"anything";
        }

        List<Wording> all = [];
        for (int i = 0; i < set.Count; i++)
        {
            DistanceRange one = set[i];
            all.Add(one.From == Distance.MinValue ? (isDirected ? $"no higher than {End(one.To):most}" : (Wording)$"at most {End(one.To):most}")
                : one.To == Distance.MaxValue ? (isDirected ? $"no lower than {End(one.From):least}" : (Wording)$"at least {End(one.From):least}")
                : one.IsExact && !isDirected ? End(one.From)
                : $"{End(one.From):least} to {End(one.To):most}");
        }

        return Wording.Or(all);

        Wording End(Distance end) => isDirected ? AboveOrBelow(end, units) : $"{Exactly(end, units):distance}";
    }

    private static Wording Worded(BoxHeight height, PrintedQuantity distance) =>
        $"{distance} {Wording.Term(EdgeText.Print(height.Edge)):edge} {Wording.Term(DatumText.Print(height.Datum, height.Value < Distance.Zero)):datum}";

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

    /// <summary>So near an end of the scale that there is nothing to round to.</summary>
    private static bool IsPastRounding(Distance distance) => distance > Distance.MaxValue - OnTheTape || distance < Distance.MinValue + OnTheTape;

    private static bool IsWhole(Distance distance, LengthUnits units) => IsPastRounding(distance) || distance.IsMultipleOf(units == LengthUnits.Millimeters ? Tenth : Fractions);

    private static Distance Rounded(Distance distance, LengthUnits units, Rounding rounding)
    {
        Distance step = units == LengthUnits.Millimeters ? Tenth : OnTheTape;
        return IsWhole(distance, units) ? distance : rounding switch
        {
            Rounding.Up => distance.RoundUp(step),
            Rounding.Down => distance.RoundDown(step),
            _ => distance.RoundNearest(step),
        };
    }

    private static decimal Tenths(decimal cubicCentimeters, Rounding rounding) => rounding switch
    {
        Rounding.Up => decimal.Ceiling(cubicCentimeters * 10m),
        Rounding.Down => decimal.Floor(cubicCentimeters * 10m),
        _ => decimal.Round(cubicCentimeters * 10m, System.MidpointRounding.AwayFromZero),
    } / 10m;

    private static string Format(LengthUnits units) => units == LengthUnits.Millimeters ? "mm" : "in";
}
