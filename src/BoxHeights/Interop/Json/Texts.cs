using System;
using System.Globalization;

namespace BoxHeights.Interop;

/// <summary>Values that are written as texts, and the few that JSON has a form for.</summary>
internal static class Texts
{
    private const string Degrees = " deg";

    // A schema only tells a measure from a bare number; the library's own reader tells the rest.
    private const string HasUnit = "[A-Za-z'\"\u2032\u2033\u2019\u201d]";
    private const string HasWord = "[A-Za-z]";
    private const string HasNumber = "[0-9\u00bc-\u00be\u2150-\u215e]";

    internal static Codec<string> Plain { get; } = new PlainTextCodec(false);

    internal static Codec<string> Id { get; } = new PlainTextCodec(true);

    internal static Codec<int> Count { get; } = new CountCodec();

    internal static Codec<bool> Truth { get; } = new TruthCodec();

    internal static Codec<Distance> Distance { get; } =
        new TextCodec<Distance>("distance", "a distance", ["16 in", "406.4 mm", "9 ft 10-1/4 in"], HasUnit, BoxHeights.Distance.Parse, x => x.ToString());

    internal static Codec<Distance> DistanceOrNone { get; } = new OrNoneCodec<Distance>(Distance);

    internal static Codec<Level> Level { get; } =
        new TextCodec<Level>("level", "a level", ["4 in above countertop", "countertop", "6 in below subfloor"], HasWord, BoxHeights.Level.Parse, x => x.ToString());

    internal static Codec<BoxHeight> Height { get; } = new TextCodec<BoxHeight>(
        "height", "a height", ["48 in to top above subfloor", "+44 in AFF", "1200 mm to center above finished floor"], HasNumber, BoxHeight.Parse, x => x.ToString());

    internal static Codec<Volume> Volume { get; } =
        new TextCodec<Volume>("volume", "a volume", ["20.3 in3", "295 cm3"], HasUnit, BoxHeights.Volume.Parse, x => x.ToString());

    internal static Codec<Ratio> Ratio { get; } =
        new TextCodec<Ratio>("ratio", "a ratio", ["1/2", "0"], "^\\s*[-+]?\\s*[0-9]", BoxHeights.Ratio.Parse, x => x.ToString());

    internal static Codec<CableType> Cable { get; } =
        new TextCodec<CableType>("cable", "a cable", ["12-2", "14-3", "14-2 without ground"], "[0-9]", CableType.Parse, x => x.ToString());

    internal static Codec<ConductorSize> Conductor { get; } =
        new TextCodec<ConductorSize>("conductor", "a conductor's size", ["14 AWG", "12 AWG"], HasNumber, ConductorSize.Parse, x => x.ToString());

    internal static Codec<LooseConductors> Conductors { get; } = new TextCodec<LooseConductors>(
        "conductors", "conductors of one size", ["3 x 12 AWG", "1 x 12 AWG ground", "1 x 14 AWG loop"], HasNumber, LooseConductors.Parse, x => x.ToString());

    internal static Codec<decimal> Turn { get; } =
        new TextCodec<decimal>("turn", "an angle", ["90 deg", "-90 deg", "22.5 deg"], "^[-+]?[0-9.]+ deg$", ParseTurn, PrintTurn);

    private static decimal ParseTurn(string text) =>
        text.EndsWith(Degrees, StringComparison.Ordinal)
        && decimal.TryParse(text.AsSpan(0, text.Length - Degrees.Length), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal turn)
            ? turn
            : throw new FormatException("\"" + JsonLimits.Shown(text) + "\" is not a number of degrees.");

    private static string PrintTurn(decimal turn) => turn.ToString("0.############################", CultureInfo.InvariantCulture) + Degrees;
}
