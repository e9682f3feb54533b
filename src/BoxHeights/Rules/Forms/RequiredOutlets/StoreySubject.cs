namespace BoxHeights.Rules;

/// <summary>Each storey needs outlets in its rooms, or in those of them that aren't left out.</summary>
public sealed record StoreySubject : OutletSubject
{
    private static readonly Wording NoRoom = $"no room is described there that one could be in";

    /// <summary>The row speaks of storeys with a room of one of these kinds; of every storey with a room of another kind than <see cref="NotIn"/> where none is named.</summary>
    public Items<RoomKind> WhereThereIs { get; init; }

    /// <summary>Outlets in rooms of these kinds don't count.</summary>
    public Items<RoomKind> NotIn { get; init; }

    /// <summary>Where one that is added goes, the best kind of room first; any other room that counts comes after these.</summary>
    public Items<RoomKind> Best { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.Storey;

    /// <inheritdoc/>
    public override string Numbers => "a storey" + (WhereThereIs.Count == 0 ? "" : " where there is a " + WhereThereIs) + (NotIn.Count == 0 ? "" : ", not in a " + NotIn);

    internal override Items<string> KindsNamed => KindNames.Joined(WhereThereIs.Select(kind => kind.Name), NotIn.Select(kind => kind.Name));

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
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
            statement.LeavesOpen(NoRoom);
            return;
        }

        if (!row.IsDescribed(space, statement))
        {
            return;
        }

        int sure = 0;
        MissingFacts needs = MissingFacts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            MissingFacts missing = MissingFacts.None;
            Verdict counts = NotIn.Contains(box.Room) ? Verdict.Fails : row.Outlet.Of(box, out missing);
            sure += counts == Verdict.Passes ? 1 : 0;
            needs |= counts == Verdict.Unknown ? missing : MissingFacts.None;
        }

        if (sure >= row.Count.Least)
        {
            statement.Meets(space.Id, space.Id);
            return;
        }

        Lacks(row, space, sure, needs, statement);
    }

    // On its own, because what a lambda captures is allocated where its method begins.
    private void Lacks(RequiredOutlet row, SpaceView space, int sure, MissingFacts needs, SpaceStatement statement) =>
        row.Lacks(statement, space.Id, space.Id, sure, row.Count.Least, needs != MissingFacts.None, needs, () => row.Counted(sure), added => AddedOn(row, space, added));

    /// <summary>In the first room of the best kind that the storey has.</summary>
    private Items<PlacedBox> AddedOn(RequiredOutlet row, SpaceView space, DeviceBox added)
    {
        Items<PlacedBox> best = default;
        int least = int.MaxValue;
        foreach (Room room in space.Dwelling.Rooms)
        {
            if (room.Storey == space.Id && !NotIn.Contains(room.Kind) && Rank(room.Kind) is var rank && rank < least
                && OutletPlace.InCeiling(room, added.WithId(FreePlaces.FreeId(space, room.Id + "-" + added.Id)), row.AddedInPart) is { Count: > 0 } box)
            {
                (best, least) = (box, rank);
            }
        }

        return best;
    }

    private int Rank(RoomKind kind)
    {
        int rank = 0;
        while (rank < Best.Count && Best[rank] != kind)
        {
            rank++;
        }

        return rank;
    }
}
