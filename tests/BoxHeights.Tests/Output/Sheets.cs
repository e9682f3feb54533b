namespace BoxHeights.Tests.Output;

/// <summary>Mark sheets of dwellings as they are described, for tests of marks rather than of mending.</summary>
internal static class Sheets
{
    public static MarkSheet For(Dwelling dwelling, RuleSet rules) => For(dwelling, rules, MarkOptions.Default);

    public static MarkSheet For(Dwelling dwelling, RuleSet rules, MarkOptions options) => MarkSheet.For(new LayoutEvaluator(rules).Evaluate(dwelling), options.WithAsDescribed(true));

    /// <summary>The punch list of a dwelling that no rules speak of, with the tolerance that its units bring or another.</summary>
    public static PunchList PunchesFor(Dwelling dwelling, Distance? tolerance = null) =>
        new LayoutEvaluator(RuleSet.Empty).Evaluate(dwelling) is var evaluation && tolerance is { } stated ? PunchList.For(evaluation, stated) : PunchList.For(evaluation);

    /// <summary>The pole of a dwelling as it is described, of a sheet without rules.</summary>
    public static StoryPole PoleFor(Dwelling dwelling) => StoryPole.For(For(dwelling, RuleSet.Empty));
}
