using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A wall face as the engine has resolved it: everything on it in one set of coordinates, along it from its left end (framing face) and up from the storey's subfloor.</summary>
/// <remarks>Read-only, and only what was judged by: nothing in it is worked out a second time. What isn't known is a range, or null; what is only assumed says so.</remarks>
public sealed partial class WallView
{
    private readonly Func<WallView, Items<FindingPlace>> find;
    private Items<FindingPlace>? findings;
    private Items<WallArea>? sheets;

    internal WallView(ResolvedSurface surface, WallParts parts, Items<BoxView> boxes, Func<WallView, Items<FindingPlace>> find)
    {
        this.find = find;
        ResolvedSpace space = surface.Space;
        Wall = surface.Wall!;
        Address = surface.Address;
        RoomId = space.Id;
        RoomKind = space.Kind;
        IsOutside = space.IsOutside;
        Units = space.Units;
        HasFaults = surface.HasBrokenParts;
        Subfloor = parts.Subfloor;
        FinishedFloor = parts.LevelOf(Datum.FinishedFloor);
        BottomPlate = parts.LevelOf(Datum.BottomPlate);
        LevelLine = parts.LevelOf(Datum.LevelLine);
        Grade = parts.LevelOf(Datum.Grade);
        FinishedCeiling = parts.LevelOf(Datum.FinishedCeiling);
        CeilingFraming = parts.CeilingFraming;
        Build = surface.Build!;
        Top = parts.Top;
        Studs = parts.Studs();
        Boards = parts.Boards();
        CommonBoards = Boards is null && !IsOutside ? parts.CommonBoards() : default;
        Openings = parts.Openings();
        Counters = parts.Counters();
        Finishes = parts.Finishes();
        Coverings = parts.Coverings();
        Fixtures = parts.Fixtures();
        WithoutCavity = parts.WithoutCavity();
        Platforms = parts.Platforms();
        DoorCovers = parts.DoorCovers();
        Stair = parts.Stair();
        Boxes = boxes;
        LeftOut = parts.LeftOut;
    }

    /// <summary>Its address, such as "kitchen/north".</summary>
    public string Address { get; }

    /// <summary>The wall as it is described.</summary>
    public Wall Wall { get; }

    /// <summary>The id of the room, or of the outside face, that it belongs to.</summary>
    public string RoomId { get; }

    /// <summary>What the room is for; the empty kind outside.</summary>
    public RoomKind RoomKind { get; }

    /// <summary>Whether it is seen from outside the building.</summary>
    public bool IsOutside { get; }

    /// <summary>How measures on it are printed.</summary>
    public LengthUnits Units { get; }

    /// <summary>Whether something described on it can't be, so that rules which read it can't decide.</summary>
    public bool HasFaults { get; }

    /// <summary>What of it is not among its parts and levels, by name, since a measure of it is larger than anything in a house: "door entry", "its length".</summary>
    public Items<string> LeftOut { get; }

    /// <summary>Whether no wall stands on this side of the room.</summary>
    public bool IsOpen => Wall.Open;

    /// <summary>Its length between framing faces.</summary>
    public Distance Length => Wall.Length;

    /// <summary>The room's subfloor: zero unless it lies off the storey's.</summary>
    public Distance Subfloor { get; }

    /// <summary>The top of the finish floor: a range while the floor isn't chosen. Outside, what one stands on where no platform is.</summary>
    public DistanceRange? FinishedFloor { get; }

    /// <summary>The top of the bottom plate.</summary>
    public DistanceRange? BottomPlate { get; }

    /// <summary>The storey's level line.</summary>
    public DistanceRange? LevelLine { get; }

    /// <summary>The ground outside.</summary>
    public DistanceRange? Grade { get; }

    /// <summary>The underside of the finished ceiling.</summary>
    public DistanceRange? FinishedCeiling { get; }

    /// <summary>The underside of the ceiling framing.</summary>
    public DistanceRange? CeilingFraming { get; }

    /// <summary>The top of the wall's framing from its left end to its right: as stated for walls that slope or stop short, else the underside of the ceiling framing; none where neither is known.</summary>
    public Items<ProfilePoint> Top { get; }

    /// <summary>What it is built of, its own or its storey's.</summary>
    public WallBuild Build { get; }

    /// <summary>How well its studs are known; null where nothing is said of them.</summary>
    public StudKnowledge? StudsKnown => Build.StudLayout?.Known;

    /// <summary>What stands upright in it, from left to right; none where nothing is said of its studs.</summary>
    public Items<StudView> Studs { get; }

    /// <summary>How its board is hung; null where nothing is said of it.</summary>
    public BoardView? Boards { get; }

    /// <summary>The ways in which board is commonly hung on such a wall, where nothing is said of it, its height is known and its top level; each is assumed.</summary>
    public Items<BoardView> CommonBoards { get; }

    /// <summary>Its boards, from the lowest course up and from the left; none unless it is known exactly how the board is hung.</summary>
    /// <remarks>
    /// A course that lies across runs over the whole wall unless its butt joints are stated. Its left end is taken at the wall's framing face, its lower edge at the seam under it,
    /// the lowest one's at the subfloor or the stated gap. Upright sheets run from there to the ceiling. Under a top that isn't level each is the sheet that is cut from, up to the
    /// highest that the top is over it, and as wide as there is wall: see <see cref="BoardCutouts.SlopeOn"/>. Where such a wall's courses are counted down from that top, it is
    /// one sheet in the place of all.
    /// </remarks>
    public Items<WallArea> Sheets => sheets ??= InAHouse.Holds(Length) ? BoardSheets.Of(this) : default;

    /// <summary>Its openings.</summary>
    public Items<OpeningView> Openings { get; }

    /// <summary>What open doors of the room take of it.</summary>
    public Items<DoorCover> DoorCovers { get; }

    /// <summary>The counters against it: of each its top is the upper edge; what is under it isn't described, so that it has no lower one.</summary>
    public Items<WallPart<Counter>> Counters { get; }

    /// <summary>The finishes on it.</summary>
    public Items<WallPart<Finish>> Finishes { get; }

    /// <summary>What covers parts of it: cabinets, mirrors, shelves.</summary>
    public Items<WallPart<Covering>> Coverings { get; }

    /// <summary>The fixtures, appliances and furniture that stand against it. An end that isn't stated may be anywhere on the wall.</summary>
    public Items<WallPart<Fixture>> Fixtures { get; }

    /// <summary>Parts of it in which no box can be set.</summary>
    public Items<WallPart<NoCavity>> WithoutCavity { get; }

    /// <summary>Decks, porches and balconies before it: of each the upper edge is what one walks on.</summary>
    public Items<WallPart<Platform>> Platforms { get; }

    /// <summary>The flight of stairs along it; null where none is said to climb there, or its treads can't be told.</summary>
    public StairView? Stair { get; }

    /// <summary>The boxes listed under it, in the dwelling's order.</summary>
    public Items<BoxView> Boxes { get; }

    /// <summary>What was found about it, and about what is on it, in the report's order.</summary>
    public Items<FindingPlace> Findings => findings ??= find(this);

    /// <summary>The piece of framing nearest to a place at which a box can be nailed: a stud, king or corner, and a jack or cripple where it reaches that high.</summary>
    /// <remarks>Studs in a doorway, and those whose place a king or jack takes, are passed over.</remarks>
    /// <param name="along">From the wall's left end.</param>
    /// <param name="up">Above the storey's subfloor.</param>
    /// <returns>Null where nothing is said of its studs, or none stands at that height.</returns>
    public StudView? NearestStud(Distance along, Distance up)
    {
        StudView? nearest = null;
        Distance least = Distance.MaxValue;
        foreach (StudView stud in Studs)
        {
            Distance away = (along - stud.Left - Distance.FromTicks((stud.Right - stud.Left).Ticks / 2)).Abs();
            if (!stud.IsReplaced && away < least && stud.StandsAt(up))
            {
                least = away;
                nearest = stud;
            }
        }

        return nearest;
    }

    /// <summary>The box of an id; null where none is listed under this wall.</summary>
    /// <param name="id">The id.</param>
    public BoxView? Box(string id) => Boxes.Find(box => box.Id == id);

    /// <summary>Every part described on it or before it, boxes and framing apart.</summary>
    public IEnumerable<WallPart> Parts
    {
        get
        {
            foreach (IReadOnlyList<WallPart> some in new IReadOnlyList<WallPart>[] { Openings, Counters, Finishes, Coverings, Fixtures, WithoutCavity, Platforms })
            {
                foreach (WallPart part in some)
                {
                    yield return part;
                }
            }
        }
    }

    /// <summary>Its address and length.</summary>
    public override string ToString() => Address + ", " + Length + " long";
}
