using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;

namespace BoxHeights.Benchmarks;

/// <summary>How processor time and bytes grow with each kind of thing: the exponent that fits the largest sizes. Anything over 1.2 is marked: ten times as much of a kind then takes over 16 times as long.</summary>
internal static class Growth
{
    private const double Marked = 1.2;
    private const double LongestMs = 2500;
    private static readonly int[] Sizes = [10, 30, 100, 300, 1000, 3000];

    /// <summary>What is done with a dwelling of each size, from the description each time.</summary>
    private static readonly (string Name, Action<LayoutEvaluator, Dwelling> Do)[] Works =
    [
        ("evaluate", (evaluator, house) => evaluator.Evaluate(house)),
        ("text with remedies", (evaluator, house) => evaluator.Evaluate(house).ToText()),
        ("open and move", OpenAndMove),
        ("add and remove", AddAndRemove),
        ("marks", (evaluator, house) => MarkSheet.For(evaluator.Evaluate(house))),
        ("plan", (evaluator, house) => new RoughInPlanner(evaluator.Rules).Plan(house)),
    ];

    public static void Print()
    {
        LayoutEvaluator evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice);
        Console.WriteLine("| kind | " + string.Join(" | ", Works.Select(work => work.Name)) + " |\n|---|" + string.Concat(Works.Select(_ => "---|")));
        foreach ((string name, Func<int, Dwelling> make) in GrowthKinds.All)
        {
            Console.WriteLine("| " + name + " | " + string.Join(" | ", Works.Select(work => Cell(make, house => IsTaken(evaluator, house), house => work.Do(evaluator, house)))) + " |");
        }
    }

    /// <summary>Whether a dwelling isn't past a cap: turning one away is cheap, and says nothing of how work grows.</summary>
    private static bool IsTaken(LayoutEvaluator evaluator, Dwelling house) => !evaluator.Evaluate(house).Findings.Any(finding => finding.Fault is { Kind: LayoutFaultKind.BeyondMeasure });

    private static void OpenAndMove(LayoutEvaluator evaluator, Dwelling house)
    {
        LayoutSession session = evaluator.Open(house);
        foreach (PlacedBox placed in house.PlacedBoxes().Take(1))
        {
            session.Move(placed.Box.Id, placed.Box.Height!.Value.WithValue(placed.Box.Height!.Value.Value + Distance.FromInches(1)));
        }
    }

    /// <summary>A box more on the first wall, and away again: mostly the opening, unless it touches more than it has to.</summary>
    private static void AddAndRemove(LayoutEvaluator evaluator, Dwelling house)
    {
        LayoutSession session = evaluator.Open(house);
        Room room = house.Rooms[0];
        for (int i = 0; i < 10; i++)
        {
            session.Add(room.Id + "/" + room.Walls[0].Id, new DeviceBox("one more", BoxPurpose.General).WithAt(Distance.FromInches(30)).WithHeight(BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor)));
            session.Remove("one more");
        }
    }

    /// <summary>Exponents of time and bytes, and the largest size with its milliseconds.</summary>
    private static string Cell(Func<int, Dwelling> make, Predicate<Dwelling> isTaken, Action<Dwelling> work)
    {
        List<(double Size, double Ms, double Bytes)> measured = [];
        work(make(Sizes[0]));
        foreach (int size in Sizes)
        {
            Dwelling house = make(size);
            if (!isTaken(house))
            {
                break;
            }

            (double ms, double bytes) = Best(() => work(house));
            measured.Add((size, ms, bytes));
            if (ms * 4 > LongestMs)
            {
                break;
            }
        }

        double time = Exponent(measured.ConvertAll(one => (one.Size, one.Ms)));
        double space = Exponent(measured.ConvertAll(one => (one.Size, one.Bytes)));
        (double largest, double last, _) = measured[^1];
        string text = string.Create(CultureInfo.InvariantCulture, $"{time:0.0}, {space:0.0} ({largest:0}: {last:0.0} ms)");
        return time > Marked || space > Marked ? "**" + text + "**" : text;
    }

    private static (double Ms, double Bytes) Best(Action work)
    {
        double best = double.MaxValue;
        double bytes = 0;
        Stopwatch all = Stopwatch.StartNew();
        for (int n = 0; n < 5 && (n == 0 || all.ElapsedMilliseconds < 300); n++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            TimeSpan start = Environment.CpuUsage.TotalTime;
            work();
            best = Math.Min(best, (Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
            bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        }

        return (best, bytes);
    }

    /// <summary>The slope through the three largest sizes on double logarithmic paper: small ones show what every call costs.</summary>
    private static double Exponent(List<(double Size, double Value)> measured)
    {
        List<(double X, double Y)> logs = measured.Skip(Math.Max(0, measured.Count - 3)).Select(one => (Math.Log(one.Size), Math.Log(Math.Max(one.Value, 1e-3)))).ToList();
        double x = logs.Average(one => one.X);
        double y = logs.Average(one => one.Y);
        double spread = logs.Sum(one => (one.X - x) * (one.X - x));
        return spread == 0 ? 0 : logs.Sum(one => (one.X - x) * (one.Y - y)) / spread;
    }
}
