namespace BoxHeights;

/// <summary>Where along a wall a switch box with its plate has room: off corners, openings with their framing and casing, what covers the wall, and open doors.</summary>
/// <remarks>
/// Jack and king take 3 in beside an opening (two dressed 2-bys). Board of 1/2 in on the wall round a corner comes off the end of this one, where its thickness isn't stated.
/// A covering counts unless it is known to end below 40 in or to start above 52 in, the band in which switches are set. Common practice, no source.
/// </remarks>
internal sealed class FreeWall
{
    /// <summary>What jack and king take beside a rough opening.</summary>
    public static readonly Distance JackAndKing = StudPositions.UsualThickness * 2;

    /// <summary>How far beyond an open leaf or panel a plate is set: 3 in.</summary>
    public static readonly Distance BeyondLeaf = Distance.FromInches(3, 0, 1);

    private static readonly Distance UsualBoard = Distance.FromInches(0, 1, 2);
    private static readonly Distance SwitchesFrom = Distance.FromInches(40, 0, 1);
    private static readonly Distance SwitchesTo = Distance.FromInches(52, 0, 1);

    private readonly Room room;
    private readonly int index;
    private readonly Distance halfBox;
    private readonly Distance halfPlate;

    public FreeWall(Room room, int index, Distance halfBox, Distance halfPlate, Distance gap)
    {
        this.room = room;
        this.index = index;
        this.halfBox = halfBox;
        this.halfPlate = halfPlate;
        Wall wall = room.Walls[index];
        Centers = wall.Open ? DistanceSet.Empty : DistanceSet.Between(CornerBoard(WallEnd.Left) + halfPlate, wall.Length - CornerBoard(WallEnd.Right) - halfPlate);
        foreach (Opening opening in wall.Openings)
        {
            TrimmedOpening trimmed = TrimmedOpening.Of(opening);
            Keep(trimmed.Left - gap, trimmed.Right + gap, halfPlate);
            Keep(opening.Left - JackAndKing, opening.Right + JackAndKing, halfBox);
        }

        foreach (Covering covering in wall.Coverings)
        {
            if (covering.OpenInside != true && !IsAtLeast(covering.Bottom, SwitchesTo) && !(covering.Top is { } top && !IsAtLeast(new Level(top.Offset - Distance.FromTicks(1), top.Datum), SwitchesFrom)))
            {
                Keep(covering.Left, covering.Right, halfPlate);
            }
        }

        foreach (DoorCover cover in DoorCover.In(room))
        {
            if (cover.Wall == wall.Id)
            {
                bool pocket = cover.Kind == DoorCoverKind.Pocket;
                Keep(cover.Left - (pocket ? Distance.Zero : BeyondLeaf), cover.Right + (pocket ? Distance.Zero : BeyondLeaf), pocket ? halfBox : halfPlate);
            }
        }
    }

    /// <summary>Where a center may be.</summary>
    public DistanceSet Centers { get; private set; }

    /// <summary>How thick the board is that the wall round a corner puts before this one's end; nothing where no wall is there.</summary>
    public Distance CornerBoard(WallEnd end) =>
        DoorCover.Neighbor(room.Walls, index, end) is { } next ? room.Walls[next].Boards?.Thickness ?? UsualBoard : Distance.Zero;

    /// <summary>Where the wall's end or the next rough opening is, going one way from a place.</summary>
    public Distance EndToward(WallEnd way, Distance from)
    {
        Distance end = way == WallEnd.Left ? Distance.Zero : room.Walls[index].Length;
        foreach (Opening opening in room.Walls[index].Openings)
        {
            end = way == WallEnd.Left
                ? opening.Right <= from ? Distance.Max(end, opening.Right) : end
                : opening.Left >= from ? Distance.Min(end, opening.Left) : end;
        }

        return end;
    }

    private static bool IsAtLeast(Level? level, Distance height) =>
        level is { Datum: Datum.Subfloor or Datum.FinishedFloor } line && line.Offset >= height;

    private void Keep(Distance left, Distance right, Distance half) => Centers &= DistanceSet.Outside(left - half, right + half);
}
