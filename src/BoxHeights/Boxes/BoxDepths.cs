namespace BoxHeights;

/// <summary>How deep boxes are whose depth isn't stated: metal boxes by the volume that is published for each depth, plastic ones by what is commonly met with.</summary>
internal static class BoxDepths
{
    private static readonly Volume LeastPlasticGang = Volume.FromCubicInches(14);

    /// <summary>The depths that a box may have; null where nothing is known of it.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many device widths it has.</param>
    /// <param name="volume">The volume marked on it; null where it isn't known.</param>
    /// <param name="catalog">In which volumes and depths boxes are sold.</param>
    public static DistanceRange? Of(BoxKind kind, int gangs, Volume? volume, PartsCatalog catalog)
    {
        if (kind == BoxKind.NailOn)
        {
            // Plastic bodies for one gang run from 2-3/4 to 3-5/8 in, wider ones to 3-1/2 in (from memory). One marked with less volume is a shallow one.
            return volume is { } marked && marked < LeastPlasticGang ? null : new DistanceRange(Distance.FromInches(2, 3, 4), Distance.FromInches(3, gangs == 1 ? 5 : 4, 8));
        }

        // NEC Table 314.16(A): trade size and minimum volume go together, so a volume names a depth. That of a cast box is only the least.
        if (volume is { } room && kind != BoxKind.Cast && catalog.TryFindVolumes(kind, gangs, out VolumesPart? sold))
        {
            for (int i = 0; i < sold.Depths.Count; i++)
            {
                if (sold.Volumes[i] == room)
                {
                    return sold.Depths[i];
                }
            }
        }

        return null;
    }
}
