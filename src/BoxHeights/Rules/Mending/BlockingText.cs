namespace BoxHeights.Rules;

/// <summary>Says what to nail in for a box that nothing holds where it is.</summary>
internal static class BlockingText
{
    /// <summary>What holds the box, in one line: one or two pieces of lumber against the stud beside the box if they just fill the gap, else a block across the bay.</summary>
    /// <param name="id">The box.</param>
    /// <param name="surface">Its wall face, whose studs are stated.</param>
    /// <param name="at">Its center.</param>
    /// <param name="size">Its size.</param>
    /// <param name="units">How to print lengths.</param>
    public static Wording For(string id, ResolvedSurface surface, Distance at, BoxSize size, LengthUnits units)
    {
        BlockingNeeded needed = BlockingNeeded.For(surface.Framing!, at, size);
        if (needed.Packed > 0)
        {
            Wording blocks = needed.Packed == 1 ? $"one {surface.Usual.LumberName:lumber} block" : (Wording)$"two {surface.Usual.LumberName:lumber} blocks";
            return needed.PackedOn == StudSide.Left ? $"pack the stud to the left of {id} out with {blocks} at its height" : (Wording)$"pack the stud to the right of {id} out with {blocks} at its height";
        }

        // Nobody knows how long a bay of assumed studs is, nor where it begins.
        return surface.Framing!.Known == StudKnowledge.Assumed
            ? AssumedStuds.Added($"add a block for {id} between the studs beside it", surface, units)
            : $"add a block {Printed.Of(needed.Length, units):length} long for {id} between the studs beside it, {Printed.Of(needed.From, units):place} from the left end of its wall";
    }
}
