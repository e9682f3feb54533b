namespace BoxHeights.Rules;

/// <summary>Says what to nail in for a box that nothing holds where it is.</summary>
internal static class BlockingText
{
    // One or two: the trade packs a king out with doubled 2-by blocking; beyond that a block between the studs is less work.
    private const int MostPacked = 2;

    private static readonly Distance Near = Distance.FromInches(0, 1, 4);

    /// <summary>The cure in one line: a 2-by or two against the stud beside the box if they just fill the gap, else a block across the bay.</summary>
    public static string For(string id, WallFraming framing, Distance at, BoxSize size, LengthUnits units)
    {
        Distance left = at - size.HalfWidth;
        Distance right = at + size.HalfWidth;
        Distance toLeft = framing.RoomBeside(left, StudSide.Left);
        Distance toRight = framing.RoomBeside(right, StudSide.Right);
        for (int packed = 1; packed <= MostPacked; packed++)
        {
            foreach (StudSide side in new[] { StudSide.Left, StudSide.Right })
            {
                if (((side == StudSide.Left ? toLeft : toRight) - (StudPositions.UsualThickness * packed)).Abs() <= Near)
                {
                    return "pack the stud to the " + (side == StudSide.Left ? "left" : "right") + " of " + id + " out with " + (packed == 1 ? "one 2x block" : "two 2x blocks") + " at its height";
                }
            }
        }

        return "add a block " + Printed.Of(right + toRight - left + toLeft, units) + " long for " + id + " between the studs beside it, "
            + Printed.Of(left - toLeft, units) + " from the left end of its wall";
    }
}
