using System;
using System.Diagnostics;

namespace BoxHeights.Benchmarks;

/// <summary>Times contenders in short slices that alternate in one process, so that a disturbance hits all of them alike.</summary>
internal static class Slices
{
    private const int SliceCount = 41;
    private static readonly TimeSpan SliceTime = TimeSpan.FromMilliseconds(2);
    private static readonly TimeSpan WarmUp = TimeSpan.FromSeconds(4);

    /// <summary>Times all contenders on a workload, each slice over all houses or more.</summary>
    /// <returns>For each contender the nanoseconds a box of each slice, fastest first.</returns>
    public static double[][] Run(Workload workload, Contender[] contenders)
    {
        int houses = workload.Dwellings.Length;
        Stopwatch warming = Stopwatch.StartNew();
        double[] roundTime = new double[contenders.Length];
        while (warming.Elapsed < WarmUp)
        {
            for (int c = 0; c < contenders.Length; c++)
            {
                roundTime[c] = Time(contenders[c], houses, 1);
            }
        }

        double[][] times = new double[contenders.Length][];
        for (int c = 0; c < contenders.Length; c++)
        {
            times[c] = new double[SliceCount];
        }

        for (int slice = 0; slice < SliceCount; slice++)
        {
            for (int turn = 0; turn < contenders.Length; turn++)
            {
                int c = slice % 2 == 0 ? turn : contenders.Length - 1 - turn;
                int rounds = (int)Math.Max(1, SliceTime.TotalNanoseconds / roundTime[c]);

                // A round that isn't timed takes the caches back from the contender before.
                _ = Time(contenders[c], houses, 1);
                times[c][slice] = Time(contenders[c], houses, rounds) / ((double)rounds * workload.BoxCount);
            }
        }

        foreach (double[] one in times)
        {
            Array.Sort(one);
        }

        return times;
    }

    /// <summary>The 20th percentile of sorted times.</summary>
    public static double Percentile20(double[] sorted) => sorted[sorted.Length / 5];

    /// <summary>The bytes that judging each house once allocates, a box.</summary>
    public static double BytesPerBox(Workload workload, Contender contender)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        _ = Time(contender, workload.Dwellings.Length, 1);
        return (GC.GetAllocatedBytesForCurrentThread() - before) / (double)workload.BoxCount;
    }

    private static double Time(Contender contender, int houses, int rounds)
    {
        int found = 0;
        long start = Stopwatch.GetTimestamp();
        for (int round = 0; round < rounds; round++)
        {
            for (int house = 0; house < houses; house++)
            {
                found += contender.Judge(house);
            }
        }

        double time = Stopwatch.GetElapsedTime(start).TotalNanoseconds;
        return found > 0 ? time : throw new InvalidOperationException("The houses have findings.");
    }
}
