using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Looks for the place where one box that a room lacks could go: on the wall where it is nearest to something, or in the ceiling. <see cref="RunCure"/> spreads boxes along a run instead.</summary>
internal static class OutletCure
{
    /// <summary>A box on a wall of a room or an outside face, at the place that is nearest by some measure.</summary>
    /// <param name="space">The room or face.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="box">The box, without its place.</param>
    /// <param name="far">How far a place is off, the least being best; null where it won't do.</param>
    public static Items<PlacedBox> OnWall(SpaceView space, WallPlan plan, DeviceBox box, Func<int, Distance, decimal?> far)
    {
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
            for (Distance at = fromEnds; at <= wall.Length - fromEnds && at.Ticks < 1L << 33; at += space.TryStep)
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

    /// <summary>A box in the ceiling; where the walls close, at a part of the room's length and depth: 2 for the middle.</summary>
    public static Items<PlacedBox> InCeiling(Room room, DeviceBox box, int part) =>
        new[] { new PlacedBox(SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), box.WithPlan(new WallPlan(room).Inside(part))) };
}
