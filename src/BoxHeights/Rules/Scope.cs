using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What isn't looked at, and the caution that goes with every report: one place for both.</summary>
internal static class Scope
{
    public const string Caution =
        "A planning aid, not an approval. Local codes and amendments, the authority having jurisdiction, listings and instructions, and licensed practice decide.";

    /// <summary>What some forms speak of.</summary>
    private static readonly (string What, Predicate<Rule> Speaks)[] WithoutForms =
    [
        ("receptacle spacing", rule => rule is Coverage), ("other required outlets", rule => rule is RoomOutlet), ("fill, depth and setback of boxes", rule => rule is FillLimit),
        ("tub and shower zones", rule => rule is Zone), ("studs, headers, pockets and whatever else fills a wall", rule => rule is FramingFit),
        ("box against box", rule => rule is BoxAgainstBox), ("door swings", rule => rule is BehindDoor), ("stairs", rule => rule is RiserVariation), ("rated walls", rule => rule is RatedSeparation),
    ];

    /// <summary>What no rule of the library speaks of.</summary>
    private static readonly string[] Never =
    [
        "circuits, conductor sizes and loads", "GFCI and AFCI protection", "tamper and weather resistance", "cable protection, support and free length",
        "grounding and bonding", "clear floor space, force and grip of operation", "sink zones",
    ];

    /// <summary>What isn't looked at under a rule set.</summary>
    public static IEnumerable<string> NotCoveredBy(RuleSet rules)
    {
        List<Rule> rows = [.. rules.Rules];
        foreach ((string what, Predicate<Rule> speaks) in WithoutForms)
        {
            if (!rows.Exists(speaks))
            {
                yield return what;
            }
        }

        foreach (string what in Never)
        {
            yield return what;
        }
    }
}
