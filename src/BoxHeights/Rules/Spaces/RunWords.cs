using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Says the gaps of runs in words.</summary>
internal static class RunWords
{
    /// <summary>What of a run isn't reached, and where that is worst.</summary>
    public static string Lacks(Run run, IReadOnlyList<DistanceRange> gaps, IReadOnlyList<DistanceRange> outlets, Distance? reach, Distance lacking, LengthUnits units)
    {
        if (reach is not { } far || !RunCover.TryWorst(run, gaps, outlets, out Distance worst, out Distance away))
        {
            return "no outlet that counts on its " + Printed.Of(run.Length, units);
        }

        string where = "";
        foreach (DistanceRange gap in gaps)
        {
            foreach ((RunStretch stretch, Distance from, Distance to) in run.Between(gap.From, gap.To))
            {
                where += (where.Length == 0 ? "" : ", ") + stretch.Address + " " + Printed.Of(from, units) + " to " + Printed.Of(to, units);
            }
        }

        RunStretch at = run.At(worst, out Distance along);
        return Printed.OffBy(lacking, units) + " of it is further than " + Printed.Of(far, units) + " from an outlet that counts (" + where + "), worst "
            + Printed.OffBy(away, units) + " away at " + at.Address + " " + Printed.Of(along, units);
    }
}
