using System;
using BenchmarkDotNet.Attributes;

namespace BoxHeights.Benchmarks;

/// <summary>All houses of the workload at each call: for the table of allocations.</summary>
[MemoryDiagnoser]
public class HouseTables
{
    private Workload workload = null!;
    private Contender[] contenders = null!;

    /// <summary>The houses are made, and sessions opened, outside what is timed.</summary>
    [GlobalSetup]
    public void Open()
    {
        workload = Workload.Create();
        contenders = SelfCheck.Contenders(workload);
    }

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true)]
    public int FusedLoop() => JudgeAll(0);

    /// <summary>Open sessions, every box judged again.</summary>
    [Benchmark]
    public int ReEvaluating() => JudgeAll(2);

    /// <summary>From the caller's objects.</summary>
    [Benchmark]
    public int FromObjects() => JudgeAll(3);

    /// <summary>A validator for each box.</summary>
    [Benchmark]
    public int FluentValidation() => JudgeAll(4);

    private int JudgeAll(int contender)
    {
        int found = 0;
        for (int house = 0; house < workload.Dwellings.Length; house++)
        {
            found += contenders[contender].Judge(house);
        }

        return found;
    }
}

/// <summary>A thousand different lengths at each call, read and printed.</summary>
[MemoryDiagnoser]
public class TextTables
{
    private const int Many = 1_000;
    private readonly string[] texts = new string[Many];
    private readonly Distance[] distances = new Distance[Many];
    private readonly char[] room = new char[64];

    /// <summary>Sixteenths of an inch up to some eight feet.</summary>
    [GlobalSetup]
    public void Make()
    {
        for (int i = 0; i < Many; i++)
        {
            distances[i] = Distance.FromInches((i * 3) + 1, i % 16, 16);
            texts[i] = distances[i].ToString("ft16", null);
        }
    }

    /// <summary>Feet, inches and sixteenths.</summary>
    [Benchmark(OperationsPerInvoke = Many)]
    public long Parse()
    {
        long sum = 0;
        foreach (string text in texts)
        {
            sum += Distance.TryParse(text, out Distance distance) ? distance.Ticks : 0;
        }

        return sum;
    }

    /// <summary>Into the caller's buffer.</summary>
    [Benchmark(OperationsPerInvoke = Many)]
    public int Format()
    {
        int written = 0;
        foreach (Distance distance in distances)
        {
            written += ((ISpanFormattable)distance).TryFormat(room, out int chars, "ft16", null) ? chars : 0;
        }

        return written;
    }
}
