using System;
using System.Collections.Generic;

namespace BoxHeights.Benchmarks;

/// <summary>Seeded runs with the same number of candidates each.</summary>
internal sealed class PlanWorkload
{
    /// <summary>So many that a branch predictor can't learn them by heart.</summary>
    private const int RunCount = 32;

    private PlanWorkload(string name, RunToPlan[] runs)
    {
        Name = name;
        Runs = runs;
    }

    public string Name { get; }

    public RunToPlan[] Runs { get; }

    /// <summary>Box centers 1-7/8 in either side of studs 16 in on center, 15 in 100 of them blocked.</summary>
    public static PlanWorkload StudFaces(int candidates)
    {
        RunToPlan[] runs = new RunToPlan[RunCount];
        for (int i = 0; i < runs.Length; i++)
        {
            Random draw = new((candidates * 100) + i);
            List<RunCandidate> places = [];
            decimal stud = 16;
            for (; places.Count < candidates; stud += 16)
            {
                foreach (decimal at in new[] { stud - 1.875m, stud + 1.875m })
                {
                    if (draw.Next(100) >= 15 && places.Count < candidates)
                    {
                        places.Add(new(Distance.FromInches(at)));
                    }
                }
            }

            runs[i] = new RunToPlan(new(Distance.Zero, Distance.FromInches(stud))) with { Candidates = new(places) };
        }

        return new(FormattableString.Invariant($"{candidates} stud faces"), runs);
    }

    /// <summary>A place at every quarter of an inch, a third of them blocked: as many as can follow each other as a run can have.</summary>
    public static PlanWorkload QuarterInches(int candidates)
    {
        RunToPlan[] runs = new RunToPlan[RunCount];
        for (int i = 0; i < runs.Length; i++)
        {
            Random draw = new((candidates * 100) + i);
            List<RunCandidate> places = [];
            decimal at = 0;
            for (; places.Count < candidates; at += 0.25m)
            {
                if (draw.Next(3) != 0)
                {
                    places.Add(new(Distance.FromInches(at)));
                }
            }

            runs[i] = new RunToPlan(new(Distance.Zero, Distance.FromInches(at))) with { Candidates = new(places) };
        }

        return new(FormattableString.Invariant($"{candidates} quarter inches"), runs);
    }
}
