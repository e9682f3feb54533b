using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where along its wall a box is nailed to a stud.</summary>
internal static class StudSides
{
    /// <summary>The places of its center beside studs that have room for it; null where it isn't nailed to a stud, or nothing is said of the wall's studs.</summary>
    public static List<Distance>? Of(PlacementSite site)
    {
        if (site.Framing is not { } framing || site.Box.Mounting is not (null or MountingMethod.Stud))
        {
            return null;
        }

        List<Distance> found = [];
        foreach (FramingMember member in framing.Members)
        {
            if (member.Part is FramingPart.Stud or FramingPart.King && (member.IsSure || framing.Known == StudKnowledge.Assumed))
            {
                Beside(member.Left, StudSide.Left);
                Beside(member.Right, StudSide.Right);
            }
        }

        return found;

        void Beside(Distance face, StudSide side)
        {
            BoxSize size = site.Box.Size;
            if (framing.RoomBeside(face, side) >= size.Width)
            {
                found.Add(side == StudSide.Left ? face - size.HalfWidth : face + size.HalfWidth);
            }
        }
    }
}
