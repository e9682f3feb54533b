using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;

namespace BoxHeights.Benchmarks;

/// <summary>The first evaluation in a process: rules, engine and all; what a person who opens a plan waits for.</summary>
internal static class ColdStart
{
    public const string ChildFlag = "--first";
    private const int Processes = 13;

    private static readonly (string Name, string Key, Func<Workload, Contender> Make)[] Contenders =
    [
        ("fused loop, packing flat objects", "loop", workload => new Yardstick(workload, packing: true)),
        ("BoxHeights from objects, these 11 rows", "library", workload => new LibraryFromObjects(workload)),
        ("FluentValidation per box", "fluent", workload => new FluentBoxes(workload)),
    ];

    /// <summary>Judges one house for the first time in this process and prints the milliseconds that it took. Making the house isn't counted.</summary>
    public static void Measure(string key)
    {
        Workload workload = Workload.Create(1);
        Func<Workload, Contender> make = Array.Find(Contenders, one => one.Key == key).Make;
        long start = Stopwatch.GetTimestamp();
        int found = make(workload).Judge(0);
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time};{found}"));
    }

    /// <summary>Measures each contender in fresh processes, one of each a round, and prints the medians.</summary>
    public static void Print()
    {
        Dictionary<string, double[]> times = [];
        for (int process = 0; process < Processes; process++)
        {
            foreach ((_, string key, _) in Contenders)
            {
                string first = Child.Run(ChildFlag, key).Split(';')[0];
                (times.TryGetValue(key, out double[]? some) ? some : times[key] = new double[Processes])[process] = double.Parse(first, CultureInfo.InvariantCulture);
            }
        }

        Console.WriteLine("| first evaluation in a process | median ms | best ms |");
        Console.WriteLine("|---|---|---|");
        foreach ((string name, string key, _) in Contenders)
        {
            double median = Child.Median(times[key]);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {median:0.0} | {times[key][0]:0.0} |"));
        }
    }
}
