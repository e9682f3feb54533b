using System;

namespace BoxHeights;

/// <summary>Where a wall is on the page, and how large: whole ticks to a thousandth of a user unit.</summary>
internal sealed class ElevationFrame
{
    private readonly long left;
    private readonly long zero;

    private ElevationFrame(long left, long zero, long scale, PageRect area)
    {
        this.left = left;
        this.zero = zero;
        Scale = scale;
        Area = area;
    }

    /// <summary>Ticks to a thousandth of a user unit.</summary>
    public long Scale { get; }

    /// <summary>The part of the page between the wall's ends, from the highest that is drawn to the lowest.</summary>
    public PageRect Area { get; }

    /// <summary>Where the storey's subfloor is on the page.</summary>
    public long Zero => zero;

    /// <summary>A frame for a wall.</summary>
    /// <param name="length">The wall's length.</param>
    /// <param name="low">The lowest that is drawn.</param>
    /// <param name="high">The highest.</param>
    /// <param name="left">Where its left end is.</param>
    /// <param name="top">Where the highest is.</param>
    /// <param name="width">How wide it may be.</param>
    /// <param name="height">How high it may be.</param>
    public static ElevationFrame Within(Distance length, Distance low, Distance high, long left, long top, long width, long height)
    {
        long tall = (high - low).Ticks;
        long scale = Math.Max(1, Math.Max(Least(length.Ticks, width), Least(tall, height)));
        return new(left, top + Round(high.Ticks, scale), scale, new(left, top, Round(length.Ticks, scale), Round(tall, scale)));
    }

    public long X(Distance along) => left + Round(along.Ticks, Scale);

    public long Y(Distance up) => zero - Round(up.Ticks, Scale);

    public PageRect Rect(Distance from, Distance to, Distance bottom, Distance top) => new(X(from), Y(top), X(to) - X(from), Y(bottom) - Y(top));

    private static long Least(long ticks, long thousandths) => (ticks + thousandths - 1) / thousandths;

    // To the nearest, halves upward, for lengths below zero too.
    private static long Round(long ticks, long scale)
    {
        long floor = ticks / scale;
        long rest = ticks - (floor * scale);
        return rest < 0 ? (2 * -rest > scale ? floor - 1 : floor) : 2 * rest >= scale ? floor + 1 : floor;
    }
}
