using System;
using System.Globalization;

namespace BoxHeights.Interop;

/// <summary>Values that are written as texts, and the few that JSON has a form for. Fields: a property of each would be one more method to compile.</summary>
internal static class Texts
{
    private const string Degrees = " deg";

    // A schema only tells a measure from a bare number; the library's own reader tells the rest.
    private const string HasUnit = "[A-Za-z'\"\u2032\u2033\u2019\u201d]";
    private const string HasWord = "[A-Za-z]";
    private const string HasNumber = "[0-9\u00bc-\u00be\u2150-\u215e]";

    internal static readonly Codec<string> Plain = new PlainTextCodec(false);

    internal static readonly Codec<string> Id = new PlainTextCodec(true);

    internal static readonly Codec<int> Count = new CountCodec();

    internal static readonly Codec<bool> Truth = new TruthCodec();

    internal static readonly Codec<Distance> Distance = new TextCodec<Distance>(
        new TextForm("distance", "a distance")
        {
            Examples = ["16 in", "406.4 mm", "9 ft 10-1/4 in"],
            Pattern = HasUnit,
            Note = "a number and its unit, which is in, ft, mm, cm or m",
        },
        BoxHeights.Distance.Parse);

    internal static readonly Codec<ExactDistance> Exact = new TextCodec<ExactDistance>(
        new TextForm("exactDistance", "a length that may lie between the steps of the grid")
        {
            Examples = ["16 in", "10-2/3 in"],
            Pattern = HasUnit,
            Note = "a distance, or inches with any fraction",
        },
        ExactDistance.Parse);

    internal static readonly Codec<Distance> DistanceOrNone = new OrNoneCodec<Distance>(Distance);

    internal static readonly Codec<Level> Level = new TextCodec<Level>(
        new TextForm("level", "a level")
        {
            Examples = ["4 in above countertop", "countertop", "6 in below subfloor"],
            Pattern = HasWord,
            Note = "a distance with its unit, and what it is above or below",
        },
        BoxHeights.Level.Parse);

    internal static readonly Codec<BoxHeight> Height = new TextCodec<BoxHeight>(
        new TextForm("height", "a height")
        {
            Examples = ["48 in to top above subfloor", "+44 in AFF", "1200 mm to center above finished floor"],
            Pattern = HasNumber,
            Note = "a distance with its unit, the edge of the box that it is to, and what it is taken from",
        },
        BoxHeight.Parse);

    internal static readonly Codec<SurfaceAddress> Address = new TextCodec<SurfaceAddress>(
        new TextForm("address", "an address")
        {
            Examples = ["kitchen", "kitchen/north", "kitchen/north/window"],
            Note = "one to three ids with slashes between",
        },
        SurfaceAddress.Parse);

    internal static readonly Codec<Volume> Volume = new TextCodec<Volume>(
        new TextForm("volume", "a volume")
        {
            Examples = ["20.3 in3", "295 cm3"],
            Pattern = HasUnit,
            Note = "a number and its unit, which is in3 or cm3",
        },
        BoxHeights.Volume.Parse);

    internal static readonly Codec<Ratio> Ratio = new TextCodec<Ratio>(
        new TextForm("ratio", "a ratio")
        {
            Examples = ["1/2", "0"],
            Pattern = "^\\s*[-+]?\\s*[0-9]",
            Note = "a whole number or a fraction",
        },
        BoxHeights.Ratio.Parse);

    internal static readonly Codec<CableType> Cable = new TextCodec<CableType>(
        new TextForm("cable", "a cable")
        {
            Examples = ["12-2", "14-3", "14-2 without ground", "3G1.5"],
            Pattern = "[0-9]",
            Note = "the size of its conductors in AWG, and how many there are besides the ground; or its cores, G with one that protects and X without, and their cross section in mm²",
        },
        CableType.Parse);

    internal static readonly Codec<ConductorSize> Conductor = new TextCodec<ConductorSize>(
        new TextForm("conductor", "a conductor's size")
        {
            Examples = ["14 AWG", "12 AWG", "2.5 mm2"],
            Pattern = HasNumber,
            Note = "its gauge and AWG, or its cross section and mm2",
        },
        ConductorSize.Parse);

    internal static readonly Codec<LooseConductors> Conductors = new TextCodec<LooseConductors>(
        new TextForm("conductors", "conductors of one size")
        {
            Examples = ["3 x 12 AWG", "1 x 12 AWG ground", "1 x 14 AWG loop"],
            Pattern = HasNumber,
            Note = "how many, their size, and what they are if not plain wires",
        },
        LooseConductors.Parse);

    internal static readonly Codec<decimal> Turn = new TextCodec<decimal>(
        new TextForm("turn", "an angle")
        {
            Examples = ["90 deg", "-90 deg", "22.5 deg"],
            Pattern = "^[-+]?[0-9.]+ deg$",
            Note = "a number of degrees",
        },
        ParseTurn, PrintTurn);

    private static decimal ParseTurn(string text) =>
        text.EndsWith(Degrees, StringComparison.Ordinal)
        && decimal.TryParse(text.AsSpan(0, text.Length - Degrees.Length), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal turn)
            ? turn
            : throw new FormatException("\"" + JsonLimits.Shown(text) + "\" is not a number of degrees.");

    private static string PrintTurn(decimal turn) => turn.ToString("0.############################", CultureInfo.InvariantCulture) + Degrees;
}
