using System;

namespace BoxHeights;

/// <summary>What becomes of one box: for a preview beside the drawing, or to be carried out by itself.</summary>
public class BoxChange
{
    internal BoxChange(DeviceBox? before, PlacedBox after)
    {
        Before = before;
        After = after;
    }

    /// <summary>The box as it was described; null where it is added.</summary>
    public DeviceBox? Before { get; }

    /// <summary>The box as it ends, and the surface it is on.</summary>
    public PlacedBox After { get; }

    /// <summary>The box's id.</summary>
    public string Id => After.Box.Id;

    /// <summary>The dwelling with this one change: <see cref="After"/> in the place of the box of its id, or one more box.</summary>
    /// <param name="dwelling">The dwelling that it was found for. Of what else was changed of the box meanwhile nothing is left.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such box any more; or it has one already that was to be added, or no such surface.</exception>
    public Dwelling ApplyTo(Dwelling dwelling)
    {
        bool isThere = Guard.NotNull(dwelling, nameof(dwelling)).FindBox(Id) is not null;
        return isThere == (Before is null) ? throw new ArgumentException(isThere ? "The dwelling has a box \"" + Id + "\" already." : "The dwelling has no box \"" + Id + "\".", nameof(dwelling))
            : isThere ? dwelling.WithBoxes(box => box.Id == Id ? After.Box : box)
            : dwelling.WithBox(After);
    }

    /// <summary>The box, where it is, and whether it is changed or added.</summary>
    public override string ToString() => Id + " (" + After.Address + (Before is null ? "): added" : "): changed");
}
