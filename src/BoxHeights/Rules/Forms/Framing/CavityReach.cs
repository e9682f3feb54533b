namespace BoxHeights.Rules;

/// <summary>How far boxes reach into a stud wall, from the face of its studs.</summary>
internal static class CavityReach
{
    /// <summary>From the studs' face to the back of a box whose front is flush with the wall.</summary>
    /// <param name="box">The box.</param>
    /// <param name="surface">The wall face that it is on.</param>
    /// <param name="reach">What is found; a range where depth or board are no better known.</param>
    /// <returns>False for a box that isn't set between studs, whose depth isn't known, or that is set from outside: siding and brick may be of any thickness.</returns>
    public static bool TryOf(BoxTraits box, ResolvedSurface surface, out DistanceRange reach)
    {
        reach = default;
        if (box.Depth is not { } deep || (box.Size.Depth is null && !IsOfKnownKind(box)) || surface.Space.IsOutside || !box.IsRecessed || box.Mounting == MountingMethod.Masonry)
        {
            return false;
        }

        reach = deep - InFront(box, surface);
        return true;
    }

    /// <summary>A box of which no kind is stated is a plastic one where a switch or receptacle is nailed up; a bell button or a thermostat may have none at all.</summary>
    private static bool IsOfKnownKind(BoxTraits box)
    {
        if (box.Source.Kind is not null || box.Mounting is MountingMethod.CutIn or MountingMethod.Bar)
        {
            return box.Source.Kind is not null;
        }

        return box.Devices.Exists(device => device.IsSwitch || device.IsReceptacle);
    }

    /// <summary>From the studs' face out to the front of the box.</summary>
    private static DistanceRange InFront(BoxTraits box, ResolvedSurface surface)
    {
        if (box.Build.TakesRing)
        {
            // The ring stands in the board, the box behind it.
            return Distance.Zero;
        }

        if (box.SetFor is { } set)
        {
            return set;
        }

        // Whether it lies in one of the wall's finishes would be where it is: the thickest of them may be in front of it.
        Distance finish = Distance.Zero;
        foreach (Finish one in surface.Wall!.Finishes)
        {
            finish = Distance.Max(finish, (one.Thickness?.To ?? Distance.Zero) + (one.Bed?.To ?? Distance.Zero));
        }

        return new(surface.BoardThickness ?? Distance.Zero, (surface.BoardThickness ?? surface.Usual.MostBoard) + finish);
    }
}
