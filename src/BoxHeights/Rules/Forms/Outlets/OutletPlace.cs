using System;

namespace BoxHeights.Rules;

/// <summary>Looks for the place where one box that a room lacks could go: on the wall where it is nearest to something, or in the ceiling. <see cref="RunPlaces"/> spreads boxes along a run instead.</summary>
internal static class OutletPlace
{
    // Beyond any wall of a house, so that the search ends.
    private const long MostAlong = 1L << 33;

    /// <summary>A box on a wall of a room or an outside face, at the place that is nearest by some measure.</summary>
    /// <param name="space">The room or face.</param>
    /// <param name="box">The box, without its place.</param>
    /// <param name="far">How far a place is off, the least being best; null where it won't do.</param>
    public static Items<PlacedBox> OnWall(SpaceView space, DeviceBox box, Func<int, Distance, decimal?> far)
    {
        WallPlan plan = RoomInPlan.Of(space).Plan;
        if (plan.IsTooLarge)
        {
            return default;
        }

        Room room = RoomInPlan.Of(space).Room;
        Distance fromEnds = space.RoomForBoxes.FromEnds;
        decimal least = decimal.MaxValue;
        PlacedBox? best = null;
        for (int face = 0; face < plan.Count; face++)
        {
            Wall wall = plan.WallOf(face);
            DistanceSet free = FreePlaces.On(space, wall, box);
            for (Distance at = fromEnds; at <= wall.Length - fromEnds && at.Ticks < MostAlong; at += space.TryStep)
            {
                Distance marked = at.RoundNearest(space.AlongStep);
                if (free.Contains(marked) && far(face, marked) is { } off && off < least)
                {
                    least = off;
                    best = new(SurfaceAddress.Of(room.Id, wall.Id), box.WithAt(marked));
                }
            }
        }

        return best is null ? default : new[] { best };
    }

    /// <summary>A box on the first wall of an outside face, at the first place from the left that is free.</summary>
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
        for (Distance at = Distance.Max(left, Distance.Zero) + fromEnds; at < wall.Length - fromEnds && at <= right && at.Ticks < MostAlong; at += space.TryStep * 4)
        {
            if (at.RoundNearest(space.AlongStep) is var marked && free.Contains(marked))
            {
                return new[] { new PlacedBox(SurfaceAddress.Of(face.Id, wall.Id), box.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id)).WithAt(marked)) };
            }
        }

        return default;
    }

    /// <summary>A box beside an opening of an outside face: on the side of its latch, the right one where that isn't known, within reach if there is room, else on the other side.</summary>
    /// <param name="space">The face.</param>
    /// <param name="added">The box, with its height and without its place.</param>
    /// <param name="opening">The opening.</param>
    public static Items<PlacedBox> Beside(SpaceView space, DeviceBox added, Opening opening)
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
                        if (free.Contains(at))
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
}
