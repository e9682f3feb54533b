using System;
using System.Globalization;

namespace BoxHeights.Benchmarks;

/// <summary>How many times as long as the yardstick each contender takes: the median of three fresh processes.</summary>
internal static class Ratios
{
    public const string ChildFlag = "--slices";
    private const int Processes = 3;

    /// <summary>Measures in this process and prints a line a contender: ns at best, ratio of the best, ratio of the 20th percentiles, bytes a box.</summary>
    public static void Measure(Workload workload, Contender[] contenders)
    {
        double[][] times = Slices.Run(workload, contenders);
        for (int c = 0; c < contenders.Length; c++)
        {
            double percentile = Slices.Percentile20(times[c]) / Slices.Percentile20(times[0]);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{times[c][0]};{times[c][0] / times[0][0]};{percentile};{Slices.BytesPerBox(workload, contenders[c])}"));
        }
    }

    /// <summary>Measures in fresh processes and prints the table.</summary>
    public static void Print(Contender[] contenders)
    {
        double[,][] all = new double[contenders.Length, 4][];
        for (int process = 0; process < Processes; process++)
        {
            string[] lines = Child.Run(ChildFlag).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            for (int c = 0; c < contenders.Length; c++)
            {
                string[] values = lines[c].Split(';');
                for (int v = 0; v < values.Length; v++)
                {
                    (all[c, v] ??= new double[Processes])[process] = double.Parse(values[v], CultureInfo.InvariantCulture);
                }
            }
        }

        Console.WriteLine("| contender | ns/box | x yardstick (min/min) | lowest to highest | x yardstick (20th percentile) | bytes/box |");
        Console.WriteLine("|---|---|---|---|---|---|");
        for (int c = 0; c < contenders.Length; c++)
        {
            double ratio = Child.Median(all[c, 1]);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {contenders[c].Name} | {Child.Median(all[c, 0]):0.0} | {ratio:0.00} | {all[c, 1][0]:0.00} to {all[c, 1][^1]:0.00} | {Child.Median(all[c, 2]):0.00} | {Child.Median(all[c, 3]):0.0} |"));
        }
    }
}
