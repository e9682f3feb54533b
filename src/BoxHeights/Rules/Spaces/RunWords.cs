using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Says runs and their gaps in words.</summary>
internal static class RunWords
{
    /// <summary>A run by its ends, exactly, in the units of its dwelling, so that a name stays: "living/north 32 in to 168 in", "living/north 32 in to living/east 60 in".</summary>
    public static string Name(Run run, LengthUnits units)
    {
        RunStretch first = run.Stretches[0];
        RunStretch last = run.Stretches[run.Stretches.Count - 1];
        return run.IsLoop ? first.Address + " and all round"
            : first.Address + " " + first.From.Exactly(units) + " to " + (run.Stretches.Count == 1 ? "" : last.Address + " ") + last.To.Exactly(units);
    }

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
