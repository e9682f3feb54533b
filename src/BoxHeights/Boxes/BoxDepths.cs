namespace BoxHeights;

/// <summary>How deep boxes are whose depth isn't stated: metal boxes by the volume that is published for each depth, plastic ones by what is commonly met with.</summary>
internal static class BoxDepths
{
    /// <summary>The depths that a box may have; null where nothing is known of it.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many device widths it has.</param>
    /// <param name="volume">The volume marked on it; null where it isn't known.</param>
    /// <param name="catalog">In which volumes and depths boxes are sold.</param>
    public static DistanceRange? Of(BoxKind kind, int gangs, Volume? volume, PartsCatalog catalog)
    {
        KindPart build = catalog.BuildOf(kind);
        if (build.Depths is { } any)
        {
            return volume < build.ShallowUnder ? null : gangs == 1 ? any : build.DepthsOfMoreGangs ?? any;
        }

        // Where trade size and minimum volume go together a volume names a depth.
        if (volume is { } room && !build.MayBeDeeper && catalog.TryFindVolumes(kind, gangs, out VolumesPart? sold))
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
