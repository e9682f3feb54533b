using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A flight with many risers needs outlets, such as a wall switch, at each of the floors that it joins.</summary>
/// <remarks>
/// Few say what a switch controls, so a switch counts by where it is: in the room that the flight's wall is in, else in the halls of that storey, or, under a
/// wider reading, anywhere on it. A level of which no such room with boxes is described isn't judged. Landings between floors aren't described. A box that is added
/// controls what its mate at the other end is said to control.
/// </remarks>
public sealed record FlightSubject : OutletSubject
{
    /// <summary>Describes flights.</summary>
    /// <param name="fewestRisers">The number of risers from which it is asked for, itself included.</param>
    public FlightSubject(int fewestRisers) => FewestRisers = fewestRisers;

    /// <summary>The number of risers from which it is asked for at each level, itself included.</summary>
    public int FewestRisers { get; init; }

    /// <summary>Whether one anywhere on the storey counts.</summary>
    public bool AnywhereOnLevel { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.Flight;

    /// <inheritdoc/>
    public override string Numbers => "each floor of a flight from " + FewestRisers + " risers on" + (AnywhereOnLevel ? ", anywhere on that floor" : ", in the room at the stair");

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Flight is not { } flight || flight.Risers < FewestRisers)
        {
            return;
        }

        foreach (string storey in new[] { flight.From, flight.To })
        {
            int boxes = 0;
            int sure = 0;
            MissingFacts needs = MissingFacts.None;
            foreach (string room in RoomsOn(space.Dwelling, flight, storey))
            {
                foreach (SpaceBox box in space.BoxesIn(room))
                {
                    boxes++;
                    Verdict counts = row.Outlet.Of(box, out MissingFacts missing);
                    sure += counts == Verdict.Passes ? 1 : 0;
                    needs |= counts == Verdict.Unknown ? missing : MissingFacts.None;
                }
            }

            if (boxes == 0)
            {
                statement.LeavesOpen($"no room with boxes is described at the stair on \"{storey}\"", flight.Id + " on " + storey);
            }
            else if (sure < row.Count.Least)
            {
                Lacks(row, space, flight, storey, sure, needs, statement);
            }
            else if (statement.TellsAll)
            {
                statement.Meets(flight.Id + " on " + storey, flight.Wall ?? flight.Id);
            }
        }
    }

    private void Lacks(RequiredOutlet row, SpaceView space, StairFlight flight, string storey, int sure, MissingFacts needs, SpaceStatement statement) =>
        row.Lacks(
            statement, flight.Id + " on " + storey, flight.Wall ?? flight.Id, sure, row.Count.Least, needs != MissingFacts.None, needs,
            () => $"{flight.Risers:risers} risers and {row.Counted(0):none} at the stair on \"{storey}\"", added => AddedOf(space, added.WithControls(OfTheMate(row, space, flight, storey)), flight, storey));

    /// <summary>
    /// What the mate of a switch that is lacking is said to control: at the flight's other end one of the kind that comes in pairs first, then one that lights the rooms
    /// where one is lacking; of a box of several switches only what lights those, where something does. Nothing where none says it.
    /// </summary>
    private Items<string> OfTheMate(RequiredOutlet row, SpaceView space, StairFlight flight, string storey)
    {
        HashSet<string> here = new(StringComparer.Ordinal);
        foreach (string room in RoomsOn(space.Dwelling, flight, storey))
        {
            here.UnionWith(space.BoxesIn(room).Select(box => box.Id));
        }

        Items<string> controls = default;
        int best = -1;
        foreach (string room in RoomsOn(space.Dwelling, flight, storey == flight.To ? flight.From : flight.To))
        {
            foreach (SpaceBox box in space.BoxesIn(room))
            {
                int fit = (box.Source.Devices.Exists(row.Adds!.Devices.Contains) ? 2 : 0) + (box.Source.Controls.Exists(here.Contains) ? 1 : 0);
                if (fit > best && box.Source.Controls.Count > 0 && row.Outlet.Of(box, out _) == Verdict.Passes)
                {
                    controls = box.Source.Devices.Count > 1 && box.Source.Controls.Where(here.Contains) is { Count: > 0 } lit ? lit : box.Source.Controls;
                    best = fit;
                }
            }
        }

        return controls;
    }

    private HashSet<string> RoomsOn(Dwelling dwelling, StairFlight flight, string storey)
    {
        HashSet<string> ids = [];
        foreach (Room room in AnywhereOnLevel ? dwelling.Rooms : new(StairGeometry.RoomsAt(dwelling, flight, storey)))
        {
            if (room.Storey == storey)
            {
                ids.Add(room.Id);
            }
        }

        return ids;
    }

    /// <summary>
    /// On the flight's own wall, before its first nosing or beyond its last, where that wall is on this storey. Where in the rooms of another
    /// storey the flight arrives isn't described: there it goes where their walls first have room.
    /// </summary>
    private static Items<PlacedBox> AddedOf(SpaceView space, DeviceBox offered, StairFlight flight, string storey)
    {
        bool atHead = storey == flight.To;
        PlacedBox? added = null;
        foreach (Room room in StairGeometry.RoomsAt(space.Dwelling, flight, storey))
        {
            foreach (Wall wall in room.Walls)
            {
                string address = SurfaceAddress.Of(room.Id, wall.Id);
                bool isOwn = flight.Wall == address;
                if ((isOwn || added is null) && (isOwn ? Beyond(flight, atHead, space.RoomForBoxes.AtStairs) : FirstFree(space, room, wall, offered)) is { } place
                    && place.RoundNearest(space.AlongStep) is var along && along > Distance.Zero && along < wall.Length)
                {
                    string id = FreePlaces.FreeId(space, flight.Id + (atHead ? "-head-switch" : "-foot-switch"));
                    added = new PlacedBox(address, offered.WithId(id).WithAt(along));
                }
            }
        }

        return added is { } one ? new[] { one } : default(Items<PlacedBox>);
    }

    /// <summary>Near the place that is offered, and not beside the treads.</summary>
    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered) =>
        box.Along is { } at && (at - offered).Abs() <= space.RoomForBoxes.Aside
        && (space.Flight is not { } flight || flight.Wall != box.Address || !StairRun.TryOf(flight, out StairRun? run)
            || run!.Up(at) < ExactDistance.Zero || run.Up(at) > run.Tread * new Ratio(flight.Risers - 1));

    private static Distance? Beyond(StairFlight flight, bool atHead, Distance aside) =>
        StairRun.TryOf(flight, out StairRun? run) ? run!.Along(atHead ? (run.Tread * new Ratio(flight.Risers - 1)) + aside : -aside).RoundNearest() : null;

    /// <summary>The first place far enough from both of a wall's ends that nothing takes, and no door that stands open covers.</summary>
    private static Distance? FirstFree(SpaceView space, Room room, Wall wall, DeviceBox offered)
    {
        Distance aside = space.RoomForBoxes.AtStairs;
        DistanceSet free = FreePlaces.On(space, wall, offered, SurfaceAddress.Of(room.Id, wall.Id)) & DistanceSet.Between(aside, Distance.Max(aside, wall.Length - aside));
        foreach (DoorCover cover in DoorCover.In(room.Walls, space.Usual))
        {
            free &= cover.Wall == wall.Id ? DistanceSet.Outside(cover.Left, cover.Right) : DistanceSet.All;
        }

        return !free.IsEmpty && free[0].From.RoundUp(space.AlongStep) is var place && free.Contains(place) && place <= wall.Length - aside ? place : null;
    }
}
