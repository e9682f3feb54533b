using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Rows' own words in a dwelling's units. 1 in is 25.4 mm and 1 ft 304.8 mm exactly (international yard and pound agreement, 1959); the rest is arithmetic by hand.</summary>
public sealed class BothUnitsTests
{
    // Measures, found by another road than the library's reader. Areas and volumes (in2, in3) aren't meant.
    private static readonly Regex Feet = new(@"\d ?(?:in|ft)\b", RegexOptions.CultureInvariant);
    private static readonly Regex Meters = new(@"\d ?(?:mm|cm|m)\b", RegexOptions.CultureInvariant);
    private static readonly Regex Aside = new(@"\([^()]*\)", RegexOptions.CultureInvariant);
    private static readonly Regex Pair = new(@"(?<about>about )?(?<here>\d[\d./-]* (?:in|mm)) \((?<there>\d[^()]*)\)", RegexOptions.CultureInvariant);
    private static readonly Regex Part = new(@"(?<number>\d[\d./-]*)\s*(?<unit>ft|in|mm|cm|m)\b", RegexOptions.CultureInvariant);

    private static readonly RuleSet[] Sets =
    [
        .. Enum.GetValues<NecEdition>().SelectMany(edition => new[] { RuleSets.UnitedStatesDwelling(edition), RuleSets.UnitedStatesOutlets(edition) }),
        RuleSets.RoughInPractice, RuleSets.Ada2010, RuleSets.FairHousing, RuleSets.TypeA2009, RuleSets.TypeB2009, RuleSets.California,
        RuleSets.CanadaDwelling, RuleSets.CanadaBarrierFree, RuleSets.OntarioBarrierFree,
    ];

    [Theory]
    [InlineData("within 6 ft of an outlet", "within 1828.8 mm (6 ft) of an outlet")]
    [InlineData("at most 6 ft 6 in above grade", "at most 1981.2 mm (6 ft 6 in) above grade")]
    [InlineData("its top 34 to 38 in above the nosings", "its top 863.6 mm to 965.2 mm (34 to 38 in) above the nosings")]
    [InlineData("15 in to 48 in above the floor", "381 mm (15 in) to 1219.2 mm (48 in) above the floor")]
    [InlineData("24 in apart", "609.6 mm (24 in) apart")]
    [InlineData("at most 1/4 in behind it", "at most about 6.4 mm (1/4 in) behind it")]
    [InlineData("1-1/2 in deep", "38.1 mm (1-1/2 in) deep")]
    [InlineData("100 in2 of openings to 100 ft2 of wall", "100 in2 of openings to 100 ft2 of wall")]
    [InlineData("by 210.52(C), a 2x4 in each of 3 bays", "by 210.52(C), a 2x4 in each of 3 bays")]
    [InlineData("within 900 mm of it", "within 900 mm of it")]
    [InlineData("on stud 48", "on stud 48")]
    [InlineData("", "")]
    public void Of_Millimeters_GivesFeetAndInchesInThem(string text, string expected) => Assert.Equal(expected, BothUnits.Of(text, LengthUnits.Millimeters));

    // 1800 / 25.4 = 70.87 and 70-7/8 = 70.875; 400 / 25.4 = 15.75; 1200 / 25.4 = 47.24; 508 is 20 exactly.
    [Theory]
    [InlineData("within 1.8 m of it", "within about 70-7/8 in (1.8 m) of it")]
    [InlineData("400 to 1200 mm above the floor", "about 15-3/4 in to about 47-1/4 in (400 to 1200 mm) above the floor")]
    [InlineData("508 mm wide", "20 in (508 mm) wide")]
    [InlineData("within 6 ft of it, or 24 in", "within 6 ft of it, or 24 in")]
    public void Of_Inches_GivesMetricMeasuresInThem(string text, string expected) => Assert.Equal(expected, BothUnits.Of(text, LengthUnits.Inches));

    [Theory]
    [InlineData(LengthUnits.Inches, 3)]
    [InlineData(LengthUnits.Millimeters, 20)]
    public void Of_EveryRowsWords_LeavesNoMeasureInOtherUnits_AndNoneThatIsOff(LengthUnits units, int least)
    {
        HashSet<string> pairs = [];
        foreach (string words in Sets.SelectMany(set => set.Rows).SelectMany(Words))
        {
            string both = BothUnits.Of(words, units);
            Assert.DoesNotMatch(units == LengthUnits.Millimeters ? Feet : Meters, Aside.Replace(both, ""));
            foreach (Match pair in Pair.Matches(both).Where(pair => Part.IsMatch(pair.Groups["there"].Value) && !pair.Groups["there"].Value.Contains(" to ", StringComparison.Ordinal)))
            {
                decimal off = Math.Abs(Millimeters(pair.Groups["here"].Value) - Millimeters(pair.Groups["there"].Value));
                Assert.InRange(off, 0m, !pair.Groups["about"].Success ? 0m : units == LengthUnits.Millimeters ? 0.05m : 25.4m / 32);
                pairs.Add(pair.Value);
            }
        }

        Assert.True(pairs.Count >= least, "only " + string.Join("; ", pairs));
    }

    // Volumes are marked in cubic inches on the boxes themselves.
    [Theory]
    [MemberData(nameof(OrdinaryHousesTests.Mistakes), MemberType = typeof(OrdinaryHousesTests))]
    public void Report_OfAMetricHouse_HasInchesOnlyAsideOrInNames(string mistake)
    {
        Planted planted = Enumerable.Range(1, 200).Select(seed => PlantedMistakes.Kinds[mistake](seed, 4 + (seed % 11))).First(one => one is not null)!;
        Evaluation evaluation = new LayoutEvaluator(RuleSets.OfAHouse)
            .Evaluate(planted.House.WithUnits(LengthUnits.Millimeters));
        Assert.NotEmpty(evaluation.Causes);
        Assert.DoesNotMatch(Feet, Aside.Replace(evaluation.ToText(), ""));
    }

    [Fact]
    public void Messages_OfAnyMetricDwelling_HaveInchesOnlyAside() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Evaluation evaluation = new LayoutEvaluator(DwellingGen.Rules).Evaluate(DwellingGen.Dwelling(seed).WithUnits(LengthUnits.Millimeters));
        Assert.All(evaluation.Findings, finding => Assert.DoesNotMatch(Feet, Aside.Replace(finding.Message, "")));
    }).Check(Tries.Config(100));

    [Fact]
    public void Checklist_OfAMetricHouse_HasBoth()
    {
        Items<InspectionRow> rows = Output.Houses.Inspected(OrdinaryHouses.Make(1, 5).WithUnits(LengthUnits.Millimeters)).Rows;
        Assert.Contains(rows, row => row.Text.Contains("at least 152.4 mm (6 in) from", StringComparison.Ordinal));
        Assert.All(rows, row => Assert.DoesNotMatch(Feet, Aside.Replace(row.Text, "")));
    }

    private static IEnumerable<string> Words(Rule rule) => new[] { rule.Summary, rule.LeavesOut, (rule as LimitRule)?.ElseDo.ToString() }.Where(words => words is not null)!;

    private static decimal Millimeters(string text) => Part.Matches(text).Sum(part => CaseFile.Number(part.Groups["number"].Value).ToDecimal()
        * part.Groups["unit"].Value switch { "ft" => 304.8m, "in" => 25.4m, "cm" => 10m, "m" => 1000m, _ => 1m });
}
