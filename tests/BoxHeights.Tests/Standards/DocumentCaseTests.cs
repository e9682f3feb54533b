using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>A document's limits, whatever the form of its rows: one file in <c>Cases/Documents</c>, one tick below, at and above each. How a line is written stands in the README there.</summary>
public sealed class DocumentCaseTests
{
    public static TheoryData<string> Documents => new(Names);

    /// <summary>What a file has a case for: "rule at least", "rule at most".</summary>
    public static IEnumerable<string> Held =>
        Names.SelectMany(Lines).SelectMany(row => new[] { (row["below"], "at least"), (row["above"], "at most") }.Where(side => side.Item1 != row["at"]).Select(side => row["rule"] + " " + side.Item2));

    [Theory]
    [MemberData(nameof(Documents))]
    public void Limit_OneTickBelowAtAndAbove_TurnsWhereItSays(string document) => Assert.All(Lines(document), Try);

    internal static void Try(Dictionary<string, string> row)
    {
        foreach (string edition in Editions(row))
        {
            RuleSet set = PublishedRows.SetWith(row["rule"], edition);
            LayoutEvaluator rules = new(OneBox.Only(row["reading"].Length == 0 ? set : set.WithReading(row["rule"], row["reading"]), row["rule"]));
            Assert.True(row["below"] != row["at"] || row["at"] != row["above"], row["what"] + " turns nowhere");
            foreach ((string column, string tick) in new[] { ("below", "-t"), ("at", ""), ("above", "+t") })
            {
                Evaluation evaluation = rules.Evaluate(Site(row, tick));
                Finding[] found = evaluation.Findings.ToArray();
                string what = row["rule"] + " " + edition + " " + row["what"] + ", " + column + ": " + string.Join("; ", found.Select(finding => finding.Message).Concat(evaluation.NotJudged));
                Assert.True(int.Parse(row[column], CultureInfo.InvariantCulture) == found.Length && found.All(finding => finding.Verdict == Verdict.Fails), what);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Row_OfACase_CitesTheSectionAndSaysWhatIsFromMemory(string document)
    {
        foreach ((Dictionary<string, string> row, string edition) in Lines(document).Where(row => row["section"].Length > 0).SelectMany(row => Editions(row).Select(edition => (row, edition))))
        {
            Citation citation = PublishedRows.SetWith(row["rule"], edition).Row(row["rule"]).Citation;
            Assert.Equal((row["section"], row["status"] == "memory"), (citation.Section, citation.Confidence == Confidence.FromMemory));
            Assert.Contains(edition, citation.Document, StringComparison.Ordinal);
        }
    }

    /// <summary>The files, as they are named under <c>Cases</c>.</summary>
    internal static IEnumerable<string> Files => Names.Select(name => Path.Combine("Documents", name));

    private static IEnumerable<string> Names => Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Cases", "Documents"), "*.csv").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    private static IReadOnlyList<Dictionary<string, string>> Lines(string document) => CaseFile.Table(Path.Combine("Documents", document));

    private static string[] Editions(Dictionary<string, string> row) => row["edition"] == "all" ? ["2017", "2020", "2023", "2026"] : [row["edition"]];

    private static Dwelling Site(Dictionary<string, string> row, string tick)
    {
        string Filled(string text)
        {
            string result = text.Replace("{}", row["limit"] + tick, StringComparison.Ordinal);
            while (result.Contains('{', StringComparison.Ordinal))
            {
                int from = result.IndexOf('{', StringComparison.Ordinal);
                int to = result.IndexOf('}', StringComparison.Ordinal);
                Fraction before = CaseFile.Number(result[(from + 1)..(to - 1)]);
                Fraction limit = CaseFile.Number(row["limit"]);
                bool plus = result[to - 1] == '+';
                string turned = plus || tick.Length == 0 ? tick : tick == "+t" ? "-t" : "+t";
                result = result[..from] + (plus ? before + limit : before - limit) + turned + result[(to + 1)..];
            }

            return result;
        }

        string[] List(string column) => row[column].Length == 0 ? [] : row[column].Split('|').Select(Filled).ToArray();
        return RoomSketch.House(row["room"], List("walls"), List("standing"), List("flat"), row["unit"] == "mm");
    }
}
