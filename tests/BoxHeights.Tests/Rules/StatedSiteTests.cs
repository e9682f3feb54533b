using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading.Tasks;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What rules state is asked of one place first, and of a whole surface when somebody wants to know: both roads have to say the same, on any thread.</summary>
public sealed class StatedSiteTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    [Fact]
    public void Statement_OfOnePlace_SaysWhatTheWholeStatementDoes()
    {
        int met = 0;
        int missed = 0;
        Prop.ForAll(DwellingGen.Seeds, seed =>
        {
            Random random = new(seed);
            LayoutState state = Evaluator.StateOf(DwellingGen.Dwelling(seed));
            PlacementStatement asked = new();
            PlacementStatement whole = new();
            foreach (StatedSite site in Sites(state))
            {
                foreach (PlacementRule rule in state.Rules.Placement)
                {
                    whole.Clear();
                    rule.State(site.Site, whole);
                    Slab[] slabs = whole.Take();
                    foreach (Place place in Places(slabs, random))
                    {
                        asked.AskAt(place);
                        rule.State(site.Site, asked);
                        Assert.Equal(whole.NotJudgedBecause, asked.NotJudgedBecause);
                        Assert.True(asked.Passes == (SlabJudge.Verdict(slabs, place) == Verdict.Passes), rule.Id + " at " + place.Left + " to " + place.Right + ", " + place.Heights);
                        Assert.Empty(asked.Take());
                        met += asked.Passes ? 1 : 0;
                        missed += asked.Passes ? 0 : 1;
                    }
                }
            }

            return true;
        }).Check(Tries.Always(25));

        // Or the property would show little.
        Assert.InRange(Math.Min(met, missed), 1000, int.MaxValue);
    }

    [Fact]
    public void AllowedAt_AnyPlace_IsWhatAllStatementsThereShare() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        foreach (StatedSite site in Sites(Evaluator.StateOf(DwellingGen.Dwelling(seed))))
        {
            foreach (long edge in site.Places.Edges.Where(edge => edge is > long.MinValue and < long.MaxValue))
            {
                foreach (long along in new[] { edge - 1, edge, edge + 1 })
                {
                    Assert.Equal(SharedAt(site, along, false), site.Places.SureAt(along));
                    Assert.Equal(SharedAt(site, along, true), site.Places.SureOfFirmRulesAt(along));
                }
            }
        }

        return true;
    }).Check(Tries.Always(25));

    // Nothing of what is read was worked out before: all threads ask for it at once.
    [Fact]
    public void Evaluation_ReadOnManyThreads_SaysWhatItSaysOnOne()
    {
        for (int seed = 1; seed <= 6; seed++)
        {
            Dwelling house = DwellingGen.Dwelling(seed);
            string[] alone = Read(Evaluator.Evaluate(house), 0);
            Evaluation shared = Evaluator.Evaluate(house);
            string[][] read = new string[8][];
            Parallel.For(0, read.Length, new ParallelOptions { MaxDegreeOfParallelism = read.Length }, i => read[i] = Read(shared, i));
            Assert.All(read, one => Assert.Equal(alone, one));
        }
    }

    /// <summary>All that is worked out late, begun at another end by each thread.</summary>
    private static string[] Read(Evaluation evaluation, int first)
    {
        Func<IEnumerable<string>>[] parts =
        [
            () => evaluation.Findings.Select(finding => finding.Message + finding.DisputedBy),
            () => evaluation.Checks.Select(check => check.ToString() + check.Margin),
            () => evaluation.Causes.SelectMany(cause => cause.Remedies.Select(remedy => remedy.Text)),
            () => evaluation.NotJudged,
        ];
        string[][] said = new string[parts.Length][];
        for (int i = 0; i < parts.Length; i++)
        {
            int part = (i + first) % parts.Length;
            said[part] = parts[part]().ToArray();
        }

        return said.SelectMany(one => one).ToArray();
    }

    private static HashSet<StatedSite> Sites(LayoutState state)
    {
        HashSet<StatedSite> all = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            foreach (StatedSite site in state.SitesOf(box))
            {
                all.Add(site);
            }
        }

        return all;
    }

    private static DistanceSet SharedAt(StatedSite site, long along, bool firmOnly)
    {
        DistanceSet shared = DistanceSet.All;
        foreach (StatedPlacement placement in site.Placements.Where(one => !firmOnly || !one.Rule.YieldsWhenForced))
        {
            shared &= SlabJudge.SureAt(placement.Slabs, along);
        }

        return shared;
    }

    /// <summary>Places at, beside and between the ends of what is stated, some of them known to a stretch only.</summary>
    private static IEnumerable<Place> Places(Slab[] slabs, Random random)
    {
        List<long> ends = [0, .. slabs.SelectMany(slab => new[] { slab.LeftTicks, slab.RightTicks }).Where(end => end is > long.MinValue and < long.MaxValue)];
        List<long> heights = [40 * 2_032_000L, .. slabs.SelectMany(slab => Enumerable.Range(0, slab.Allowed.Sure.Count).SelectMany(i => new[] { slab.Allowed.Sure[i].From.Ticks, slab.Allowed.Sure[i].To.Ticks })).Where(end => end is > -(1L << 40) and < 1L << 40)];
        for (int i = 0; i < 4; i++)
        {
            long left = ends[random.Next(ends.Count)] + random.Next(-1, 2) + (random.Next(3) == 0 ? random.Next(-4_000_000, 4_000_000) : 0);
            long reading = heights[random.Next(heights.Count)] + random.Next(-1, 2);
            yield return new(left, left + (random.Next(3) == 0 ? random.Next(20_000_000) : 0), new(Distance.FromTicks(reading), Distance.FromTicks(reading + (random.Next(3) == 0 ? 500_000 : 0))));
        }
    }
}
