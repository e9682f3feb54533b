using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Published cases of the spacing of outlets, and which receptacles count, from the case files.</summary>
public sealed class SpacingCaseTests
{
    public static TheoryData<string> Cases
    {
        get
        {
            TheoryData<string> ids = [];
            foreach (JsonElement one in CaseFile.Lines("spacing-cases.jsonl"))
            {
                ids.Add(one.GetProperty("id").GetString()!);
            }

            return ids;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_OfTheFile_LacksWhatItSays(string id)
    {
        JsonElement one = CaseFile.Lines("spacing-cases.jsonl").Single(line => line.GetProperty("id").GetString() == id);
        bool metric = one.TryGetProperty("metric", out _);
        RuleSet rules = Only(metric ? "canada" : "us", one.GetProperty("rule").GetString()!, one.TryGetProperty("edition", out JsonElement edition) ? edition.GetInt32() : 2023);
        Dwelling house = RoomSketch.House(one.GetProperty("kind").GetString()!, Strings(one, "walls"), Strings(one, "standing"), Strings(one, "flat"), metric);
        Finding[] found = new LayoutEvaluator(rules).Evaluate(house).Findings.ToArray();
        string said = string.Join("\n", found.Select(finding => finding.Message));
        Assert.True(found.All(finding => finding.Verdict == Verdict.Fails), said);
        if (one.TryGetProperty("found", out JsonElement count))
        {
            Assert.True(count.GetInt32() == found.Length, said);
            foreach (JsonProperty reading in one.TryGetProperty("readings", out JsonElement counts) ? counts.EnumerateObject().ToArray() : [])
            {
                RuleSet read = rules.WithReading(rules.Rows[0].Id, reading.Name);
                Assert.Equal(reading.Value.GetInt32(), new LayoutEvaluator(read).Evaluate(house).Findings.Count);
            }

            return;
        }

        Assert.Equal(Sorted(Strings(one, "lacks"), metric), Lacking(found));
        if (one.TryGetProperty("worst", out JsonElement worst))
        {
            Assert.All(found, finding => Assert.Contains("worst " + worst.GetString() + " in away", finding.Message, StringComparison.Ordinal));
        }

        foreach (JsonProperty reading in one.TryGetProperty("readings", out JsonElement readings) ? readings.EnumerateObject().ToArray() : [])
        {
            RuleSet read = rules.WithReading(rules.Rows[0].Id, reading.Name);
            Assert.Equal(Sorted(reading.Value.EnumerateArray().Select(text => text.GetString()!), metric), Lacking(new LayoutEvaluator(read).Evaluate(house).Findings));
        }
    }

    [Fact]
    public void Outlet_OfTheFile_CountsAsItSays() => Assert.All(CaseFile.Table("outlets-that-count.csv"), TryOutlet);

    internal static void TryOutlet(Dictionary<string, string> row)
    {
        bool counter = row["rule"] == "counter-outlets";
        Dwelling house = counter ? RoomSketch.House("kitchen", ["200 kitchen:20:60 cbox:40"]) : RoomSketch.House("bedroom", ["200 door:0:20 box:40 door:60:200"]);
        house = house.WithBoxes(box => box.WithPurpose(new BoxPurpose(row["purpose"]))
            .WithDevices(row["device"].Length == 0 ? default(Items<DeviceKind>) : new[] { new DeviceKind(row["device"]) })
            .WithRating(row["rating"].Length == 0 ? null : row["rating"])
            .WithSurface(row["surface"] == "cabinet" ? BoxSurface.Cabinet : null)
            .WithDedicated(row["dedicated"].Length == 0 ? null : row["dedicated"])
            .WithSwitched(row["switched"] switch { "all" => SwitchedPart.All, "half" => SwitchedPart.Half, "none" => SwitchedPart.None, _ => null }));
        Finding? found = new LayoutEvaluator(Only("us", row["rule"], 2023)).Evaluate(house).Findings.SingleOrDefault(finding => finding.Fault is null);
        string said = found is null ? "counts" : found.Verdict == Verdict.Unknown ? "unknown" : "not";
        Assert.True(row["expected"] == said, string.Join(",", row.Values) + ": " + said);
    }

    internal static RuleSet Only(string set, string rule, int edition) =>
        OneBox.Only(set == "canada" ? RuleSets.CanadaDwelling : RuleSets.UnitedStatesOutlets((NecEdition)edition), rule);

    private static string[] Strings(JsonElement one, string name) =>
        one.TryGetProperty(name, out JsonElement list) ? list.EnumerateArray().Select(text => text.GetString()!).ToArray() : [];

    private static Distance[] Sorted(IEnumerable<string> texts, bool metric) => texts.Select(text => RoomSketch.Measure(text, metric)).Order().ToArray();

    private static Distance[] Lacking(IEnumerable<Finding> found) => found.Select(finding => finding.Measured.AsDistance()).Order().ToArray();
}
