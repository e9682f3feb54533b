using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A clear bay between two uprights of which it is sure that both stand and nothing else does between them.</summary>
internal readonly struct FramingBay
{
    private FramingBay(Distance left, Distance right, bool isAssumed, List<Level> tops)
    {
        Left = left;
        Right = right;
        IsAssumed = isAssumed;
        Tops = new(tops);
    }

    /// <summary>The face at its left, from the wall's left end.</summary>
    public Distance Left { get; }

    /// <summary>The face at its right, from the wall's left end.</summary>
    public Distance Right { get; }

    public Distance Width => Right - Left;

    /// <summary>Whether one of the two stands only where it is assumed to.</summary>
    public bool IsAssumed { get; }

    /// <summary>Up to the lowest of these it is this wide; above nothing is said.</summary>
    public Items<Level> Tops { get; }

    /// <summary>The bays of a wall, from left to right. Left out are those with something in them that may or may not be there, and openings but for what is under their sills.</summary>
    public static List<FramingBay> Of(Wall wall, WallFraming framing)
    {
        List<FramingBay> bays = [];
        FramingMember? before = null;
        foreach (FramingMember next in framing.Members)
        {
            if (!next.IsSure)
            {
                continue;
            }

            if (before is { } left && left.Right < next.Left && TryTops(wall, framing, left, next, out List<Level> tops))
            {
                bays.Add(new(left.Right, next.Left, framing.IsAssumed(left) || framing.IsAssumed(next), tops));
            }

            before = before is { } last && last.Right >= next.Right ? last : next;
        }

        return bays;
    }

    private static bool TryTops(Wall wall, WallFraming framing, in FramingMember before, in FramingMember next, out List<Level> tops)
    {
        (Distance left, Distance right) = (before.Right, next.Left);
        tops = [];
        foreach (Level? top in new[] { before.Top, next.Top })
        {
            if (top is { } end)
            {
                tops.Add(end);
            }
        }

        foreach (FramingMember member in framing.Members)
        {
            if (!member.IsSure && member.Left < right && left < member.Right)
            {
                return false;
            }
        }

        foreach (NoCavity filled in wall.NoCavity)
        {
            if (filled.Left < right && left < filled.Right)
            {
                return false;
            }
        }

        foreach (Opening opening in wall.Openings)
        {
            bool isInPocket = DoorPocket.TryOf(opening, framing.Usual, out DoorPocket pocket) && pocket.Left < right && left < pocket.Right;
            bool isInOpening = opening.Left < right && left < opening.Right;
            if (isInPocket || (isInOpening && opening.Sill is null))
            {
                return false;
            }

            if (isInOpening)
            {
                tops.Add(opening.Sill!.Value);
            }
        }

        return true;
    }
}
