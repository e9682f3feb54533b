using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Fractions;

namespace BoxHeights.Tests.Rules;

/// <summary>What is in a box, as texts, and its fill summed from NEC 314.16 in exact fractions, without the library's parsers or tables.</summary>
internal sealed record FillSketch
{
    // Table 314.16(B): hundredths of a cubic inch for one conductor.
    private static readonly Dictionary<int, int> Hundredths = new() { [18] = 150, [16] = 175, [14] = 200, [12] = 225, [10] = 250, [8] = 300, [6] = 500 };

    public string Kind { get; init; } = "nail-on";

    public int Gangs { get; init; } = 1;

    public string[] Cables { get; init; } = [];

    public string[] Conductors { get; init; } = [];

    public string[] Devices { get; init; } = [];

    public string[] Connected { get; init; } = [];

    /// <summary>How many gangs each device needs, where that is told.</summary>
    public int[] Widths { get; init; } = [];

    public string? Rating { get; init; }

    public string[] Fittings { get; init; } = [];

    public bool Clamps { get; init; }

    public DeviceBox ToBox() => new(OneBox.Id, BoxPurpose.Switch)
    {
        Kind = new BoxKind(Kind),
        Gangs = Gangs,
        Cables = Cables.Select(CableType.Parse).ToArray(),
        Conductors = Conductors.Select(LooseConductors.Parse).ToArray(),
        Devices = Devices.Select(name => new DeviceKind(name)).ToArray(),
        Connected = Connected.Select(ConductorSize.Parse).ToArray(),
        DeviceGangs = Widths,
        Rating = Rating,
        Fittings = Fittings.Select(name => Enum.Parse<BoxFitting>(name.Replace("-", "", StringComparison.Ordinal), true)).ToArray(),
        Clamps = Clamps ? CableClamps.Internal : CableClamps.None,
    };

    /// <summary>The fill after an edition, in cubic inches, each device and terminal block on the thickest conductor that it may be on.</summary>
    public Fraction Sum(int edition)
    {
        Fraction sum = Fraction.Zero;
        List<int> all = [];
        List<int> grounds = [];
        List<int> isolated = [];
        List<int> feeders = [];
        foreach (string cable in Cables)
        {
            int[] numbers = cable.Split(' ')[0].Split('-').Select(int.Parse).ToArray();
            sum += numbers.Skip(1).Sum() * Room(numbers[0]);
            all.Add(numbers[0]);
            feeders.Add(numbers[0]);
            if (!cable.EndsWith("without ground", StringComparison.Ordinal))
            {
                grounds.Add(numbers[0]);
            }
        }

        foreach (string[] words in Conductors.Select(text => text.Split(' ')))
        {
            int count = int.Parse(words[0], CultureInfo.InvariantCulture);
            int awg = int.Parse(words[2], CultureInfo.InvariantCulture);
            all.Add(awg);
            if (words.Contains("ground"))
            {
                (words.Contains("isolated") ? isolated : grounds).AddRange(Enumerable.Repeat(awg, count));
                continue;
            }

            sum += (words.Contains("loop") ? 2 : 1) * count * Room(awg);
            if (Cables.Length == 0)
            {
                feeders.Add(awg);
            }
        }

        // The smaller gauge number is the thicker conductor.
        Fraction largest = Room(all.Min());
        sum += Clamps ? largest : Fraction.Zero;
        sum += Fittings.Where(name => name is "luminaire-stud" or "hickey").Distinct().Count() * largest;
        sum += edition >= 2023 && feeders.Count > 0 ? Fittings.Count(name => name == "terminal-block") * Room(feeders.Min()) : Fraction.Zero;
        sum += Fittings.Count(name => name == "metal-barrier") * new Fraction(1, 2);
        sum += Fittings.Count(name => name == "plastic-barrier");
        int left = Gangs;
        for (int i = 0; i < Devices.Length; i++)
        {
            int gangs = i < Widths.Length ? Widths[i] : Devices[i] is "range-receptacle" or "dryer-receptacle" ? 2 : 1;
            int widths = Devices[i] is "blank" or "luminaire" ? 0 : gangs;
            left -= gangs;
            int on = i < Connected.Length ? int.Parse(Connected[i].Split(' ')[0], CultureInfo.InvariantCulture) : feeders.Min();
            sum += 2 * widths * Room(on);
        }

        // Nobody says what is in a gang that is left.
        sum += Devices.Length > 0 && left > 0 ? 2 * left * Room(feeders.Min()) : Fraction.Zero;

        if (edition >= 2020)
        {
            grounds.AddRange(isolated);
            return sum + (grounds.Count == 0 ? Fraction.Zero : (1 + new Fraction(Math.Max(0, grounds.Count - 4), 4)) * Room(grounds.Min()));
        }

        return sum + (grounds.Count == 0 ? Fraction.Zero : Room(grounds.Min())) + (isolated.Count == 0 ? Fraction.Zero : Room(isolated.Min()));
    }

    public override string ToString() =>
        $"{Gangs} {Kind}: {string.Join(" ", Cables)} | {string.Join(", ", Conductors)} | {string.Join(" ", Devices)} on {string.Join(", ", Connected)} | {string.Join(" ", Fittings)}, clamps {Clamps}";

    private static Fraction Room(int awg) => new(Hundredths[awg], 100);
}
