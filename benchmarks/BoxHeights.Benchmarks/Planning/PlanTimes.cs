using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;

namespace BoxHeights.Benchmarks;

/// <summary>What planning a run takes: beside the greedy count by hand, beside a solver's, and as runs grow. All in one process, in slices that alternate.</summary>
internal static class PlanTimes
{
    private const int SliceCount = 41;
    private const int SolverRuns = 3;
    private static readonly int[] Growth = [250, 500, 1000, 2000];
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(1);
    private static readonly RunPlannerOptions Options = new(Distance.FromFeet(6)) { Reach = Distance.FromInches(66), FaceLength = Distance.FromFeet(6) };
    private static readonly RunPlanner Planner = new(Options);

    /// <summary>Compares the planner's counts with those of the greedy loop, and with the solver's on a few runs.</summary>
    public static bool Agree()
    {
        PlanWorkload[] workloads = [PlanWorkload.StudFaces(250), PlanWorkload.StudFaces(2000), PlanWorkload.QuarterInches(2000)];
        bool same = workloads.All(one => one.Runs.All(run => Planner.Plan(run).Positions.Count == Greedy(run)))
            && workloads[0].Runs.Take(SolverRuns).All(run => Solver.Fewest(run, Options) == Greedy(run));
        Console.WriteLine($"{workloads.Sum(one => one.Runs.Length)} planned runs by the planner, a greedy loop and, {SolverRuns} of them, a solver: {(same ? "all with as many boxes" : "NOT with as many boxes")}.");
        return same;
    }

    public static void Print()
    {
        PlanWorkload[] workloads =
        [
            PlanWorkload.StudFaces(20),
            .. Growth.Select(PlanWorkload.StudFaces),
            .. Growth.Select(PlanWorkload.QuarterInches),
        ];
        foreach (PlanWorkload workload in workloads)
        {
            Stopwatch warming = Stopwatch.StartNew();
            while (warming.Elapsed < WarmUp)
            {
                _ = Time(workload, run => Planner.Plan(run).Positions.Count, 1);
                _ = Time(workload, Greedy, 1);
            }
        }

        Console.WriteLine("| run | planned, us | ns a candidate | bytes a candidate | greedy count, us | planned / greedy | solver's count, us | solver / planned |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach (PlanWorkload workload in workloads)
        {
            int candidates = workload.Runs[0].Candidates.Count;
            int rounds = Math.Max(1, 2000 / candidates);
            double planned = double.MaxValue, greedy = double.MaxValue;
            for (int slice = 0; slice < SliceCount; slice++)
            {
                planned = Math.Min(planned, Time(workload, run => Planner.Plan(run).Positions.Count, rounds));
                greedy = Math.Min(greedy, Time(workload, Greedy, rounds));
            }

            long before = GC.GetAllocatedBytesForCurrentThread();
            _ = Time(workload, run => Planner.Plan(run).Positions.Count, 1);
            double bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)workload.Runs.Length;
            double solver = workload.Runs.Take(SolverRuns).Min(run => Clocked(() => Solver.Fewest(run, Options)));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {workload.Name} | {planned:0.00} | {planned * 1000 / candidates:0.0} | {bytes / candidates:0} | {greedy:0.00} | {planned / greedy:0.0} | {solver:0} | {solver / planned:0} |"));
        }
    }

    // By hand: the farthest candidate that still covers the first point uncovered. It gives the fewest boxes, and no evenness.
    private static int Greedy(RunToPlan run)
    {
        long reach = Options.Reach.Ticks, end = run.Line.To.Ticks, bare = run.Line.From.Ticks;
        int count = 0, next = 0;
        while (bare < end)
        {
            long chosen = bare - reach;
            while (next < run.Candidates.Count && run.Candidates[next].At.Ticks <= bare + reach)
            {
                chosen = run.Candidates[next++].At.Ticks;
            }

            if (chosen + reach <= bare)
            {
                throw new InvalidOperationException("These runs can be covered with slack.");
            }

            bare = chosen + reach;
            count++;
        }

        return count;
    }

    /// <summary>Microseconds a run.</summary>
    private static double Time(PlanWorkload workload, Func<RunToPlan, int> plan, int rounds)
    {
        int boxes = 0;
        double time = Clocked(() =>
        {
            for (int round = 0; round < rounds; round++)
            {
                foreach (RunToPlan run in workload.Runs)
                {
                    boxes += plan(run);
                }
            }
        });
        return boxes > 0 ? time / ((double)rounds * workload.Runs.Length) : throw new InvalidOperationException("Runs get boxes.");
    }

    private static double Clocked(Action action)
    {
        long start = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(start).TotalMicroseconds;
    }
}
