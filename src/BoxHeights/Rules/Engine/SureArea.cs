using System;

namespace BoxHeights.Rules;

/// <summary>A rectangle of places, along the wall and in stick readings, that every placement rule surely allows.</summary>
internal readonly struct SureArea
{
    // Far beyond any house, and near enough to zero that differences don't overflow.
    private const long Far = 1L << 61;

    private readonly long left;
    private readonly long right;
    private readonly long low;
    private readonly long high;

    public SureArea(long left, long right, long low, long high)
    {
        this.left = Math.Max(left, -Far);
        this.right = Math.Min(right, Far);
        this.low = Math.Max(low, -Far);
        this.high = Math.Min(high, Far);
    }

    /// <summary>Holds no place.</summary>
    public static SureArea Empty => new(1, 0, 1, 0);

    /// <summary>Whether a place lies in it: one test of signs, without branches.</summary>
    public bool Holds(long at, long reading) => ((at - left) | (right - at) | (reading - low) | (high - reading)) >= 0;
}
