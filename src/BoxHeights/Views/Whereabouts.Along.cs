using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>The wall cut where something begins or ends: in between what is allowed doesn't change.</content>
internal sealed partial class Whereabouts
{
    /// <summary>The places along its wall that rules allow at a height.</summary>
    public AllowedView Along(Distance reading)
    {
        List<(long Left, long Right, AllowedView Here)> pieces = [];
        List<Rule> rules = [];
        foreach ((long left, long right) in Pieces())
        {
            AllowedView here = At(Distance.FromTicks(left + ((right - left) / 2)));
            pieces.Add((left, right, here));
            foreach (RuleAllows rule in here.Rules)
            {
                if (!rules.Contains(rule.Rule))
                {
                    rules.Add(rule.Rule);
                }
            }
        }

        DistanceSet held = Where(pieces, here => here.Fits && Held().Contains(reading));
        List<RuleAllows> allowed = [];
        foreach (Rule rule in rules)
        {
            RuleAllows? Of(AllowedView view) => FirstOf(view, rule);
            MissingFacts needs = MissingFacts.None;
            pieces.ForEach(piece => needs |= Of(piece.Here)?.Needs ?? MissingFacts.None);

            // Where it is let off it has nothing to find, as where it is met.
            allowed.Add(new(
                rule,
                new(Where(pieces, here => Of(here) is not { IsLetOff: false } one || one.Sure.Contains(reading)), Where(pieces, here => Of(here) is not { IsLetOff: false } one || one.Possible.Contains(reading)), needs),
                false,
                state.Options.Units,
                pieces.Find(piece => Of(piece.Here)?.NotJudgedBecause is not null).Here is { } silent ? Of(silent)!.NotJudgedBecause : null));
        }

        return new(!held.IsEmpty, held, new(allowed), state.Options.Units);
    }

    private static RuleAllows? FirstOf(AllowedView view, Rule rule) => view.Rules.Find(one => ReferenceEquals(one.Rule, rule));

    private static DistanceSet Where(List<(long Left, long Right, AllowedView Here)> pieces, Predicate<AllowedView> holds)
    {
        DistanceSet all = DistanceSet.Empty;
        for (int i = 0; i < pieces.Count; i++)
        {
            if (holds(pieces[i].Here))
            {
                // Those that touch are one stretch.
                int first = i;
                while (i + 1 < pieces.Count && pieces[i + 1].Left == pieces[i].Right + 1 && holds(pieces[i + 1].Here))
                {
                    i++;
                }

                all |= DistanceSet.BetweenTicks(pieces[first].Left, pieces[i].Right);
            }
        }

        return all;
    }

    /// <summary>From left to right the stretches over which nothing changes: each edge by itself, since there both neighbors count, and what lies between. Along a stair, where each place is another, those that places are marked to.</summary>
    private IEnumerable<(long Left, long Right)> Pieces()
    {
        if (box.Surface.Stair is not null)
        {
            for (long at = 0; at <= box.Surface.Length.Ticks; at += state.Options.AlongStep.Ticks)
            {
                yield return (at, at);
            }

            yield break;
        }

        List<long> cuts = Edges();
        for (int i = 0; i < cuts.Count; i++)
        {
            yield return (cuts[i], cuts[i]);
            if (i + 1 < cuts.Count && cuts[i] + 1 < cuts[i + 1])
            {
                yield return (cuts[i] + 1, cuts[i + 1] - 1);
            }
        }
    }

    /// <summary>The places along the wall at which something begins or ends, each once, from the left end to the right.</summary>
    private List<long> Edges()
    {
        long length = box.Surface.Length.Ticks;
        List<long> edges = [0, length, size.HalfWidth.Ticks, length - size.HalfWidth.Ticks];
        if (box.Surface.Wall is { } wall)
        {
            foreach (Counter counter in wall.Counters)
            {
                edges.AddRange([counter.Left.Ticks, counter.Right.Ticks]);
                foreach (CounterInterruption part in counter.Interruptions)
                {
                    edges.AddRange([part.Left.Ticks, part.Right.Ticks]);
                }
            }

            if (ResolvedSurface.IsOfAThing(datum))
            {
                edges.AddRange(box.Surface.EdgesOfThings());
            }
        }

        // What is stated doesn't change along the wall but with the thing that the height is taken from: each has statements of its own.
        foreach (long thing in ResolvedSurface.IsOfAThing(datum) ? edges.ToArray() : [0])
        {
            foreach (StatedSite site in SitesAt(Distance.FromTicks(thing)))
            {
                edges.AddRange(site.Places.Edges);
                Array.ForEach(site.Limits, limit => limit.AddEdgesTo(edges));
            }
        }

        SitesOfBox sites = SitesAt(Distance.Zero);
        foreach ((ProvisionRule rule, ProvisionGroup group) in Neighbors(sites))
        {
            rule.AddEdgesTo(edges, group, index, sites[0].Site);
        }

        edges.RemoveAll(edge => edge < 0 || edge > length);
        edges.Sort();
        int kept = 0;
        for (int i = 0; i < edges.Count; i++)
        {
            if (i == 0 || edges[i] != edges[kept - 1])
            {
                edges[kept++] = edges[i];
            }
        }

        edges.RemoveRange(kept, edges.Count - kept);
        return edges;
    }
}
