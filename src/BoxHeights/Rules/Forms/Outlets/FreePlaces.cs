using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>Where along a wall there is room for a box that is lacking, and what it can be called. Whether it may be there is tried by whoever offers it.</summary>
internal static class FreePlaces
{
    /// <summary>How far from an opening a box usually is: beside it stand a jack and a king stud, and the box is nailed to the king; 6 in to its center. Common practice, no source.</summary>
    public static readonly Distance Beside = Distance.FromInches(6);

    /// <summary>What a usual box needs behind the face of the studs: 2-3/4 in less 1/2 in of board. Furring is shallower.</summary>
    private static readonly Distance UsualDepth = Distance.FromInches(2, 1, 4);

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

    /// <summary>Places off a wall's openings, whatever covers it and its other boxes; none where it isn't known where one of these is, or the wall is too shallow.</summary>
    /// <param name="space">Whose boxes are looked through.</param>
    /// <param name="wall">The wall.</param>
    /// <param name="address">The wall's address; null for a wall of the space itself.</param>
    public static DistanceSet On(SpaceView space, Wall wall, string? address = null)
    {
        address ??= space.Id + "/" + wall.Id;
        DistanceSet free = wall.Cavity < UsualDepth ? DistanceSet.Empty : OffOpenings(wall, Beside, null, Distance.MinValue, Distance.MaxValue);
        List<DistanceRange> taken = [];
        foreach (Covering covering in wall.Coverings)
        {
            if (covering.Left <= covering.Right)
            {
                taken.Add(new(covering.Left - Beside, covering.Right + Beside));
            }
        }

        foreach (SpaceBox box in space.Boxes)
        {
            if (box.Address != address)
            {
                continue;
            }

            if (box.Along is not { } at)
            {
                return DistanceSet.Empty;
            }

            taken.Add(new(at - Beside, at + Beside));
        }

        return free & DistanceSet.OutsideOf(taken);
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
