namespace BoxHeights;

/// <summary>A box of the description, bound to its surface, with its position in ticks.</summary>
[Told]
internal sealed partial class ResolvedBox
{
    public DeviceBox Source { get; }

    public ResolvedSurface Surface { get; }

    /// <summary>Whether a fault keeps it from being judged.</summary>
    public bool IsBroken { get; }

    /// <summary>Whether it is no part of this work, so that nothing is asked of it.</summary>
    public bool IsUntouched => IsUntouchedOn(Source, Surface);

    /// <summary>Whether it was there before this work.</summary>
    public bool IsExisting => Source.Existing || IsUntouched;

    /// <summary>Whether a box on a surface is no part of this work: as it says itself, else as its room or outside face does.</summary>
    public static bool IsUntouchedOn(DeviceBox box, ResolvedSurface surface) => box.Untouched ?? surface.Space.IsUntouched;

    /// <summary>The height that is judged: what was measured, else what it is set to.</summary>
    public BoxHeight? Height => Source.Measured?.Height ?? Source.Height;

    /// <summary>How far off a height may be: a tape's error where it was measured.</summary>
    public Distance Spread => Source.Measured is { } measured ? measured.Within ?? Surface.Usual.TapeError : Distance.Zero;

    /// <summary>Whether a distance is one of a house: up to 10,000 ft, some 3 km, either way. Common practice, no source.</summary>
    public static bool IsWithinReason(Distance distance) => distance <= MostOfAHouse && distance >= -MostOfAHouse;

    private static readonly Distance MostOfAHouse = Distance.FromFeet(10_000);

    /// <summary>Where its center is along the wall: as stated, or by the stud it is nailed to.</summary>
    public bool TryAlong(PartsCatalog catalog, out Distance along)
    {
        along = default;
        if (Source.At is { } at)
        {
            along = at;
            return true;
        }

        return Source.Mounting is { How: MountingMethod.Stud, Stud: { } stud, Side: { } side }
            && Surface.Studs is { } studs
            && SizeOf(Source, catalog) is { IsStated: true } size
            && studs.TryCenter(stud, side, size.Width, out along);
    }

    /// <summary>How it is held once it is set to another place along its wall: by the stud that it is then against where studs are known, else by none that is named.</summary>
    public Mounting? HeldAt(Distance along, PartsCatalog catalog)
    {
        (int Stud, StudSide Side)? on = Source.Mounting?.How == MountingMethod.Stud && Surface.Studs is { Known: not StudKnowledge.Assumed } studs
            && SizeOf(Source, catalog) is { IsStated: true } size ? studs.Holding(along, size.Width) : null;
        return Source.Mounting?.WithStud(on?.Stud).WithSide(on?.Side);
    }

    /// <summary>Whether a stud or the face of a wall is where it is set: not a cabinet, though it be listed under a wall.</summary>
    public bool IsOnWall => Surface.Kind == BoxSurface.Wall && Source.Surface is null or BoxSurface.Wall;

    /// <summary>How far one datum lies above another where this box is.</summary>
    /// <returns>False if a datum that this needs is not known there; <paramref name="becauseOf"/> says which.</returns>
    public bool TryOffset(Datum from, Datum to, PartsCatalog catalog, out DistanceRange offset, out Datum? becauseOf)
    {
        offset = default;
        becauseOf = null;
        if (from == to)
        {
            return true;
        }

        if (!TryAnchor(from, catalog, out Level low))
        {
            becauseOf = from;
            return false;
        }

        if (!TryAnchor(to, catalog, out Level high))
        {
            becauseOf = to;
            return false;
        }

        bool known = LevelsHere(catalog).TryOffset(low.Datum, high.Datum, out DistanceRange between, out becauseOf);
        offset = between + high.Offset - low.Offset;
        return known;
    }

    /// <summary>Where the datums are at this box: those of its room, and the nosings of the stair along its wall.</summary>
    private Levels LevelsHere(PartsCatalog catalog) =>
        Surface.Stair is { } stair && TryAlong(catalog, out Distance along) ? stair.At(Surface.Space.Levels, along) : Surface.Space.Levels;

    private bool TryAnchor(Datum datum, PartsCatalog catalog, out Level anchored)
    {
        anchored = new(Distance.Zero, datum);
        return !ResolvedSurface.IsOfAThing(datum)
            || (TryAlong(catalog, out Distance along) && Surface.TryAnchor(anchored, along, along, out anchored));
    }

    /// <summary>A box's size as it sits: its own, else the catalog's for its kind and gangs, turned if it lies on its side; not stated where neither is known.</summary>
    public static BoxSize SizeOf(DeviceBox box, PartsCatalog catalog) =>
        box.Size ?? SizeOf(box, catalog.TryFindBox(KindOf(box, catalog), GangsOf(box), out BoxPart? part) ? part : null);

    /// <summary>The same where the catalog's row for its kind and gangs is at hand.</summary>
    public static BoxSize SizeOf(DeviceBox box, BoxPart? part) => box.Size ?? (part is null ? default : box.OnItsSide ? part.Size.Turned() : part.Size);

    /// <summary>The room inside a box with its rings and extensions: as marked, as all such boxes have, or as its depth tells; null where none of them is known.</summary>
    public static Volume? VolumeOf(DeviceBox box, PartsCatalog catalog) =>
        VolumeOf(box, catalog.TryFindBox(KindOf(box, catalog), GangsOf(box), out BoxPart? part) ? part : null, GangsOf(box), catalog);

    /// <summary>The same where the catalog's row for its kind and gangs is at hand.</summary>
    public static Volume? VolumeOf(DeviceBox box, BoxPart? part, int gangs, PartsCatalog catalog)
    {
        Volume? own = box.Volume ?? part?.Volume;
        if (own is null && SizeOf(box, part).Depth is { } depth && catalog.TryFindVolumes(KindOf(box, catalog), gangs, out VolumesPart? sold))
        {
            for (int i = 0; i < sold.Depths.Count; i++)
            {
                own = sold.Depths[i] == depth ? sold.Volumes[i] : own;
            }
        }

        return own is { } inside ? inside + (box.Extension ?? Volume.Zero) : null;
    }

    /// <summary>The room that a box has whatever is marked on it, with its rings and extensions: its own, else that of the smallest of its kind; null where none is known.</summary>
    public static Volume? LeastVolumeOf(DeviceBox box, PartsCatalog catalog)
    {
        if (VolumeOf(box, catalog) is { } known)
        {
            return known;
        }

        bool isUsual = box.Size is not { } size || (size.Depth is null && catalog.TryFindBox(KindOf(box, catalog), GangsOf(box), out BoxPart? part)
            && size.Width >= part.Size.Width && size.Height >= part.Size.Height);
        return isUsual && catalog.TryFindVolumes(KindOf(box, catalog), GangsOf(box), out VolumesPart? sold) && sold.NoneSmaller ? sold.Volumes[0] + (box.Extension ?? Volume.Zero) : null;
    }

    /// <summary>A box is of the catalog's usual kind unless it says otherwise.</summary>
    public static BoxKind KindOf(DeviceBox box, PartsCatalog catalog) => box.Kind ?? catalog.UsualBox;

    /// <summary>The size of its plate as it sits; null where the catalog has none such.</summary>
    public static PlateSize? PlateOf(DeviceBox box, PartsCatalog catalog) => PlateOf(box, catalog.TryFindPlate(PlateKindOf(box, catalog), GangsOf(box), out PlatePart? plate) ? plate : null);

    /// <summary>The same where the catalog's row for its plate is at hand.</summary>
    public static PlateSize? PlateOf(DeviceBox box, PlatePart? plate) => plate is null ? null : box.OnItsSide ? plate.Size.Turned() : plate.Size;

    /// <summary>A box has the usual plate of its kind unless it says otherwise.</summary>
    public static PlateKind PlateKindOf(DeviceBox box, PartsCatalog catalog) => box.Plate ?? catalog.BuildOf(KindOf(box, catalog)).Plate ?? catalog.UsualPlate;

    /// <summary>A box has as many gangs as its devices need unless it says otherwise.</summary>
    public static int GangsOf(DeviceBox box) => box.Gangs ?? System.Math.Max(1, GangsNeeded.ByAll(box));
}
