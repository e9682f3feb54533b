using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>
/// The best places of a run whose end meets its start: the best of all ways to cut it open at a place that is chosen. Some place within reach beyond the first one is
/// in every plan, or the first itself, so that these are all the cuts that have to be tried.
/// </summary>
internal static class LoopPath
{
    /// <summary>The indices of the places chosen, from left to right.</summary>
    public static int[] Choose(RunPlaces places, RunAim aim)
    {
        int[] best = [];
        (long Cost, long Largest, SquareSum Squares) least = default;
        foreach (int cut in Cuts(places, aim))
        {
            RunWindows windows = Cut(places, aim, cut);
            PathSteps steps = windows.Steps();
            int[] turned = EvenPath.Choose(steps);
            (long Cost, long Largest, SquareSum Squares) cost = Cost(steps, turned);
            int[] chosen = new int[turned.Length - 1];
            for (int i = 0; i < chosen.Length; i++)
            {
                chosen[i] = (turned[i] + cut) % places.Count;
            }

            Array.Sort(chosen);
            int order = best.Length == 0 ? -1 : Compare(cost, least);
            if (order < 0 || (order == 0 && IsFurtherLeft(chosen, best)))
            {
                best = chosen;
                least = cost;
            }
        }

        return best;
    }

    /// <summary>Whether coverage can do without one of the places chosen.</summary>
    public static bool Spares(RunPlaces places, RunAim aim, int[] chosen, int which)
    {
        int count = chosen.Length;
        if (count == 1)
        {
            return false;
        }

        int cut = chosen[(which + 1) % count];
        int before = (chosen[(which + count - 1) % count] - cut + places.Count) % places.Count;
        return Cut(places, aim, cut).Skips(before, places.Count);
    }

    private static RunWindows Cut(RunPlaces places, RunAim aim, int cut)
    {
        RunWindows windows = new(places.CutAt(cut), aim);
        Require(aim.Wishes);
        Require(aim.Faces);
        return windows;

        void Require(List<(int First, int End)> ranges)
        {
            foreach ((int first, int end) in ranges)
            {
                // A range that holds the cut has its box there.
                if (cut < first || cut >= end)
                {
                    int turned = (first - cut + places.Count) % places.Count;
                    windows.Require((turned, turned + end - first));
                }
            }
        }
    }

    private static IEnumerable<int> Cuts(RunPlaces places, RunAim aim)
    {
        int stays = Array.IndexOf(places.IsFixed, true);
        if (stays >= 0)
        {
            yield return stays;
            yield break;
        }

        int furthest = new RunWindows(places.CutAt(0), aim).Covering[0];
        for (int i = 0; i <= furthest && i < places.Count; i++)
        {
            yield return i;
        }
    }

    // The place that the loop is cut at stands at both ends: it counts once.
    private static (long Cost, long Largest, SquareSum Squares) Cost(PathSteps steps, int[] chosen)
    {
        long cost = -steps.Weight[0] + steps.Weight[chosen[0]];
        long largest = 0;
        SquareSum squares = default;
        for (int i = 1; i < chosen.Length; i++)
        {
            long gap = steps.At[chosen[i]] - steps.At[chosen[i - 1]];
            cost += steps.Weight[chosen[i]];
            largest = Math.Max(largest, gap);
            squares += SquareSum.Of(gap);
        }

        return (cost, largest, squares);
    }

    private static int Compare((long Cost, long Largest, SquareSum Squares) one, (long Cost, long Largest, SquareSum Squares) other) =>
        one.Cost != other.Cost ? one.Cost.CompareTo(other.Cost)
        : one.Largest != other.Largest ? one.Largest.CompareTo(other.Largest)
        : one.Squares < other.Squares ? -1 : one.Squares > other.Squares ? 1 : 0;

    private static bool IsFurtherLeft(int[] one, int[] other)
    {
        for (int i = 0; i < one.Length && i < other.Length; i++)
        {
            if (one[i] != other[i])
            {
                return one[i] < other[i];
            }
        }

        return false;
    }
}
