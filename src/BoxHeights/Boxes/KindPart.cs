using System;

namespace BoxHeights;

/// <summary>A row of a <see cref="PartsCatalog"/>: how one kind of box is built, whatever its size. What isn't said is taken for an ordinary box that holds devices.</summary>
[Described]
public sealed partial record KindPart
{
    /// <summary>Makes the row.</summary>
    /// <param name="kind">The kind of box; stated.</param>
    /// <param name="citation">Where the traits come from.</param>
    /// <exception cref="ArgumentException">The kind is not stated.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="citation"/> is null.</exception>
    public KindPart(BoxKind kind, Citation citation)
    {
        Kind = PartRow.Stated(kind, kind != default, nameof(kind));
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
    }

    /// <summary>The kind of box.</summary>
    public BoxKind Kind { get; }

    /// <summary>Where the traits come from.</summary>
    public Citation Citation { get; }

    /// <summary>What it is made of; null where that isn't known.</summary>
    public BoxMaterial? Material { get; init => field = Guard.Known(value, BoxMaterial.Cast, nameof(Material)); }

    /// <summary>Whether its opening is round, its width being its diameter.</summary>
    public bool IsRound { get; init; }

    /// <summary>The only way in which it can be held; null where there are several.</summary>
    public MountingMethod? Mounting { get; init => field = Guard.Known(value, MountingMethod.Cabinet, nameof(Mounting)); }

    /// <summary>Whether it is made to be set into a wall, its body between the studs: not onto the wall, nor so shallow that it goes onto a stud.</summary>
    public bool IsSetIn { get; init; }

    /// <summary>Whether its devices sit in a ring that stands before it in the board.</summary>
    public bool TakesRing { get; init; }

    /// <summary>Whether it may hold devices though none is described: a box for junctions and lights doesn't.</summary>
    public bool HoldsDevices { get; init; } = true;

    /// <summary>Whether it is for data and television alone.</summary>
    public bool IsLowVoltage { get; init; }

    /// <summary>The most gangs with which it surely has no clamps inside; 0 where clamps may be in any.</summary>
    public int NoClampsUpTo { get; init; }

    /// <summary>The kind that is taken where a wall is too shallow for it; null where none is.</summary>
    public BoxKind? WhereShallow { get; init; }

    /// <summary>The plate that goes over it; null for the catalog's usual one.</summary>
    public PlateKind? Plate { get; init; }

    /// <summary>From the center of one device to the next in it; null for the catalog's usual distance.</summary>
    public Distance? GangPitch { get; init; }

    /// <summary>The depths that one with a single gang may have where its volume tells nothing; null where it may be of any.</summary>
    public DistanceRange? Depths { get; init; }

    /// <summary>The same of one with more gangs; null for <see cref="Depths"/>.</summary>
    public DistanceRange? DepthsOfMoreGangs { get; init; }

    /// <summary>One that is marked with less room is shallower than its <see cref="Depths"/>; null where no mark says so.</summary>
    public Volume? ShallowUnder { get; init; }

    /// <summary>Whether the depth that is published with a volume is only the least that such a box has.</summary>
    public bool MayBeDeeper { get; init; }
}

/// <summary>What a box is made of.</summary>
public enum BoxMaterial
{
    /// <summary>Plastic or another nonmetallic material.</summary>
    Plastic = 0,

    /// <summary>Sheet steel.</summary>
    Steel = 1,

    /// <summary>Cast metal.</summary>
    Cast = 2,
}
