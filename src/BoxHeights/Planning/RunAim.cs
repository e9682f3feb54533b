using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What is aimed at in one run, in ticks and in indices of its places.</summary>
internal sealed class RunAim
{
    /// <summary>How far any point shall be from a place, where that can be had.</summary>
    public long Reach { get; init; }

    /// <summary>How far it may be where it can't; at least as much, and at most twice.</summary>
    public long Limit { get; init; }

    /// <summary>Whether a last resort weighs more than any number of boxes.</summary>
    public bool LastResortCosts { get; init; }

    /// <summary>The places of each wish that has any.</summary>
    public List<(int First, int End)> Wishes { get; } = [];

    /// <summary>The places of each face that gets a box.</summary>
    public List<(int First, int End)> Faces { get; } = [];
}
