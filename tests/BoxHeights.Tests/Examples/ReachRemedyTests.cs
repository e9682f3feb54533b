#if !NETSTANDARD_ASSET
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>Under every document of reach each cause in the example house, and in copies of it with less room, says what to do or why there is nothing to do.</summary>
public sealed class ReachRemedyTests
{
    public static TheoryData<string> Sets => ["ada", "fair-housing", "type-a", "type-b", "california", "canada"];

    [Theory]
    [MemberData(nameof(Sets))]
    public void Cause_InTheExampleHouse_HasARemedyOrAReason(string set) => AssertAllSaid(set, WholeHouseTests.House);

    // Counters an inch too deep to reach over, and boxes that have to stay where they are.
    [Theory]
    [MemberData(nameof(Sets))]
    public void Cause_WhereLittleCanBeDone_HasARemedyOrAReason(string set) => AssertAllSaid(set, WholeHouseTests.House
        .WithBoxes(box => box.Id.StartsWith('L') ? box.WithPinned(true) : box)
        .WithRooms(WholeHouseTests.House.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCounters(wall.Counters.Select(counter => counter.WithDepth(Distance.FromInches(26)))))))));

    private static void AssertAllSaid(string set, Dwelling house)
    {
        RuleSet reach = set switch
        {
            "ada" => RuleSets.Ada2010,
            "fair-housing" => RuleSets.FairHousing,
            "type-a" => RuleSets.TypeA2009,
            "type-b" => RuleSets.TypeB2009,
            "california" => RuleSets.California,
            _ => RuleSets.CanadaBarrierFree,
        };
        Evaluation evaluation = new LayoutEvaluator(WholeHouseTests.Rules + reach).Evaluate(house);
        Assert.True(evaluation.HasViolations);
        Assert.All(evaluation.Causes.Where(cause => cause.NotJudgedBecause is null && cause.Findings[0].Fault is null), cause => Assert.True(cause.Remedies.Count > 0, cause.Title));
        Assert.All(evaluation.Causes.SelectMany(cause => cause.Remedies).OfType<NoneFound>(), none => Assert.True(none.Text.Length > 20 && (none.Conflicting.Count > 0 || none.Text.Contains("stay")), none.Text));
    }
}
#endif
