using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>A room has so many outlets of a kind.</summary>
/// <remarks>
/// A room of which no box is described isn't judged, nor is a dwelling that lists no outlet of the kind at all: someone who describes receptacles alone asks
/// nothing about lights.
/// </remarks>
public sealed record RoomOutlet : SpaceRule
{
    /// <summary>Describes what is required.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is required, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is required.</param>
    /// <param name="outlet">What counts.</param>
    public RoomOutlet(string id, string summary, Severity severity, Citation citation, CountedOutlet outlet)
        : base(id, summary, severity, citation) => Outlet = outlet ?? throw new ArgumentNullException(nameof(outlet));

    /// <summary>What counts.</summary>
    public CountedOutlet Outlet { get; init; }

    /// <summary>One of these does as well; null where nothing else does.</summary>
    public CountedOutlet? Instead { get; init; }

    /// <summary>Openings of these kinds each ask for one outlet, in the bay that they lead to where all are in one wall.</summary>
    public Items<OpeningKind> OneForEach { get; init; }

    /// <summary>An opening wider than this asks for two; null where none does.</summary>
    public Distance? TwoBeyond { get; init; }

    /// <summary>Only rooms with a fixture of one of these kinds are asked; every room where none is named.</summary>
    public Items<FixtureKind> OnlyWith { get; init; }

    /// <summary>What may make it good that the room has none; nothing where nothing does.</summary>
    public Facts Unless { get; init; }

    /// <summary>Dwellings that the row speaks of, where theirs is stated; every dwelling where none is named.</summary>
    public Items<Occupancy> Occupancies { get; init; }

    /// <summary>A box that would do, without its place; null where none is offered.</summary>
    public DeviceBox? Cure { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Outlet.KindsNamed, Instead?.KindsNamed ?? default, OneForEach.Select(kind => kind.Name));

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "other required outlets";

    /// <inheritdoc/>
    public override string Numbers => "at least 1 " + Outlet.Numbers + (Instead is null ? "" : ", or " + Instead.Numbers)
        + (OneForEach.Count == 0 ? "" : ", and 1 for each of " + OneForEach + (TwoBeyond is { } wide ? ", 2 for one wider than " + wide : ""))
        + (Unless == Facts.None ? "" : "; unless by " + FactText.Of(Unless)) + (OnlyWith.Count == 0 ? "" : "; in a room with " + OnlyWith)
        + (Occupancies.Count == 0 ? "" : "; in " + Occupancies);

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room || (Occupancies.Count > 0 && space.Dwelling.Occupancy is { } of && !Occupancies.Contains(of)))
        {
            return;
        }

        if (OnlyWith.Count > 0 && !HasOne(room))
        {
            return;
        }

        if (!IsDescribed(space, Outlet, statement))
        {
            return;
        }

        int needed = Needed(room);
        int sure = Count(space, Outlet, out int possible, out Facts needs);
        if (OneForEach.Count > 0 && needed > 1 && VehicleBays.Of(RoomInPlan.Of(space).Plan, OneForEach, TwoBeyond) is { } bays)
        {
            Judge(space, bays, statement);
            return;
        }

        if (sure >= needed || (Instead is not null && Count(space, Instead, out _, out _) > 0))
        {
            statement.Meets(space.Id, space.Id);
            return;
        }

        if ((Unless & Facts.ServedFromOutside) != 0 && HasStair(space, room))
        {
            statement.LeavesOpen("the switches of its stair, which another row asks for, may serve it");
            return;
        }

        Verdict verdict = possible < needed && Unless == Facts.None ? Verdict.Fails : Verdict.Unknown;
        Finds(space, statement, verdict, sure, needed, verdict == Verdict.Unknown ? needs | Unless : Facts.None, null);
    }

    /// <inheritdoc/>
    public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) =>
        box.Along is { } at && !((at - offered).Abs() > space.RoomForBoxes.Aside) && IsInOneBay(space, box.WallId, at, offered) && Outlet.Of(box, out _) != Verdict.Fails;

    /// <summary>Whether two places on a wall are in one bay, or there are no bays.</summary>
    private bool IsInOneBay(SpaceView space, string wall, Distance one, Distance other)
    {
        WallPlan plan = RoomInPlan.Of(space).Plan;
        return OneForEach.Count == 0 || VehicleBays.Of(plan, OneForEach, TwoBeyond) is not { } bays
            || (bays.BayAt(plan.IndexOf(wall), one, out bool isOnTheLine) == bays.BayAt(plan.IndexOf(wall), other, out _) && !isOnTheLine);
    }

    /// <summary>Each bay has one of its own.</summary>
    private void Judge(SpaceView space, VehicleBays bays, SpaceStatement statement)
    {
        List<int> without = bays.Without(space, Outlet, out bool canBeServed, out Facts needs);
        if (without.Count > 0)
        {
            Finds(space, statement, canBeServed ? Verdict.Unknown : Verdict.Fails, bays.Count - without.Count, bays.Count, canBeServed ? needs : Facts.None,
                (face, at) => without.Contains(bays.BayAt(face, at, out bool isOnTheLine)) && !isOnTheLine);
            return;
        }

        statement.Meets(space.Id, space.Id);
    }

    private void Finds(SpaceView space, SpaceStatement statement, Verdict verdict, int sure, int needed, Facts needs, Func<int, Distance, bool>? where) =>
        statement.Finds(
            space.Id, space.Id, verdict, Quantity.Of(sure), QuantitySet.AtLeast(needed),
            () => (sure == 0 ? "no" : sure.ToString(CultureInfo.InvariantCulture)) + " " + Outlet.Name + (needed > 1 ? " of " + needed.ToString(CultureInfo.InvariantCulture) : "")
                + (where is null ? "" : ", one to a bay"),
            needs, () => CureIn(space, where));

    internal static bool IsDescribed(SpaceView space, CountedOutlet outlet, SpaceStatement statement, bool evenOfAWhole = false)
    {
        string? missing = space.IsWhole && !evenOfAWhole ? null
            : space.Boxes.Count == 0 ? "no box is described there"
            : space.Face is not null && !space.Whole.ListsOutside(outlet) ? "no such outlet is described outside"
            : space.Whole.Lists(outlet) ? null : "no such outlet is described in the dwelling";
        if (missing is not null)
        {
            statement.LeavesOpen(missing);
        }

        return missing is null;
    }

    internal static int Count(SpaceView space, CountedOutlet outlet, out int possible, out Facts needs)
    {
        int sure = 0;
        possible = 0;
        needs = Facts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict counts = outlet.Of(box, out Facts missing);
            sure += counts == Verdict.Passes ? 1 : 0;
            possible += counts == Verdict.Fails ? 0 : 1;
            needs |= counts == Verdict.Unknown ? missing : Facts.None;
        }

        return sure;
    }

    /// <summary>Whether a flight climbs along one of its walls.</summary>
    private static bool HasStair(SpaceView space, Room room)
    {
        foreach (StairFlight flight in space.Dwelling.Flights)
        {
            if (flight.Wall is { } wall && SurfaceAddress.Read(wall).IsPartOf(room.Id))
            {
                return true;
            }
        }

        return false;
    }

    private bool HasOne(Room room)
    {
        foreach (Fixture fixture in room.Fixtures)
        {
            if (OnlyWith.Contains(fixture.Kind))
            {
                return true;
            }
        }

        return false;
    }

    private int Needed(Room room)
    {
        int needed = 0;
        foreach (Wall wall in OneForEach.Count == 0 ? default : room.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                needed += !OneForEach.Contains(opening.Kind) ? 0 : opening.Right - opening.Left > TwoBeyond ? 2 : 1;
            }
        }

        return Math.Max(needed, 1);
    }

    private Items<PlacedBox> CureIn(SpaceView space, Func<int, Distance, bool>? where)
    {
        if (Cure is not { } cure)
        {
            return default;
        }

        WallPlan plan = RoomInPlan.Of(space).Plan;
        DeviceBox box = cure.WithId(FreePlaces.FreeId(space, space.Id + "-" + cure.Id));
        return cure.Height is null ? OutletCure.InCeiling(space.Room!, box, cure.Purpose == BoxPurpose.Alarm ? 4 : 2)
            : OutletCure.OnWall(
                space, plan, box.WithHeight(NeighborHeight.InItsRoom(space, box, one => Outlet.Of(one, out _) == Verdict.Passes)),
                (face, at) => where is null || where(face, at) ? face : null);
    }
}
