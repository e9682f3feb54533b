using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Planning;

/// <summary>A plain layered dynamic program over how many boxes are left: every pair of places in every layer. Good places only, no wishes or faces.</summary>
internal static class LayeredRoad
{
    public static long[] Best(RunSketch sketch)
    {
        RunOracle oracle = new(sketch);
        long[] at = sketch.Places;
        int n = at.Length;
        List<int>[] after = [.. Enumerable.Range(0, n).Select(p => Enumerable.Range(p + 1, n - p - 1).TakeWhile(q => q == p + 1 || at[q] - at[p] <= 2 * sketch.Limit).Where(q => oracle.IsNext(at[p], at[q])).ToList())];

        // Layer 0: p is the last box. Layers are added until a first box can be found.
        List<long[]> worst = [[.. at.Select(p => oracle.IsEnd(p) ? 2 * (sketch.Length - p) : long.MaxValue)]];
        while (!Enumerable.Range(0, n).Any(p => worst[^1][p] < long.MaxValue && oracle.IsStart(at[p])))
        {
            long[] nearer = worst[^1];
            worst.Add([.. Enumerable.Range(0, n).Select(p => after[p].Select(q => Math.Max(at[q] - at[p], nearer[q])).DefaultIfEmpty(long.MaxValue).Min())]);
        }

        int layers = worst.Count;
        long largest = Enumerable.Range(0, n).Where(p => oracle.IsStart(at[p])).Min(p => Math.Max(2 * at[p], worst[^1][p]));
        long[][] sum = new long[layers][];
        for (int layer = 0; layer < layers; layer++)
        {
            sum[layer] = [.. Enumerable.Range(0, n).Select(p => layer == 0
                ? worst[0][p] <= largest ? 2 * Square(sketch.Length - at[p]) : long.MaxValue
                : after[p].Where(q => at[q] - at[p] <= largest && sum[layer - 1][q] < long.MaxValue).Select(q => Square(at[q] - at[p]) + sum[layer - 1][q]).DefaultIfEmpty(long.MaxValue).Min())];
        }

        List<long> plan = [];
        int here = Enumerable.Range(0, n).Where(p => oracle.IsStart(at[p]) && 2 * at[p] <= largest && sum[^1][p] < long.MaxValue).MinBy(p => (2 * Square(at[p]) + sum[^1][p], p));
        plan.Add(at[here]);
        for (int layer = layers - 2; layer >= 0; layer--)
        {
            int from = here;
            here = after[from].Where(q => at[q] - at[from] <= largest && sum[layer][q] < long.MaxValue).MinBy(q => (Square(at[q] - at[from]) + sum[layer][q], q));
            plan.Add(at[here]);
        }

        return [.. plan];
    }

    private static long Square(long length) => length * length;
}
