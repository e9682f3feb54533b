using System.Numerics;

namespace BoxHeights.Rules;

/// <summary>A plate, wholly under the top of the framing where the wall's top is stated: half walls, knee walls, walls along a stair.</summary>
/// <remarks>
/// Under a level top the limit is exact, under a step too. Along a slope one slab is stated for each inch of the wall, with its lower end as the limit:
/// a plate that fits by less than what the slope rises in an inch may be remarked on, and none that doesn't fit passes. A slope longer than 20 ft is cut
/// into as many slabs as one of 20 ft. Where no top is stated, nothing is.
/// </remarks>
internal static class WallTop
{
    private const int MostPieces = 240;

    private static readonly Distance Piece = Distance.FromInches(1, 0, 1);

    /// <summary>States the heights under it.</summary>
    public static void State(PlacementSite site, Wall wall, PlacementStatement statement)
    {
        Items<WallTopPoint> top = wall.Top;
        for (int i = 1; i < top.Count; i++)
        {
            WallTopPoint left = top[i - 1];
            WallTopPoint right = top[i];
            if (left.Up == right.Up)
            {
                Under(site, statement, left.Along, right.Along, left.Up);
            }
            else if (left.Along < right.Along)
            {
                UnderSlope(site, statement, left, right);
            }
        }
    }

    private static void UnderSlope(PlacementSite site, PlacementStatement statement, WallTopPoint left, WallTopPoint right)
    {
        Distance run = right.Along - left.Along;
        Distance step = Distance.Max(Piece, Distance.FromTicks((run.Ticks / MostPieces) + 1));
        Distance from = left.Along;
        while (from < right.Along)
        {
            Distance to = right.Along - from > step ? from + step : right.Along;
            Under(site, statement, from, to, left.Up < right.Up ? Rise(left.Up, right.Up, from - left.Along, run) : Rise(right.Up, left.Up, right.Along - to, run));
            from = to;
        }
    }

    /// <summary>The height of a slope so far from its lower end, rounded down to the grid. The product of two lengths is beyond a long.</summary>
    private static Distance Rise(Distance low, Distance high, Distance along, Distance run) =>
        low + Distance.FromTicks((long)(new BigInteger((high - low).Ticks) * along.Ticks / run.Ticks));

    /// <summary>One limit for every plate that reaches into a stretch; one that only touches its end isn't under it.</summary>
    private static void Under(PlacementSite site, PlacementStatement statement, Distance left, Distance right, Distance up)
    {
        (TargetLine line, Distance half) = site.Box.Plate is { } plate
            ? (TargetLine.PlateTop, plate.HalfWidth)
            : (TargetLine.BoxTop, EvenSize.Half(site.Box.Size.WidthRange.To));
        if (left < right)
        {
            Distance inside = half - Distance.FromTicks(1);
            statement.Within(left - inside, right + inside, site.AtMost(line, up, Datum.Subfloor));
        }
    }
}
