namespace BoxHeights;

/// <summary>Whether the finished surface that a box opens through burns.</summary>
internal enum SurfaceBurns
{
    /// <summary>Board, plaster, tile, stone or masonry.</summary>
    No,

    /// <summary>It isn't stated, or where the box is isn't.</summary>
    NotKnown,

    /// <summary>Wood or another that burns.</summary>
    Yes,
}

/// <summary>What of a box decides which things an inspector looks at.</summary>
internal sealed class InspectedBox
{
    // The size up to which NEC 314.17(C) Exception (2017) lets a cable enter a one-gang nonmetallic box without a clamp.
    private static readonly Distance UnclampedWidth = Distance.FromInches(2, 1, 4);
    private static readonly Distance UnclampedHeight = Distance.FromInches(4, 0, 1);

    // An opening smaller than this either way: NEC 300.14.
    private static readonly Distance SmallOpening = Distance.FromInches(8, 0, 1);

    public InspectedBox(ResolvedBox box, PartsCatalog catalog)
    {
        DeviceBox source = box.Source;
        KindPart build = catalog.BuildOf(ResolvedBox.KindOf(source, catalog));
        BoxSize size = ResolvedBox.SizeOf(source, catalog);
        BoxSurface surface = source.Surface ?? box.Surface.Kind;
        IsCutIn = build.Mounting == MountingMethod.CutIn || source.Mounting?.How == MountingMethod.CutIn;
        IsOnFace = source.Mounting?.How == MountingMethod.Surface;
        IsInFraming = surface != BoxSurface.Cabinet && build.Mounting != MountingMethod.Masonry && source.Mounting?.How is not (MountingMethod.Masonry or MountingMethod.Surface or MountingMethod.Cabinet);

        // A molded flap isn't a clamp here, and clamps that nobody stated aren't counted on: the shorter distance is the safer one to ask for.
        MayEnterUnclamped = build.Material == BoxMaterial.Plastic && !IsCutIn && ResolvedBox.GangsOf(source) == 1 && source.Clamps != CableClamps.Internal
            && size.IsStated && size.Width <= UnclampedWidth && size.Height <= UnclampedHeight;
        HasSmallOpening = !size.IsStated || size.Width < SmallOpening || size.Height < SmallOpening;
        Burns = surface switch
        {
            BoxSurface.Floor or BoxSurface.Cabinet => SurfaceBurns.NotKnown,
            _ => BurnsAt(box, size, catalog),
        };
    }

    /// <summary>Whether it is cut into a finished surface, behind which cables are fished.</summary>
    public bool IsCutIn { get; }

    /// <summary>Whether it stands on the face of the surface, so that no board meets it.</summary>
    public bool IsOnFace { get; }

    /// <summary>Whether its cables run through studs, plates or joists.</summary>
    public bool IsInFraming { get; }

    /// <summary>Whether a cable may enter it without a clamp where it is fastened near by.</summary>
    public bool MayEnterUnclamped { get; }

    /// <summary>Whether its opening is so small that wires must reach out of it.</summary>
    public bool HasSmallOpening { get; }

    /// <summary>Whether the finished surface around it burns.</summary>
    public SurfaceBurns Burns { get; }

    private static SurfaceBurns BurnsAt(ResolvedBox box, BoxSize size, PartsCatalog catalog)
    {
        // Indoors what isn't described is gypsum board; what an outside face is clad with has to be said.
        SurfaceBurns burns = box.Surface.Space.IsOutside ? SurfaceBurns.NotKnown : SurfaceBurns.No;
        foreach (Finish finish in box.Surface.Wall?.Finishes ?? default)
        {
            bool? meets = Meets(finish, box, size, catalog);
            if (meets == true && finish.Burns == true)
            {
                return SurfaceBurns.Yes;
            }

            if (meets != false && finish.Burns != false)
            {
                burns = SurfaceBurns.NotKnown;
            }
        }

        return burns;
    }

    /// <summary>Whether a finish lies on any part of the box's opening; null where that can't be told.</summary>
    private static bool? Meets(Finish finish, ResolvedBox box, BoxSize size, PartsCatalog catalog)
    {
        if (!size.IsStated || !box.TryAlong(catalog, out Distance along))
        {
            return null;
        }

        if (along + size.HalfWidth <= finish.Left || finish.Right <= along - size.HalfWidth)
        {
            return false;
        }

        if (box.Height is not { Edge: not null } height || !box.TryOffset(Datum.Subfloor, height.Datum, catalog, out DistanceRange datum, out _))
        {
            return null;
        }

        DistanceRange bottom = datum + height.AtEdge(Edge.Bottom, size).Value;
        DistanceRange top = datum + height.AtEdge(Edge.Top, size).Value;
        bool surely = true;
        if (finish.Top is { } high)
        {
            if (!TryAboveSubfloor(high, finish, box.Surface, out DistanceRange up))
            {
                return null;
            }

            if (bottom.From >= up.To)
            {
                return false;
            }

            surely &= bottom.To < up.From;
        }

        if (finish.Bottom is { } low)
        {
            if (!TryAboveSubfloor(low, finish, box.Surface, out DistanceRange up))
            {
                return null;
            }

            if (up.From >= top.To)
            {
                return false;
            }

            surely &= up.To < top.From;
        }

        return surely ? true : null;
    }

    private static bool TryAboveSubfloor(Level level, Finish finish, ResolvedSurface surface, out DistanceRange up)
    {
        up = default;
        bool known = surface.TryAnchor(level, finish.Left, finish.Right, out Level anchored)
            && surface.Space.Levels.TryOffset(Datum.Subfloor, anchored.Datum, out up);
        up += anchored.Offset;
        return known;
    }
}
