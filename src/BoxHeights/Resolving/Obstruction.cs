using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Something that stands against a wall and is reached over.</summary>
[Told]
internal readonly partial struct Obstruction
{
    public Distance Left { get; }

    public Distance Right { get; }

    public Level? Top { get; }

    public Distance? Depth { get; }

    public Distance? KneeSpace { get; }

    public bool IsLaundryMachine { get; }

    /// <summary>All that stand against a surface.</summary>
    public static Obstruction[] Before(ResolvedSurface surface)
    {
        if (surface.Fixtures.Count == 0 && surface.Wall is not { Counters.Count: > 0 } and not { Coverings.Count: > 0 })
        {
            return [];
        }

        List<Obstruction> found = [];
        if (surface.Wall is { } wall)
        {
            foreach (Counter counter in wall.Counters)
            {
                Add(found, counter, wall);
            }

            foreach (Covering cabinet in wall.Coverings)
            {
                // Of one that ends under the ceiling it is said how high it is; how deep, nowhere.
                if (cabinet.Kind == CoveringKind.BaseCabinet && cabinet.Top is { } top && !IsUnderACounter(cabinet, wall))
                {
                    found.Add(new(cabinet.Left, cabinet.Right, top, null, Distance.Zero, false));
                }
            }
        }

        foreach (Fixture fixture in surface.Fixtures)
        {
            bool laundry = fixture.Kind == FixtureKind.Washer || fixture.Kind == FixtureKind.Dryer;
            if (laundry && fixture.Left is { } left && fixture.Right is { } right)
            {
                found.Add(new(left, right, fixture.Top, fixture.Depth, Distance.Zero, true));
            }
        }

        return found.ToArray();
    }

    /// <summary>A counter, in parts where cabinets stand under some of it: no knees fit there, unless its knee space is stated.</summary>
    private static void Add(List<Obstruction> found, Counter counter, Wall wall)
    {
        DistanceSet open = counter.Left < counter.Right ? DistanceSet.Between(counter.Left, counter.Right) : DistanceSet.Empty;
        foreach (Covering cabinet in counter.KneeSpace is null ? wall.Coverings : default)
        {
            Distance left = Distance.Max(cabinet.Left, counter.Left);
            Distance right = Distance.Min(cabinet.Right, counter.Right);
            if (cabinet.Kind == CoveringKind.BaseCabinet && left < right)
            {
                found.Add(new(left, right, counter.Top, counter.Depth, Distance.Zero, false));
                open &= DistanceSet.Outside(left, right);
            }
        }

        for (int i = 0; i < open.Count; i++)
        {
            if (open[i].Width > Distance.Zero)
            {
                found.Add(new(open[i].From, open[i].To, counter.Top, counter.Depth, counter.KneeSpace, false));
            }
        }
    }

    private static bool IsUnderACounter(Covering cabinet, Wall wall) => wall.Counters.Exists(counter => cabinet.Left < counter.Right && counter.Left < cabinet.Right);
}
