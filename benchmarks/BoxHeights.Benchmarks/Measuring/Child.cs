using System;
using System.Diagnostics;

namespace BoxHeights.Benchmarks;

/// <summary>Runs this program again in a fresh process.</summary>
internal static class Child
{
    public static string Run(params string[] arguments)
    {
        using Process child = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, arguments) { RedirectStandardOutput = true })!;
        string output = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return child.ExitCode == 0 ? output : throw new InvalidOperationException(string.Join(' ', arguments) + " ended with " + child.ExitCode + ": " + output);
    }

    public static double Median(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }
}
