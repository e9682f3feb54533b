using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A wall cut where a statement of a site begins or ends, and the heights that all rules surely allow in between.</summary>
/// <remarks>Made for sites that are asked often: by moves, remedies and plans, and where many boxes alike hang on one wall.</remarks>
internal sealed class Stretches
{
    private readonly DistanceSet[] sure;
    private readonly DistanceSet[] firm;

    // Statements about a single place: few.
    private readonly List<(long At, DistanceSet Sure, bool IsFirm)> points = [];

    public Stretches(StatedPlacement[] placements)
    {
        int slabs = 0;
        foreach (StatedPlacement placement in placements)
        {
            slabs += placement.Slabs.Length;
        }

        List<Part> parts = new(slabs);
        List<long> cuts = new(2 + (2 * slabs)) { long.MinValue, long.MaxValue };
        DistanceSet firmly = DistanceSet.All;
        DistanceSet habitually = DistanceSet.All;
        foreach (StatedPlacement placement in placements)
        {
            for (int i = 0; i < placement.Slabs.Length; i++)
            {
                Part part = new(placement, i);
                if (part.IsEverywhere)
                {
                    (part.IsFirm ? ref firmly : ref habitually) &= part.Slab.Allowed.Sure;
                    continue;
                }

                cuts.Add(part.Slab.LeftTicks);
                cuts.Add(part.Slab.RightTicks);
                if (part.Slab.LeftTicks == part.Slab.RightTicks)
                {
                    points.Add((part.Slab.LeftTicks, part.Slab.Allowed.Sure, part.IsFirm));
                }
                else
                {
                    parts.Add(part);
                }
            }
        }

        Edges = Distinct(cuts);
        sure = new DistanceSet[Edges.Length - 1];
        firm = new DistanceSet[Edges.Length - 1];
        Sweep(parts, firmly, habitually);
    }

    /// <summary>The ends of the stretches, from left to right, the first and the last beyond any wall.</summary>
    public long[] Edges { get; }

    /// <summary>The stretch around a place, and the heights that every rule surely allows over it.</summary>
    /// <returns>False right at the end of a stretch, where both neighbors count.</returns>
    public bool TryFind(long along, out long left, out long right, out DistanceSet allowed)
    {
        int index = IndexOf(along);
        left = Edges[index];
        right = Edges[index + 1];
        allowed = sure[index];
        return left < along && along < right;
    }

    /// <summary>The heights that rules surely allow at a place.</summary>
    /// <param name="along">The place.</param>
    /// <param name="firmOnly">Whether habits, which yield, are left out.</param>
    public DistanceSet At(long along, bool firmOnly)
    {
        DistanceSet[] sets = firmOnly ? firm : sure;
        int index = IndexOf(along);
        DistanceSet all = sets[index];
        if (along == Edges[index + 1] && index + 1 < sets.Length)
        {
            all &= sets[index + 1];
            foreach ((long at, DistanceSet allowed, bool isFirm) in points)
            {
                all = at == along && (isFirm || !firmOnly) ? all & allowed : all;
            }
        }

        return all;
    }

    /// <summary>The first stretch that ends at a place or beyond it.</summary>
    private int IndexOf(long along)
    {
        int low = 0;
        int high = Edges.Length - 2;
        while (low < high)
        {
            int middle = (low + high) >> 1;
            if (Edges[middle + 1] < along)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    /// <summary>From left to right, with those in hand that lie over the stretch: each statement is taken up and laid down once.</summary>
    /// <param name="parts">What is stated of some of the wall.</param>
    /// <param name="firmly">What firm rules allow wherever it is.</param>
    /// <param name="habitually">What habits allow wherever it is.</param>
    private void Sweep(List<Part> parts, DistanceSet firmly, DistanceSet habitually)
    {
        parts.Sort(static (one, other) => one.Slab.LeftTicks.CompareTo(other.Slab.LeftTicks));
        List<Part> over = [];
        int next = 0;
        for (int i = 0; i < sure.Length; i++)
        {
            while (next < parts.Count && parts[next].Slab.LeftTicks <= Edges[i])
            {
                over.Add(parts[next++]);
            }

            for (int one = over.Count - 1; one >= 0; one--)
            {
                if (over[one].Slab.RightTicks < Edges[i + 1])
                {
                    over.RemoveAt(one);
                }
            }

            DistanceSet ofHabits = habitually;
            firm[i] = firmly;
            foreach (Part part in over)
            {
                if (part.IsFirm)
                {
                    firm[i] &= part.Slab.Allowed.Sure;
                }
                else
                {
                    ofHabits &= part.Slab.Allowed.Sure;
                }
            }

            sure[i] = firm[i] & ofHabits;
        }
    }

    private static long[] Distinct(List<long> cuts)
    {
        cuts.Sort();
        int count = 0;
        for (int i = 0; i < cuts.Count; i++)
        {
            if (i == 0 || cuts[i] != cuts[i - 1])
            {
                cuts[count++] = cuts[i];
            }
        }

        cuts.RemoveRange(count, cuts.Count - count);
        return cuts.ToArray();
    }

    private readonly struct Part(StatedPlacement placement, int index)
    {
        public ref readonly Slab Slab => ref placement.Slabs[index];

        /// <summary>Whether it lies over the whole wall: taken once for all stretches.</summary>
        public bool IsEverywhere => Slab.LeftTicks == long.MinValue && Slab.RightTicks == long.MaxValue;

        public bool IsFirm => !placement.Rule.YieldsWhenForced;
    }
}
