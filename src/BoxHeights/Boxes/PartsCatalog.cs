using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace BoxHeights;

/// <summary>What is known of boxes, plates and devices without a maker's name: sizes, volumes and where a hand operates them; and what the houses measure that they are set in.</summary>
/// <remarks>
/// Immutable and replaceable: <see cref="Generic"/> is where to start, and each <c>With</c> gives a catalog in which the row of the same key
/// (kind and gangs, or kind of device) is replaced or added. A box in hand that measures otherwise is always right.
/// </remarks>
public sealed class PartsCatalog
{
    private static readonly Citation NotKnown = new("not known");

    private readonly PartTable<BoxPart> boxes;
    private readonly PartTable<PlatePart> plates;
    private readonly PartTable<DevicePart> devices;
    private readonly PartTable<VolumesPart> volumes;
    private readonly PartTable<KindPart> kinds;

    /// <summary>A catalog without rows, for the parts of another country. Its usual measures are those of the generic catalog, without sheets of board, until <see cref="With(BoxHeights.UsualMeasures)"/> gives it its own.</summary>
    /// <param name="usualBox">What a box is of which no kind is stated.</param>
    /// <param name="usualPlate">The plate over a box of which none is stated.</param>
    /// <param name="gangPitch">From the center of one device to the next in one box; more than zero, an even number of ticks.</param>
    /// <exception cref="ArgumentException">A kind isn't stated, or the pitch isn't more than zero or has no exact half.</exception>
    public PartsCatalog(BoxKind usualBox, PlateKind usualPlate, Distance gangPitch)
        : this(usualBox, usualPlate, gangPitch, UsualMeasures.Generic.WithCourses(), [], [], [], [], [])
    {
    }

    private PartsCatalog(
        BoxKind usualBox,
        PlateKind usualPlate,
        Distance gangPitch,
        UsualMeasures measures,
        IEnumerable<BoxPart> boxes,
        IEnumerable<PlatePart> plates,
        IEnumerable<DevicePart> devices,
        IEnumerable<VolumesPart> volumes,
        IEnumerable<KindPart> kinds)
        : this(
            new(row => row.Kind.Name, row => row.Gangs, boxes),
            new(row => row.Kind.Name, row => row.Gangs, plates),
            new(row => row.Kind.Name, null, devices),
            new(row => row.Kind.Name, row => row.Gangs, volumes),
            new(row => row.Kind.Name, null, kinds),
            measures)
    {
        UsualBox = PartRow.Stated(usualBox, usualBox != default, nameof(usualBox));
        UsualPlate = PartRow.Stated(usualPlate, usualPlate != default, nameof(usualPlate));
        GangPitch = EvenSize.Check(gangPitch, nameof(gangPitch));
    }

    private PartsCatalog(PartTable<BoxPart> boxes, PartTable<PlatePart> plates, PartTable<DevicePart> devices, PartTable<VolumesPart> volumes, PartTable<KindPart> kinds, UsualMeasures measures)
    {
        UsualMeasures = measures;
        this.boxes = boxes;
        this.plates = plates;
        this.devices = devices;
        this.volumes = volumes;
        this.kinds = kinds;
    }

    /// <summary>Brandless parts as they are common in the United States. Each row cites its source and says how sure it is.</summary>
    public static PartsCatalog Generic { get; } = new(
        BoxKind.NailOn, PlateKind.Standard, GenericParts.GangPitch, UsualMeasures.Generic,
        GenericParts.Boxes(), GenericParts.Plates(), GenericParts.Devices(), GenericParts.Volumes(), GenericParts.Kinds());

    /// <summary>What a box is of which no kind is stated.</summary>
    public BoxKind UsualBox { get; private init; }

    /// <summary>The same catalog with another box where no kind is stated: cut-in boxes in a house whose walls are closed, square metal ones where those are the rule.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <exception cref="ArgumentException"><paramref name="kind"/> is of no name.</exception>
    public PartsCatalog WithUsualBox(BoxKind kind) => new(boxes, plates, devices, volumes, kinds, UsualMeasures) { UsualBox = PartRow.Stated(kind, kind != default, nameof(kind)), UsualPlate = UsualPlate, GangPitch = GangPitch };

    /// <summary>The plate over a box of which none is stated, where the row of its kind names no other.</summary>
    public PlateKind UsualPlate { get; private init; }

    /// <summary>From the center of one device to the next in one box, where the row of its kind says nothing else: 1-13/16 in among the generic parts.</summary>
    public Distance GangPitch { get; private init; }

    /// <summary>What houses measure where their description doesn't say.</summary>
    public UsualMeasures UsualMeasures { get; }

    /// <summary>How many parts it has of each sort.</summary>
    public override string ToString() => Boxes.Count + " boxes, " + Plates.Count + " plates";

    /// <summary>The rows of box sizes.</summary>
    public Items<BoxPart> Boxes => boxes.Rows;

    /// <summary>The rows of plate sizes.</summary>
    public Items<PlatePart> Plates => plates.Rows;

    /// <summary>The rows of devices.</summary>
    public Items<DevicePart> Devices => devices.Rows;

    /// <summary>The rows of volumes in which boxes are sold.</summary>
    public Items<VolumesPart> Volumes => volumes.Rows;

    /// <summary>The rows of how kinds of boxes are built.</summary>
    public Items<KindPart> Kinds => kinds.Rows;

    /// <summary>The row of a kind of box with so many gangs.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many devices side by side.</param>
    /// <exception cref="ArgumentException">The catalog has no such row; see <see cref="TryFindBox"/>.</exception>
    public BoxPart FindBox(BoxKind kind, int gangs) => TryFindBox(kind, gangs, out BoxPart? part) ? part : throw NoSuch("box", kind.Name, gangs, nameof(kind));

    /// <summary>The row of a kind of plate for so many gangs.</summary>
    /// <param name="kind">The kind of plate.</param>
    /// <param name="gangs">How many devices side by side.</param>
    /// <exception cref="ArgumentException">The catalog has no such row; see <see cref="TryFindPlate"/>.</exception>
    public PlatePart FindPlate(PlateKind kind, int gangs) => TryFindPlate(kind, gangs, out PlatePart? part) ? part : throw NoSuch("plate", kind.Name, gangs, nameof(kind));

    /// <summary>This catalog with a box row replaced or added.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    public PartsCatalog With(BoxPart row) => Like(boxes.With(Guard.NotNull(row, nameof(row))), plates, devices, volumes, kinds);

    /// <summary>This catalog with a plate row replaced or added.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    public PartsCatalog With(PlatePart row) => Like(boxes, plates.With(Guard.NotNull(row, nameof(row))), devices, volumes, kinds);

    /// <summary>This catalog with a device row replaced or added.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    public PartsCatalog With(DevicePart row) => Like(boxes, plates, devices.With(Guard.NotNull(row, nameof(row))), volumes, kinds);

    /// <summary>This catalog with a row of volumes replaced or added.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    public PartsCatalog With(VolumesPart row) => Like(boxes, plates, devices, volumes.With(Guard.NotNull(row, nameof(row))), kinds);

    /// <summary>This catalog with a row of how a kind of box is built replaced or added.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    public PartsCatalog With(KindPart row) => Like(boxes, plates, devices, volumes, kinds.With(Guard.NotNull(row, nameof(row))));

    /// <summary>This catalog with other usual measures.</summary>
    /// <param name="measures">The measures.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measures"/> is null.</exception>
    public PartsCatalog With(UsualMeasures measures) => Like(boxes, plates, devices, volumes, kinds, Guard.NotNull(measures, nameof(measures)));

    /// <summary>Finds the size of a box.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many devices side by side.</param>
    /// <param name="part">The row; null if there is none.</param>
    public bool TryFindBox(BoxKind kind, int gangs, [NotNullWhen(true)] out BoxPart? part) => boxes.TryFind(kind.Name, gangs, out part);

    /// <summary>Finds the size of a plate.</summary>
    /// <param name="kind">The kind of plate.</param>
    /// <param name="gangs">How many devices side by side.</param>
    /// <param name="part">The row; null if there is none.</param>
    public bool TryFindPlate(PlateKind kind, int gangs, [NotNullWhen(true)] out PlatePart? part) => plates.TryFind(kind.Name, gangs, out part);

    /// <summary>Finds where a device is operated.</summary>
    /// <param name="kind">The kind of device.</param>
    /// <param name="part">The row; null if there is none, which is "not known" and not "no operable parts".</param>
    public bool TryFindDevice(DeviceKind kind, [NotNullWhen(true)] out DevicePart? part) => devices.TryFind(kind.Name, out part);

    /// <summary>The volumes in which a kind of box is sold, from the smallest to the largest; empty if not known.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many devices side by side.</param>
    public Items<Volume> StandardVolumes(BoxKind kind, int gangs) => TryFindVolumes(kind, gangs, out VolumesPart? part) ? part.Volumes : default;

    /// <summary>Finds the volumes in which a kind of box is sold.</summary>
    /// <param name="kind">The kind of box.</param>
    /// <param name="gangs">How many devices side by side.</param>
    /// <param name="part">The row; null if there is none.</param>
    public bool TryFindVolumes(BoxKind kind, int gangs, [NotNullWhen(true)] out VolumesPart? part) => volumes.TryFind(kind.Name, gangs, out part);

    /// <summary>How a kind of box is built; what isn't known of it is as of any other box.</summary>
    /// <param name="kind">The kind of box; stated.</param>
    /// <exception cref="ArgumentException"><paramref name="kind"/> is not stated.</exception>
    public KindPart BuildOf(BoxKind kind) => kinds.TryFind(kind.Name, out KindPart? row) ? row : new(kind, NotKnown);

    /// <summary>Sixteen hexadecimal digits that are the same for every catalog with the same rows, and hardly ever for another.</summary>
    public string Fingerprint => Stamp.Of(string.Join("\n", Boxes) + "\n\n" + string.Join("\n", Plates) + "\n\n" + string.Join("\n", Devices) + "\n\n" + string.Join("\n", Volumes) + "\n\n" + string.Join("\n", Kinds) + "\n" + string.Join("|", UsualBox, UsualPlate, GangPitch)
        + (UsualMeasures == UsualMeasures.Generic ? "" : "\n" + UsualMeasures));

    private PartsCatalog Like(PartTable<BoxPart> boxes, PartTable<PlatePart> plates, PartTable<DevicePart> devices, PartTable<VolumesPart> volumes, PartTable<KindPart> kinds, UsualMeasures? measures = null) =>
        new(boxes, plates, devices, volumes, kinds, measures ?? UsualMeasures) { UsualBox = UsualBox, UsualPlate = UsualPlate, GangPitch = GangPitch };

    private static ArgumentException NoSuch(string what, string kind, int gangs, string name) =>
        new("The catalog has no " + what + " \"" + kind + "\" of " + gangs.ToString(CultureInfo.InvariantCulture) + " gangs.", name);
}
