using System;

namespace BoxHeights.Rules;

/// <summary>Plates that lie wholly on or wholly off something on the wall: never across its edge, never buried.</summary>
internal static class PlateEdges
{
    /// <summary>Finishes but for splashes, which belong to their countertop.</summary>
    public static void OfFinishes(PlacementSite site, Wall wall, PlacementStatement statement)
    {
        foreach (Finish finish in wall.Finishes)
        {
            if (!CounterEdges.IsSplash(site.Surface, finish))
            {
                statement.About = finish;
                Region(site, statement, finish.Left, finish.Right, finish.Bottom, finish.Top, inside => inside);
            }
        }
    }

    /// <summary>What hides the wall, down to its light rail.</summary>
    public static void OfCoverings(PlacementSite site, Wall wall, PlacementStatement statement)
    {
        foreach (Covering covering in wall.Coverings)
        {
            Level? bottom = covering.Bottom is { } low ? new Level(low.Offset - (covering.LightRail ?? Distance.Zero), low.Datum) : null;
            statement.About = covering;
            Region(site, statement, covering.Left, covering.Right, bottom, covering.Top, inside => IsOpen(covering) switch
            {
                true => inside,
                false => AllowedHeights.Nothing,
                _ => inside.If(MissingFacts.OpenInside),
            });
        }
    }

    /// <summary>Openings with what is put round them.</summary>
    public static void OfOpenings(PlacementSite site, PlacementStatement statement)
    {
        foreach (TrimmedOpening trimmed in site.TrimmedOpenings)
        {
            statement.About = trimmed.Opening;
            Region(site, statement, trimmed.Left, trimmed.Right, trimmed.Bottom, trimmed.Top, _ => AllowedHeights.Nothing);
        }
    }

    /// <summary>Some coverings never leave a box within reach; of cabinets it has to be said.</summary>
    private static bool? IsOpen(Covering covering) =>
        covering.OpenInside ?? (covering.Kind == CoveringKind.Mirror || covering.Kind == CoveringKind.TubSurround || covering.Kind == CoveringKind.Panel ? false : null);

    /// <summary>A plate over, under, beside or, where that is allowed, wholly inside a region.</summary>
    public static void Region(
        PlacementSite site, PlacementStatement statement, Distance left, Distance right, Level? bottom, Level? top, Func<AllowedHeights, AllowedHeights> ifInside)
    {
        if (site.Box.Plate is not { } plate)
        {
            statement.Within(left, right, AllowedHeights.DependsOn(MissingFacts.BoxSize));
            return;
        }

        AllowedHeights over = top is { } high ? site.AtLeast(TargetLine.PlateBottom, high, left, right) : AllowedHeights.Nothing;
        AllowedHeights under = bottom is { } low ? site.AtMost(TargetLine.PlateTop, low, left, right) : AllowedHeights.Nothing;
        AllowedHeights within = AllowedHeights.Anything;
        within = bottom is { } floor ? within & site.AtLeast(TargetLine.PlateBottom, floor, left, right) : within;
        within = top is { } ceiling ? within & site.AtMost(TargetLine.PlateTop, ceiling, left, right) : within;
        AllowedHeights off = over | under;
        AllowedHeights on = off | ifInside(within);

        // Between its edges a plate may be on it; across an edge only over or under it. In a corner there is no edge.
        Distance half = plate.HalfWidth;
        bool leftEdge = left > Distance.Zero;
        bool rightEdge = right < site.Surface.Length;
        Distance from = leftEdge ? left + half : Distance.MinValue;
        Distance to = rightEdge ? right - half : Distance.MaxValue;
        if (from > to)
        {
            Across(left, right);
            return;
        }

        statement.Within(from, to, on);
        if (leftEdge)
        {
            Across(left, left);
        }

        if (rightEdge)
        {
            Across(right, right);
        }

        void Across(Distance first, Distance last) =>
            statement.Within(first - half + Distance.FromTicks(1), last + half - Distance.FromTicks(1), off);
    }
}
