using System;

namespace BoxHeights;

/// <content>What stands between things in plan.</content>
internal sealed partial class WallPlan
{
    /// <summary>Whether nothing that the walls are stands between a stretch of a face and a patch.</summary>
    /// <remarks>
    /// A wall that all of both is before hides nothing: what is before it is convex. Of other walls whatever reaches into the rectangle round both counts, so that the
    /// answer errs to "something may".
    /// </remarks>
    public bool IsClearBetween(int face, long from, long to, in PlanPatch patch)
    {
        PlanPatch here = Seen(patch, face);
        decimal left = Math.Min(Math.Max(from, 0), here.Left);
        decimal right = Math.Max(Math.Min(to, faces[face].Length.Ticks), here.Right);
        for (int other = 0; other < faces.Count; other++)
        {
            Wall wall = walls[other];
            if (other == face || wall.Open || AreBefore(other, face, from, to, patch))
            {
                continue;
            }

            (decimal a, decimal b) = Turn(other, face, 0m, 0m);
            (decimal c, decimal d) = Turn(other, face, wall.Length.Ticks, 0m);
            decimal slack = IsExact(other, face) ? 0m : 1m;
            if (Math.Max(a, c) > left + slack && Math.Min(a, c) < right - slack && Math.Max(b, d) > slack && Math.Min(b, d) < here.Far - slack)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a patch and a stretch of a face lie wholly on the room's side of another wall's line, or on it.</summary>
    private bool AreBefore(int wall, int face, long from, long to, in PlanPatch patch)
    {
        decimal least = IsExact(wall, face) && IsExact(wall, patch.Frame) ? 0m : -1m;
        return Turn(face, wall, Math.Max(from, 0), 0m).Away >= least
            && Turn(face, wall, Math.Min(to, faces[face].Length.Ticks), 0m).Away >= least
            && Seen(patch, wall).Near >= least;
    }

    /// <summary>Whether another wall alone hides all of a patch from all of a stretch of a face.</summary>
    /// <remarks>From where a wall hides one point is a convex region, so that both ends of the stretch and the patch's corners decide.</remarks>
    public bool IsWalledOff(int face, long from, long to, in PlanPatch patch)
    {
        (decimal X, decimal Y) left = Turn(face, -1, Math.Max(from, 0), 0m);
        (decimal X, decimal Y) right = Turn(face, -1, Math.Min(to, faces[face].Length.Ticks), 0m);
        (decimal, decimal)[] corners =
        [
            Turn(patch.Frame, -1, patch.Left, patch.Near), Turn(patch.Frame, -1, patch.Left, patch.Far),
            Turn(patch.Frame, -1, patch.Right, patch.Near), Turn(patch.Frame, -1, patch.Right, patch.Far),
        ];
        for (int other = 0; other < faces.Count; other++)
        {
            if (other != face && other != patch.Frame && !walls[other].Open && Hides(Turn(other, -1, 0m, 0m), Turn(other, -1, faces[other].Length.Ticks, 0m)))
            {
                return true;
            }
        }

        return false;

        bool Hides((decimal X, decimal Y) start, (decimal X, decimal Y) end) =>
            Array.TrueForAll(corners, corner => Cross(left, corner, start, end) && Cross(right, corner, start, end));
    }

    /// <summary>Whether two lines meet, ends included; two that lie along each other don't.</summary>
    private static bool Cross((decimal X, decimal Y) a, (decimal X, decimal Y) b, (decimal X, decimal Y) c, (decimal X, decimal Y) d)
    {
        int from = Side(a, b, c);
        int to = Side(a, b, d);
        return (from != 0 || to != 0) && from * to <= 0 && Side(c, d, a) * Side(c, d, b) <= 0;
    }

    private static int Side((decimal X, decimal Y) a, (decimal X, decimal Y) b, (decimal X, decimal Y) c) => Math.Sign(PlanOutline.TwiceArea(a, b, c));
}
