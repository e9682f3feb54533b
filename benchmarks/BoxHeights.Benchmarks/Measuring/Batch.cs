using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Threading;
using System.Threading.Tasks;

namespace BoxHeights.Benchmarks;

/// <summary>Many dwellings through one evaluator on 1 to all cores: how many a second, how that scales, and whether memory stays flat.</summary>
internal static class Batch
{
    private static readonly TimeSpan Each = TimeSpan.FromSeconds(3);

    public static void Print(Workload workload)
    {
        LayoutEvaluator evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice);
        double boxes = workload.Dwellings.Average(house => house.PlacedBoxes().Count);
        Run(evaluator, workload, 1);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Houses of {boxes:0} boxes, the full rows, {Each.TotalSeconds:0} s each:\n"));
        Console.WriteLine("| threads | dwellings a second | dwellings a second of processor time | scaling | heap before, after, MB |\n|---|---|---|---|---|");
        double alone = 0;
        for (int threads = 1; threads <= Environment.ProcessorCount; threads *= 2)
        {
            double before = Heap();
            (double perSecond, double perCore) = Run(evaluator, workload, threads);
            alone = threads == 1 ? perSecond : alone;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {threads} | {perSecond:0} | {perCore:0} | {perSecond / alone:0.00} | {before:0.0}, {Heap():0.0} |"));
        }
    }

    /// <summary>Dwellings a second on the clock, and a second of processor time, whatever else the machine does.</summary>
    private static (double PerSecond, double PerCore) Run(LayoutEvaluator evaluator, Workload workload, int threads)
    {
        long done = 0;
        TimeSpan used = Environment.CpuUsage.TotalTime;
        Stopwatch clock = Stopwatch.StartNew();
        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, thread =>
        {
            for (int i = thread; clock.Elapsed < Each; i++)
            {
                _ = evaluator.Evaluate(workload.Dwellings[i % workload.Dwellings.Length]).Findings.Count;
                Interlocked.Increment(ref done);
            }
        });
        return (done / clock.Elapsed.TotalSeconds, done / (Environment.CpuUsage.TotalTime - used).TotalSeconds);
    }

    private static double Heap() => GC.GetTotalMemory(forceFullCollection: true) / 1e6;
}
