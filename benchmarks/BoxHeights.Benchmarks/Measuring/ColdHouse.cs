using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Runtime;
using BoxHeights.Interop;

namespace BoxHeights.Benchmarks;

/// <summary>The example house in a fresh process, from its file to its marks: what each step takes, and how much of it is compiling.</summary>
internal static class ColdHouse
{
    public const string ChildFlag = "--first-house";
    private const int Processes = 7;

    /// <summary>Takes the steps once and prints name, milliseconds, methods compiled and milliseconds of compiling of each.</summary>
    public static void Measure()
    {
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "house.json"));
        List<string> lines = [];
        Dwelling house = Step("read", () => DwellingJson.Read(json));
        RuleSet rules = Step("rules", () => RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice);
        Evaluation evaluation = Step("evaluate", () => new LayoutEvaluator(rules).Evaluate(house));
        Step("report with remedies", () => evaluation.ToText());
        Step("marks", () => MarkSheet.For(evaluation).ToMarkdown());
        Console.WriteLine(string.Join('\n', lines));

        T Step<T>(string name, Func<T> take)
        {
            long methods = JitInfo.GetCompiledMethodCount(), start = Stopwatch.GetTimestamp();
            TimeSpan compiling = JitInfo.GetCompilationTime();
            T result = take();
            double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
            lines.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"{name};{time};{JitInfo.GetCompiledMethodCount() - methods};{(JitInfo.GetCompilationTime() - compiling).TotalMilliseconds}"));
            return result;
        }
    }

    /// <summary>Measures in fresh processes and prints the medians.</summary>
    public static void Print()
    {
        string[][][] runs = Enumerable.Range(0, Processes)
            .Select(_ => Child.Run(ChildFlag).Trim().Split('\n').Select(line => line.Trim().Split(';')).ToArray()).ToArray();
        Console.WriteLine("| the example house in a fresh process | median ms | best ms | methods compiled | ms of compiling |");
        Console.WriteLine("|---|---|---|---|---|");
        for (int step = 0; step < runs[0].Length; step++)
        {
            double[] Values(int column) => runs.Select(run => double.Parse(run[step][column], CultureInfo.InvariantCulture)).ToArray();
            double[] times = Values(1);
            double median = Child.Median(times);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {runs[0][step][0]} | {median:0.0} | {times[0]:0.0} | {Child.Median(Values(2))} | {Child.Median(Values(3)):0.0} |"));
        }
    }
}
