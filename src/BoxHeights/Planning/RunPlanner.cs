using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Plans the boxes of one run: exactly the best by the order below, found without trying all.</summary>
/// <remarks>
/// <para>Boxes that stay do. Then, in this order: every point of the run is within <see cref="RunPlannerOptions.Reach"/> of a box; around a hole between candidates that
/// is too wide for that, within <see cref="RunPlannerOptions.Limit"/>; around one too wide even for that, as near as any candidate comes.
/// Each wish gets a box, if a candidate lies in it. Each face as long as <see cref="RunPlannerOptions.FaceLength"/> gets one, if it has a candidate that isn't a last
/// resort. Then the fewest last resorts, the fewest boxes, the fewest places that are only fair, the smallest largest gap, the smallest sum of squared gaps (a
/// gap at an end counts double, and twice its square), and of plans equal in all that, the one whose first box that differs is further left.</para>
/// <para>With <see cref="RunPlannerOptions.CodeMinimum"/>: every point within the limit, the fewest boxes, the fewest places that aren't good, and from there on the same.</para>
/// <para>A run seen from its other end gets the same plan from its other end, unless several are equal in everything but which is further left.</para>
/// </remarks>
internal sealed class RunPlanner(RunPlannerOptions options)
{
    /// <exception cref="ArgumentException">A place isn't on the run.</exception>
    /// <exception cref="OverflowException">The run is longer than can be planned.</exception>
    public RunPlan Plan(RunToPlan run)
    {
        RunPlaces places = new(run);
        long limit = Math.Min(options.Limit.Ticks, places.Length);
        long reach = Math.Min(options.Reach.Ticks, limit);
        PlannedPosition[] positions = [];
        if (places.Count > 0)
        {
            List<(int First, int End)> wishes = Wishes(run, places);
            RunWindows windows = new(places, options.CodeMinimum ? limit : reach, limit, [.. wishes, .. Faces(run, places)]);
            int[] chosen = run.IsLoop ? Round(places, windows) : RunPath.Choose(windows.Along(Weights(places.Count)), out _);
            positions = new PlannedPosition[chosen.Length];
            for (int i = 0; i < chosen.Length; i++)
            {
                positions[i] = new(places.From + Distance.FromTicks(places.At[chosen[i]]), ReasonOf(chosen, i, run.IsLoop, places, windows, wishes));
            }
        }

        return new(run, positions, Distance.FromTicks(reach), Distance.FromTicks(limit));
    }

    private List<(int First, int End)> Wishes(RunToPlan run, RunPlaces places)
    {
        List<(int First, int End)> found = [];
        foreach (DistanceRange wish in run.Wishes)
        {
            if (places.In(wish) is var range && range.First < range.End && !options.CodeMinimum)
            {
                found.Add(range);
            }
        }

        return found;
    }

    private List<(int First, int End)> Faces(RunToPlan run, RunPlaces places)
    {
        List<(int First, int End)> found = [];
        foreach (DistanceRange face in run.Faces)
        {
            // Of a wall that reaches beyond the run, the part in it counts.
            Distance from = Distance.Max(face.From, run.Line.From), to = Distance.Min(face.To, run.Line.To);
            if (!options.CodeMinimum && options.FaceLength is { } length && from <= to && to - from >= length
                && places.In(new(from, to)) is var range && Array.FindIndex(places.Rank, range.First, range.End - range.First, rank => rank != CandidateRank.LastResort) >= 0)
            {
                found.Add(range);
            }
        }

        return found;
    }

    /// <summary>What a place of each rank costs: one box more weighs more than any number of blocks, a last resort more than any number of boxes.</summary>
    private long[] Weights(int count)
    {
        long box = count + 1L;
        return [box, box, box + 1, options.CodeMinimum ? box + 1 : checked(box * box * box) / box + box];
    }

    /// <summary>
    /// The best way round a loop: the best of all that start at a place which is chosen. Some place within reach beyond the first one is in every plan, or the first
    /// itself, so that these are all the starts that have to be tried.
    /// </summary>
    private int[] Round(RunPlaces places, RunWindows windows)
    {
        int count = places.Count, stays = Array.IndexOf(places.Rank, CandidateRank.Stays);
        int[] best = [];
        RunCost least = default;
        for (int start = Math.Max(stays, 0); start < count && start <= (stays >= 0 ? stays : windows.Covering); start++)
        {
            // Where the way starts it ends, too.
            RunSteps steps = windows.Round(start, Weights(count));
            int[] turned = RunPath.Choose(steps, out RunCost cost);
            cost = cost with { Weight = cost.Weight - steps.Weight[0] };
            int[] chosen = new int[turned.Length - 1];
            for (int i = 0; i < chosen.Length; i++)
            {
                chosen[i] = (turned[i] + start) % count;
            }

            Array.Sort(chosen);
            int order = best.Length == 0 ? -1 : cost.CompareTo(least);
            (best, least) = order < 0 || (order == 0 && IsFurtherLeft(chosen, best)) ? (chosen, cost) : (best, least);
        }

        return best;
    }

    private static bool IsFurtherLeft(int[] one, int[] other)
    {
        int same = 0;
        while (same < one.Length && same < other.Length && one[same] == other[same])
        {
            same++;
        }

        return same < one.Length && same < other.Length && one[same] < other[same];
    }

    private static PositionReason ReasonOf(int[] chosen, int which, bool isLoop, RunPlaces places, RunWindows windows, List<(int First, int End)> wishes)
    {
        int place = chosen[which];
        int before = which > 0 ? chosen[which - 1] : isLoop ? chosen[chosen.Length - 1] - places.Count : -1;
        int after = which + 1 < chosen.Length ? chosen[which + 1] : isLoop ? chosen[0] + places.Count : places.Count;
        return places.Rank[place] == CandidateRank.Stays ? PositionReason.Stays
            : wishes.Exists(wish => before < wish.First && wish.First <= place && place < wish.End && wish.End <= after) ? PositionReason.Wished
            : windows.Skips(before, after) ? PositionReason.Face : PositionReason.Coverage;
    }
}
