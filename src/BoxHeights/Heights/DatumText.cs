using System;

namespace BoxHeights;

/// <summary>The words for datums: one list for what is printed and what is read.</summary>
internal static class DatumText
{
    // The first of each row is its name, used in print.
    private static readonly (Datum Datum, string[] Nouns)[] Names =
    [
        (Datum.Subfloor, ["subfloor", "sub-floor", "sub floor", "sf", "s.f.", "slab"]),
        (Datum.FinishedFloor, ["finished floor", "finish floor", "fin. floor", "fin floor", "fin. fl.", "ff", "f.f."]),
        (Datum.BottomPlate, ["bottom plate", "sole plate", "plate"]),
        (Datum.LevelLine, ["level line", "bench line", "benchline", "laser line", "laser", "line"]),
        (Datum.Countertop, ["countertop", "counter top", "counter", "vanity top"]),
        (Datum.SplashTop, ["splash top", "top of splash", "top of the splash", "splash", "backsplash"]),
        (Datum.CabinetUnderside, ["cabinet underside", "underside of cabinet", "underside of the cabinet", "wall cabinet", "cabinet"]),
        (Datum.WindowHead, ["window head", "head"]),
        (Datum.WindowStool, ["window stool", "stool"]),
        (Datum.Rim, ["rim", "tub rim", "threshold", "shower threshold"]),
        (Datum.Nosing, ["nosing", "tread nosing", "nosing line"]),
        (Datum.FinishedCeiling, ["finished ceiling", "finish ceiling", "fin. ceiling", "fin ceiling", "ceiling"]),
        (Datum.Grade, ["grade", "finished grade", "finish grade", "ground"]),
        (Datum.WalkingSurface, ["walking surface", "deck", "porch", "balcony"]),
        (Datum.ExistingPlate, ["existing plate", "existing cover plate"]),
    ];

    // Whole sayings that hold their own direction. The short nouns are in both lists: "48 in to top FF" is written, and "above FF" too.
    private static readonly (Datum Datum, string[] Sayings)[] Above =
    [
        (Datum.FinishedFloor, ["aff", "a.f.f.", "a.f.f", "ff", "f.f."]),
        (Datum.Subfloor, ["asf", "a.s.f.", "a.s.f", "sf", "s.f."]),
        (Datum.Grade, ["afg", "a.f.g."]),
    ];

    private static readonly string[] Up = ["above", "over", "off", "off of", "from", "up from"];
    private static readonly string[] Down = ["below", "under", "down from"];
    private static readonly string[] The = ["the"];

    internal static Datum Check(Datum datum, string name) =>
        (uint)datum < (uint)Names.Length ? datum : throw new ArgumentOutOfRangeException(name, datum, "There is no such datum.");

    internal static string Name(Datum datum) => Names[(int)datum].Nouns[0];

    /// <summary>The words behind a height: "above subfloor", "off the bottom plate".</summary>
    internal static string Print(Datum datum, bool below) =>
        (below ? "below " : datum == Datum.BottomPlate ? "off the " : "above ") + Name(datum);

    /// <summary>Reads a datum with the direction from it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="index">Where to look; moved behind the words if there are some.</param>
    /// <param name="datum">The datum named.</param>
    /// <param name="direction">1 above it, −1 below it, 0 if the text names the datum alone.</param>
    internal static bool TryRead(string text, ref int index, out Datum datum, out int direction)
    {
        direction = 1;
        if (TryFind(Above, text, ref index, out datum))
        {
            return true;
        }

        int at = index;
        direction = Phrase.ReadLongest(Down, text, ref at) >= 0 ? -1 : Phrase.ReadLongest(Up, text, ref at) >= 0 ? 1 : 0;
        Phrase.SkipBlanks(text, ref at);
        if (Phrase.ReadLongest(The, text, ref at) >= 0)
        {
            Phrase.SkipBlanks(text, ref at);
        }

        if (!TryFind(Names, text, ref at, out datum))
        {
            return false;
        }

        index = at;
        return true;
    }

    private static bool TryFind((Datum Datum, string[] Phrases)[] table, string text, ref int index, out Datum datum)
    {
        datum = default;
        int end = index;
        foreach ((Datum candidate, string[] phrases) in table)
        {
            int at = index;
            if (Phrase.ReadLongest(phrases, text, ref at) >= 0 && at > end)
            {
                datum = candidate;
                end = at;
            }
        }

        bool found = end > index;
        index = end;
        return found;
    }
}
