using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.Json;
using Fractions;

namespace BoxHeights.Tests.Cases;

/// <summary>Reads case files, and the fractions in them, without the library's own parsers.</summary>
internal static class CaseFile
{
    private const int TicksPerInch = 2_032_000;
    private const int TicksPerMillimeter = 80_000;

    /// <summary>The rows of a table: cells by the names in its first line. No cell holds a comma; lines that begin with # say where it comes from.</summary>
    public static IReadOnlyList<Dictionary<string, string>> Table(string name)
    {
        string[][] lines = File.ReadAllLines(PathOf(name)).Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split(',')).ToArray();
        Assert(lines.Length > 1 && lines.All(line => line.Length == lines[0].Length), name + " has lines of unequal length");
        return lines.Skip(1)
            .Select(line => lines[0].Zip(line, (key, value) => (key, value)).ToDictionary(pair => pair.key, pair => pair.value, StringComparer.Ordinal))
            .ToList();
    }

    /// <summary>The objects of a file with one on each line.</summary>
    public static IReadOnlyList<JsonElement> Lines(string name) =>
        File.ReadAllLines(PathOf(name)).Where(line => line.Length > 0).Select(line => JsonDocument.Parse(line).RootElement).ToList();

    /// <summary>The objects of a file that holds one list.</summary>
    public static IReadOnlyList<JsonElement> List(string name) => JsonDocument.Parse(File.ReadAllText(PathOf(name))).RootElement.EnumerateArray().ToList();

    /// <summary>A number as it stands in a drawing: 48, 97-1/8, 5/8, -1-1/4, 46.69.</summary>
    public static Fraction Number(string text)
    {
        bool negative = text.StartsWith('-');
        string[] parts = text.TrimStart('-').Split('-');
        Fraction sum = Fraction.Zero;
        foreach (string part in parts)
        {
            string[] over = part.Split('/');
            sum += over.Length == 2
                ? new Fraction(int.Parse(over[0], CultureInfo.InvariantCulture), int.Parse(over[1], CultureInfo.InvariantCulture))
                : Fraction.FromDecimal(decimal.Parse(part, CultureInfo.InvariantCulture));
        }

        return negative ? -sum : sum;
    }

    /// <summary>A number of inches as a distance; it has to be a whole number of ticks.</summary>
    public static Distance Inches(Fraction inches) => Length(inches, TicksPerInch);

    /// <summary>A number of a unit, "in" or "mm", as a distance; it has to be a whole number of ticks.</summary>
    public static Distance Length(string text, string unit)
    {
        Assert(unit is "in" or "mm", unit + " is no unit of a case");
        return Length(Number(text), unit == "in" ? TicksPerInch : TicksPerMillimeter);
    }

    private static Distance Length(Fraction number, int each)
    {
        Fraction ticks = number * new Fraction(each);
        Assert(ticks.Denominator.IsOne, number + " is no whole number of ticks");
        return Distance.FromTicks((long)ticks.Numerator);
    }

    public static Distance Inches(string text) => Inches(Number(text));

    private static void Assert(bool holds, string what)
    {
        if (!holds)
        {
            throw new InvalidDataException(what);
        }
    }

    private static string PathOf(string name) => Path.Combine(AppContext.BaseDirectory, "Cases", name);
}
