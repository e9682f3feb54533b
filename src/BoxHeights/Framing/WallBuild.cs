using System;

namespace BoxHeights;

/// <summary>What a wall is built of: the studs and the board that it states, or those that its storey states for walls which don't. The one place where that is decided.</summary>
/// <remarks>A storey's usual studs and board are seen from inside: a wall of an outside face inherits neither.</remarks>
public sealed class WallBuild
{
    private readonly Wall wall;
    private readonly UsualMeasures usual;
    private WallFraming? framing;

    internal WallBuild(Wall wall, Storey? storey, DistanceRange? boardWall, UsualMeasures usual, HungBoards? beside = null)
    {
        this.wall = wall;
        this.usual = usual;
        StudLayout = StudsOf(wall, storey);
        AreStudsInherited = wall.Studs is null && StudLayout is not null;
        StudLayout? settled = StudLayout?.In(usual);
        HasTooManyStuds = settled is not null && !StudPositions.IsCountable(settled, wall.Length);
        Studs = settled is null || HasTooManyStuds ? null : StudPositions.Along(settled, wall.Length);
        BoardLayout = BoardsOf(wall, storey);
        AreBoardsInherited = wall.Boards is null && BoardLayout is not null;

        // Courses that are counted down from a top that isn't level fall nobody knows where.
        Boards = BoardLayout is not null && ((boardWall is not null && wall.Top.Count == 0) || !HungBoards.CountsFromTop(BoardLayout))
            ? ReferenceEquals(beside?.Layout, BoardLayout) ? beside : HungBoards.Under(BoardLayout, boardWall, usual) : null;
    }

    /// <summary>Studs and seams.</summary>
    public override string ToString() => (Studs is null ? "no studs" : Studs.ToString()) + "; " + (Boards is null ? "no board" : Boards.ToString());

    /// <summary>The layout of its studs; null where nothing is said of them.</summary>
    public StudLayout? StudLayout { get; }

    /// <summary>Whether that layout is the storey's.</summary>
    public bool AreStudsInherited { get; }

    /// <summary>Where the studs of the layout stand; null where nothing is said of them, or there are too many to be counted.</summary>
    public StudPositions? Studs { get; }

    /// <summary>Whether there would be more than 10,000 of them.</summary>
    public bool HasTooManyStuds { get; }

    /// <summary>What stands upright in it, worked out when it is asked for; null where nothing is said of its studs.</summary>
    public WallFraming? Framing => Studs is null ? null : framing ??= WallFraming.Of(wall, StudLayout!, usual);

    /// <summary>How its board is hung; null where nothing is said of it.</summary>
    public BoardLayout? BoardLayout { get; }

    /// <summary>Whether that is the storey's.</summary>
    public bool AreBoardsInherited { get; }

    /// <summary>Where its seams fall; null where that isn't stated, or is counted from a ceiling of unknown height or from a top that isn't level.</summary>
    public HungBoards? Boards { get; }

    /// <summary>The ceiling of a room: its own, else its storey's; null where neither is stated.</summary>
    /// <param name="room">The room.</param>
    /// <param name="storey">Its storey; null where it isn't described.</param>
    /// <exception cref="ArgumentNullException"><paramref name="room"/> is null.</exception>
    internal static Ceiling? CeilingOver(Room room, Storey? storey) => (room ?? throw new ArgumentNullException(nameof(room))).Ceiling ?? storey?.Ceiling;

    /// <summary>The wall with what it inherits said on itself.</summary>
    internal static Wall Settled(Wall wall, Storey storey) => wall.WithStuds(StudsOf(wall, storey)).WithBoards(BoardsOf(wall, storey));

    private static StudLayout? StudsOf(Wall wall, Storey? storey) => wall.Studs ?? storey?.Studs;

    private static BoardLayout? BoardsOf(Wall wall, Storey? storey) => wall.Boards ?? storey?.Boards;
}
