using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What rules state as slabs against a point-by-point look at the documents' words.</summary>
public sealed class SlabPropertyTests
{
    private static readonly RuleSet All = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;
    private static readonly Dictionary<string, LayoutEvaluator> Evaluators =
        SiteGen.Rules.ToDictionary(rule => rule, rule => new LayoutEvaluator(OneBox.Only(All, rule)), StringComparer.Ordinal);

    // Whatever comes out one way for some of what isn't known must not be judged the other way.
    [Fact]
    public void Verdict_OfAnySite_IsNeverAgainstThePoints() => Check(1500, site =>
    {
        (bool passes, bool fails) = PointRoad.Try(site);
        return VerdictOf(site) switch { null => true, Verdict.Passes => !fails, Verdict.Fails => !passes, _ => true };
    });

    [Fact]
    public void Verdict_WhereEverythingIsKnown_IsThatOfThePoint() => Check(1500, site =>
    {
        SiteSketch known = Known(site);
        (bool passes, _) = PointRoad.Try(known);
        return VerdictOf(known) is not { } verdict || verdict == (passes ? Verdict.Passes : Verdict.Fails);
    });

    [Fact]
    public void Verdict_RangesNarrowed_NeverTurnsOver() => Check(800, site =>
    {
        Verdict? wide = VerdictOf(site);
        return wide is null or Verdict.Unknown || Narrower(site).All(narrow => VerdictOf(narrow) is null || VerdictOf(narrow) == wide);
    });

    // Or the properties above would show little.
    [Fact]
    public void RandomSites_GiveEveryVerdictOfEveryRule()
    {
        HashSet<(string, Verdict)> seen = [];
        Check(3000, site =>
        {
            if (VerdictOf(site) is { } verdict)
            {
                seen.Add((site.Rule, verdict));
            }

            return true;
        });
        Assert.Equal(SiteGen.Rules.Length * 3, seen.Count);
    }

    private static Verdict? VerdictOf(SiteSketch site) =>
        Evaluators[site.Rule].Evaluate(site.Build()).Checks.Where(check => check.RuleId == site.Rule).Select(check => (Verdict?)check.Verdict).SingleOrDefault();

    private static SiteSketch Known(SiteSketch site) => site with
    {
        FloorHigh = site.FloorLow,
        RoughHigh = site.RoughLow,
        BoxHigh = site.BoxLow,
        Edge = site.Edge ?? Edge.Top,
        At = site.At ?? 72m,
        TapeError = 0m,
        SpecifiedEdge = site.SpecifiedEdge ?? Edge.Top,
        Approach = site.Approach ?? Approach.Side,
        OnWall = site.OnWall! with { OpenInside = site.OnWall.OpenInside ?? false },
        Before = site.Before.Select(thing => thing with { Top = thing.Top ?? 34m, Depth = thing.Depth ?? 24m, Knee = thing.Knee ?? 0m }).ToArray(),
    };

    private static IEnumerable<SiteSketch> Narrower(SiteSketch site)
    {
        yield return site with { FloorHigh = (site.FloorLow + site.FloorHigh) / 2m };
        yield return site with { FloorLow = (site.FloorLow + site.FloorHigh) / 2m };
        yield return site with { RoughHigh = (site.RoughLow + site.RoughHigh) / 2m };
        yield return site with { RoughLow = (site.RoughLow + site.RoughHigh) / 2m };
        yield return site with { BoxHigh = site.BoxLow };
        yield return site with { BoxLow = site.BoxHigh };
        yield return site with { TapeError = 0m };
        yield return site with { At = site.At ?? 66m };
        yield return site with { Approach = site.Approach ?? Approach.Side };
        yield return site with { Edge = site.Edge ?? Edge.Bottom };
        yield return Known(site);
    }

    private static void Check(int times, Func<SiteSketch, bool> holds) => Prop.ForAll(SiteGen.Sites, holds).Check(Tries.Always(times));
}
