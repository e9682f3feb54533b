using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Looks for the place where one box that a room lacks could go: on the wall where it is nearest to something, or in the ceiling. <see cref="RunPlaces"/> spreads boxes along a run instead.</summary>
internal static class OutletPlace
{
    // Beyond any wall of a house, so that the search ends.
    private const long MostAlong = 1L << 33;

    /// <summary>A box on a wall of a room or an outside face, at the place that is nearest by some measure; where every row together leaves none, one that gives way to a violation isn't asked.</summary>
    /// <param name="space">The room or face.</param>
    /// <param name="box">The box, without its place.</param>
    /// <param name="far">How far a place is off, the least being best; null where it won't do. Of places as good it is the first on the room's hand.</param>
    public static Items<PlacedBox> OnWall(SpaceView space, DeviceBox box, Func<int, Distance, decimal?> far)
    {
        PlacedBox? found = Nearest(space, box, far, false) ?? Nearest(space, box, far, true);
        return found is null ? default : new[] { found };
    }

    private static PlacedBox? Nearest(SpaceView space, DeviceBox box, Func<int, Distance, decimal?> far, bool inNeed)
    {
        decimal least = decimal.MaxValue;
        PlacedBox? best = null;
        foreach ((int face, Wall wall, IEnumerable<Distance> places) in Free(space, box, inNeed))
        {
            foreach (Distance at in places)
            {
                if (far(face, at) is { } off && off < least)
                {
                    least = off;
                    best = new(SurfaceAddress.Of(space.Id, wall.Id), box.WithAt(at));
                }
            }
        }

        return best;
    }

    /// <summary>A box on a wall of a room, in the middle of the longest stretch where it can be: nobody wants the only one in a corner.</summary>
    /// <param name="space">The room.</param>
    /// <param name="box">The box, without its place.</param>
    /// <param name="where">Which places will do; null for any.</param>
    public static Items<PlacedBox> InTheOpen(SpaceView space, DeviceBox box, Func<int, Distance, bool>? where)
    {
        Stretches stretches = new(space, space.TryStep);
        foreach ((int face, Wall wall, IEnumerable<Distance> places) in Free(space, box, false))
        {
            foreach (Distance at in places)
            {
                if (where is null || where(face, at))
                {
                    stretches.Add(wall, at);
                }
            }
        }

        return stretches.Middle is { } middle ? new[] { new PlacedBox(SurfaceAddress.Of(space.Id, middle.Wall.Id), box.WithAt(middle.At)) } : default;
    }

    /// <summary>Wall by wall from the room's hand the places at which a box can be, from that hand too.</summary>
    private static IEnumerable<(int Face, Wall Wall, IEnumerable<Distance> Places)> Free(SpaceView space, DeviceBox box, bool inNeed)
    {
        WallPlan plan = RoomInPlan.Of(space).Plan;
        if (plan.IsTooLarge)
        {
            yield break;
        }

        WallEnd hand = RoomInPlan.Of(space).Hand;
        for (int i = 0; i < plan.Count; i++)
        {
            int face = hand == WallEnd.Left ? i : plan.Count - 1 - i;
            Wall wall = plan.WallOf(face);
            yield return (face, wall, Along(wall, FreePlaces.On(space, wall, box, null, inNeed)));
        }

        IEnumerable<Distance> Along(Wall wall, DistanceSet free)
        {
            Distance fromEnds = space.RoomForBoxes.FromEnds;
            for (Distance off = fromEnds; off <= wall.Length - fromEnds && off.Ticks < MostAlong; off += space.TryStep)
            {
                Distance marked = (hand == WallEnd.Left ? off : wall.Length - off).RoundNearest(space.AlongStep);
                if (free.Contains(marked))
                {
                    yield return marked;
                }
            }
        }
    }

    /// <summary>A box on the first wall of an outside face, in the middle of the longest stretch that is free.</summary>
    /// <param name="space">The face.</param>
    /// <param name="added">The box, with its height and without its place.</param>
    /// <param name="left">Where it may be at the least, along the wall.</param>
    /// <param name="right">Where it may be at the most.</param>
    /// <param name="surface">What its height is taken from instead; null for the box's own datum.</param>
    public static Items<PlacedBox> OnFace(SpaceView space, DeviceBox added, Distance left, Distance right, Level? surface)
    {
        if (added is not { Height: { Edge: { } edge } height } || space.Face is not { Walls.Count: > 0 } face)
        {
            return default;
        }

        Wall wall = face.Walls[0];
        Distance fromEnds = space.RoomForBoxes.FromEnds;
        DeviceBox box = surface is { } walked ? added.WithHeight(BoxHeight.To(edge, walked.Offset + height.Value, walked.Datum)) : added;
        DistanceSet free = FreePlaces.On(space, wall, box);
        (Distance from, Distance to) = (Distance.Max(left, Distance.Zero) + fromEnds, Distance.Min(right, wall.Length - fromEnds));
        WallEnd hand = RoomInPlan.Of(space).Hand;
        Stretches stretches = new(space, space.TryStep * 4);
        for (Distance off = Distance.Zero; off <= to - from && off.Ticks < MostAlong; off += space.TryStep * 4)
        {
            if ((hand == WallEnd.Left ? from + off : to - off).RoundNearest(space.AlongStep) is var marked && free.Contains(marked))
            {
                stretches.Add(wall, marked);
            }
        }

        return stretches.Middle is { } middle ? new[] { new PlacedBox(SurfaceAddress.Of(face.Id, wall.Id), box.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id)).WithAt(middle.At)) } : default;
    }

    /// <summary>A box beside an opening of an outside face: on the side of its latch, the right one where that isn't known, within reach if there is room, else on the other side.</summary>
    /// <param name="space">The face.</param>
    /// <param name="added">The box, with its height and without its place.</param>
    /// <param name="opening">The opening.</param>
    /// <param name="where">Which places along its wall will do.</param>
    public static Items<PlacedBox> Beside(SpaceView space, DeviceBox added, Opening opening, Predicate<Distance> where)
    {
        if (space.Face is not { } face)
        {
            return default;
        }

        foreach (Wall wall in face.Walls)
        {
            if (!wall.Openings.Contains(opening))
            {
                continue;
            }

            DistanceSet free = FreePlaces.On(space, wall, added) & DistanceSet.Between(space.RoomForBoxes.FromEnds, Distance.Max(space.RoomForBoxes.FromEnds, wall.Length - space.RoomForBoxes.FromEnds));
            bool isRightFirst = (opening.Hinge ?? opening.PocketOn) != WallEnd.Right;
            foreach (Distance reach in new[] { space.RoomForBoxes.Aside ?? wall.Length, wall.Length })
            {
                foreach (bool isRight in new[] { isRightFirst, !isRightFirst })
                {
                    for (Distance off = space.RoomForBoxes.FromEnds; off <= reach && off.Ticks < MostAlong; off += space.TryStep)
                    {
                        Distance at = (isRight ? opening.Right + off : opening.Left - off).RoundNearest(space.AlongStep);
                        if (free.Contains(at) && where(at))
                        {
                            return new[] { new PlacedBox(SurfaceAddress.Of(face.Id, wall.Id), added.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id)).WithAt(at)) };
                        }
                    }
                }
            }
        }

        return default;
    }

    /// <summary>A box in the ceiling; where the walls close, at a part of the room's length and depth: 2 for the middle.</summary>
    public static Items<PlacedBox> InCeiling(Room room, DeviceBox box, int part) =>
        new[] { new PlacedBox(SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), box.WithPlan(new WallPlan(room).Inside(part))) };

    /// <summary>Finds the middle of the longest stretch of places that follow each other by a step, as they come; of stretches as long, of the first.</summary>
    private sealed class Stretches(SpaceView space, Distance step)
    {
        private readonly List<(Wall Wall, Distance At)> all = [];
        private int start;
        private int longestStart;
        private int longest;

        /// <summary>The middle; null where there is no place.</summary>
        public (Wall Wall, Distance At)? Middle => longest > 0 ? all[longestStart + ((longest - 1) / 2)] : null;

        public void Add(Wall wall, Distance at)
        {
            if (all.Count > 0 && (!ReferenceEquals(wall, all[all.Count - 1].Wall) || (at - all[all.Count - 1].At).Abs() > step + space.AlongStep))
            {
                start = all.Count;
            }

            all.Add((wall, at));
            (longestStart, longest) = all.Count - start > longest ? (start, all.Count - start) : (longestStart, longest);
        }
    }
}
