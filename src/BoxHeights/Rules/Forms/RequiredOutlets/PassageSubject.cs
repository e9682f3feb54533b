using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A passage of some length along its middle needs outlets, anywhere in it.</summary>
/// <remarks>What lies beyond a doorway or a cased opening is another room. A passage that is described as two rooms with an open side between them has the length of both, which isn't added up.</remarks>
public sealed record PassageSubject : OutletSubject
{
    private static readonly Wording GoesOnElsewhere = $"it goes on into another passage without a doorway, so that its length is that of both";
    private static readonly Wording NoOneWay = $"its walls don't describe a passage of one way, so that its length along the middle isn't known";

    /// <summary>Describes passages.</summary>
    /// <param name="shortest">The length along the middle from which one asks for an outlet, itself included.</param>
    /// <param name="walls">What is wall in it, for the place of a box to add.</param>
    /// <exception cref="ArgumentNullException"><paramref name="walls"/> is null.</exception>
    public PassageSubject(Distance shortest, WallSpaces walls)
    {
        Shortest = shortest;
        Walls = walls ?? throw new ArgumentNullException(nameof(walls));
    }

    /// <summary>The length along the middle from which one asks for an outlet, itself included.</summary>
    public Distance Shortest { get; init; }

    /// <summary>What is wall in it.</summary>
    public WallSpaces Walls { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => "a passage of " + Shortest + " or more along its middle";

    internal override Items<string> KindsNamed => Walls.KindsNamed;

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room)
        {
            return;
        }

        int sure = Count(space, row.Outlet, out _, out MissingFacts needs);
        bool isCounted = row.Count.Each is null;
        if (isCounted && sure >= row.Count.Least)
        {
            // However long it is.
            statement.Meets(space.Id, space.Id);
            return;
        }

        if (Walls.Of(space) is not { } runs || !runs.Plan.TryMiddle(out Distance middle))
        {
            statement.LeavesOpen(NoOneWay);
            return;
        }

        bool goesOn = GoesOn(row, room, space.Backs);
        if (middle < Shortest)
        {
            if (goesOn)
            {
                statement.LeavesOpen(GoesOnElsewhere);
            }
        }
        else if (row.Count.For(middle.Ticks) is var needed && sure >= needed)
        {
            statement.Meets(space.Id, space.Id);
        }
        else
        {
            Lacks(row, space, runs, middle, sure, needed, needs | (goesOn ? MissingFacts.ServedFromOutside : MissingFacts.None), statement);
        }
    }

    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered) => true;

    /// <summary>Whether an open side of it leads into another passage: there one walks on without passing a doorway.</summary>
    private static bool GoesOn(RequiredOutlet row, Room room, BackFaces backs)
    {
        foreach (Wall wall in room.Walls)
        {
            foreach (BackFace face in wall.Open ? backs.Behind(SurfaceAddress.Of(room.Id, wall.Id)) : [])
            {
                if (face.Room is { } other && other.Id != room.Id && row.Scope.Rooms.Contains(other.Kind))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void Lacks(RequiredOutlet row, SpaceView space, RoomRuns runs, Distance middle, int sure, int needed, MissingFacts needs, SpaceStatement statement) =>
        row.Lacks(
            statement, space.Id, space.Id, sure, needed, needs != MissingFacts.None, needs, () => sure == 0 ? $"no outlet that counts in a passage {Printed.Of(middle, space.Units):length} long" : (Wording)$"{sure} of {needed} outlets that count in a passage {Printed.Of(middle, space.Units):length} long",
            added => needs == MissingFacts.None ? AddedIn(row, space, added, runs) : default);

    private Items<PlacedBox> AddedIn(RequiredOutlet row, SpaceView space, DeviceBox added, RoomRuns runs)
    {
        Run? longest = null;
        foreach (Run run in runs.Sure)
        {
            longest = longest is null || run.Length > longest.Length ? run : longest;
        }

        return longest is null ? default
            : RunPlaces.Boxes(space, longest, new List<DistanceRange> { new(Distance.Zero, longest.Length) }, null, Walls.ClearBelow, added, row.Outlet);
    }
}
