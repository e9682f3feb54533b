using System;
using System.Linq;
using BenchmarkDotNet.Running;
using BoxHeights.Benchmarks;

switch (args)
{
    case ["--bdn", .. string[] rest]:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(rest.Length == 0 ? ["--filter", "*"] : rest);
        return 0;
    case [ColdStart.ChildFlag, string key]:
        ColdStart.Measure(key);
        return 0;
    case [ColdHouse.ChildFlag]:
        ColdHouse.Measure();
        return 0;
    case ["--cold"]:
        ColdStart.Print();
        Console.WriteLine();
        ColdHouse.Print();
        return 0;
    case ["--pictures"]:
        PictureTimes.Print();
        Console.WriteLine();
        PictureTimes.PrintBooklets();
        return 0;
    case ["--pointer"]:
        PointerTimes.Print();
        return 0;
    case ["--growth"]:
        Growth.Print();
        return 0;
    case ["--batch"]:
        Batch.Print(Workload.Create());
        return 0;
    case ["--house"]:
        WholeHouseTimes.Print();
        return 0;
    case ["--plan"]:
        if (!PlanTimes.Agree())
        {
            return 1;
        }

        Console.WriteLine();
        PlanTimes.Print();
        return 0;
    case [] or ["--check"] or [Ratios.ChildFlag]:
        Workload workload = Workload.Create();
        Contender[] contenders = SelfCheck.Contenders(workload);
        if (args.Contains(Ratios.ChildFlag))
        {
            Ratios.Measure(workload, contenders);
            return 0;
        }

        if (!SelfCheck.Agree(workload, contenders) || (args.Length > 0 && !PlanTimes.Agree()))
        {
            return 1;
        }

        if (args.Length == 0)
        {
            Console.WriteLine();
            Ratios.Print(contenders);
        }

        return 0;
    default:
        Console.Error.WriteLine("Nothing: ratios to the yardstick. --check: only that all contenders find the same. --cold: first evaluations. --plan: planning runs. --pictures: walls as SVG, houses as booklets. --pointer: a box carried over a wall. --growth: how time and bytes grow with each kind of thing. --house: the example house at 1, 10 and 100 times its size. --batch: many houses through one evaluator, on one core and on all. --bdn [options]: tables with allocations.");
        return 2;
}
