namespace BoxHeights;

/// <summary>Where a pocket door's leaf slides into the wall: no stud and no cavity for a box.</summary>
/// <remarks>
/// An opening for a pocket door is framed twice its leaf and 1 in wide, about 84-1/2 in high. From memory; nothing is said where the pocket's side isn't stated.
/// A description that gives the whole framed width as the opening has the pocket within it.
/// </remarks>
internal readonly struct DoorPocket
{
    private static readonly Distance BesideLeaf = Distance.FromInches(1, 0, 1);
    private static readonly Level UsualTop = new(Distance.FromInches(84, 1, 2), Datum.Subfloor);

    private DoorPocket(Distance left, Distance right, Level top)
    {
        Left = left;
        Right = right;
        Top = top;
    }

    public Distance Left { get; }

    public Distance Right { get; }

    public Level Top { get; }

    public static bool TryOf(Opening opening, out DoorPocket pocket)
    {
        pocket = default;
        Distance width = opening.Right - opening.Left;
        Distance leaf = opening.Leaf ?? width;
        if (opening.Kind != OpeningKind.PocketDoor || opening.PocketOn is not { } side || width >= leaf * 2)
        {
            return false;
        }

        Distance deep = leaf + BesideLeaf;
        Level top = opening.Head ?? UsualTop;
        pocket = side == WallEnd.Left ? new(opening.Left - deep, opening.Left, top) : new(opening.Right, opening.Right + deep, top);
        return true;
    }
}
