using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A flight with many risers has a wall switch at each of the floors that it joins.</summary>
/// <remarks>
/// What a switch controls isn't described, so a switch counts by where it is: in the room that the flight's wall is in, else in the halls of that storey, or, under a
/// wider reading, anywhere on it. A level of which no such room with boxes is described isn't judged. Landings between floors aren't described.
/// </remarks>
public sealed record StairSwitches : SpaceRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is asked for, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="fewestRisers">The number of risers from which it is asked for, itself included.</param>
    public StairSwitches(string id, string summary, Severity severity, Citation citation, int fewestRisers)
        : base(id, summary, severity, citation) => FewestRisers = fewestRisers;

    /// <summary>The number of risers from which a switch is asked for at each level, itself included.</summary>
    public int FewestRisers { get; init; }

    /// <summary>Whether a switch anywhere on the storey counts.</summary>
    public bool AnywhereOnLevel { get; init; }

    /// <summary>A switch that would do, without its place; null where none is offered.</summary>
    public DeviceBox? Cure { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Flight;

    /// <inheritdoc/>
    public override string Numbers => "a wall switch at each floor from " + FewestRisers + " risers on" + (AnywhereOnLevel ? ", anywhere on that floor" : ", in the room at the stair");

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Flight is not { } flight || flight.Risers < FewestRisers)
        {
            return;
        }

        foreach (string storey in new[] { flight.From, flight.To })
        {
            int boxes = 0;
            int switches = 0;
            foreach (string room in RoomsOn(space.Dwelling, flight, storey))
            {
                foreach (SpaceBox box in space.BoxesIn(room))
                {
                    boxes++;
                    switches += IsWallSwitch(box.Traits) ? 1 : 0;
                }
            }

            if (boxes == 0)
            {
                statement.LeavesOpen("no room with boxes is described at the stair on \"" + storey + "\"", flight.Id + " on " + storey);
            }
            else if (switches == 0)
            {
                Lacks(space, flight, storey, statement);
            }
            else if (statement.TellsAll)
            {
                statement.Meets(flight.Id + " on " + storey, flight.Wall ?? flight.Id);
            }
        }
    }

    private void Lacks(SpaceView space, StairFlight flight, string storey, SpaceStatement statement) =>
        statement.Finds(
            flight.Id + " on " + storey, flight.Wall ?? flight.Id, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1),
            () => flight.Risers + " risers and no wall switch at the stair on \"" + storey + "\"", Facts.None, () => CureOf(space, flight, storey));

    /// <summary>A box on a wall that holds a switch, or that is for one and holds nothing else that is known.</summary>
    private static bool IsWallSwitch(BoxTraits box)
    {
        bool isKnown = false;
        foreach (DeviceKind device in box.Devices)
        {
            if (device.IsSwitch && box.Surface == BoxSurface.Wall)
            {
                return true;
            }

            isKnown |= device.IsKnown;
        }

        return !isKnown && box.Purpose == BoxPurpose.Switch && box.Surface == BoxSurface.Wall;
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
    /// The switch on the flight's own wall, before its first nosing or beyond its last, where that wall is on this storey. Where in the rooms of another
    /// storey the flight arrives isn't described: there it goes where their walls first have room.
    /// </summary>
    private Items<PlacedBox> CureOf(SpaceView space, StairFlight flight, string storey)
    {
        if (Cure is not { } offered)
        {
            return default;
        }

        bool atHead = storey == flight.To;
        PlacedBox? cure = null;
        foreach (Room room in StairGeometry.RoomsAt(space.Dwelling, flight, storey))
        {
            foreach (Wall wall in room.Walls)
            {
                string address = SurfaceAddress.Of(room.Id, wall.Id);
                bool isOwn = flight.Wall == address;
                if ((isOwn || cure is null) && (isOwn ? Beyond(flight, atHead, space.RoomForBoxes.AtStairs) : FirstFree(space, room, wall, offered)) is { } place
                    && place.RoundNearest(space.AlongStep) is var along && along > Distance.Zero && along < wall.Length)
                {
                    string id = FreePlaces.FreeId(space, flight.Id + (atHead ? "-head-switch" : "-foot-switch"));
                    cure = new PlacedBox(address, offered.WithId(id).WithAt(along));
                }
            }
        }

        return cure is { } one ? new[] { one } : default(Items<PlacedBox>);
    }

    private static Distance? Beyond(StairFlight flight, bool atHead, Distance aside) =>
        StairRun.TryOf(flight, out StairRun? run) ? run!.Along(atHead ? (run.Tread * new Ratio(flight.Risers - 1)) + aside : -aside).RoundNearest() : null;

    /// <summary>The first place far enough from both of a wall's ends that nothing takes, and no door that stands open covers.</summary>
    private static Distance? FirstFree(SpaceView space, Room room, Wall wall, DeviceBox offered)
    {
        Distance aside = space.RoomForBoxes.AtStairs;
        DistanceSet free = FreePlaces.On(space, wall, offered, SurfaceAddress.Of(room.Id, wall.Id)) & DistanceSet.Between(aside, Distance.Max(aside, wall.Length - aside));
        foreach (DoorCover cover in DoorCover.In(room.Walls))
        {
            free &= cover.Wall == wall.Id ? DistanceSet.Outside(cover.Left, cover.Right) : DistanceSet.All;
        }

        return !free.IsEmpty && free[0].From.RoundUp(space.AlongStep) is var place && free.Contains(place) && place <= wall.Length - aside ? place : null;
    }
}
