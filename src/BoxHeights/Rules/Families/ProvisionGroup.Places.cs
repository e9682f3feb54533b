using System;

namespace BoxHeights.Rules;

/// <content>Which boxes of a group are near one along the wall, without comparing each with each.</content>
public sealed partial class ProvisionGroup
{
    private long[] places = [];
    private int[] byPlace = [];
    private int[] before = [];
    private int placed;

    /// <summary>Sorts the boxes by where they are along their wall, for <see cref="FindBefore"/>; nothing is allocated the second time.</summary>
    /// <returns>True.</returns>
    internal bool OrderByPlace()
    {
        if (places.Length < Count)
        {
            places = new long[members.Length];
            byPlace = new int[members.Length];
            before = new int[members.Length];
        }

        placed = 0;
        for (int i = 0; i < Count; i++)
        {
            if (TryAlong(i, out Distance along, out _))
            {
                places[placed] = along.Ticks;
                byPlace[placed++] = i;
            }
        }

        Array.Sort(places, byPlace, 0, placed);
        return true;
    }

    /// <summary>Finds the boxes that come before one in the group and are near it along the wall, in the group's order.</summary>
    /// <returns>How many there are.</returns>
    internal int FindBefore(int index, Distance within)
    {
        int found = 0;
        if (TryAlong(index, out Distance along, out _))
        {
            // The search may meet any of several boxes at one place: one tick further left it meets none of them.
            int first = Array.BinarySearch(places, 0, placed, along.Ticks - within.Ticks - 1);
            first = first < 0 ? ~first : first;
            for (int i = first; i < placed && places[i] <= along.Ticks + within.Ticks; i++)
            {
                if (byPlace[i] < index)
                {
                    before[found++] = byPlace[i];
                }
            }

            Array.Sort(before, 0, found);
        }

        return found;
    }

    /// <summary>One of those that were found.</summary>
    internal int FoundBefore(int found) => before[found];
}
