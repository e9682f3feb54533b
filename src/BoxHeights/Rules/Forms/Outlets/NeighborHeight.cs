using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The height for a box to add: that of its like, from the surface that they are set from, so that one stick does for all.</summary>
internal static class NeighborHeight
{
    /// <summary>The height that most boxes of its purpose in the room share; where it has none, in the storey; the added box's own where that has none either.</summary>
    /// <param name="space">The room.</param>
    /// <param name="added">The box to add.</param>
    /// <param name="counts">The boxes to go by.</param>
    public static BoxHeight? Of(SpaceView space, DeviceBox added, CountedOutlet counts)
    {
        return Shared(space.Boxes, IsLike) ?? (space.Room is { } room ? Shared(space.Whole.BoxesOn(room.Storey), IsLike) : null) ?? added.Height;

        bool IsLike(SpaceBox box) => box.Traits.Purpose == added.Purpose && box.Traits.Surface == BoxSurface.Wall && counts.Of(box, out _) == Verdict.Passes;
    }

    /// <summary>The height that most boxes of its purpose in the room or on the face share; the added box's own where there are none: elsewhere they are set by other things.</summary>
    /// <param name="space">The room or face.</param>
    /// <param name="added">The box to add.</param>
    /// <param name="counts">The boxes to go by.</param>
    public static BoxHeight? InItsRoom(SpaceView space, DeviceBox added, CountedOutlet counts) =>
        Shared(space.Boxes, box => box.Traits.Purpose == added.Purpose && box.Traits.Surface == BoxSurface.Wall && counts.Of(box, out _) == Verdict.Passes) ?? added.Height;

    /// <summary>Of several that as many share, the one that is listed first.</summary>
    private static BoxHeight? Shared(IEnumerable<SpaceBox> boxes, Predicate<SpaceBox> isLike)
    {
        Dictionary<BoxHeight, int> shared = [];
        BoxHeight? best = null;
        foreach (SpaceBox box in boxes)
        {
            if (isLike(box) && box.Height is { } height)
            {
                shared.TryGetValue(height, out int before);
                shared[height] = before + 1;
            }
        }

        foreach (SpaceBox box in boxes)
        {
            best = box.Height is { } height && shared.TryGetValue(height, out int share) && (best is not { } most || share > shared[most]) ? height : best;
        }

        return best;
    }
}
