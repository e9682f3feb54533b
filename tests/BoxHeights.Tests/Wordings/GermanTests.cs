#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.RegularExpressions;
using BoxHeights.Interop;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Wordings;

/// <summary>A whole second language, of our own making and for these tests alone: whatever the reports say of the example house and of planted mistakes has a German sentence.</summary>
public class GermanTests
{
    private static readonly Dictionary<string, string> Catalog = JsonSerializer.Deserialize<Dictionary<string, string>>(Repository.Read("tests", "BoxHeights.Tests", "Cases", "german.json"))!;
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    public static TheoryData<string> Kinds => new(PlantedMistakes.Kinds.Keys);

    [Fact]
    public void Sentences_HaveThePlacesOfTheEnglishOnes()
    {
        Regex place = new("{[a-z][A-Za-z]*}");
        Assert.True(Catalog.Count > 100);
        Assert.All(Catalog, sentence => Assert.Equal(
            place.Matches(sentence.Key).Select(one => one.Value).Order(StringComparer.Ordinal), place.Matches(sentence.Value).Select(one => one.Value).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void ExampleHouse_IsReportedInGerman()
    {
        string report = Report(DwellingJson.Read(Repository.Read("examples", "WholeHouse", "house.json")));
        Assert.Contains("VERSTOSS", report, StringComparison.Ordinal);
        Assert.Contains("Eine Planungshilfe, keine Genehmigung.", report, StringComparison.Ordinal);
        Assert.DoesNotMatch(new Regex(@"\b(the|must|from|allowed|which|with|isn't|boxes)\b"), report);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void PlantedMistake_IsReportedInGerman(string kind)
    {
        if (PlantedMistakes.Kinds[kind](31337, 3) is { } planted)
        {
            Assert.NotEqual("", Report(planted.House));
        }
    }

    /// <summary>The report; what has no German sentence fails the test.</summary>
    private static string Report(Dwelling house)
    {
        Recorder words = new();
        string report = new LayoutEvaluator(Rules, EvaluatorOptions.Default.WithWords(words)).Evaluate(house).ToText();
        Assert.Equal("", string.Join("\n", words.Lacking.Order(StringComparer.Ordinal)));
        return report;
    }

    private sealed class Recorder : WordingFormatter
    {
        public HashSet<string> Lacking { get; } = [];

        protected override string TemplateFor(Wording wording)
        {
            if (Catalog.TryGetValue(wording.Template, out string? own))
            {
                return own;
            }

            Lacking.Add(wording.Template);
            return wording.Template;
        }
    }
}
#endif
