namespace BoxHeights.Rules;

/// <summary>What a rule's slabs say of a place.</summary>
internal readonly struct SlabJudgement(in DistanceSet allowed, MissingFacts needs)
{
    /// <summary>What is allowed there: surely, or where that is nothing, possibly.</summary>
    public DistanceSet Allowed { get; } = allowed;

    public MissingFacts Needs { get; } = needs;
}

/// <summary>Where a box may be: an interval along the wall and an interval of stick readings, both mostly a point.</summary>
internal readonly struct Place(long left, long right, DistanceRange heights)
{
    public long Left { get; } = left;

    public long Right { get; } = right;

    public DistanceRange Heights { get; } = heights;

    public DistanceRange Along => new(Distance.FromTicks(Left), Distance.FromTicks(Right));

    public bool Is(in Place other) => Left == other.Left && Right == other.Right && Heights == other.Heights;
}

/// <summary>Compares slabs with a place: an interval along the wall and an interval of stick readings, both mostly a point.</summary>
internal static class SlabJudge
{
    public static Verdict Verdict(Slab[] slabs, in Place place)
    {
        Verdict worst = BoxHeights.Verdict.Passes;
        for (int i = 0; i < slabs.Length; i++)
        {
            ref readonly Slab slab = ref slabs[i];
            if (slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Heights))
            {
                continue;
            }

            bool wholly = slab.LeftTicks <= place.Left && place.Right <= slab.RightTicks;
            Verdict one = wholly && !slab.Allowed.Possible.Overlaps(place.Heights) ? BoxHeights.Verdict.Fails : BoxHeights.Verdict.Unknown;
            worst = one > worst ? one : worst;
        }

        return worst;
    }

    public static SlabJudgement Judge(Slab[] slabs, in Place place)
    {
        Verdict worst = BoxHeights.Verdict.Passes;
        DistanceSet sure = DistanceSet.All;
        DistanceSet possible = DistanceSet.All;
        MissingFacts needs = MissingFacts.None;
        for (int i = 0; i < slabs.Length; i++)
        {
            ref readonly Slab slab = ref slabs[i];
            if (slab.LeftTicks > place.Right || slab.RightTicks < place.Left)
            {
                continue;
            }

            sure &= slab.Allowed.Sure;
            possible &= slab.Allowed.Possible;
            if (slab.Allowed.Sure.ContainsRange(place.Heights))
            {
                continue;
            }

            bool wholly = slab.LeftTicks <= place.Left && place.Right <= slab.RightTicks;
            Verdict one = wholly && !slab.Allowed.Possible.Overlaps(place.Heights) ? BoxHeights.Verdict.Fails : BoxHeights.Verdict.Unknown;
            needs |= slab.Allowed.Needs | (wholly ? MissingFacts.None : MissingFacts.Along) | (place.Heights.IsExact ? MissingFacts.None : MissingFacts.TapeReading);
            worst = one > worst ? one : worst;
        }

        return new(sure.Count > 0 ? sure : possible, worst == BoxHeights.Verdict.Unknown ? needs : MissingFacts.None);
    }

    /// <summary>The heights that are allowed at a place along the wall, and what isn't known of them.</summary>
    public static AllowedHeights At(Slab[] slabs, long along)
    {
        AllowedHeights all = AllowedHeights.Anything;
        for (int i = 0; i < slabs.Length; i++)
        {
            ref readonly Slab slab = ref slabs[i];
            all = slab.LeftTicks <= along && along <= slab.RightTicks ? all & slab.Allowed : all;
        }

        return all;
    }

    /// <summary>The heights that are surely allowed at a place along the wall.</summary>
    public static DistanceSet SureAt(Slab[] slabs, long along)
    {
        DistanceSet all = DistanceSet.All;
        foreach (Slab slab in slabs)
        {
            all = slab.LeftTicks <= along && along <= slab.RightTicks ? all & slab.Allowed.Sure : all;
        }

        return all;
    }

    /// <summary>What isn't known of the heights that are allowed at a place along the wall.</summary>
    public static MissingFacts NeedsAt(Slab[] slabs, long along)
    {
        MissingFacts needs = MissingFacts.None;
        foreach (Slab slab in slabs)
        {
            needs |= slab.LeftTicks <= along && along <= slab.RightTicks ? slab.Allowed.Needs : MissingFacts.None;
        }

        return needs;
    }

    /// <summary>What a rule allows at a place along the wall, for some of what isn't known.</summary>
    public static DistanceSet PossibleAt(Slab[] slabs, long along)
    {
        DistanceSet all = DistanceSet.All;
        foreach (Slab slab in slabs)
        {
            if (slab.LeftTicks <= along && along <= slab.RightTicks)
            {
                all &= slab.Allowed.Possible;
            }
        }

        return all;
    }
}
