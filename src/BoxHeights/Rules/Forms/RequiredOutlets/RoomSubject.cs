using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Each room of the kinds in the row's scope needs outlets, by its number, its openings or its floor.</summary>
public sealed record RoomSubject : OutletSubject
{
    private static readonly Wording StairMayServe = $"the switches of its stair, which another row asks for, may serve it";
    private static readonly Wording NoFloorArea = $"its walls don't close, so that its floor isn't known";

    /// <summary>One of these does as well; null where nothing else does.</summary>
    public CountedOutlet? Instead { get; init; }

    /// <summary>Only rooms with a fixture of one of these kinds are asked; all rooms where no kind is named.</summary>
    public Items<FixtureKind> OnlyWith { get; init; }

    /// <summary>What may make up for a room without one, such as a switch outside it; none where nothing may.</summary>
    public MissingFacts Unless { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => "a room" + (OnlyWith.Count == 0 ? "" : " with " + OnlyWith) + (Instead is null ? "" : ", or " + Instead.Numbers)
        + (Unless == MissingFacts.None ? "" : ", unless by " + FactText.Of(Unless));

    internal override Items<string> KindsNamed => Instead?.KindsNamed ?? default;

    internal override bool LooksAt(BoxTraits box) => Instead is { } other && other.MayBe(box);

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room || (OnlyWith.Count > 0 && !HasOne(room)) || !row.IsDescribed(space, statement))
        {
            return;
        }

        int needed = row.Count.For(room);
        if (row.Count.Each is not null)
        {
            if (RoomInPlan.Of(space).Plan.Area is not { } area)
            {
                statement.LeavesOpen(NoFloorArea);
                return;
            }

            needed = Math.Max(needed, row.Count.For(area));
        }

        int sure = Count(space, row.Outlet, out int possible, out MissingFacts needs);
        if (needed > 1 && BaysOf(row, space) is { } bays)
        {
            Judge(row, space, bays, statement);
            return;
        }

        if (row.Count.AtMost is { } most && possible > most)
        {
            FindsTooMany(row, space, statement, sure > most ? sure : possible, most, sure > most, needs);
            return;
        }

        if (sure >= needed || (Instead is not null && Count(space, Instead, out _, out _) > 0))
        {
            statement.Meets(space.Id, space.Id);
            return;
        }

        if ((Unless & MissingFacts.ServedFromOutside) != 0 && HasStair(space, room))
        {
            statement.LeavesOpen(StairMayServe);
            return;
        }

        Finds(row, space, statement, sure, needed, possible >= needed || Unless != MissingFacts.None, needs | Unless);
    }

    private static void FindsTooMany(RequiredOutlet row, SpaceView space, SpaceStatement statement, int count, int most, bool isSure, MissingFacts needs) =>
        statement.Finds(
            space.Id, space.Id, isSure ? Verdict.Fails : Verdict.Unknown, Quantity.Of(count), QuantitySet.AtMost(most),
            () => $"{count} × {row.OutletName:outlet}", isSure ? MissingFacts.None : needs);

    /// <summary>Near the place that is offered, and in its bay.</summary>
    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered)
    {
        if (box.Along is not { } at || (at - offered).Abs() > space.RoomForBoxes.Aside)
        {
            return false;
        }

        int face = RoomInPlan.Of(space).Plan.IndexOf(box.WallId);
        return BaysOf(row, space) is not { } bays || (bays.BayAt(face, at, out bool isOnTheLine) == bays.BayAt(face, offered, out _) && !isOnTheLine);
    }

    private static VehicleBays? BaysOf(RequiredOutlet row, SpaceView space) =>
        row.Count.OneForEach.Count == 0 ? null : VehicleBays.Of(RoomInPlan.Of(space).Plan, row.Count.OneForEach, row.Count.TwoBeyond);

    /// <summary>Each bay has one of its own.</summary>
    private static void Judge(RequiredOutlet row, SpaceView space, VehicleBays bays, SpaceStatement statement)
    {
        List<int> without = bays.Without(space, row.Outlet, out bool canBeServed, out MissingFacts needs);
        if (without.Count == 0)
        {
            statement.Meets(space.Id, space.Id);
            return;
        }

        row.Lacks(
            statement, space.Id, space.Id, bays.Count - without.Count, bays.Count, canBeServed, needs,
            () => Said(row, bays.Count - without.Count, bays.Count, true),
            added => AddedIn(row, space, added, bays, without));
    }

    private static void Finds(RequiredOutlet row, SpaceView space, SpaceStatement statement, int sure, int needed, bool mayBeMet, MissingFacts needs) =>
        row.Lacks(
            statement, space.Id, space.Id, sure, needed, mayBeMet, needs,
            () => Said(row, sure, needed, false),
            added => AddedIn(row, space, added.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id)), null));

    private static Wording Said(RequiredOutlet row, int sure, int needed, bool isOfBays)
    {
        Wording there = needed > 1 ? $"{row.Counted(sure):there} of {needed}" : row.Counted(sure);
        return isOfBays ? $"{there}, one to a bay" : there;
    }

    /// <summary>One for each bay that has none and a place for one.</summary>
    private static Items<PlacedBox> AddedIn(RequiredOutlet row, SpaceView space, DeviceBox added, VehicleBays bays, List<int> without)
    {
        List<PlacedBox> boxes = [];
        foreach (int bay in without)
        {
            DeviceBox box = added.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id, boxes));
            boxes.AddRange(AddedIn(row, space, box, (face, at) => bays.BayAt(face, at, out bool isOnTheLine) == bay && !isOnTheLine));
        }

        return new(boxes);
    }

    private static Items<PlacedBox> AddedIn(RequiredOutlet row, SpaceView space, DeviceBox box, Func<int, Distance, bool>? where) =>
        box.Height is null ? OutletPlace.InCeiling(space.Room!, box, row.AddedInPart)
            : OutletPlace.InTheOpen(space, box.WithHeight(NeighborHeight.InItsRoom(space, box, row.Outlet)), where);

    /// <summary>Whether a flight climbs along one of its walls.</summary>
    private static bool HasStair(SpaceView space, Room room) => space.Dwelling.Flights.Exists(flight => flight.Wall is { } wall && SurfaceAddress.Read(wall).IsPartOf(room.Id));

    private bool HasOne(Room room) => room.Fixtures.Exists(fixture => OnlyWith.Contains(fixture.Kind));
}
