using System;
using System.Globalization;

namespace BoxHeights.Interop;

/// <summary>Amounts and sets of amounts: a length, a volume, a number of things, an area or a ratio as a text with its unit.</summary>
internal static class Quantities
{
    private const string Things = " things";
    private const string Square = " mm2";
    private const string ToOne = " to 1";
    private const string Unbounded = "without a bound";

    internal static Codec<Quantity> One { get; } = new TextCodec<Quantity>(
        new TextForm("quantity", "an amount")
        {
            Examples = ["3-3/4 in", "22 in3", "2 things", "64516 mm2", "3/4 to 1"],
            Note = "a number and its unit; \"without a bound\", above or below zero, where nothing bounds a margin",
        },
        Parse, Print);

    private static readonly Codec<QuantityKind> Kind = new WordCodec<QuantityKind>("quantityKind", "what is measured");

    private static readonly Shape<Stretch> Part = new ShapeBuilder<Stretch>("quantityStretch", "Amounts from a least one to a largest; absent where nothing bounds them.")
        .Optional("from", x => x.From, (x, v) => new(v, x.To), One, "The least.")
        .Optional("to", x => x.To, (x, v) => new(x.From, v), One, "The largest.")
        .Build(_ => default);

    internal static Shape<QuantitySet> Set { get; } = new ShapeBuilder<QuantitySet>("quantitySet", "The amounts that are allowed; none where no stretch is listed.")
        .Required("of", x => x.Kind, Kind, "What is measured.", out MemberKey<QuantityKind> of)
        .List("stretches", Stretches, (x, v) => Of(x.Kind, v), Part, "The stretches, from the least to the largest.")
        .Build(v => new(v.Get(of), DistanceSet.Empty));

    private static Items<Stretch> Stretches(QuantitySet set)
    {
        Stretch[] all = new Stretch[set.Raw.Count];
        for (int i = 0; i < all.Length; i++)
        {
            DistanceRange one = set.Raw[i];
            all[i] = new(
                one.From == Distance.MinValue ? null : new Quantity(set.Kind, one.From.Ticks), one.To == Distance.MaxValue ? null : new Quantity(set.Kind, one.To.Ticks));
        }

        return Items<Stretch>.Own(all);
    }

    private static QuantitySet Of(QuantityKind kind, Items<Stretch> stretches)
    {
        DistanceSet all = DistanceSet.Empty;
        foreach (Stretch one in stretches)
        {
            if ((one.From?.Kind ?? kind) != kind || (one.To?.Kind ?? kind) != kind)
            {
                throw new ArgumentException("A stretch is of another kind than what is measured.");
            }

            all |= DistanceSet.BetweenTicks(one.From?.Raw ?? long.MinValue, one.To?.Raw ?? long.MaxValue);
        }

        return new(kind, all);
    }

    private static string Print(Quantity amount) => amount.IsUnbounded
        ? Unbounded + (amount.Raw < 0 ? " below " : " above ") + Unit(amount.Kind)
        : amount.Kind switch
        {
            QuantityKind.Distance => amount.AsDistance().ToString(),
            QuantityKind.Volume => amount.AsVolume().ToString(),
            QuantityKind.Area => (amount.Raw / Squares).ToString("0.##############", CultureInfo.InvariantCulture) + Square,
            QuantityKind.Ratio => amount.AsRatio() + ToOne,
            _ => amount.Raw.ToString(CultureInfo.InvariantCulture) + Things,
        };

    private static Quantity Parse(string text)
    {
        foreach (QuantityKind kind in new[] { QuantityKind.Distance, QuantityKind.Volume, QuantityKind.Count, QuantityKind.Area, QuantityKind.Ratio })
        {
            if (text.StartsWith(Unbounded, StringComparison.Ordinal) && text.EndsWith(" " + Unit(kind), StringComparison.Ordinal))
            {
                return new(kind, text.StartsWith(Unbounded + " below ", StringComparison.Ordinal) ? long.MinValue : long.MaxValue);
            }
        }

        if (text.EndsWith(Things, StringComparison.Ordinal))
        {
            return new(QuantityKind.Count, long.Parse(text.AsSpan(0, text.Length - Things.Length), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture));
        }

        if (text.EndsWith(Square, StringComparison.Ordinal))
        {
            return new(QuantityKind.Area, (long)(decimal.Parse(text.AsSpan(0, text.Length - Square.Length), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture) * Squares));
        }

        if (text.EndsWith(ToOne, StringComparison.Ordinal))
        {
            return Quantity.Of(Ratio.Parse(text[..^ToOne.Length]));
        }

        return text.EndsWith('3') ? Volume.Parse(text) : Distance.Parse(text);
    }

    // 14 decimals of a square millimeter are a square of a tick.
    private static decimal Squares { get; } = (decimal)Distance.FromMillimeters(1m).Ticks * Distance.FromMillimeters(1m).Ticks;

    private static string Unit(QuantityKind kind) => kind switch { QuantityKind.Distance => "length", QuantityKind.Volume => "volume", QuantityKind.Area => "area", QuantityKind.Ratio => "ratio", _ => "things" };

    /// <summary>A stretch of amounts; an end that is null is without bound.</summary>
    internal readonly record struct Stretch(Quantity? From, Quantity? To);
}
