using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>What a text says of a height, word by word; the one reader behind <see cref="BoxHeight"/> and <see cref="Level"/>.</summary>
internal struct HeightText
{
    // What says nothing of its own: "unless noted otherwise" stands behind many a height on a drawing.
    private static readonly string[] Fillers = ["at", "@", "uno", "u.n.o.", "u.n.o", "unless noted otherwise"];

    // Before a height on a drawing, it means what a plus does.
    private static readonly string[] Marks = ["h=", "h ="];

    private bool isSigned;
    private bool edgeNamed;

    /// <summary>The distance, negative below the datum; null if the text has none.</summary>
    internal Distance? Distance { get; private set; }

    /// <summary>The edge named; null if none is, or if the text says that none is stated.</summary>
    internal Edge? Edge { get; private set; }

    /// <summary>The datum named; null if none is.</summary>
    internal Datum? Datum { get; private set; }

    /// <summary>1 above the datum, −1 below it, 0 if neither is said.</summary>
    internal int Direction { get; private set; }

    /// <summary>Whether the distance has a leading plus or "H=", the signs of a height on a drawing.</summary>
    internal bool HasPlus { get; private set; }

    /// <summary>Whether words for an edge, or for its absence, were read.</summary>
    internal readonly bool NamesEdge => edgeNamed;

    /// <summary>Reads a whole text: distance, edge and datum in any order, each at most once.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="read">What was read.</param>
    /// <param name="at">Where reading ended, or failed.</param>
    /// <param name="error">Why it failed.</param>
    internal static bool TryRead(string? text, out HeightText read, out int at, out string? error)
    {
        read = default;
        at = 0;
        error = "there is no text.";
        if (text is null)
        {
            return false;
        }

        error = null;
        Skip(text, ref at);
        while (at < text.Length)
        {
            error = read.ReadNext(text, ref at);
            if (error is not null)
            {
                return false;
            }

            Skip(text, ref at);
        }

        error = read.CheckDirection();
        return error is null;
    }

    internal static FormatException Fault(string text, int at, string? error) =>
        new("\"" + text + "\", at character " + at.ToString(CultureInfo.InvariantCulture) + ": " + error);

    private static void Skip(string text, ref int at)
    {
        Phrase.SkipBlanks(text, ref at);
        while (at < text.Length && text[at] == ',')
        {
            at++;
            Phrase.SkipBlanks(text, ref at);
        }
    }

    private string? ReadNext(string text, ref int at)
    {
        int start = at;

        // Datums first: "bottom plate" is no bottom edge.
        if (DatumText.TryRead(text, ref at, out Datum datum, out int direction))
        {
            if (Datum is not null)
            {
                at = start;
                return "a height is measured from one datum.";
            }

            Datum = datum;
            Direction = direction;
            return null;
        }

        if (EdgeText.TryRead(text, ref at, out Edge? edge))
        {
            if (edgeNamed)
            {
                at = start;
                return "a height is measured to one edge.";
            }

            edgeNamed = true;
            Edge = edge;
            return null;
        }

        if (Phrase.ReadLongest(Fillers, text, ref at) >= 0)
        {
            return null;
        }

        if (Phrase.ReadLongest(Marks, text, ref at) >= 0)
        {
            HasPlus = true;
            return null;
        }

        char first = text[at];
        if (!StartsDistance(first))
        {
            return "these words name no edge (to top, to center, to bottom) and no datum (above subfloor, above finished floor, off the bottom plate, \u2026).";
        }

        if (Distance is not null)
        {
            return "a height is one distance.";
        }

        if (!DistanceText.TryRead(text, ref at, out Distance distance, out string? error))
        {
            return error;
        }

        Distance = distance;
        HasPlus |= first == '+';
        isSigned = first == '+' || TextCursor.IsHyphen(first);
        return null;
    }

    // Fractions such as ½ are digits of another sort.
    private static bool StartsDistance(char first) =>
        char.IsDigit(first) || first is '+' or '.' || TextCursor.IsHyphen(first) || char.GetUnicodeCategory(first) == UnicodeCategory.OtherNumber;

    private string? CheckDirection()
    {
        if (Direction >= 0 || Distance is not { } distance)
        {
            return null;
        }

        if (isSigned)
        {
            return "a distance below something has no sign of its own.";
        }

        Distance = -distance;
        return null;
    }

    /// <summary>A distance and a datum in words, with what stands between them.</summary>
    internal static string Print(Distance distance, string between, Datum datum, string? format = null)
    {
        // The one distance without an opposite keeps its sign.
        bool below = distance < BoxHeights.Distance.Zero && distance != BoxHeights.Distance.MinValue;
        return (below ? -distance : distance).ToString(format) + between + DatumText.Print(datum, below);
    }
}
