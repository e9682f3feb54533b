using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>How a planned box is held on a wall whose studs are stated: nailed to the one that it is against, else on blocking. Where nothing is said of studs, nor is it of what holds it; a box that is built to be held otherwise, as one that is cut in, is.</summary>
internal static class HeldOnWall
{
    /// <summary>The box as it is held where it is.</summary>
    public static DeviceBox At(LayoutState state, string address, DeviceBox box)
    {
        if (box.At is not { } at || !IsToHold(state, address, box, out StudPositions? studs) || ResolvedBox.SizeOf(box, state.Options.Catalog) is not { IsStated: true } size)
        {
            return box;
        }

        // Which stud it will be isn't known where they are only assumed.
        if (studs!.Known == StudKnowledge.Assumed)
        {
            return As(state, address, box, false);
        }

        if (studs.Holding(at, size.Width) is { } on)
        {
            return box.WithMounting(new Mounting(MountingMethod.Stud).WithStud(on.Stud).WithSide(on.Side));
        }

        bool isNailed = state.SurfaceAt(address)!.Framing is { Members: { Count: <= WallFraming.MostWorkedThrough } members }
            && members.Exists(member => member.IsSure && (member.Right == at - size.HalfWidth || member.Left == at + size.HalfWidth));
        return As(state, address, box, !isNailed);
    }

    /// <summary>The box as it is held against a stud, or between two.</summary>
    public static DeviceBox As(LayoutState state, string address, DeviceBox box, bool isBetween) =>
        IsToHold(state, address, box, out _) ? box.WithMounting(new Mounting(isBetween ? MountingMethod.Blocking : MountingMethod.Stud)) : box;

    private static bool IsToHold(LayoutState state, string address, DeviceBox box, out StudPositions? studs)
    {
        ResolvedSurface? surface = state.SurfaceAt(address);
        studs = surface?.Studs;
        return box.Mounting is null && box.Surface is null or BoxSurface.Wall && surface?.Kind == BoxSurface.Wall && studs is { Count: > 0 }
            && state.Options.Catalog.BuildOf(ResolvedBox.KindOf(box, state.Options.Catalog)).Mounting is null or MountingMethod.Stud;
    }
}
