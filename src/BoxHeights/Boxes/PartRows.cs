using System;

namespace BoxHeights;

/// <summary>A row of a <see cref="PartsCatalog"/>: the size of one kind of box for a number of gangs.</summary>
public sealed record BoxPart
{
    /// <summary>Makes the row.</summary>
    /// <param name="kind">The kind of box; stated.</param>
    /// <param name="gangs">How many devices side by side: 1 or more.</param>
    /// <param name="size">Outside at the opening; stated.</param>
    /// <param name="volume">The room inside, where all such boxes have the same; null otherwise.</param>
    /// <param name="citation">Where the size comes from.</param>
    /// <exception cref="ArgumentException">The kind or size is not stated, or the volume isn't more than zero.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="citation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gangs"/> is below 1.</exception>
    public BoxPart(BoxKind kind, int gangs, BoxSize size, Volume? volume, Citation citation)
    {
        Kind = PartRow.Stated(kind, kind != default, nameof(kind));
        Gangs = PartRow.Gangs(gangs);
        Size = PartRow.Stated(size, size.IsStated, nameof(size));
        Volume = PartRow.Stated(volume, volume is null || volume.Value > BoxHeights.Volume.Zero, nameof(volume));
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
    }

    /// <summary>The kind of box.</summary>
    public BoxKind Kind { get; }

    /// <summary>How many devices side by side.</summary>
    public int Gangs { get; }

    /// <summary>Outside at the opening.</summary>
    public BoxSize Size { get; }

    /// <summary>The room inside; null where it differs from box to box.</summary>
    public Volume? Volume { get; }

    /// <summary>Where the size comes from.</summary>
    public Citation Citation { get; }
}

/// <summary>A row of a <see cref="PartsCatalog"/>: the size of one kind of plate for a number of gangs.</summary>
public sealed record PlatePart
{
    /// <summary>Makes the row.</summary>
    /// <param name="kind">The kind of plate; stated.</param>
    /// <param name="gangs">How many devices side by side: 1 or more.</param>
    /// <param name="size">Outside width and height; stated.</param>
    /// <param name="citation">Where the size comes from.</param>
    /// <exception cref="ArgumentException">The kind or size is not stated.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="citation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gangs"/> is below 1.</exception>
    public PlatePart(PlateKind kind, int gangs, PlateSize size, Citation citation)
    {
        Kind = PartRow.Stated(kind, kind != default, nameof(kind));
        Gangs = PartRow.Gangs(gangs);
        Size = PartRow.Stated(size, size.IsStated, nameof(size));
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
    }

    /// <summary>The kind of plate.</summary>
    public PlateKind Kind { get; }

    /// <summary>How many devices side by side.</summary>
    public int Gangs { get; }

    /// <summary>Outside width and height.</summary>
    public PlateSize Size { get; }

    /// <summary>Where the size comes from.</summary>
    public Citation Citation { get; }
}

/// <summary>A row of a <see cref="PartsCatalog"/>: where a kind of device is operated.</summary>
public sealed record DevicePart
{
    /// <summary>Makes the row.</summary>
    /// <param name="kind">The kind of device; stated.</param>
    /// <param name="operable">How far its operated parts reach from its center.</param>
    /// <param name="citation">Where the distances come from.</param>
    /// <param name="onItsSide">The same when it is turned by a quarter; null where that isn't known.</param>
    /// <param name="depth">How far it reaches back from the front edge of its box, not negative; null where that isn't known.</param>
    /// <param name="styles">The kinds that it may be where its style isn't stated; none where it is one itself.</param>
    /// <param name="isMeasured">Whether the distances were measured on such a device; else they are assumed.</param>
    /// <exception cref="ArgumentException">The kind is not stated, or the depth is negative.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="citation"/> is null.</exception>
    public DevicePart(DeviceKind kind, OperableParts operable, Citation citation, OperableParts? onItsSide = null, Distance? depth = null, Items<DeviceKind> styles = default, bool isMeasured = false)
    {
        Styles = styles;
        IsMeasured = isMeasured;
        OnItsSide = onItsSide;
        Depth = PartRow.Stated(depth, depth is not { Ticks: < 0 }, nameof(depth));
        Kind = PartRow.Stated(kind, kind != default, nameof(kind));
        Operable = operable;
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
    }

    /// <summary>The kind of device.</summary>
    public DeviceKind Kind { get; }

    /// <summary>How far its operated parts reach from its center.</summary>
    public OperableParts Operable { get; }

    /// <summary>The same when it is turned by a quarter; null where that isn't known.</summary>
    public OperableParts? OnItsSide { get; }

    /// <summary>How far it reaches back from the front edge of its box; null where that isn't known.</summary>
    public Distance? Depth { get; }

    /// <summary>The kinds that it may be where its style isn't stated: a rule is met or missed only if it is for each of them. None where it is a style itself.</summary>
    public Items<DeviceKind> Styles { get; }

    /// <summary>Whether the distances were measured on such a device; else they are assumed from what such devices commonly have, as all of the generic catalog are.</summary>
    public bool IsMeasured { get; }

    /// <summary>Where the distances come from.</summary>
    public Citation Citation { get; }
}

/// <summary>A row of a <see cref="PartsCatalog"/>: the volumes in which one kind of box is sold.</summary>
public sealed record VolumesPart
{
    /// <summary>Makes the row.</summary>
    /// <param name="kind">The kind of box; stated.</param>
    /// <param name="gangs">How many devices side by side: 1 or more.</param>
    /// <param name="volumes">One or more volumes, each larger than the one before and more than zero.</param>
    /// <param name="citation">Where the volumes come from.</param>
    /// <param name="depths">The trade depth of the box of each volume; none where they aren't sold by depth.</param>
    /// <param name="noneSmaller">Whether no box of the kind and gangs has less room than the first volume, so that one whose mark isn't read has at least that.</param>
    /// <exception cref="ArgumentException">The kind is not stated, the volumes are none or out of order, or there are depths, but not as many.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="citation"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="gangs"/> is below 1.</exception>
    public VolumesPart(BoxKind kind, int gangs, Items<Volume> volumes, Citation citation, Items<Distance> depths = default, bool noneSmaller = false)
    {
        NoneSmaller = noneSmaller;
        Kind = PartRow.Stated(kind, kind != default, nameof(kind));
        Gangs = PartRow.Gangs(gangs);
        Volumes = PartRow.Stated(volumes, volumes.Count > 0, nameof(volumes));
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
        Depths = depths.Count == 0 || depths.Count == volumes.Count ? depths : throw new ArgumentException("Each volume has a depth, or none has.", nameof(depths));
        Volume before = Volume.Zero;
        foreach (Volume volume in volumes)
        {
            before = volume > before
                ? volume
                : throw new ArgumentException("The volumes are more than zero, from the smallest to the largest.", nameof(volumes));
        }
    }

    /// <summary>The kind of box.</summary>
    public BoxKind Kind { get; }

    /// <summary>How many devices side by side.</summary>
    public int Gangs { get; }

    /// <summary>The volumes, from the smallest to the largest.</summary>
    public Items<Volume> Volumes { get; }

    /// <summary>The trade depth of the box of each volume, in their order; none where they aren't sold by depth.</summary>
    public Items<Distance> Depths { get; }

    /// <summary>Whether no box of the kind and gangs has less room than the first volume.</summary>
    public bool NoneSmaller { get; }

    /// <summary>Where the volumes come from.</summary>
    public Citation Citation { get; }
}

/// <summary>What all rows check alike.</summary>
internal static class PartRow
{
    internal static T Stated<T>(T value, bool stated, string name) =>
        stated ? value : throw new ArgumentException("A row of the catalog states its " + name + ".", name);

    internal static int Gangs(int gangs) =>
        gangs >= 1 ? gangs : throw new ArgumentOutOfRangeException(nameof(gangs), gangs, "A box or plate has 1 gang or more.");
}
