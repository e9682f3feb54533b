using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>Where along a wall there is room for a box that is lacking, and what it can be called. Whether it may be there is tried by whoever offers it.</summary>
internal static class FreePlaces
{
    /// <summary>Places off a wall's openings; none on an open side.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="aside">How far off, itself allowed.</param>
    /// <param name="clearBelow">Openings whose sill is known to be this high or higher aren't in the way; null where every one is.</param>
    /// <param name="from">Where to begin to look.</param>
    /// <param name="to">Where to end.</param>
    public static DistanceSet OffOpenings(Wall wall, Distance aside, Distance? clearBelow, Distance from, Distance to)
    {
        if (wall.Open)
        {
            return DistanceSet.Empty;
        }

        List<DistanceRange> taken = [];
        foreach (Opening opening in wall.Openings)
        {
            if (opening.Left <= opening.Right && opening.Right + aside >= from && opening.Left - aside <= to
                && (opening.Sill is not { } sill || clearBelow is not { } clear || sill.Offset < clear))
            {
                taken.Add(new(opening.Left - aside, opening.Right + aside));
            }
        }

        return DistanceSet.OutsideOf(taken) & DistanceSet.Between(from, to);
    }

    /// <summary>Places that every row allows a box at its height, off the wall's openings, whatever covers it and its other boxes; none where it isn't known where one of these is, or the wall is too shallow.</summary>
    /// <param name="space">Whose boxes are looked through.</param>
    /// <param name="wall">The wall.</param>
    /// <param name="box">The box, with its height.</param>
    /// <param name="address">The wall's address; null for a wall of the space itself.</param>
    /// <param name="inNeed">Whether rows aren't asked that give way to a violation.</param>
    public static DistanceSet On(SpaceView space, Wall wall, DeviceBox box, string? address = null, bool inNeed = false)
    {
        address ??= SurfaceAddress.Of(space.Id, wall.Id);
        RoomForBoxes room = space.RoomForBoxes;
        Distance width = space.WidthOf(box);
        DistanceSet free = wall.Cavity < room.Behind ? DistanceSet.Empty : OffOpenings(wall, Distance.Max(room.Beside, Distance.FromTicks(width.Ticks / 2)), null, Distance.MinValue, Distance.MaxValue);
        List<DistanceRange> taken = [];
        foreach (Covering covering in wall.Coverings)
        {
            if (covering.Left <= covering.Right)
            {
                taken.Add(new(covering.Left - room.Beside, covering.Right + room.Beside));
            }
        }

        // A machine that stands outside keeps whoever plugs in off the wall behind it.
        foreach (Fixture machine in space.Face?.Fixtures ?? default)
        {
            if (machine.Wall == wall.Id && machine is { Left: { } left, Right: { } right } && left <= right)
            {
                taken.Add(new(left - room.Beside, right + room.Beside));
            }
        }

        foreach (SpaceBox other in space.Boxes)
        {
            if (other.Address != address)
            {
                continue;
            }

            if (other.Along is not { } at)
            {
                return DistanceSet.Empty;
            }

            Distance apart = Distance.Max(room.Beside, Distance.FromTicks((width + space.WidthOf(other.Source)).Ticks / 2));
            taken.Add(new(at - apart, at + apart));
        }

        free &= DistanceSet.OutsideOf(taken);
        return free.IsEmpty ? free : free & (inNeed ? space.PlacesInNeed(address, box) : space.PlacesFor(address, box));
    }

    /// <summary>An id that no box has yet.</summary>
    /// <param name="space">Where it must be free.</param>
    /// <param name="wanted">What it should be, or begin with.</param>
    /// <param name="others">Boxes that are added with it.</param>
    public static string FreeId(SpaceView space, string wanted, List<PlacedBox>? others = null)
    {
        string id = wanted;
        for (int n = 2; space.Whole.HasBox(id) || others?.Exists(other => other.Box.Id == id) == true; n++)
        {
            id = wanted + "-" + n.ToString(CultureInfo.InvariantCulture);
        }

        return id;
    }
}
