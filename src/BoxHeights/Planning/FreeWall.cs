using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where along a wall a switch box with its plate has room: off corners, openings with their framing and casing, what covers the wall, and open doors.</summary>
/// <remarks>
/// Where studs are stated a box is clear of whatever surely stands; else of what the custom says studs take beside an opening, and at a corner. Board on the wall round a corner comes off the end of this one.
/// A covering counts unless it is known to end below the heights at which switches are set, or to start above.
/// </remarks>
internal sealed class FreeWall
{
    private readonly SwitchesAtEntrances habit;
    private readonly UsualMeasures usual;
    private readonly Room room;
    private readonly int index;
    private readonly Distance halfBox;
    private readonly Distance halfPlate;
    private readonly WallFraming? framing;

    public FreeWall(Room room, int index, Distance halfBox, Distance halfPlate, SwitchesAtEntrances habit, UsualMeasures usual)
    {
        this.habit = habit;
        this.usual = usual;
        this.room = room;
        this.index = index;
        this.halfBox = halfBox;
        this.halfPlate = halfPlate;
        Wall wall = room.Walls[index];
        framing = FramingOf(wall);
        Centers = wall.Open ? DistanceSet.Empty : DistanceSet.Between(CornerBoard(WallEnd.Left) + halfPlate, wall.Length - CornerBoard(WallEnd.Right) - halfPlate);
        foreach (Opening opening in wall.Openings)
        {
            TrimmedOpening trimmed = TrimmedOpening.Of(opening, usual);
            Keep(trimmed.Left - habit.CasingGap, trimmed.Right + habit.CasingGap, halfPlate);
            Distance studs = framing is null ? habit.StudsBeside : Distance.Zero;
            Keep(opening.Left - studs, opening.Right + studs, halfBox);
        }

        foreach (FramingMember member in framing?.Members ?? default)
        {
            if (member.IsSure)
            {
                Keep(member.Left, member.Right, halfBox);
            }
        }

        foreach (Covering covering in wall.Coverings)
        {
            if (covering.OpenInside != true && !(habit.Heights is { } heights && (IsAtLeast(covering.Bottom, heights.To) || IsAtMost(covering.Top, heights.From))))
            {
                Keep(covering.Left, covering.Right, halfPlate);
            }
        }

        foreach (DoorCover cover in DoorCover.In(room, usual))
        {
            if (cover.Wall == wall.Id)
            {
                bool pocket = cover.Kind == DoorCoverKind.Pocket;
                Keep(cover.Left - (pocket ? Distance.Zero : habit.BeyondLeaf), cover.Right + (pocket ? Distance.Zero : habit.BeyondLeaf), pocket ? halfBox : halfPlate);
            }
        }
    }

    /// <summary>Whether its studs can be packed out with 2-bys; they are taken for lumber where nothing is said of them.</summary>
    public bool IsLumber => framing?.IsLumber ?? true;

    /// <summary>Where a center may be.</summary>
    public DistanceSet Centers { get; private set; }

    /// <summary>How thick the board is that the wall round a corner puts before this one's end; nothing where no wall is there.</summary>
    public Distance CornerBoard(WallEnd end) =>
        DoorCover.Neighbor(room.Walls, index, end) is { } next ? room.Walls[next].Boards?.Thickness ?? habit.Board : Distance.Zero;

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

    /// <summary>
    /// The face that a box is nailed to beside an opening, or beside the corner at a wall's end: of the outermost of the studs that stand there one against the other,
    /// or of the next one where too little room is between them for the box.
    /// </summary>
    /// <param name="way">The way to go from the opening's side or the corner.</param>
    /// <param name="start">The opening's side or the corner.</param>
    /// <param name="box">The box.</param>
    /// <param name="isNext">Whether it is the next stud's.</param>
    /// <returns>Null where studs are stated and none of them is there.</returns>
    public Distance? FaceToNailTo(WallEnd way, Distance start, BoxSize box, out bool isNext)
    {
        isNext = false;
        if (framing is null)
        {
            return way == WallEnd.Left ? start - habit.StudsBeside : start + habit.StudsBeside;
        }

        Distance end = EndToward(way, start);
        Distance face = framing.FaceOfPack(start, way);
        while (true)
        {
            Distance room = framing.RoomBeside(face, way == WallEnd.Left ? StudSide.Left : StudSide.Right);
            Distance next = way == WallEnd.Left ? face - room : face + room;
            if (room >= box.WidthRange.To || (way == WallEnd.Left ? next <= end : next >= end))
            {
                return face == start ? null : face;
            }

            // Studs that were measured one by one may seem to stand a little apart.
            isNext |= face != start && room > usual.TapeError;
            face = framing.FaceOfPack(next, way);
        }
    }

    /// <summary>What stands in a wall, where that is stated and few enough pieces are to be worked through.</summary>
    private WallFraming? FramingOf(Wall wall) =>
        wall.Studs?.In(usual) is { } layout && StudPositions.IsCountable(layout, wall.Length) && WallFraming.Of(wall, layout, usual) is { Members.Count: > 0 and <= WallFraming.MostWorkedThrough } known ? known : null;

    private static bool IsAtLeast(Level? level, Distance height) =>
        level is { Datum: Datum.Subfloor or Datum.FinishedFloor } line && line.Offset >= height;

    private static bool IsAtMost(Level? level, Distance height) =>
        level is { Datum: Datum.Subfloor or Datum.FinishedFloor } line && line.Offset <= height;

    private void Keep(Distance left, Distance right, Distance half) => Centers &= DistanceSet.Outside(left - half, right + half);
}
