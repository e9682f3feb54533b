using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A wall face, ceiling or floor with everything that rules read of it, worked out once.</summary>
internal sealed class ResolvedSurface
{
    public ResolvedSurface(string address, BoxSurface kind, ResolvedSpace space, Wall? wall, int index)
    {
        Index = index;
        Address = address;
        Kind = kind;
        Space = space;
        Wall = wall;
        if (wall is not null)
        {
            WallWithoutBoxes = wall.Boxes.Count == 0 ? wall : wall.WithBoxes(Items<DeviceBox>.None);

            // A storey's usual studs and board are seen from inside; an outside face says its own.
            Storey? usual = space.IsOutside ? null : space.Storey;
            StudLayout? studs = wall.Studs ?? usual?.Studs;
            HasTooManyStuds = studs is not null && !StudPositions.IsCountable(studs, wall.Length);
            Studs = studs is null || HasTooManyStuds ? null : StudPositions.Along(studs, wall.Length);
            BoardLayout? boards = wall.Boards ?? usual?.Boards;
            Boards = boards is not null && (space.BoardWall is not null || !HungBoards.CountsFromTop(boards)) ? HungBoards.Under(boards, space.BoardWall) : null;
            Fixtures = space.FixturesOn(wall.Id);
            Platforms = space.PlatformsBefore(wall.Id);
        }
    }

    /// <summary>Its place in the order of all surfaces.</summary>
    public int Index { get; }

    public string Address { get; }

    /// <summary>Whether something that is described on this wall can't be, so that rules which read it can't decide.</summary>
    public bool HasBrokenParts { get; init; }

    public BoxSurface Kind { get; }

    public ResolvedSpace Space { get; }

    public Wall? Wall { get; }

    public Wall? WallWithoutBoxes { get; }

    public StudPositions? Studs { get; }

    public bool HasTooManyStuds { get; }

    public HungBoards? Boards { get; }

    public Items<Fixture> Fixtures { get; }

    /// <summary>Decks, porches and balconies before an outside wall.</summary>
    public Items<Platform> Platforms { get; }

    public RoomKind RoomKind => Space.Kind;

    public Distance Length => Wall?.Length ?? Distance.Zero;

    /// <summary>Whether a box has room between the ends of its wall.</summary>
    public bool Holds(Distance along, BoxSize size) => along >= size.HalfWidth && along <= Length - size.HalfWidth;

    /// <summary>The counter that a height above "the countertop" means on a stretch of the wall.</summary>
    public Counter? CounterOn(Distance left, Distance right)
    {
        foreach (Counter counter in Wall?.Counters ?? default)
        {
            if (counter.Left <= right && left <= counter.Right)
            {
                return counter;
            }
        }

        return null;
    }

    /// <summary>The finish that a height above "the splash" means on a stretch of the wall.</summary>
    public Finish? FinishOn(Distance left, Distance right)
    {
        foreach (Finish finish in Wall?.Finishes ?? default)
        {
            if (finish.Left <= right && left <= finish.Right)
            {
                return finish;
            }
        }

        return null;
    }

    /// <summary>Takes a line above "the countertop" or "the splash" back to what those themselves are taken from.</summary>
    public bool TryAnchor(Level level, Distance left, Distance right, out Level anchored)
    {
        anchored = level;
        if (level.Datum is not (Datum.Countertop or Datum.SplashTop))
        {
            return true;
        }

        if (level.Datum == Datum.Countertop && CounterOn(left, right) is { } counter && TopOf(counter) is { } top)
        {
            anchored = new(level.Offset + top.Offset, top.Datum);
            return top.Datum != Datum.Countertop;
        }

        return level.Datum == Datum.SplashTop && FinishOn(left, right)?.Top is { } splash && splash.Datum != Datum.SplashTop
            && TryAnchor(new(level.Offset + splash.Offset, splash.Datum), left, right, out anchored);
    }

    /// <summary>The top of a counter: as stated, or a base of the usual height on what it stands on (34-1/2 in and a top of 1-1/2 in). Common practice, no source.</summary>
    public static Level? TopOf(Counter counter) => counter.Top ?? (counter.BaseStandsOn is { } floor ? new Level(UsualCounter, floor) : null);

    private static Distance UsualCounter { get; } = Distance.FromInches(36, 0, 1);
}

/// <summary>A room or an outside face: a storey, a floor and a ceiling, turned into levels.</summary>
internal sealed class ResolvedSpace
{
    /// <summary>How far a subfloor may lie off the storey's and still share its level line: 1 in. Common practice, no source.</summary>
    private static readonly Distance MostOnOneLevel = Distance.FromInches(1, 0, 1);

    private readonly Items<Fixture> fixtures;
    private readonly OutsideFace? face;

    public ResolvedSpace(Room room, Storey? storey)
    {
        Id = room.Id;
        Kind = room.Kind;
        StoreyId = room.Storey;
        LevelId = room.SubfloorOffset is { } step && step.Abs() > MostOnOneLevel ? room.Storey + " " + step : room.Storey;
        Storey = storey;
        fixtures = room.Fixtures;
        Floor = room.Floor ?? FloorBuildup.NotChosen;
        Levels levels = WithStorey(Levels.Default.WithSubfloorAt(new Elevation(room.SubfloorOffset ?? Distance.Zero)).With(Floor), storey);
        Ceiling? ceiling = room.Ceiling ?? storey?.Ceiling;
        if (ceiling is not null && HungBoards.TryBoardWall(ceiling, out DistanceRange boardWall))
        {
            BoardWall = boardWall;
            levels = levels.With(Datum.FinishedCeiling, boardWall, Datum.Subfloor);
        }

        Framing = ceiling?.Framing;
        Levels = levels;
    }

    public ResolvedSpace(OutsideFace face, Storey? storey)
    {
        Id = face.Id;
        this.face = face;
        StoreyId = storey?.Id ?? "";
        LevelId = StoreyId;
        Storey = storey;
        Floor = FloorBuildup.NotChosen;

        // Outdoors a person stands on the ground.
        Levels = WithStorey(Levels.Default, storey).With(Datum.FinishedFloor, Distance.Zero, Datum.Grade);
    }

    public string Id { get; }

    public RoomKind Kind { get; }

    public bool IsOutside => face is not null;

    /// <summary>Whether something that is described on one of its walls can't be.</summary>
    public bool HasBrokenParts { get; set; }

    public string StoreyId { get; }

    /// <summary>The storey, and the step where the subfloor lies more than 1 in above or below the storey's: boxes there have a level line of their own.</summary>
    public string LevelId { get; }

    public Storey? Storey { get; }

    public FloorBuildup Floor { get; }

    public Levels Levels { get; }

    /// <summary>From the subfloor to the underside of the ceiling board.</summary>
    public DistanceRange? BoardWall { get; }

    /// <summary>From the subfloor to the underside of the ceiling framing.</summary>
    public DistanceRange? Framing { get; }

    /// <summary>Whether a box of a room can lie between subfloor and ceiling framing, as far as both are known. Outdoors a box may be below the subfloor.</summary>
    public bool Holds(BoxHeight height, BoxSize size)
    {
        if (IsOutside || !height.TryResolve(Levels, out DistanceRange up) || !Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor))
        {
            return true;
        }

        Distance below = height.Edge switch { Edge.Top => size.Height, Edge.Center => size.HalfHeight, _ => Distance.Zero };
        DistanceRange bottom = up - subfloor - below;
        return bottom.To >= Distance.Zero && (Framing is not { } framing || bottom.From + size.Height <= framing.To);
    }

    public Items<Platform> PlatformsBefore(string wall) => face is { Walls.Count: > 0 } && face.Walls[0].Id == wall ? face.Platforms : default;

    public Items<Fixture> FixturesOn(string wall)
    {
        List<Fixture> found = [];
        foreach (Fixture fixture in fixtures)
        {
            if (fixture.Wall == wall)
            {
                found.Add(fixture);
            }
        }

        return new(found);
    }

    private static Levels WithStorey(Levels levels, Storey? storey)
    {
        if (storey?.LevelLine is { Datum: Datum.Subfloor } line)
        {
            levels = levels.With(Datum.LevelLine, line.Offset, Datum.Subfloor);
        }

        return storey?.GradeBelowSubfloor is { } grade ? levels.With(Datum.Grade, -grade, Datum.Subfloor) : levels;
    }
}
