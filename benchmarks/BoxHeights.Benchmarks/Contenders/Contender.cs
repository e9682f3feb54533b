using System.Collections.Generic;

namespace BoxHeights.Benchmarks;

/// <summary>A way to judge the houses of a workload.</summary>
internal abstract class Contender(string name)
{
    public string Name { get; } = name;

    /// <summary>Judges a house: what is timed.</summary>
    /// <returns>How many findings there are.</returns>
    public abstract int Judge(int house);

    /// <summary>The findings of a house, to be compared with those of the others.</summary>
    public abstract IEnumerable<(string Box, string Rule)> Find(int house);
}
