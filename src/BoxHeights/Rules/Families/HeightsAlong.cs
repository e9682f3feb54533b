using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Heights that are allowed over stretches of a wall, any of which will do: each stretch adds its own to what is allowed all along.</summary>
internal sealed class HeightsAlong(AllowedHeights everywhere)
{
    private readonly List<(long Left, long Right, AllowedHeights Allowed)> stretches = [];

    // Between neighboring ends the same stretches lie on the wall.
    private readonly SortedSet<long> cuts = [long.MinValue];

    /// <summary>These heights are allowed too over a stretch, both its ends included; nothing where it ends before it begins.</summary>
    public void Add(Distance left, Distance right, in AllowedHeights allowed)
    {
        if (left <= right)
        {
            stretches.Add((left.Ticks, right.Ticks, allowed));
            cuts.Add(left.Ticks);
            cuts.Add(right.Ticks + 1);
        }
    }

    /// <summary>The wall from end to end in pieces, and what is allowed over each.</summary>
    public IEnumerable<(Distance Left, Distance Right, AllowedHeights Allowed)> Pieces()
    {
        List<long> ends = [.. cuts, long.MaxValue];
        for (int i = 1; i < ends.Count; i++)
        {
            long from = ends[i - 1];
            AllowedHeights here = everywhere;
            foreach ((long left, long right, AllowedHeights allowed) in stretches)
            {
                here = left <= from && from <= right ? here | allowed : here;
            }

            yield return (Distance.FromTicks(from), ends[i] == long.MaxValue ? Distance.MaxValue : Distance.FromTicks(ends[i] - 1), here);
        }
    }
}
