using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What no set leaves out: a box that keeps the counter from being set. Common practice, no source.</summary>
internal static class Counters
{
    public static RuleSet Edges { get; } = new(
    [
        new CounterEdge("counter-edge", "with its box and plate over or under a countertop and on or off its splash, not across an edge, where the counter can't be set",
            Severity.Advice, Citation.CommonPractice)
        {
            Scope = RuleScope.Walls,
        },
    ]);
}
