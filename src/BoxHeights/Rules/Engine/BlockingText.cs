namespace BoxHeights.Rules;

/// <summary>Says what to nail in for a box that nothing holds where it is.</summary>
internal static class BlockingText
{
    /// <summary>One or two 2-bys: the trade packs a king out with doubled 2-by blocking; beyond that a block between the studs is less work.</summary>
    public const int MostPacked = 2;

    private static readonly Distance Near = Distance.FromInches(0, 1, 4);

    /// <summary>The cure in one line: a 2-by or two against the stud beside the box if they just fill the gap, else a block across the bay.</summary>
    /// <param name="id">The box.</param>
    /// <param name="surface">Its wall face, whose studs are stated.</param>
    /// <param name="at">Its center.</param>
    /// <param name="size">Its size.</param>
    /// <param name="units">How to print lengths.</param>
    public static Wording For(string id, ResolvedSurface surface, Distance at, BoxSize size, LengthUnits units)
    {
        WallFraming framing = surface.Framing!;
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
                    Wording blocks = packed == 1 ? $"one 2x block" : (Wording)$"two 2x blocks";
                    return side == StudSide.Left ? $"pack the stud to the left of {id} out with {blocks} at its height" : (Wording)$"pack the stud to the right of {id} out with {blocks} at its height";
                }
            }
        }

        // Nobody knows how long a bay of assumed studs is, nor where it begins.
        return framing.Known == StudKnowledge.Assumed
            ? AssumedStuds.Added($"add a block for {id} between the studs beside it", surface, units)
            : $"add a block {Printed.Of(right + toRight - left + toLeft, units):length} long for {id} between the studs beside it, {Printed.Of(left - toLeft, units):place} from the left end of its wall";
    }
}
