using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which boxes a row speaks of. An empty list leaves that condition out.</summary>
public sealed record RuleScope
{
    /// <summary>Every box on every surface.</summary>
    public static RuleScope Everything { get; } = new();

    /// <summary>Every box on a wall.</summary>
    public static RuleScope Walls { get; } = new() { Surfaces = new[] { BoxSurface.Wall } };

    /// <summary>Boxes that hold one of these devices.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>Boxes for one of these purposes are spoken of, too, where their devices aren't stated: they will hold one of <see cref="Devices"/>.</summary>
    public Items<BoxPurpose> OrUnstatedFor { get; init; }

    /// <summary>Boxes for one of these purposes.</summary>
    public Items<BoxPurpose> Purposes { get; init; }

    /// <summary>Boxes in one of these kinds of room.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <summary>Boxes on one of these surfaces.</summary>
    public Items<BoxSurface> Surfaces { get; init; }

    /// <summary>Whether boxes that serve one appliance alone are left out.</summary>
    public bool ExceptDedicated { get; init; }

    /// <summary>Whether boxes that were there before are left out. Of those that are no part of the work nothing is found anyway: what is new is held against them.</summary>
    public bool ExceptExisting { get; init; }

    /// <summary>The same without boxes in ceilings; null where nothing is left of it.</summary>
    internal RuleScope? WithoutCeilings
    {
        get
        {
            List<BoxSurface> left = Surfaces.Count == 0 ? [BoxSurface.Wall, BoxSurface.Floor, BoxSurface.Cabinet] : [.. Surfaces];
            left.Remove(BoxSurface.Ceiling);
            return left.Count == 0 ? null : this with { Surfaces = new(left) };
        }
    }

    /// <summary>Whether the row speaks of a box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="room">The kind of room it is in.</param>
    public bool Covers(BoxTraits box, RoomKind room)
    {
        if ((ExceptDedicated && box.IsDedicated) || (ExceptExisting && box.IsExisting && !box.IsUntouched)
            || (Surfaces.Count > 0 && !Surfaces.Contains(box.Surface))
            || (Purposes.Count > 0 && !Purposes.Contains(box.Purpose))
            || (Rooms.Count > 0 && !Rooms.Contains(room)))
        {
            return false;
        }

        if (Devices.Count == 0)
        {
            return true;
        }

        foreach (DeviceKind device in box.Devices)
        {
            if (Devices.Contains(device))
            {
                return true;
            }
        }

        return box.Devices.Count == 0 && OrUnstatedFor.Contains(box.Purpose);
    }

    /// <summary>The conditions in words.</summary>
    public override string ToString()
    {
        string text = Devices.Count == 0 ? "any device" : Devices.ToString();
        text += OrUnstatedFor.Count == 0 ? "" : ", or none stated for " + OrUnstatedFor;
        text += Purposes.Count == 0 ? "" : " for " + Purposes;
        text += Rooms.Count == 0 ? "" : " in " + Rooms;
        text += Surfaces.Count == 0 ? "" : " on " + Surfaces;
        text += ExceptDedicated ? ", not serving one appliance" : "";
        return text + (ExceptExisting ? ", not existing" : "");
    }
}
