using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What of a box decides which things an inspector looks at.</summary>
internal sealed class InspectedBox
{
    private readonly BoxSize size;
    private readonly bool mayGoWithoutClamp;

    public InspectedBox(ResolvedBox box, PartsCatalog catalog)
    {
        DeviceBox source = box.Source;
        KindPart build = catalog.BuildOf(ResolvedBox.KindOf(source, catalog));
        size = ResolvedBox.SizeOf(source, catalog);
        BoxSurface surface = source.Surface ?? box.Surface.Kind;
        IsCutIn = build.Mounting == MountingMethod.CutIn || source.Mounting?.How == MountingMethod.CutIn;
        IsOnFace = source.Mounting?.How == MountingMethod.Surface;
        IsInFraming = surface != BoxSurface.Cabinet && build.Mounting != MountingMethod.Masonry && source.Mounting?.How is not (MountingMethod.Masonry or MountingMethod.Surface or MountingMethod.Cabinet);

        // A molded flap isn't a clamp here, and clamps that nobody stated aren't counted on: the shorter distance is the safer one to ask for.
        mayGoWithoutClamp = build.Material == BoxMaterial.Plastic && !IsCutIn && ResolvedBox.GangsOf(source) == 1 && source.Clamps != CableClamps.Internal && size.IsStated;
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

    /// <summary>Whether the finished surface around it burns.</summary>
    public SurfaceBurns Burns { get; }

    /// <summary>Whether a thing is looked at here.</summary>
    public bool Asks(InspectionItem item) =>
        (item.Unclamped is not { } unclamped || unclamped == (mayGoWithoutClamp && item.UnclampedUpTo is { } most && size.Width <= most.Width && size.Height <= most.Height))
        && (item.CutIn ?? IsCutIn) == IsCutIn && (IsInFraming || !item.InFraming)
        && (item.OpeningUnder is not { } small || !size.IsStated || size.Width < small || size.Height < small)
        && (item.Surfaces.Count == 0 || (!IsOnFace && item.Surfaces.Contains(Burns)));

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
