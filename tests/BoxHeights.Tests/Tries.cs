using System;
using FsCheck;
using Microsoft.FSharp.Core;

namespace BoxHeights.Tests;

/// <summary>
/// How many random cases a property is tried with, and which: a tenth of them from one seed, so that a failure is everybody's failure;
/// all of them where BOXHEIGHTS_SEEDS is "all", as CI sets it for one target; other ones each time where it is "fresh".
/// </summary>
internal static class Tries
{
    private static readonly string Setting = Environment.GetEnvironmentVariable("BOXHEIGHTS_SEEDS") ?? "";

    /// <summary>All cases, or a tenth of them and at least ten.</summary>
    public static int Of(int all) => Setting is "all" or "fresh" ? all : Math.Min(all, Math.Max(10, all / 10));

    /// <summary>How a property is tried with so many random cases.</summary>
    public static Config Config(int all) => Always(Of(all));

    /// <summary>The same for a property that takes no time: always all cases.</summary>
    public static Config Always(int all)
    {
        Config config = FsCheck.Config.QuickThrowOnFailure.WithMaxTest(all);
        return Setting == "fresh" ? config : config.WithReplay(FSharpOption<Replay>.Some(new Replay(new Rnd(20261130, 1), FSharpOption<int>.None)));
    }
}
