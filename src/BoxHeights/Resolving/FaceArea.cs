using System;
using System.Numerics;

namespace BoxHeights;

/// <summary>How much of a wall face lies between two places along it, from the subfloor up to the top of its framing: exactly, as a fraction of square ticks.</summary>
internal sealed class FaceArea
{
    private readonly Items<WallTopPoint> top;

    private FaceArea(Items<WallTopPoint> top) => this.top = top;

    /// <summary>The face of a wall whose top is stated, or that is level at a height.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="height">Its height where no top is stated; null where that isn't known.</param>
    public static FaceArea? Of(Wall wall, Distance? height) =>
        wall.Top.Count > 0 ? new(wall.Top) : height is { } level ? new(new[] { new WallTopPoint(Distance.Zero, level) }) : null;

    /// <summary>The area between two places. Beyond its first and last point the top goes on level.</summary>
    public (BigInteger Area, BigInteger Per) Between(long left, long right)
    {
        BigInteger twice = BigInteger.Zero;
        BigInteger per = BigInteger.One;
        Add(left, Math.Min(right, top[0].Along.Ticks), top[0], top[0]);
        for (int i = 1; i < top.Count; i++)
        {
            Add(Math.Max(left, top[i - 1].Along.Ticks), Math.Min(right, top[i].Along.Ticks), top[i - 1], top[i]);
        }

        Add(Math.Max(left, top[top.Count - 1].Along.Ticks), right, top[top.Count - 1], top[top.Count - 1]);
        return (twice, per * 2);

        // Twice the trapezoid under a slope: its width by the heights at both its sides, over the slope's whole run.
        void Add(long from, long to, WallTopPoint begin, WallTopPoint end)
        {
            if (from >= to)
            {
                return;
            }

            BigInteger run = begin == end ? BigInteger.One : end.Along.Ticks - begin.Along.Ticks;
            BigInteger climbed = new BigInteger(from) + to - (2 * new BigInteger(begin.Along.Ticks));
            BigInteger heights = (2 * run * begin.Up.Ticks) + ((end.Up.Ticks - begin.Up.Ticks) * (begin == end ? BigInteger.Zero : climbed));
            twice = (twice * run) + ((to - from) * heights * per);
            per *= run;
        }
    }
}
