using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests;

/// <summary>The README's rule of one's own is the one below, and the engine treats it as it does the library's.</summary>
public sealed class ReadmeRuleTests
{
    private static readonly AboveRadiator Rule = new("above-radiator", Severity.Advice, Distance.Parse("30 in"));

    [Fact]
    public void Rule_IsTheOneBelow()
    {
        string here = Repository.Read("tests", "BoxHeights.Tests", "ReadmeRuleTests.cs").Split("// <rule>\n")[1].Split("// </rule>")[0];
        Assert.Contains("```cs\nusing BoxHeights;\nusing BoxHeights.Rules;\n\n" + here + "```", Repository.Read("README.md"), StringComparison.Ordinal);
        Assert.InRange(here.Trim().Split('\n').Length, 1, 22);
    }

    // A radiator from 60 to 84 in; the box is in the middle at 72, 3-3/4 in tall.
    [Fact]
    public void Rule_OfABoxOverARadiator_IsCheckedMendedAndAskedAsAnyOther()
    {
        Fixture radiator = new Fixture("radiator", new FixtureKind("radiator")).WithWall("wall").WithLeft(Distance.Parse("60 in")).WithRight(Distance.Parse("84 in"));
        OneBox low = new OneBox
        {
            Rules = new RuleSet(new[] { Rule }),
            Room = room => room.WithFixtures(radiator).WithFloor(OneBox.Floor(Distance.Parse("1/2 in"))),
        }.At(BoxHeight.Parse("16 in to bottom above finished floor"));
        low = low with { Box = low.Box.WithSize(new BoxSize(Distance.Parse("2-1/4 in"), Distance.Parse("3-3/4 in"))) };
        Evaluation evaluation = low.Evaluate();
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal((Verdict.Fails, DistanceSet.AtLeast(Distance.Parse("30 in"))), (finding.Verdict, finding.Allowed.AsDistances()));
        Assert.DoesNotContain(new LayoutEvaluator(low.Rules, low.Options).Evaluate(finding.Remedies[0].ApplyTo(evaluation.Dwelling)).Findings, one => one.RuleId == Rule.Id);
        Assert.Equal(DistanceSet.AtLeast(Distance.Parse("30 in")), evaluation.AllowedAt(OneBox.Id, Distance.Parse("72 in")).Rules.Single().Sure);
        Assert.True(evaluation.AllowedAt(OneBox.Id, Distance.Parse("59 in")).Sure.Contains(Distance.Parse("16 in")));
        Assert.NotEqual(new RuleSet(Rule).Fingerprint, new RuleSet(new AboveRadiator(Rule.Id, Severity.Advice, Distance.Parse("31 in"))).Fingerprint);
    }
}

// <rule>
public sealed record AboveRadiator : PlacementRule
{
    public AboveRadiator(string id, Severity severity, Distance above)
        : base(id, "well above the radiator", severity, Citation.CommonPractice) => Above = above;

    public Distance Above { get; }

    public override Items<string> KindsNamed => new[] { "radiator" };

    public override string Numbers => "over a radiator at least " + Above + " from the finished floor to the bottom of the box";

    public override void State(PlacementSite site, PlacementStatement statement)
    {
        foreach (Fixture fixture in site.Fixtures)
        {
            if (fixture.Kind.Name == "radiator" && fixture.Left is Distance left && fixture.Right is Distance right)
            {
                statement.Within(left, right, site.AtLeast(TargetLine.BoxBottom, Above, Datum.FinishedFloor));
            }
        }
    }
}
// </rule>
