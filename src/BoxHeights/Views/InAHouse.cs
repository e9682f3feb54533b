using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Whether places are near enough for their distances to be worked out, and drawn.</summary>
internal static class InAHouse
{
    public static bool Holds(Distance place) => WallPlan.IsInAHouse(new(place, Distance.Zero));

    public static bool Holds(DistanceRange range) => Holds(range.From) && Holds(range.To);

    /// <summary>Every edge that is known.</summary>
    public static bool Holds(in WallArea area) => Holds(area.Left) && Holds(area.Right) && Holds(area.Bottom ?? Distance.Zero) && Holds(area.Top ?? Distance.Zero);

    /// <summary>Every place in what a view tells of a wall.</summary>
    public static bool Holds(object? found) => found switch
    {
        DistanceRange range => Holds(range),
        OpeningView opening => Holds(opening.Area) && Holds(opening.Casing),
        WallPart part => Holds(part.Area),
        StudView stud => Holds(stud.Left) && Holds(stud.Right) && Holds(stud.Bottom ?? Distance.Zero) && Holds(stud.Top ?? Distance.Zero),
        ProfilePoint point => Holds(point.Along) && Holds(point.Up),
        StairView stair => Holds((object)stair.Treads),
        StairTread tread => Holds(tread.Along.RoundNearest()) && Holds(tread.Up),
        IEnumerable<object> all => HoldsAll(all),
        IEnumerable<DistanceRange> ranges => HoldsAll(ranges),
        _ => true,
    };

    private static bool HoldsAll<T>(IEnumerable<T> all)
    {
        foreach (T one in all)
        {
            if (!Holds((object?)one))
            {
                return false;
            }
        }

        return true;
    }
}
