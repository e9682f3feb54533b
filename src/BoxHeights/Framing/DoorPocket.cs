namespace BoxHeights;

/// <summary>Where a pocket door's leaf slides into the wall: no stud and no cavity for a box.</summary>
/// <remarks>
/// It is as wide as <see cref="TrimmedOpening.Pocket"/> says, the opening being taken for the leaf where that isn't stated, and about 84-1/2 in high. From memory;
/// nothing is said where the pocket's side isn't stated.
/// </remarks>
internal readonly struct DoorPocket
{
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
        if (opening.Kind != OpeningKind.PocketDoor || opening.Right <= opening.Left
            || TrimmedOpening.Of(opening.Leaf is null ? opening.WithLeaf(opening.Right - opening.Left) : opening).Pocket is not { } within)
        {
            return false;
        }

        pocket = new(within.From, within.To, opening.Head ?? UsualTop);
        return true;
    }
}
