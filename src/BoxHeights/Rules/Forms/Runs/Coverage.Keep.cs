using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Where a box may go without what it alone serves being out of reach.</content>
public sealed partial record Coverage
{
    /// <inheritdoc/>
    /// <remarks>What would be out of reach without it has to stay within reach of it, from the first such point to the last, on the stretch of wall that it is on now.</remarks>
    public override DistanceSet KeepAlong(SpaceView space, SpaceBox box)
    {
        DistanceSet keep = base.KeepAlong(space, box);
        if (space.Room is not { } room || ExceptRooms.Contains(room.Kind) || box.Along is not { } at || Spaces.Of(space) is not { } runs)
        {
            return keep;
        }

        Work work = space.Prepared(static _ => new Work());
        work.Outlets.Take(space, Outlets, runs, NextSpacesToo);
        keep &= KeepIn(runs.Sure, box, at, work);
        return runs.AtMost is { } broken ? keep & KeepIn(broken, box, at, work) : keep;
    }

    private DistanceSet KeepIn(List<Run> runs, SpaceBox box, Distance at, Work work)
    {
        DistanceSet keep = DistanceSet.All;
        List<DistanceRange> places = [];
        foreach (Run run in runs)
        {
            work.Outlets.Of(box, run, runs, places);
            DistanceSet lost = places.Count == 0 ? DistanceSet.Empty : LostWithout(box, run, runs, work);
            for (int i = 0; i < lost.Count; i++)
            {
                keep &= Near(lost[i], places, run, at) & OwnStretch(runs, box, at);
            }
        }

        return keep;
    }

    /// <summary>What of a run only this box reaches.</summary>
    private DistanceSet LostWithout(SpaceBox box, Run run, List<Run> runs, Work work)
    {
        _ = Find(run, runs, work);
        DistanceSet gaps = DistanceSet.UnionOf(work.Gaps);
        DistanceSet open = DistanceSet.UnionOf(work.Open);
        work.Outlets.Without = box;
        _ = Find(run, runs, work);
        work.Outlets.Without = null;
        return Beyond(DistanceSet.UnionOf(work.Gaps), gaps) | Beyond(DistanceSet.UnionOf(work.Open), open);
    }

    /// <summary>Along the box's wall, the places from which all of a stretch of the run is within reach.</summary>
    private DistanceSet Near(DistanceRange stretch, List<DistanceRange> places, Run run, Distance at)
    {
        if (Reach is not { } reach)
        {
            return DistanceSet.All;
        }

        DistanceSet near = DistanceSet.Empty;
        foreach (DistanceRange place in places)
        {
            foreach (Distance round in run.IsLoop ? new[] { Distance.Zero, run.Length, -run.Length } : new[] { Distance.Zero })
            {
                Distance from = stretch.To + round - reach - place.From;
                Distance to = stretch.From + round + reach - place.From;
                near |= from <= Distance.Zero && to >= Distance.Zero ? DistanceSet.Between(at + from, at + to) : DistanceSet.Empty;
            }
        }

        return near;
    }

    private static DistanceSet OwnStretch(List<Run> runs, SpaceBox box, Distance at)
    {
        DistanceSet own = DistanceSet.Empty;
        foreach (Run run in runs)
        {
            foreach (RunStretch stretch in run.Stretches)
            {
                own |= stretch.Address == box.Address && stretch.From <= at && at <= stretch.To ? DistanceSet.Between(stretch.From, stretch.To) : DistanceSet.Empty;
            }
        }

        return own;
    }

    /// <summary>What of one set isn't in another, ends that they share included.</summary>
    private static DistanceSet Beyond(DistanceSet one, DistanceSet other)
    {
        List<DistanceRange> beyond = [];
        for (int i = 0; i < one.Count; i++)
        {
            foreach ((Distance from, Distance to) in Breaks.Between(other, one[i].From, one[i].To))
            {
                beyond.Add(new(from, to));
            }
        }

        return DistanceSet.UnionOf(beyond);
    }
}
