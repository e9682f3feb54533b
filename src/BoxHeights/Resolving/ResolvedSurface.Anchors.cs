using System.Collections.Generic;

namespace BoxHeights;

/// <content>Datums that belong to a thing on the wall, and so are at another height elsewhere: a countertop, a window's head, the underside of a cabinet. What each of them needs is told in the remarks of each <see cref="Datum"/>.</content>
internal sealed partial class ResolvedSurface
{
    // A splash on a counter on the floor is the longest chain that means anything.
    private const int MostHops = 3;

    /// <summary>Whether a datum is that of a thing: where it is depends on the place along the wall.</summary>
    public static bool IsOfAThing(Datum datum) => WhatIsMissing(datum) is not null;

    /// <summary>What there has to be for a height from such a datum to mean something; null for datums of the room.</summary>
    public static string? WhatIsMissing(Datum datum) => datum switch
    {
        Datum.Countertop => "no counter of known height stands where it is",
        Datum.SplashTop => "no finish with a known top is where it is",
        Datum.CabinetUnderside => "no wall cabinet of known height hangs where it is",
        Datum.WindowHead => "no window with a known head is in its wall",
        Datum.WindowStool => "no part of a description says where one lies: take it from the window head, or from the floor",
        Datum.Rim => "no tub or shower with a known rim stands against its wall",
        Datum.WalkingSurface => "no deck or porch of known height lies before it",
        Datum.ExistingPlate => "no existing box of known height is on its wall",
        _ => null,
    };

    /// <summary>Takes a line above the datum of a thing back to a datum of the room.</summary>
    public bool TryAnchor(Level level, Distance left, Distance right, out Level anchored)
    {
        anchored = level;
        for (int hop = 0; IsOfAThing(anchored.Datum); hop++)
        {
            if (hop == MostHops || DatumOf(anchored.Datum, left, right) is not { } thing)
            {
                return false;
            }

            anchored = new(anchored.Offset + thing.Offset, thing.Datum);
        }

        return true;
    }

    /// <summary>Where a line is above the storey's subfloor on a stretch of the wall; null where that isn't known.</summary>
    public DistanceRange? UpOf(Level level, Distance left, Distance right) =>
        TryAnchor(level, left, right, out Level anchored) && anchored.TryResolve(Space.Levels, out DistanceRange up) ? up : null;

    private Level? DatumOf(Datum datum, Distance left, Distance right)
    {
        switch (datum)
        {
            case Datum.Countertop:
                return CounterOn(left, right)?.Top;
            case Datum.WalkingSurface:
                return SurfaceBefore(left, right);
            case Datum.ExistingPlate:
                return ExistingPlate(left, right);
            case Datum.Rim:
                return NearestRim(left, right);
            case Datum.WindowStool:
                return null;
            case Datum.WindowHead:
                return NearestHead(left, right);
            case Datum.SplashTop:
                foreach (Finish finish in Wall?.Finishes ?? default)
                {
                    if (finish.Left <= right && left <= finish.Right)
                    {
                        return finish.Top;
                    }
                }

                return null;
            default:
                foreach (Covering covering in Wall?.Coverings ?? default)
                {
                    if (covering.Kind == CoveringKind.WallCabinet && covering.Left <= right && left <= covering.Right)
                    {
                        return covering.Bottom;
                    }
                }

                return null;
        }
    }

    /// <summary>What one stands on before a stretch of an outside wall: the deck or porch there; indoors the floor.</summary>
    private Level? SurfaceBefore(Distance left, Distance right)
    {
        if (!Space.IsOutside)
        {
            return new Level(Distance.Zero, Datum.FinishedFloor);
        }

        foreach (Platform platform in Platforms)
        {
            if (platform.Left <= left && right <= platform.Right)
            {
                return platform.Surface;
            }
        }

        return null;
    }

    private Level? NearestHead(Distance left, Distance right)
    {
        Level? head = null;
        Distance least = Distance.MaxValue;
        foreach (Opening opening in Wall?.Openings ?? default)
        {
            if (opening.Kind == OpeningKind.Window && Between(left, right, opening.Left, opening.Right) is var away && away < least)
            {
                least = away;
                head = opening.Head;
            }
        }

        return head;
    }

    private Level? NearestRim(Distance left, Distance right)
    {
        Level? rim = null;
        Distance least = Distance.MaxValue;
        foreach (Fixture fixture in Fixtures)
        {
            if (fixture is { Rim: { } one, Left: { } from, Right: { } to } && Between(left, right, from, to) is var away && away < least)
            {
                least = away;
                rim = one;
            }
        }

        return rim;
    }

    /// <summary>The center of the nearest box that is there already.</summary>
    private Level? ExistingPlate(Distance left, Distance right)
    {
        Level? plate = null;
        Distance least = Distance.MaxValue;
        foreach (DeviceBox box in Wall?.Boxes ?? default)
        {
            if (box.At is { } at && (box.Existing || ResolvedBox.IsUntouchedOn(box, this)) && (box.Measured?.Height ?? box.Height) is { } height && Between(left, right, at, at) is var away && away < least
                && TryCenter(box, height, out Level center))
            {
                least = away;
                plate = center;
            }
        }

        return plate;
    }

    private bool TryCenter(DeviceBox box, BoxHeight height, out Level center)
    {
        BoxSize size = ResolvedBox.SizeOf(box, catalog);
        center = default;
        if (height.Datum == Datum.ExistingPlate || height.Edge is null || (height.Edge != Edge.Center && !size.IsStated))
        {
            return false;
        }

        center = new(height.Edge == Edge.Center ? height.Value : height.AtEdge(Edge.Center, size).Value, height.Datum);
        return true;
    }

    /// <summary>The places along the wall at which another thing may be meant by a datum: where things begin and end, and halfway between two.</summary>
    public List<long> EdgesOfThings()
    {
        List<long> edges = [];
        foreach (Finish finish in Wall?.Finishes ?? default)
        {
            edges.AddRange([finish.Left.Ticks, finish.Right.Ticks]);
        }

        foreach (Covering covering in Wall?.Coverings ?? default)
        {
            edges.AddRange([covering.Left.Ticks, covering.Right.Ticks]);
        }

        foreach (Platform platform in Platforms)
        {
            edges.AddRange([platform.Left.Ticks, platform.Right.Ticks]);
        }

        AddWithHalfways([.. (Wall?.Openings ?? default).Select(opening => (opening.Left.Ticks, opening.Right.Ticks))]);
        AddWithHalfways([.. Fixtures.Select(fixture => (fixture.Left?.Ticks ?? 0, fixture.Right?.Ticks ?? 0))]);
        AddWithHalfways([.. (Wall?.Boxes ?? default).Select(box => (box.At?.Ticks ?? 0, box.At?.Ticks ?? 0))]);
        return edges;

        void AddWithHalfways(List<(long Left, long Right)> things)
        {
            foreach ((long left, long right) in things)
            {
                edges.AddRange([left, right]);
                foreach ((long next, _) in things)
                {
                    long half = right + ((next - right) / 2);
                    edges.AddRange([half, half + 1]);
                }
            }
        }
    }

    private static Distance Between(Distance left, Distance right, Distance from, Distance to) => Distance.Max(Distance.Zero, Distance.Max(from - right, left - to));
}
