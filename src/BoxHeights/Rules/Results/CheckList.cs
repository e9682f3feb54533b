using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Every check of every box by every rule that speaks of it, read from a layout.</summary>
internal static class CheckList
{
    /// <summary>The checks, one box after another: of its place, then of its quantities.</summary>
    public static IEnumerable<Check> Of(LayoutState state)
    {
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            foreach (Check check in OfBox(state, box))
            {
                yield return check;
            }
        }
    }

    private static IEnumerable<Check> OfBox(LayoutState state, int box)
    {
        SitesOfBox sites = state.SitesOf(box);
        if (sites.Length == 0)
        {
            yield break;
        }

        string id = state.Boxes[box].Source.Id;
        if (state.HasHeight(box))
        {
            Place place = state.PlaceOf(box);
            for (int p = 0; p < sites[0].Placements.Length; p++)
            {
                if (sites[0].Placements[p].Speaks && OfPlace(state, box, p, place) is var check && !state.Yields(box, p, check.Verdict))
                {
                    yield return check;
                }
            }
        }

        for (int i = 0; i < sites[0].Limits.Length; i++)
        {
            StatedLimit limit = sites[0].Limits[i];
            LimitJudgement judged = state.JudgeLimit(box, i);
            if (!judged.IsSilent)
            {
                yield return new(limit.Rule.Id, id, judged.Verdict, judged.Margin, judged.Verdict == Verdict.Unknown ? judged.Needs : MissingFacts.None, limit.DisputedBy(state.PlaceOf(box)), state.Options.Units);
            }
        }
    }

    private static Check OfPlace(LayoutState state, int box, int placement, in Place place)
    {
        StatedPlacement stated = state.SitesOf(box)[0].Placements[placement];
        SlabJudgement judged = SlabJudge.Judge(stated.Slabs, place);
        Verdict verdict = state.VerdictOf(box, placement, place);
        List<string> disputed = [];
        foreach ((string reading, Slab[] slabs) in stated.Readings)
        {
            if (SlabJudge.Verdict(slabs, place) != verdict)
            {
                disputed.Add(reading);
            }
        }

        MissingFacts needs = verdict != Verdict.Unknown ? MissingFacts.None : state.SitesOf(box).Length > 1 ? judged.Needs | MissingFacts.EdgeMeant : judged.Needs;
        (long margin, LeastChange? change) = PlaceMargin.Of(state.SitesOf(box), placement, verdict, place);
        return new(stated.Rule.Id, state.Boxes[box].Source.Id, verdict, Distance.FromTicks(margin), needs, new(disputed), state.Options.Units, change);
    }
}
