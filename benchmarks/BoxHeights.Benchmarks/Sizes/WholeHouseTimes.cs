using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using BoxHeights.Interop;

namespace BoxHeights.Benchmarks;

/// <summary>What users run: the example house with the full rows for the United States, once, ten times and a hundred times over in one dwelling.</summary>
internal static class WholeHouseTimes
{
    private static readonly int[] Sizes = [1, 10, 100];

    public static void Print()
    {
        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice;
        LayoutEvaluator evaluator = new(rules);
        Dwelling one = DwellingJson.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "house.json")));
        Console.WriteLine("| copies, boxes | evaluate, ms | bytes a box | report with remedies, ms | marks, ms | drag: median, 99 of 100, µs | bytes a drag | add, remove, ms | a room, the house planned, ms |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|");
        foreach (int copies in Sizes)
        {
            Dwelling house = Copies.Of(one, copies);
            int boxes = house.PlacedBoxes().Count;
            double evaluate = Ms(() => evaluator.Evaluate(house), out double bytes);
            double report = Ms(() => evaluator.Evaluate(house).ToText(), out _);
            double marks = Ms(() => MarkSheet.For(evaluator.Evaluate(house)), out _);
            (double median, double slow, double garbage) = Drag(evaluator.Open(house));
            (double add, double remove) = AddAndRemove(evaluator.Open(house));
            Dwelling bare = Copies.Bare(house);
            double room = Ms(() => new RoughInPlanner(rules).Plan(bare, "kitchen"), out _);
            double whole = Ms(() => new RoughInPlanner(rules).Plan(bare), out _);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {copies}, {boxes} | {evaluate:0.00} | {bytes / boxes:0} | {report:0.0} | {marks:0.0} | {median:0.0}, {slow:0.0} | {garbage:0} | {add:0.00}, {remove:0.00} | {room:0.0}, {whole:0.0} |"));
        }
    }

    /// <summary>The best of as many calls as half a second holds, and what one allocates.</summary>
    private static double Ms(Action work, out double bytes)
    {
        double best = double.MaxValue;
        bytes = 0;
        Stopwatch all = Stopwatch.StartNew();
        for (int n = 0; n < 2 || (n < 200 && all.ElapsedMilliseconds < 500); n++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            Stopwatch one = Stopwatch.StartNew();
            work();
            best = Math.Min(best, one.Elapsed.TotalMilliseconds);
            bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        }

        return best;
    }

    /// <summary>Each box on a wall is moved a sixteenth of an inch up, and down again, a few times over.</summary>
    private static (double Median, double Slow, double Bytes) Drag(LayoutSession session)
    {
        (string Id, BoxHeight Height)[] boxes = session.ToDwelling().PlacedBoxes().Where(placed => placed.Box is { Height: not null, Measured: null, At: not null }).Select(placed => (placed.Box.Id, placed.Box.Height!.Value)).Take(300).ToArray();
        List<double> took = [];
        double bytes = 0;
        for (int round = 0; round < 12; round++)
        {
            took.Clear();
            long before = GC.GetAllocatedBytesForCurrentThread();
            foreach ((string id, BoxHeight height) in boxes)
            {
                long start = Stopwatch.GetTimestamp();
                session.Move(id, height.WithValue(height.Value + Distance.FromInches(0, round % 2, 16)));
                took.Add(Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            }

            bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)boxes.Length;
        }

        took.Sort();
        return (took[took.Count / 2], took[took.Count * 99 / 100], bytes);
    }

    private static (double Add, double Remove) AddAndRemove(LayoutSession session)
    {
        PlacedBox some = session.ToDwelling().PlacedBoxes().First(placed => placed.Box is { Height: not null, At: not null });
        DeviceBox more = some.Box.WithId("one more").WithAt(some.Box.At!.Value + Distance.FromInches(12));
        double add = double.MaxValue;
        double remove = double.MaxValue;
        for (int i = 0; i < 7; i++)
        {
            long start = Stopwatch.GetTimestamp();
            session.Add(some.Address, more);
            add = Math.Min(add, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            start = Stopwatch.GetTimestamp();
            session.Remove(more.Id);
            remove = Math.Min(remove, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return (add, remove);
    }
}
