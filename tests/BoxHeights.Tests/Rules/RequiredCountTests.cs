using System.Collections.Generic;
using System.Globalization;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a room or a storey has to have once: with one it has enough, and without it is lacking.</summary>
public sealed class RequiredCountTests
{
    [Fact]
    public void Outlet_OneOfThem_IsEnoughAndNoneIsNot() => Assert.All(CaseFile.Table("required-counts.csv"), Try);

    internal static void Try(Dictionary<string, string> row)
    {
        RuleSet rules = OneBox.Only(RuleSets.UnitedStatesOutlets((NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture)), row["rule"]);
        LayoutEvaluator evaluator = new(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        Evaluation with = evaluator.Evaluate(House(row, row["device"], row["purpose"]));
        Assert.True(with.IsClean, row["rule"] + ": " + string.Join("; ", with.Findings.Select(one => one.Message)));
        Finding lacks = Assert.Single(evaluator.Evaluate(House(row, "thermostat", "thermostat")).Findings);
        Assert.Equal((row["rule"], row["without it"]), (lacks.RuleId, lacks.Verdict == Verdict.Fails ? "fails" : "unknown"));
        Citation citation = rules.Rows[0].Citation;
        Assert.Equal((row["section"], row["status"] == "memory"), (citation.Section, citation.Confidence == Confidence.FromMemory));
    }

    private static Dwelling House(Dictionary<string, string> row, string device, string purpose)
    {
        SquareRoom room = new()
        {
            Kind = new RoomKind(row["room"]),
            Fixtures = row["with"].Length == 0 ? [] : [SquareRoom.Against("thing", new FixtureKind(row["with"]), "south", Distance.FromInches(40), Distance.FromInches(64), Distance.FromInches(24))],
            North = [SquareRoom.Box(device, purpose, Distance.FromInches(40), Distance.FromInches(80))],
        };
        return row["beside"].Length == 0 ? room.House() : room.House(new SquareRoom { Kind = new RoomKind(row["beside"]) }.Build().WithId("beside"));
    }
}
