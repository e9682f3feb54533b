namespace BoxHeights.Rules;

/// <summary>What there is to nail in for a box that nothing holds where it is: a block or two of lumber against the stud beside it if they just fill the gap, else a block across the bay.</summary>
/// <param name="Packed">How many blocks the stud is packed out with; none where a block goes across.</param>
/// <param name="PackedOn">On which side of the box that stud is.</param>
/// <param name="From">Where the block begins, from the left end of the wall.</param>
/// <param name="Length">How long it is.</param>
internal readonly record struct BlockingNeeded(int Packed, StudSide PackedOn, Distance From, Distance Length)
{
    /// <summary>One or two blocks: the trade packs a king out with doubled blocking; beyond that a block between the studs is less work.</summary>
    public const int MostPacked = 2;

    /// <summary>What a box needs.</summary>
    /// <param name="framing">What stands in its wall.</param>
    /// <param name="at">Its center.</param>
    /// <param name="size">Its size.</param>
    public static BlockingNeeded For(WallFraming framing, Distance at, BoxSize size)
    {
        Distance left = at - size.HalfWidth;
        Distance right = at + size.HalfWidth;
        Distance toLeft = framing.RoomBeside(left, StudSide.Left);
        Distance toRight = framing.RoomBeside(right, StudSide.Right);
        for (int packed = 1; packed <= MostPacked; packed++)
        {
            foreach (StudSide side in new[] { StudSide.Left, StudSide.Right })
            {
                if (((side == StudSide.Left ? toLeft : toRight) - (framing.Usual.Lumber * packed)).Abs() <= framing.Usual.BlockFit)
                {
                    return new(packed, side, default, default);
                }
            }
        }

        return new(0, default, left - toLeft, right + toRight - left + toLeft);
    }
}
