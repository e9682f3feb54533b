using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Something to do about a finding. Those that the library offers have been tried: each clears the finding and adds none but of what it <see cref="Brings"/>.</summary>
/// <remarks>A box to add may share what is short of a violation with boxes that are set alike.</remarks>
public abstract class Remedy
{
    private protected Remedy(Wording wording) => Wording = wording ?? throw new ArgumentNullException(nameof(wording));

    /// <summary>What to do, in one line, in the language of <see cref="EvaluatorOptions.Words"/>.</summary>
    public string Text => Words.Format(Wording);

    /// <summary>The same as data.</summary>
    public Wording Wording { get; private set; }

    /// <summary>
    /// The ids of the rules short of a violation of which something is found then: where nothing else mends a violation, that doesn't wait for those, and the text says so.
    /// None in most cases.
    /// </summary>
    public Items<string> Brings { get; internal set; }

    /// <summary>The language of the evaluator that offers it.</summary>
    internal WordingFormatter Words { get; set; } = WordingFormatter.English;

    /// <summary>The dwelling with the remedy carried out.</summary>
    /// <param name="dwelling">The dwelling that it was found for.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public abstract Dwelling ApplyTo(Dwelling dwelling);

    /// <summary>What it does to each box: for a preview, or to carry out one at a time.</summary>
    /// <param name="dwelling">The dwelling that it was found for.</param>
    /// <returns>The boxes that it changes, in the dwelling's order, or adds; none of <see cref="NoneFound"/>, nor of boxes that the dwelling has no more.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public virtual Items<BoxChange> ChangesIn(Dwelling dwelling)
    {
        HashSet<string> ids = new(ChangedIds, StringComparer.Ordinal);
        List<BoxChange> changes = [];
        foreach (PlacedBox placed in Guard.NotNull(dwelling, nameof(dwelling)).PlacedBoxes())
        {
            if (ids.Contains(placed.Box.Id))
            {
                changes.Add(new(placed.Box, placed with { Box = Changed(placed.Box) }));
            }
        }

        return new(changes);
    }

    /// <summary>What to do, in one line.</summary>
    public override string ToString() => Text;

    /// <summary>The ids of the boxes that it changes where they are; none where it does something else.</summary>
    internal virtual Items<string> ChangedIds => default;

    /// <summary>The ids of the boxes that it changes or adds: two remedies that touch one box are ways to choose from.</summary>
    internal virtual List<string> TouchedIds() => [.. ChangedIds];

    /// <summary>Whether it is about a box, or about none in particular.</summary>
    internal virtual bool Concerns(string box) => ChangedIds.Count == 0 || ChangedIds.Contains(box);

    /// <summary>One of those boxes with the remedy carried out.</summary>
    internal virtual DeviceBox Changed(DeviceBox box) => box;

    /// <summary>Says what is found with it, before anybody is told of it.</summary>
    internal void Bring(Items<string> rules)
    {
        if (Brings.Count == 0 && rules.Count > 0)
        {
            Brings = rules;
            Wording = $"{Wording:remedy}, though {Wording.And(rules.Select(Wording.Name)):rules} will be found then";
        }
    }

    private protected Dwelling Change(Dwelling dwelling)
    {
        HashSet<string> ids = new(ChangedIds, StringComparer.Ordinal);
        return dwelling.WithBoxes(box => ids.Contains(box.Id) ? Changed(box) : box);
    }
}

/// <summary>Sets one box, or all boxes that were set by one stick, to another height, and one box perhaps to another place along its wall.</summary>
[Told]
public sealed partial class MoveBoxes : Remedy
{
    /// <summary>The boxes.</summary>
    public Items<string> Ids { get; }

    /// <summary>The height to set them to.</summary>
    public BoxHeight Height { get; }

    /// <summary>The new place along the wall; null where they stay.</summary>
    public Distance? Along { get; }

    /// <summary>How the box is held at the new place, by the stud and side that it is then nailed to where studs are known; null where it stays, or nothing is said of that.</summary>
    public Mounting? Mounting { get; }

    /// <summary>Whether the height keeps the workmanship margin from every limit.</summary>
    public bool HasSlack { get; }

    internal override Items<string> ChangedIds => Ids;

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) =>
        box with { Height = Height, Measured = null, At = Along ?? box.At, Mounting = Along is null ? box.Mounting : Mounting };
}

/// <summary>Sets a box in a ceiling or a floor to another place in plan.</summary>
[Told]
public sealed partial class MoveInPlan : Remedy
{
    /// <summary>The box.</summary>
    public string Id { get; }

    /// <summary>The new place.</summary>
    public PlanPoint Plan { get; }

    internal override Items<string> ChangedIds => new[] { Id };

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) => box with { Plan = Plan };
}

/// <summary>Adds boxes: one in most cases.</summary>
public sealed class AddBox : Remedy
{
    /// <summary>Boxes to add.</summary>
    /// <param name="placed">The boxes and the surfaces that they go on; one at least.</param>
    /// <param name="wording">What to do, in one line.</param>
    /// <exception cref="ArgumentException">There is no box.</exception>
    public AddBox(Items<PlacedBox> placed, Wording wording)
        : base(wording) => Placed = placed.Count > 0 ? placed : throw new ArgumentException("There is no box to add.", nameof(placed));

    /// <summary>The boxes and the surfaces that they go on.</summary>
    public Items<PlacedBox> Placed { get; }

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public override Dwelling ApplyTo(Dwelling dwelling)
    {
        foreach (PlacedBox placed in Placed)
        {
            dwelling = dwelling.WithBox(placed);
        }

        return dwelling ?? throw new ArgumentNullException(nameof(dwelling));
    }

    internal override List<string> TouchedIds() => [.. Placed.Select(placed => placed.Box.Id)];

    /// <inheritdoc/>
    public override Items<BoxChange> ChangesIn(Dwelling dwelling)
    {
        Guard.NotNull(dwelling, nameof(dwelling));
        return Placed.Select(placed => new BoxChange(null, placed));
    }
}

/// <summary>Takes a larger, deeper or shallower box.</summary>
[Told]
public sealed partial class ResizeBox : Remedy
{
    /// <summary>The boxes.</summary>
    public Items<string> Ids { get; }

    /// <summary>The volume to be marked on them, at least.</summary>
    public Volume Volume { get; }

    /// <summary>Their size with its new depth; null where that stays, or goes with the kind.</summary>
    public BoxSize? Size { get; }

    /// <summary>The kind of box to take instead, in the size that such boxes have; null where that stays.</summary>
    public BoxKind? Kind { get; }

    /// <summary>The stud and the side that they are on and stay on, where they were placed by a center that one of another kind has elsewhere; null where they stay as they are placed.</summary>
    public Mounting? Mounting { get; }

    internal override Items<string> ChangedIds => Ids;

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) => box with
    {
        Volume = Volume,
        Size = Kind is null ? Size ?? box.Size : null,
        Kind = Kind ?? box.Kind,
        Mounting = Mounting ?? box.Mounting,
        At = Mounting is null ? box.At : null,
    };
}

/// <summary>Sets boxes further out from the framing, or brings them out with a ring.</summary>
[Told]
public sealed partial class SetProjection : Remedy
{
    /// <summary>The boxes.</summary>
    public Items<string> Ids { get; }

    /// <summary>From the face of the framing to the front edge of the box or its ring.</summary>
    public Distance Projection { get; }

    internal override Items<string> ChangedIds => Ids;

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) => box with { SetFor = Projection };
}

/// <summary>Adds blocking for a box to be nailed to, where it is or where it is moved to.</summary>
public sealed class AddBlocking : Remedy
{
    /// <summary>Blocking to add.</summary>
    /// <param name="id">The box.</param>
    /// <param name="wording">What to do, in one line.</param>
    /// <param name="along">The center of the box when it is nailed to the blocking, from the left end of its wall; null where that stays as it is described.</param>
    public AddBlocking(string id, Wording wording, Distance? along = null)
        : base(wording)
    {
        Id = id ?? throw new ArgumentNullException(nameof(id));
        Along = along;
    }

    /// <summary>The box.</summary>
    public string Id { get; }

    /// <summary>The center of the box when it is nailed to the blocking, from the left end of its wall; null where that stays as it is described.</summary>
    public Distance? Along { get; }

    internal override Items<string> ChangedIds => new[] { Id };

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) => box with { Mounting = new Mounting(MountingMethod.Blocking), At = Along ?? box.At };
}

/// <summary>Holds a box in another way where it is: on a bracket, on a bar that spans its bay.</summary>
[Told]
public sealed partial class ChangeMounting : Remedy
{
    /// <summary>The box.</summary>
    public string Id { get; }

    /// <summary>How it is held then.</summary>
    public Mounting Mounting { get; }

    /// <summary>Where its center is, from the left end of its wall: a box that was placed by its stud stays there.</summary>
    public Distance Along { get; }

    internal override Items<string> ChangedIds => new[] { Id };

    /// <inheritdoc/>
    public override Dwelling ApplyTo(Dwelling dwelling) => Change(dwelling);

    internal override DeviceBox Changed(DeviceBox box) => box with { Mounting = Mounting, At = Along };
}

/// <summary>There is no remedy, for a <see cref="Reason"/>: the text says it, and what to do instead where there is something.</summary>
[Told]
public sealed partial class NoneFound : Remedy
{
    /// <summary>Why there is none.</summary>
    public NoRemedyReason Reason { get; }

    /// <summary>The boxes; none where one is lacking.</summary>
    public Items<string> Ids { get; }

    internal override bool Concerns(string box) => Ids.Count == 0 || Ids.Contains(box);

    /// <summary>The ids of the rules that leave no height together where the box is, or of what else is in the way.</summary>
    public Items<string> Conflicting { get; }

    /// <summary>The dwelling as it is.</summary>
    /// <param name="dwelling">The dwelling.</param>
    public override Dwelling ApplyTo(Dwelling dwelling) => dwelling ?? throw new ArgumentNullException(nameof(dwelling));
}
