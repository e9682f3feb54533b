using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A room or an outside face: a storey, a floor and a ceiling, turned into levels.</summary>
internal sealed class ResolvedSpace
{
    private readonly Items<Fixture> fixtures;
    private readonly Items<DoorCover> doorCovers;
    private readonly OutsideFace? face;
    private WallPlan? plan;

    public ResolvedSpace(Room room, Storey? storey, BackFaces backs, UsualMeasures usual)
    {
        Usual = usual;
        Room = room;
        Backs = backs;
        Id = room.Id;
        Kind = room.Kind;
        StoreyId = room.Storey;
        LevelId = room.SubfloorOffset is { } step && step.Abs() > usual.LevelStep ? room.Storey + " " + step : room.Storey;
        Storey = storey;
        fixtures = room.Fixtures;
        doorCovers = DoorCover.In(room.Walls, usual);
        Floor = room.Floor ?? FloorBuildup.NotChosenIn(usual);
        Levels.Draft levels = new(Levels.For(usual));
        if (room.SubfloorOffset is { } off)
        {
            levels.WithSubfloorAt(new Elevation(off));
        }

        levels.With(Datum.FinishedFloor, Floor.Thickness, Datum.Subfloor);
        OfStorey(levels, storey);
        Ceiling? ceiling = WallBuild.CeilingOver(room, storey);
        Ceiling = ceiling;

        // The storey's ceiling is one plane, whatever the floors under it do.
        CeilingOrigin from = ceiling?.From ?? (room.Ceiling is null ? CeilingOrigin.StoreySubfloor : CeilingOrigin.RoomSubfloor);
        Distance under = from == CeilingOrigin.StoreySubfloor ? room.SubfloorOffset ?? Distance.Zero : Distance.Zero;
        if (ceiling is not null && HungBoards.TryBoardWall(ceiling, out DistanceRange boardWall))
        {
            BoardWall = boardWall - under;
            levels.With(Datum.FinishedCeiling, boardWall - under, Datum.Subfloor);
        }

        Framing = ceiling?.Framing - under;
        Levels = levels.Done;
    }

    public ResolvedSpace(OutsideFace face, Storey? storey, UsualMeasures usual)
    {
        Usual = usual;
        Id = face.Id;
        this.face = face;
        fixtures = face.Fixtures;
        doorCovers = DoorCover.In(face.Walls, usual);
        StoreyId = storey?.Id ?? "";
        LevelId = StoreyId;
        Storey = storey;
        Floor = FloorBuildup.NotChosenIn(usual);

        // Outdoors a person stands on the ground.
        Levels.Draft levels = new(Levels.For(usual));
        OfStorey(levels, storey);
        Levels = levels.With(Datum.FinishedFloor, Distance.Zero, Datum.Grade).Done;
    }

    public string Id { get; }

    /// <summary>What measures as it usually does, where the description doesn't say.</summary>
    public UsualMeasures Usual { get; }

    /// <summary>How measures in it are printed.</summary>
    public LengthUnits Units { get; init; }

    public RoomKind Kind { get; }

    public bool IsOutside => face is not null;

    /// <summary>The room; null outside. A placement rule reads no box of it.</summary>
    public Room? Room { get; }

    /// <summary>Whether it is no part of this work.</summary>
    public bool IsUntouched => Room?.Untouched ?? face!.Untouched;

    /// <summary>Which faces of the dwelling are two sides of one wall; null outside.</summary>
    public BackFaces? Backs { get; }

    /// <summary>Where the room's walls are in plan; null outside.</summary>
    public WallPlan? Plan => Room is null ? null : plan ??= new(Room);

    /// <summary>Whether something that is described on one of its walls can't be.</summary>
    public bool HasBrokenParts { get; set; }

    public string StoreyId { get; }

    /// <summary>The storey, and the step where the subfloor lies further above or below the storey's than one level goes: boxes there have a level line of their own.</summary>
    public string LevelId { get; }

    public Storey? Storey { get; }

    /// <summary>How the board of the wall before was hung: one that inherits the same layout has its seams where that has them.</summary>
    public HungBoards? LastHung { get; set; }

    public FloorBuildup Floor { get; }

    public Levels Levels { get; }

    /// <summary>How the ceiling is built up; null where it isn't stated.</summary>
    public Ceiling? Ceiling { get; }

    /// <summary>From the room's subfloor to the underside of the ceiling board.</summary>
    public DistanceRange? BoardWall { get; }

    /// <summary>From the room's subfloor to the underside of the ceiling framing.</summary>
    public DistanceRange? Framing { get; }

    /// <summary>The heights, to an edge of a box and from a datum, at which it can lie between the subfloor and a top, as far as both are known; where the edge isn't stated, as one of its readings says. Outdoors a box may be below the subfloor.</summary>
    public DistanceSet HeldHeights(Edge? edge, Datum datum, BoxSize size, Distance? top)
    {
        if (edge is null)
        {
            return HeldHeights(Edge.Bottom, datum, size, top) | HeldHeights(Edge.Center, datum, size, top) | HeldHeights(Edge.Top, datum, size, top);
        }

        if (IsOutside || !Levels.TryGet(datum, out DistanceRange zero) || !Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor))
        {
            return DistanceSet.All;
        }

        DistanceRange bottom = zero - subfloor - edge switch { Edge.Top => size.Height, Edge.Center => size.HalfHeight, _ => Distance.Zero };
        DistanceSet held = DistanceSet.AtLeast(-bottom.To);
        return top is { } most ? held & DistanceSet.AtMost(most - size.Height - bottom.From) : held;
    }

    public Items<Platform> PlatformsBefore(string wall) => face is { Walls.Count: > 0 } && face.Walls[0].Id == wall ? face.Platforms : default;

    public Items<Fixture> FixturesOn(string wall) => Of(fixtures, wall, static fixture => fixture.Wall);

    public Items<DoorCover> DoorCoversOn(string wall) => Of(doorCovers, wall, static cover => cover.Wall);

    private static Items<T> Of<T>(Items<T> all, string wall, System.Func<T, string?> wallOf)
    {
        List<T>? found = null;
        foreach (T one in all)
        {
            if (wallOf(one) == wall)
            {
                (found ??= []).Add(one);
            }
        }

        return found is null ? default : new(found);
    }

    private static void OfStorey(Levels.Draft levels, Storey? storey)
    {
        if (storey?.LevelLine is { Datum: Datum.Subfloor } line)
        {
            levels.With(Datum.LevelLine, line.Offset, Datum.Subfloor);
        }

        if (storey?.GradeBelowSubfloor is { } grade)
        {
            levels.With(Datum.Grade, -grade, Datum.Subfloor);
        }
    }
}
