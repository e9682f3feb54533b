using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Says the gaps of runs in words.</summary>
internal static class RunWords
{
    /// <summary>What of a run isn't reached, and where that is worst.</summary>
    public static Wording Lacks(Room room, Run run, RunGap gap, Distance? reach, Distance lacking, LengthUnits units)
    {
        if (reach is not { } far || gap.Worst is not { } worst)
        {
            return $"no outlet that counts on its {Printed.Of(run.Length, units):length}";
        }

        SeenAlong seen = new(room, units);
        List<Wording> where = [];
        foreach (WallStretch stretch in gap.Stretches)
        {
            where.Add(seen.Stretch(stretch));
        }

        return $"{Printed.OffBy(lacking, units):lacking} of it is further than {Printed.Of(far, units):reach} from an outlet that counts ({Wording.Listed(where):where}), worst {Printed.OffBy(worst.Away, units):away} away at {seen.Point(worst.Address, worst.Along):worst}";
    }

    /// <summary>The stretches of a run that aren't reached, and the point that is furthest from every outlet.</summary>
    public static RunGap GapOf(Run run, IReadOnlyList<DistanceRange> gaps, IReadOnlyList<DistanceRange> outlets)
    {
        List<WallStretch> stretches = [];
        foreach (DistanceRange gap in gaps)
        {
            foreach ((RunStretch stretch, Distance from, Distance to) in run.Between(gap.From, gap.To))
            {
                stretches.Add(new(stretch.Address, from, to));
            }
        }

        return RunCover.TryWorst(run, gaps, outlets, out Distance worst, out Distance away)
            ? new(new(stretches), new(run.At(worst, out Distance along).Address, along, away))
            : new(new(stretches), null);
    }
}
