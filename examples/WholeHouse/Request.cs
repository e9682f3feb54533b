using System;
using System.IO;
using BoxHeights;

namespace WholeHouse;

/// <summary>What the command line asks for.</summary>
internal sealed record Request(string File, RuleSet Rules, string? Folder, bool Plan = false, bool Help = false)
{
    public const string Usage =
        "Usage: WholeHouse [file.json] [--edition 2017|2020|2023|2026] [--rules ada|fair-housing|type-a|type-b|california] [--out FOLDER] [--plan] [--help]";

    /// <summary>Reads the command line; of several editions or folders the last one counts, and several reach documents add up.</summary>
    /// <exception cref="ArgumentException">Something in it isn't understood; the message says what.</exception>
    public static Request Parse(string[] arguments)
    {
        string? file = null;
        string? folder = null;
        NecEdition edition = NecEdition.Nec2023;
        RuleSet reach = RuleSet.Empty;
        bool plan = false;
        bool help = false;
        for (int i = 0; i < arguments.Length; i++)
        {
            switch (arguments[i])
            {
                case "--edition":
                    edition = EditionOf(Next(arguments, ref i));
                    break;
                case "--rules":
                    reach += ReachOf(Next(arguments, ref i));
                    break;
                case "--out":
                    folder = Next(arguments, ref i);
                    break;
                case "--plan":
                    plan = true;
                    break;
                case "--help" or "-h" or "-?":
                    help = true;
                    break;
                case { Length: > 0 } name when file is null && name[0] != '-':
                    file = Directory.Exists(name) ? throw new ArgumentException(name + " is a folder: name a file in it that describes a house.") : name;
                    break;
                default:
                    throw new ArgumentException("\"" + arguments[i] + "\" isn't understood here.");
            }
        }

        return new(file ?? Path.Combine(AppContext.BaseDirectory, "house.json"), RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice + reach, folder, plan, help);
    }

    private static string Next(string[] arguments, ref int i) => i + 1 < arguments.Length && arguments[i + 1].Length > 0
        ? arguments[++i]
        : throw new ArgumentException(arguments[i] + " asks for something after it.");

    private static NecEdition EditionOf(string year) => year switch
    {
        "2017" => NecEdition.Nec2017,
        "2020" => NecEdition.Nec2020,
        "2023" => NecEdition.Nec2023,
        "2026" => NecEdition.Nec2026,
        _ => throw new ArgumentException("There is no edition \"" + year + "\" here."),
    };

    private static RuleSet ReachOf(string document) => document.ToLowerInvariant() switch
    {
        "ada" => RuleSets.Ada2010,
        "fair-housing" => RuleSets.FairHousing,
        "type-a" => RuleSets.TypeA2009,
        "type-b" => RuleSets.TypeB2009,
        "california" => RuleSets.California,
        _ => throw new ArgumentException("There is no reach document \"" + document + "\" here."),
    };
}
