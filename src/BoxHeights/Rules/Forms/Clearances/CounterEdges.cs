namespace BoxHeights.Rules;

/// <summary>A box and its plate wholly over or wholly under a countertop, and wholly on or wholly off the splash on it: across an edge the counter can't be set.</summary>
/// <remarks>A counter whose top isn't stated is taken to be 36 in high, which findings say. At a range or a refrigerator there is no countertop. What the base under it hides isn't its concern.</remarks>
internal static class CounterEdges
{
    /// <summary>States the places that are clear of countertops and splashes.</summary>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="wall">Its wall.</param>
    /// <param name="usual">How thick tops are that aren't stated.</param>
    /// <param name="statement">Takes the slabs.</param>
    public static void State(PlacementSite site, Wall wall, DistanceRange usual, PlacementStatement statement)
    {
        foreach (Counter counter in wall.Counters)
        {
            statement.About = counter;
            Along(counter, Clear(site, counter, usual), site, statement);
        }

        foreach (Finish finish in wall.Finishes)
        {
            if (IsSplash(site.Surface, finish))
            {
                statement.About = finish;
                PlateEdges.Region(site, statement, finish.Left, finish.Right, OnUsualCounter(site, finish, finish.Bottom), OnUsualCounter(site, finish, finish.Top), inside => inside);
            }
        }
    }

    /// <summary>Whether a finish begins at a countertop, or ends at a height above one.</summary>
    public static bool IsSplash(ResolvedSurface surface, Finish finish)
    {
        foreach (Counter counter in surface.Wall!.Counters)
        {
            if (counter.Left < finish.Right && finish.Left < counter.Right
                && (finish.Bottom?.Datum == Datum.Countertop || finish.Top?.Datum == Datum.Countertop || (finish.Bottom is { } bottom && bottom == surface.UsualTopOf(counter))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The counter at a place whose height is only assumed; null where it is stated.</summary>
    public static Wording? AssumedTop(PlacementSite site, DistanceRange along)
    {
        foreach (Counter counter in site.Surface.Wall?.Counters ?? default)
        {
            if (counter.Top is null && counter.Left <= along.To && along.From <= counter.Right)
            {
                Level top = site.Surface.UsualTopOf(counter);
                return $"counter {counter.Id:counter} assumed {Printed.Exactly(top, site.Units):top}";
            }
        }

        return null;
    }

    private static Level? OnUsualCounter(PlacementSite site, Finish finish, Level? edge) =>
        edge is { Datum: Datum.Countertop } above && site.Surface.CounterOn(finish.Left, finish.Right) is { } counter && site.Surface.UsualTopOf(counter) is { Datum: not Datum.Countertop } top
            ? new Level(top.Offset + above.Offset, top.Datum)
            : edge;

    private static void Along(Counter counter, in AllowedHeights clear, PlacementSite site, PlacementStatement statement)
    {
        Distance half = Distance.Max(Distance.Max(site.Box.Plate?.HalfWidth ?? Distance.Zero, site.Box.Size.HalfWidth) - Distance.FromTicks(1), Distance.Zero);
        Distance from = counter.Left;
        while (from < counter.Right)
        {
            CounterInterruption? gap = NextGap(counter, from);
            if (gap is null || gap.Left > from)
            {
                statement.Within(from - half, (gap?.Left ?? counter.Right) + half, clear);
            }

            if (gap is not null && !InterruptionKind.Known.Contains(gap.Kind))
            {
                statement.Within(gap.Left - half, gap.Right + half, AllowedHeights.OneOf(clear, AllowedHeights.Anything, MissingFacts.ObstructionHeight));
            }

            from = gap?.Right ?? counter.Right;
        }
    }

    /// <summary>The first interruption that may leave no top along the wall; sinks, basins and cooktops are set into it.</summary>
    private static CounterInterruption? NextGap(Counter counter, Distance from)
    {
        CounterInterruption? next = null;
        foreach (CounterInterruption one in counter.Interruptions)
        {
            bool isSetIn = one.Kind == InterruptionKind.Sink || one.Kind == InterruptionKind.Basin || one.Kind == InterruptionKind.Cooktop;
            if (!isSetIn && one.Right > from && one.Left < counter.Right && (next is null || one.Left < next.Left))
            {
                next = one;
            }
        }

        return next;
    }

    private static AllowedHeights Clear(PlacementSite site, Counter counter, DistanceRange usual)
    {
        Level top = site.Surface.UsualTopOf(counter);
        if (top.Datum == Datum.Countertop)
        {
            return AllowedHeights.DependsOn(MissingFacts.ObstructionHeight);
        }

        DistanceRange thick = counter.Thickness is { } stated ? stated : usual;
        AllowedHeights over = AllowedHeights.Anything;
        AllowedHeights under = AllowedHeights.Anything;
        if (site.Box.Plate is not null)
        {
            over &= site.AtLeast(TargetLine.PlateBottom, top.Offset, top.Datum);
            under &= site.AtMost(TargetLine.PlateTop, top.Offset - thick, top.Datum);
        }

        // A plate that is taller than its box decides alone; a box of no known size says nothing of its own.
        if (site.Box.Plate is not { } plate || (site.Box.Size.IsStated && site.Box.Size.HeightRange.To > plate.Height))
        {
            over &= site.AtLeast(TargetLine.BoxBottom, top.Offset, top.Datum);
            under &= site.AtMost(TargetLine.BoxTop, top.Offset - thick, top.Datum);
        }

        return over | new AllowedHeights(under.Sure, under.Possible, under.Needs | (thick.IsExact ? MissingFacts.None : MissingFacts.CounterThickness));
    }
}
