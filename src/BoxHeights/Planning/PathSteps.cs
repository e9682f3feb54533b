namespace BoxHeights;

/// <summary>Places in order along a line from 0, what each costs, and how far apart two neighbors of a plan may be.</summary>
internal sealed class PathSteps
{
    public PathSteps(long[] at, long[] weight, int[] furthest, int first, int last, long length, bool isOfOneWeight)
    {
        At = at;
        Weight = weight;
        Furthest = furthest;
        First = first;
        Last = last;
        Length = length;
        IsOfOneWeight = isOfOneWeight;
    }

    /// <summary>The places, each right of the one before.</summary>
    public long[] At { get; }

    /// <summary>What each costs: more than zero.</summary>
    public long[] Weight { get; }

    /// <summary>The furthest place that may be next after each: at least the next one, and never left of that of the place before.</summary>
    public int[] Furthest { get; }

    /// <summary>The furthest place that may be the first of a plan.</summary>
    public int First { get; }

    /// <summary>The nearest place that may be the last of a plan.</summary>
    public int Last { get; }

    /// <summary>The length of the line.</summary>
    public long Length { get; }

    /// <summary>Whether all places cost the same, as is usual.</summary>
    public bool IsOfOneWeight { get; }
}
