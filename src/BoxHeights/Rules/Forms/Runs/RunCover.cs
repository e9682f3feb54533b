using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What of a run lies further than a reach from every outlet.</summary>
internal static class RunCover
{
    /// <summary>Finds the stretches that no outlet reaches, from left to right. A place exactly at the reach is reached.</summary>
    /// <param name="run">The run.</param>
    /// <param name="outlets">Where outlets stand, or may stand.</param>
    /// <param name="reach">How far one reaches along the run; null where one anywhere serves all of it.</param>
    /// <param name="reached">A list to work with.</param>
    /// <param name="gaps">Takes the stretches.</param>
    public static void Gaps(Run run, List<DistanceRange> outlets, Distance? reach, List<DistanceRange> reached, List<DistanceRange> gaps)
    {
        gaps.Clear();
        if (reach is not { } far)
        {
            if (outlets.Count == 0)
            {
                gaps.Add(new(Distance.Zero, run.Length));
            }

            return;
        }

        reached.Clear();
        foreach (DistanceRange outlet in outlets)
        {
            DistanceRange one = new(outlet.From - far, outlet.To + far);
            reached.Add(one);
            if (run.IsLoop)
            {
                reached.Add(one + run.Length);
                reached.Add(one - run.Length);
            }
        }

        reached.Sort(static (a, b) => a.From.CompareTo(b.From));
        Distance at = Distance.Zero;
        foreach (DistanceRange one in reached)
        {
            if (one.From > at && at < run.Length)
            {
                gaps.Add(new(at, one.From < run.Length ? one.From : run.Length));
            }

            at = one.To > at ? one.To : at;
        }

        if (at < run.Length)
        {
            gaps.Add(new(at, run.Length));
        }
    }

    /// <summary>The same where an outlet doesn't reach round a corner: each stretch for itself, those shorter than a length left out.</summary>
    public static void GapsByLeg(Run run, List<DistanceRange> outlets, Distance? reach, Distance shortest, List<DistanceRange> gaps)
    {
        gaps.Clear();
        List<DistanceRange> own = [];
        List<DistanceRange> lacking = [];
        foreach (RunStretch stretch in run.Stretches)
        {
            DistanceRange leg = new(stretch.Start, stretch.Start + stretch.Length);
            own.Clear();
            foreach (DistanceRange outlet in outlets)
            {
                if (leg.Overlaps(outlet))
                {
                    own.Add(new((outlet.From > leg.From ? outlet.From : leg.From) - leg.From, (outlet.To < leg.To ? outlet.To : leg.To) - leg.From));
                }
            }

            if (stretch.Length >= shortest)
            {
                Run alone = new(new[] { new RunStretch(stretch.Address, stretch.Wall, stretch.Line, stretch.From, stretch.To, stretch.Around) }, false);
                Gaps(alone, own, reach, [], lacking);
                foreach (DistanceRange gap in lacking)
                {
                    gaps.Add(gap + leg.From);
                }
            }
        }
    }

    /// <summary>The place in the gaps that is furthest from every outlet, and how far that is.</summary>
    /// <returns>False when there is no outlet.</returns>
    public static bool TryWorst(Run run, IReadOnlyList<DistanceRange> gaps, IReadOnlyList<DistanceRange> outlets, out Distance worst, out Distance far)
    {
        worst = far = Distance.Zero;
        foreach (DistanceRange gap in gaps)
        {
            foreach (Distance at in new[] { gap.From, gap.From + Distance.FromTicks(gap.Width.Ticks / 2), gap.To })
            {
                Distance nearest = Distance.MaxValue;
                foreach (DistanceRange outlet in outlets)
                {
                    Distance off = Off(at, outlet);
                    if (run.IsLoop)
                    {
                        off = Least(off, Least(Off(at, outlet + run.Length), Off(at, outlet - run.Length)));
                    }

                    nearest = Least(nearest, off);
                }

                if (nearest > far)
                {
                    far = nearest;
                    worst = at;
                }
            }
        }

        return outlets.Count > 0 && far > Distance.Zero;
    }

    private static Distance Off(Distance at, DistanceRange outlet) =>
        at < outlet.From ? outlet.From - at : at > outlet.To ? at - outlet.To : Distance.Zero;

    private static Distance Least(Distance one, Distance other) => one < other ? one : other;
}
