using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A passage of some length along its middle has at least one outlet that counts, anywhere in it.</summary>
/// <remarks>What lies beyond a doorway or a cased opening is another room. A passage that is described as two rooms with an open side between them has the length of both, which isn't added up.</remarks>
[Row(nameof(Shortest), nameof(Walls), nameof(Outlets), nameof(Usual))]
public sealed partial record PassageOutlet : SpaceRule
{
    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <summary>The length along the middle from which it asks for an outlet, itself included.</summary>
    public Distance Shortest { get; init; }

    /// <summary>What is wall in it.</summary>
    public WallSpaces Walls { get; init; }

    /// <summary>What counts as an outlet.</summary>
    public ServingReceptacles Outlets { get; init; }

    /// <summary>The box that a remedy adds.</summary>
    public DeviceBox Usual { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Walls.KindsNamed;

    /// <inheritdoc/>
    public override string Numbers => "one outlet from " + Shortest + " along the middle; outlets: " + Outlets.Numbers;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room)
        {
            return;
        }

        Facts needs = Facts.None;
        bool hasOne = false;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict verdict = Outlets.Judge(box, out Facts missing);
            needs |= verdict == Verdict.Unknown ? missing | Facts.Devices : Facts.None;
            hasOne |= verdict == Verdict.Passes;
        }

        if (hasOne)
        {
            // However long it is.
            statement.Meets(space.Id, space.Id);
            return;
        }

        if (Walls.Of(space) is not { } runs || !runs.Plan.TryMiddle(out Distance middle))
        {
            statement.LeavesOpen("its walls don't describe a passage of one way, so that its length along the middle isn't known");
            return;
        }

        bool goesOn = GoesOn(room, space.Backs);
        if (middle < Shortest)
        {
            if (goesOn)
            {
                statement.LeavesOpen("it goes on into another passage without a doorway, so that its length is that of both");
            }

            return;
        }

        Finding(space, runs, middle, needs | (goesOn ? Facts.ServedFromOutside : Facts.None), statement);
    }

    /// <inheritdoc/>
    public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => Outlets.Judge(box, out _) != Verdict.Fails;

    /// <summary>Whether an open side of it leads into another passage: there one walks on without passing a doorway.</summary>
    private bool GoesOn(Room room, BackFaces backs)
    {
        foreach (Wall wall in room.Walls)
        {
            foreach (BackFace face in wall.Open ? backs.Behind(SurfaceAddress.Of(room.Id, wall.Id)) : [])
            {
                if (face.Room is { } other && other.Id != room.Id && Scope.Rooms.Contains(other.Kind))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void Finding(SpaceView space, RoomRuns runs, Distance middle, Facts needs, SpaceStatement statement) =>
        statement.Finds(
            space.Id, space.Id, needs == Facts.None ? Verdict.Fails : Verdict.Unknown, Quantity.Of(0), QuantitySet.AtLeast(1),
            () => "no outlet that counts in a passage " + Printed.Of(middle, space.Units) + " long", needs,
            () => needs == Facts.None ? Cure(space, runs) : default);

    private Items<PlacedBox> Cure(SpaceView space, RoomRuns runs)
    {
        Run? longest = null;
        foreach (Run run in runs.Sure)
        {
            longest = longest is null || run.Length > longest.Length ? run : longest;
        }

        return longest is null ? default
            : RunCure.Boxes(space, longest, new List<DistanceRange> { new(Distance.Zero, longest.Length) }, null, Walls.ClearBelow, Usual, Outlets);
    }
}
