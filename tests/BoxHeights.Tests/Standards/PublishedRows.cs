using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Standards;

/// <summary>The rows of every set that is published, of every edition; with their other readings.</summary>
internal static class PublishedRows
{
    public static IReadOnlyList<Rule> All { get; } = [.. Sets().SelectMany(set => set.Rules.AsEnumerable()).SelectMany(row => row.Readings.AsEnumerable().Select(reading => reading.Rule).Prepend(row)).Distinct()];

    private static IEnumerable<RuleSet> Sets() =>
    [
        RuleSets.RoughInPractice, RuleSets.Ada2010, RuleSets.FairHousing, RuleSets.TypeA2009, RuleSets.TypeB2009, RuleSets.California, RuleSets.CanadaDwelling, RuleSets.CanadaBarrierFree, RuleSets.OntarioBarrierFree,
        .. Enum.GetValues<NecEdition>().SelectMany(edition => new[] { RuleSets.UnitedStatesDwelling(edition), RuleSets.UnitedStatesOutlets(edition) }),
    ];
}
