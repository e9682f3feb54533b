using System;

namespace BoxHeights.Rules;

/// <summary>A storey has an outlet of a kind in its rooms, or in those of them that aren't left out.</summary>
/// <remarks>A storey of which no box is described isn't judged, nor is a dwelling that lists no such outlet at all.</remarks>
public sealed record StoreyOutlet : SpaceRule
{
    /// <summary>Describes what is required.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is required, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is required.</param>
    /// <param name="outlet">What counts.</param>
    public StoreyOutlet(string id, string summary, Severity severity, Citation citation, CountedOutlet outlet)
        : base(id, summary, severity, citation) => Outlet = outlet ?? throw new ArgumentNullException(nameof(outlet));

    /// <summary>What counts.</summary>
    public CountedOutlet Outlet { get; init; }

    /// <summary>The row speaks of storeys with a room of one of these kinds; of every storey with a room of another kind than <see cref="NotIn"/> where none is named.</summary>
    public Items<RoomKind> WhereThereIs { get; init; }

    /// <summary>Outlets in rooms of these kinds don't count.</summary>
    public Items<RoomKind> NotIn { get; init; }

    /// <summary>Whether it speaks only of dwellings that list such an outlet, even where every box is described: whether one is needed can't be told.</summary>
    public bool OnlyWhereListed { get; init; }

    /// <summary>A box that would do, on a ceiling; null where none is offered.</summary>
    public DeviceBox? Cure { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Storey;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Outlet.KindsNamed, WhereThereIs.Select(kind => kind.Name), NotIn.Select(kind => kind.Name));

    /// <inheritdoc/>
    public override string Numbers => "at least 1 " + Outlet.Numbers + (OnlyWhereListed ? " where one is listed" : "") + (WhereThereIs.Count == 0 ? "" : " where there is a " + WhereThereIs) + (NotIn.Count == 0 ? "" : ", not in a " + NotIn);

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        bool speaks = false;
        bool hasOther = false;
        foreach (Room room in space.Dwelling.Rooms)
        {
            speaks |= room.Storey == space.Id && (WhereThereIs.Count == 0 ? !NotIn.Contains(room.Kind) : WhereThereIs.Contains(room.Kind));
            hasOther |= room.Storey == space.Id && !NotIn.Contains(room.Kind);
        }

        if (!speaks)
        {
            return;
        }

        if (!hasOther)
        {
            statement.LeavesOpen("no room is described there that one could be in");
            return;
        }

        if (!RoomOutlet.IsDescribed(space, Outlet, statement, OnlyWhereListed))
        {
            return;
        }

        Facts needs = Facts.None;
        Facts missing = Facts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict counts = NotIn.Contains(box.Room) ? Verdict.Fails : Outlet.Of(box, out missing);
            if (counts == Verdict.Passes)
            {
                statement.Meets(space.Id, space.Id);
                return;
            }

            needs |= counts == Verdict.Unknown ? missing : Facts.None;
        }

        Lacks(space, needs, statement);
    }

    // On its own, because what a lambda captures is allocated where its method begins.
    private void Lacks(SpaceView space, Facts needs, SpaceStatement statement) =>
        statement.Finds(
            space.Id, space.Id, needs == Facts.None ? Verdict.Fails : Verdict.Unknown, Quantity.Of(0), QuantitySet.AtLeast(1), () => "no " + Outlet.Name, needs, () => CureOn(space));

    /// <summary>In a hall of the storey, or the first room that will do.</summary>
    private Items<PlacedBox> CureOn(SpaceView space)
    {
        Items<PlacedBox> first = default;
        foreach (Room room in space.Dwelling.Rooms)
        {
            if (Cure is { } cure && room.Storey == space.Id && !NotIn.Contains(room.Kind)
                && OutletCure.InCeiling(room, cure.WithId(FreePlaces.FreeId(space, room.Id + "-" + cure.Id)), 4) is { Count: > 0 } box)
            {
                if (room.Kind == RoomKind.Hall)
                {
                    return box;
                }

                first = first.Count == 0 ? box : first;
            }
        }

        return first;
    }
}
