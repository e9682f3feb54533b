namespace BoxHeights;

/// <summary>Where a pocket door's leaf slides into the wall: no stud and no cavity for a box.</summary>
/// <remarks>
/// It is as wide as <see cref="TrimmedOpening.Pocket"/> says, the opening being taken for the leaf where that isn't stated, and as high as the head or as pockets usually are;
/// nothing is said where the pocket's side isn't stated.
/// </remarks>
[Told]
internal readonly partial struct DoorPocket
{
    public Distance Left { get; }

    public Distance Right { get; }

    public Level Top { get; }

    public static bool TryOf(Opening opening, UsualMeasures usual, out DoorPocket pocket)
    {
        pocket = default;
        if (opening.Kind != OpeningKind.PocketDoor || opening.Right <= opening.Left
            || TrimmedOpening.Of(opening.Leaf is null ? opening.WithLeaf(opening.Right - opening.Left) : opening, usual).Pocket is not { } within)
        {
            return false;
        }

        pocket = new(within.From, within.To, opening.Head ?? new Level(usual.PocketTop, Datum.Subfloor));
        return true;
    }
}
