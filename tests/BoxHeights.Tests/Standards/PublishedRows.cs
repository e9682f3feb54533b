using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Standards;

/// <summary>The rows of every set that is published, of every edition; with their other readings.</summary>
internal static class PublishedRows
{
    /// <summary>Every set that is no edition's: each of <see cref="RuleSets"/>, so that a new one is held to its cases too.</summary>
    public static IReadOnlyList<RuleSet> Sets { get; } =
        [.. typeof(BoxHeights.RuleSets).GetProperties().Where(property => property.PropertyType == typeof(RuleSet)).Select(property => (RuleSet)property.GetValue(null)!)];

    public static IReadOnlyList<Rule> Rows { get; } = [.. Sets.Concat(Editions()).SelectMany(set => set.Rows.AsEnumerable()).Distinct()];

    public static IReadOnlyList<Rule> All { get; } =
        [.. Rows.SelectMany(row => row.Readings.AsEnumerable().Select(reading => reading.Rule).Prepend(row)).Distinct()];

    /// <summary>The set that has a row: of an edition that of its dwellings or of their outlets, of none whichever of the others.</summary>
    public static RuleSet SetWith(string rule, string edition) =>
        ChangedRow.In((edition.Length > 0 ? Of((NecEdition)int.Parse(edition, CultureInfo.InvariantCulture)) : Sets).First(set => set.Rows.Any(row => row.Id == rule)));

    private static IEnumerable<RuleSet> Editions() => Enum.GetValues<NecEdition>().SelectMany(Of);

    private static IEnumerable<RuleSet> Of(NecEdition edition) => [RuleSets.UnitedStatesDwelling(edition), RuleSets.UnitedStatesOutlets(edition)];
}
