using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What isn't looked at, and the caution that goes with every report: one place for both.</summary>
internal static class Scope
{
    public const string Caution =
        "A planning aid, not an approval. Local codes and amendments, the authority having jurisdiction, listings and instructions, and licensed practice decide.";

    /// <summary>What a set speaks of if a row of it says so: <see cref="Rule.Covers"/>.</summary>
    private static readonly string[] CoveredByRows =
    [
        "receptacle spacing", "other required outlets", "fill, depth and setback of boxes", "tub and shower zones", "studs, headers, pockets and whatever else fills a wall",
        "box against box", "door swings", "stairs", "rated walls",
    ];

    /// <summary>What no row of the library speaks of; a caller's own may.</summary>
    private static readonly string[] Never =
    [
        "circuits, conductor sizes and loads", "ground-fault and arc-fault protection", "tamper and weather resistance", "cable protection, support and free length",
        "grounding and bonding", "clear floor space, force and grip of operation", "sink zones", "exhaust from baths and kitchens",
    ];

    /// <summary>What isn't looked at under a rule set.</summary>
    public static IEnumerable<string> NotCoveredBy(RuleSet rules)
    {
        HashSet<string?> covered = [];
        foreach (Rule row in rules.Rows)
        {
            covered.Add(row.Covers);
        }

        foreach (string what in CoveredByRows)
        {
            if (!covered.Contains(what))
            {
                yield return what;
            }
        }

        foreach (string what in Never)
        {
            if (!covered.Contains(what))
            {
                yield return what;
            }
        }
    }
}
