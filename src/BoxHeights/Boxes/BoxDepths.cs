namespace BoxHeights;

/// <summary>How deep boxes are whose depth isn't stated: metal boxes by the volume that is published for each depth, plastic ones by what is commonly met with.</summary>
internal static class BoxDepths
{
    // NEC Table 314.16(A): trade size and minimum volume go together, so a volume names a depth. The four rows from 14.0 in³ and of utility boxes are from memory.
    private static readonly (BoxKind Kind, decimal CubicInches, Distance Depth)[] Metal =
    [
        (BoxKind.Octagon, 12.5m, Inches(1, 1, 4)), (BoxKind.Octagon, 15.5m, Inches(1, 1, 2)), (BoxKind.Octagon, 21.5m, Inches(2, 1, 8)),
        (BoxKind.FourSquare, 18.0m, Inches(1, 1, 4)), (BoxKind.FourSquare, 21.0m, Inches(1, 1, 2)), (BoxKind.FourSquare, 30.3m, Inches(2, 1, 8)),
        (BoxKind.FourElevenSquare, 25.5m, Inches(1, 1, 4)), (BoxKind.FourElevenSquare, 29.5m, Inches(1, 1, 2)), (BoxKind.FourElevenSquare, 42.0m, Inches(2, 1, 8)),
        (BoxKind.MetalDevice, 7.5m, Inches(1, 1, 2)), (BoxKind.MetalDevice, 10.0m, Inches(2, 0, 1)), (BoxKind.MetalDevice, 10.5m, Inches(2, 1, 4)),
        (BoxKind.MetalDevice, 12.5m, Inches(2, 1, 2)), (BoxKind.MetalDevice, 14.0m, Inches(2, 3, 4)), (BoxKind.MetalDevice, 18.0m, Inches(3, 1, 2)),
        (BoxKind.Handy, 10.3m, Inches(1, 1, 2)), (BoxKind.Handy, 13.0m, Inches(1, 7, 8)), (BoxKind.Handy, 14.5m, Inches(2, 1, 8)),
    ];

    private static readonly Volume LeastPlasticGang = Volume.FromCubicInches(14);

    /// <summary>The depths that a box may have; null where nothing is known of it.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many device widths it has.</param>
    /// <param name="volume">The volume marked on it; null where it isn't known.</param>
    public static DistanceRange? Of(BoxKind kind, int gangs, Volume? volume)
    {
        if (kind == BoxKind.NailOn)
        {
            // Plastic bodies for one gang run from 2-3/4 to 3-5/8 in, wider ones to 3-1/2 in (from memory). One marked with less volume is a shallow one.
            return volume is { } marked && marked < LeastPlasticGang ? null : new DistanceRange(Inches(2, 3, 4), gangs == 1 ? Inches(3, 5, 8) : Inches(3, 1, 2));
        }

        foreach ((BoxKind metal, decimal cubicInches, Distance depth) in Metal)
        {
            // Ganged sections add up: NEC 314.16(A). A square box has one volume whatever its ring.
            Volume published = Volume.FromCubicInches(cubicInches) * (metal == BoxKind.MetalDevice ? gangs : 1);
            if (metal == kind && volume == published)
            {
                return depth;
            }
        }

        return null;
    }

    private static Distance Inches(int whole, int numerator, int denominator) => Distance.FromInches(whole, numerator, denominator);
}
