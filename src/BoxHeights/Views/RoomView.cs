using System;

namespace BoxHeights;

/// <summary>A room as the engine has resolved it, in plan and with its floor and ceiling. Plan points are those of <see cref="PlanPoint"/>, rounded to the grid beyond corners that aren't square.</summary>
public sealed partial class RoomView
{
    private readonly Func<Items<FindingPlace>> find;
    private Items<FindingPlace>? findings;

    internal RoomView(ResolvedSpace space, Func<Items<FindingPlace>> find)
    {
        this.find = find;
        Room = space.Room!;
        Units = space.Units;
        Ceiling = space.Ceiling;
        IsCeilingInherited = Room.Ceiling is null && Ceiling is not null;
        Levels = space.Levels;
        Subfloor = space.Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor) ? subfloor.From : Distance.Zero;
        CeilingFraming = space.Framing + Subfloor;
        GoesRound = space.Plan!.GoesRound;
    }

    /// <summary>The room as it is described.</summary>
    public Room Room { get; }

    /// <summary>Its id.</summary>
    public string Id => Room.Id;

    /// <summary>How measures in it are printed.</summary>
    public LengthUnits Units { get; }

    /// <summary>Where its datums lie above the storey's subfloor.</summary>
    public Levels Levels { get; }

    /// <summary>Its subfloor above the storey's.</summary>
    public Distance Subfloor { get; }

    /// <summary>The top of its finish floor above the storey's subfloor: a range while the floor isn't chosen.</summary>
    public DistanceRange? FinishedFloor => LevelOf(Datum.FinishedFloor);

    /// <summary>Its ceiling, its own or its storey's; null where neither is stated.</summary>
    public Ceiling? Ceiling { get; }

    /// <summary>Whether its ceiling is the storey's.</summary>
    public bool IsCeilingInherited { get; }

    /// <summary>The underside of the finished ceiling above the storey's subfloor; null where it isn't known.</summary>
    public DistanceRange? FinishedCeiling => LevelOf(Datum.FinishedCeiling);

    /// <summary>The underside of the ceiling framing above the storey's subfloor; null where it isn't known.</summary>
    public DistanceRange? CeilingFraming { get; }

    /// <summary>Whether its walls go once round it, so that the last is joined to the first.</summary>
    public bool GoesRound { get; }

    /// <summary>Its wall faces from left to right; none in a room larger than any house.</summary>
    public Items<PlanWall> Walls { get; internal init; }

    /// <summary>The openings of its walls.</summary>
    public Items<PlanOpening> Openings { get; internal init; }

    /// <summary>Counters, coverings and fixtures against its walls and what stands free in it, as far as it is said where.</summary>
    public Items<PlanShape> Shapes { get; internal init; }

    /// <summary>What rules about receptacles ask for along its walls, and what of it is served.</summary>
    public Items<CoverageView> Coverage { get; internal init; }

    /// <summary>The boxes on its walls, wall by wall.</summary>
    public Items<BoxView> WallBoxes { get; internal init; }

    /// <summary>The boxes in its ceiling.</summary>
    public Items<BoxView> Overhead { get; internal init; }

    /// <summary>The boxes in its floor.</summary>
    public Items<BoxView> InFloor { get; internal init; }

    /// <summary>What was found about it, and about all that it holds, in the report's order.</summary>
    public Items<FindingPlace> Findings => findings ??= find();

    /// <summary>Its id and kind.</summary>
    public override string ToString() => Id + ", " + Room.Kind;

    private DistanceRange? LevelOf(Datum datum) => Levels.TryGet(datum, out DistanceRange up) ? up : null;
}
